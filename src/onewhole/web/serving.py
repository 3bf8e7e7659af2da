"""The server: it prints its address once and runs until it is stopped."""

import asyncio
import signal
import socket
import ssl
import time
from collections.abc import Callable
from datetime import datetime
from ipaddress import ip_address
from pathlib import Path
from threading import Timer, current_thread, main_thread
from types import FrameType

import uvicorn
from starlette.types import ASGIApp

from onewhole.errors import InputError
from onewhole.web.access.bind_policy import HERE, check_binding
from onewhole.web.access.connections import Connection
from onewhole.web.access.guard import Access
from onewhole.web.access.login_link import SpareLink, login_link_routes
from onewhole.web.access.rate_limit import RateLimit
from onewhole.web.access.security_log import log_to_stderr
from onewhole.web.access.sessions import IDLE, LIFE, SHARED_IDLE, SHARED_LIFE, Sessions
from onewhole.web.access.sign_in import sign_in_routes
from onewhole.web.app import app_for
from onewhole.web.asgi import asgi_app

#: Seconds that an idle connection stays open after an answer, and bytes of the head of a request.
KEEP_ALIVE, LONGEST_HEAD = 5, 32 * 1024
#: Seconds from "Stop" to the end: the page that says so still has to fetch its styles and letters.
STOPS_AFTER = 1.5


def serve(
    path: Path,
    *,
    port: int = 0,
    address: str = HERE,
    names: tuple[str, ...] = (),
    certificate: Path | None = None,
    key: Path | None = None,
    now: Callable[[], datetime],
    told: Callable[[str], None],
    again: Callable[[str], None] = lambda _address: None,
) -> None:
    """Serve the file of a class until it is stopped; ``told`` is told the address to open, once.

    On this machine the address carries a one-time key; elsewhere one signs in. ``again`` is told an address
    for one more window, before ``told`` and whenever the last one was used. Port 0 takes a free one.
    Raises InputError for a port that is taken and for an address that the bind policy refuses.
    """
    stands = check_binding(path, address, names, certificate, key)
    taken = listening(str(stands.address), port)
    port = taken.getsockname()[1]
    shared = not stands.is_here
    if shared:
        log_to_stderr()
    idle, life = (SHARED_IDLE, SHARED_LIFE) if shared else (IDLE, LIFE)
    sessions = Sessions(time.monotonic, idle, life)
    access = Access(stands.hosts(port), sessions, port, secure=stands.tls is not None, password=shared)
    server: uvicorn.Server
    app = app_for(
        path, now, signs_in=shared, stop=None if shared else lambda: _end_after(server, STOPS_AFTER)
    )
    way_in = stands.base(port) + ("/sign-in" if shared else "")
    spare = SpareLink(sessions, lambda key: again(way_in if shared else f"{way_in}/open?key={key}"))
    if shared:
        entry = sign_in_routes(access, path, RateLimit(time.monotonic))
    else:
        entry = login_link_routes(access, spare.renew)
    server = uvicorn.Server(server_config(asgi_app(app, access, entry=entry), stands.tls))
    _end_when_told(server)
    spare.renew()
    told(way_in if shared else f"{way_in}/open?key={sessions.new_key()}")
    try:
        asyncio.run(server.serve(sockets=[taken]))
    finally:
        app.close()
        taken.close()


def listening(host: str, port: int) -> socket.socket:
    """Return a socket that listens; InputError when the port is taken.

    What it answers goes out at once: an answer has two parts, and the second would wait 40 ms for the first
    to be acknowledged (Nagle's algorithm; asyncio turns it off only for sockets that name their protocol).
    """
    family = socket.AF_INET6 if ip_address(host).version == 6 else socket.AF_INET
    try:
        made = socket.create_server((host, port), family=family)
    except OSError as error:
        raise InputError(
            f"Port {port} cannot be used: {error.strerror}", remedy="Give another with --port."
        ) from error
    made.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
    return made


def server_config(served: ASGIApp, tls: ssl.SSLContext | None = None) -> uvicorn.Config:
    """Return how the server speaks: its times, its limits, and nothing in its log."""
    return uvicorn.Config(
        served,
        log_config=None,
        access_log=False,
        proxy_headers=False,
        server_header=False,
        timeout_graceful_shutdown=3,
        limit_concurrency=200,
        timeout_keep_alive=KEEP_ALIVE,
        h11_max_incomplete_event_size=LONGEST_HEAD,
        http=Connection,
        ws="none",
        lifespan="off",
        ssl_context_factory=None if tls is None else lambda _config, _usual: tls,
    )


def _end_after(server: uvicorn.Server, seconds: float) -> None:
    """Let the server end after so many seconds; what was asked of it meanwhile is answered."""

    def end() -> None:
        server.should_exit = True

    timer = Timer(seconds, end)
    timer.daemon = True
    timer.start()


def _end_when_told(server: uvicorn.Server) -> None:
    """Handle Ctrl-C and SIGTERM gracefully from now on, whatever the program is doing.

    The server listens to both while it runs; these are for the moments before and after.
    """

    def end(_signal: int, _frame: FrameType | None) -> None:
        server.should_exit = True

    if current_thread() is main_thread():
        signal.signal(signal.SIGINT, end)
        signal.signal(signal.SIGTERM, end)
