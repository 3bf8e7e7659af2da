"""A browser door for the tests: asked without a network, or served on this machine for a real browser."""

import asyncio
import re
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path
from socket import socket as Socket  # noqa: N812 - a variable is called socket

import uvicorn
from starlette.testclient import TestClient
from starlette.types import ASGIApp

from onewhole.desk.paper.seen_papers import SeesPapers
from onewhole.web.access.guard import Access
from onewhole.web.access.rate_limit import RateLimit
from onewhole.web.access.sessions import Sessions
from onewhole.web.access.sign_in import sign_in_routes
from onewhole.web.app import App, app_for
from onewhole.web.asgi import asgi_app
from onewhole.web.serving import listening, server_config

#: A Tuesday evening in school.
NOW = datetime(2026, 9, 1, 18, 30, tzinfo=UTC)


@dataclass(slots=True)
class Clock:
    """A clock in the test's hands."""

    now: datetime = NOW

    def __call__(self) -> datetime:
        """Return the moment it shows."""
        return self.now


@dataclass(slots=True)
class Ticks:
    """Seconds in the test's hands, as sessions and tries count them."""

    now: float = 0

    def __call__(self) -> float:
        """Return the seconds."""
        return self.now


@dataclass(frozen=True, slots=True)
class Opened:
    """A door with an open session: ``client`` asks it without a network, forms carry the ``csrf_token``."""

    door: App
    access: Access
    client: TestClient
    csrf_token: str

    def post(self, address: str, **fields: str) -> "Answer":
        """Send a form with the session's CSRF token."""
        return _answer(
            self.client.post(address, data={"csrf_token": self.csrf_token, **fields}, headers=self.origin)
        )

    def get(self, address: str) -> "Answer":
        """Load a page."""
        return _answer(self.client.get(address))

    @property
    def origin(self) -> dict[str, str]:
        """Return the header with which a browser says where a form comes from."""
        return {"Origin": "http://127.0.0.1:8000"}


@dataclass(frozen=True, slots=True)
class Answer:
    """What came back."""

    status: int
    text: str
    goes: str
    content: bytes


def _answer(response: object) -> Answer:
    status, text = getattr(response, "status_code"), getattr(response, "text")  # noqa: B009 - client's own type
    headers, content = getattr(response, "headers"), getattr(response, "content")  # noqa: B009
    return Answer(status, text, headers.get("location", ""), content)


def _seeing(door: App, sees: SeesPapers | None) -> App:
    return door if sees is None else replace(door, sees=lambda *_: sees)


@contextmanager
def opened(
    folder: Path,
    clock: Clock | None = None,
    *,
    sees: SeesPapers | None = None,
    stop: Callable[[], None] | None = None,
) -> Iterator[Opened]:
    """Open a door to an empty class file in a folder, asked without a network.

    ``sees`` stands for the machine that reads papers; ``stop`` is what its own page ends the program with.
    """
    sessions = Sessions(lambda: 0)
    access = Access(frozenset({"127.0.0.1:8000"}), sessions, 8000)
    door = _seeing(app_for(folder / "room12.class", clock or Clock(), stop=stop), sees)
    client = TestClient(asgi_app(door, access), base_url="http://127.0.0.1:8000", follow_redirects=False)
    client.get(f"/open?key={sessions.new_key()}")
    cookie = client.cookies[access.cookie]
    try:
        yield Opened(door, access, client, sessions.csrf_token(cookie) or "")
    finally:
        client.close()
        door.close()


@dataclass(frozen=True, slots=True)
class Served:
    """A door that a browser can open at ``address``, once; ``base`` is the address without the key."""

    door: App
    access: Access
    address: str
    base: str


@contextmanager
def served(
    folder: Path, clock: Clock | None = None, *, signs_in: bool = False, sees: SeesPapers | None = None
) -> Iterator[Served]:
    """Serve an empty class file in a folder on this machine, on a free port, in a thread of its own.

    With ``signs_in`` one signs in with the password that was set for `room12.class`; ``sees`` stands for the
    machine that reads papers.
    """
    socket = listening("127.0.0.1", 0)
    port = socket.getsockname()[1]
    access = Access(frozenset({f"127.0.0.1:{port}"}), Sessions(lambda: 0), port, password=signs_in)
    path = folder / "room12.class"
    door = _seeing(app_for(path, clock or Clock(), signs_in=signs_in), sees)
    entry = sign_in_routes(access, path, RateLimit(lambda: 0)) if signs_in else None
    made = asgi_app(door, access, entry=entry)
    base = f"http://127.0.0.1:{port}"
    try:
        with running(made, socket):
            way = "/sign-in" if signs_in else f"/open?key={access.sessions.new_key()}"
            yield Served(door, access, f"{base}{way}", base)
    finally:
        door.close()


@contextmanager
def running(app: ASGIApp, socket: Socket) -> Iterator[None]:
    """Serve an application on a socket that listens, in a thread of its own, and close the socket."""
    server = uvicorn.Server(server_config(app))
    thread = threading.Thread(target=lambda: asyncio.run(server.serve(sockets=[socket])))
    thread.start()
    try:
        yield
    finally:
        server.should_exit = True
        thread.join()
        socket.close()


def csrf_token_in(page: str) -> str:
    """Return the CSRF token that a page carries."""
    found = re.search(r'<meta name="csrf_token" content="([^"]+)"', page)
    assert found, "a page of ours carries its CSRF token"
    return found[1]
