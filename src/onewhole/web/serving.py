"""The door is opened: on this machine only, its address printed once."""

import asyncio
import socket
import time
from collections.abc import Callable
from datetime import datetime
from pathlib import Path

import uvicorn

from onewhole.errors import InputError
from onewhole.web.app import app
from onewhole.web.door import door_of
from onewhole.web.guard import Gate
from onewhole.web.sessions import Sessions

HERE = "127.0.0.1"


def serve(path: Path, *, port: int = 0, now: Callable[[], datetime], told: Callable[[str], None]) -> None:
    """Serve the file of a class until it is stopped; ``told`` is told the address with its key.

    Port 0 takes a free one. Raises InputError for a port that is taken.
    """
    taken = listening(HERE, port)
    port = taken.getsockname()[1]
    gate = Gate(frozenset({f"{HERE}:{port}", f"localhost:{port}"}), Sessions(time.monotonic), port)
    door = door_of(path, now)
    config = uvicorn.Config(
        app(door, gate),
        log_config=None,
        access_log=False,
        proxy_headers=False,
        server_header=False,
        timeout_graceful_shutdown=3,
        limit_concurrency=200,
        ws="none",
    )
    told(f"http://{HERE}:{port}/open?key={gate.sessions.new_key()}")
    try:
        asyncio.run(uvicorn.Server(config).serve(sockets=[taken]))
    finally:
        door.close()
        taken.close()


def listening(host: str, port: int) -> socket.socket:
    """Return a socket that listens; InputError when the port is taken."""
    try:
        return socket.create_server((host, port))
    except OSError as error:
        raise InputError(
            f"Port {port} cannot be used: {error.strerror}", remedy="Give another with --port."
        ) from error
