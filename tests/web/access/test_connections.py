"""A connection has little time to ask, and many that say nothing keep nobody out."""

import asyncio
from collections.abc import Iterator
from contextlib import ExitStack
from dataclasses import dataclass, field
from pathlib import Path
from socket import create_connection, socket
from threading import Event

import pytest
from starlette.types import Receive, Scope, Send

from onewhole.web.access.connections import Connection
from onewhole.web.serving import listening
from tests.kit.doors import running, served
from tests.kit.waiting import GIVE_UP, until

pytestmark = pytest.mark.enable_socket

ASK = b"GET /quick HTTP/1.1\r\nHost: kites\r\n\r\n"


@dataclass
class Kites:
    """An application that answers at once, except for one address: there it waits for a sign."""

    asked: Event = field(default_factory=Event)
    may_answer: asyncio.Event = field(default_factory=asyncio.Event)

    async def __call__(self, scope: Scope, _receive: Receive, send: Send) -> None:
        """Answer."""
        if scope["path"] == "/slow":
            self.asked.set()
            await self.may_answer.wait()
        if scope["path"] == "/fly":
            self.may_answer.set()
        await send({"type": "http.response.start", "status": 200, "headers": [(b"content-length", b"4")]})
        await send({"type": "http.response.body", "body": b"kite"})


@dataclass
class Door:
    """A server, and the connections to it."""

    port: int
    app: Kites
    stack: ExitStack

    def connected(self, sent: bytes = b"") -> socket:
        """Open a connection and send something."""
        made = self.stack.enter_context(create_connection(("127.0.0.1", self.port), timeout=GIVE_UP))
        made.sendall(sent)
        return made


@pytest.fixture
def door() -> Iterator[Door]:
    """A server of its own."""
    app = Kites()
    taken = listening("127.0.0.1", 0)
    port = taken.getsockname()[1]
    with running(app, taken), ExitStack() as stack:
        yield Door(port, app, stack)


def rest(connection: socket) -> bytes:
    """Return all that comes until the other side closes; a connection that is broken off has ended too."""
    found = b""
    try:
        while piece := connection.recv(65536):
            found += piece
    except ConnectionError:
        pass
    return found


def is_over(connection: socket) -> bool:
    """Send one byte more, and say whether the other side has closed."""
    try:
        connection.sendall(b"k")
    except ConnectionError:
        return True
    return False


def answer(connection: socket) -> bytes:
    """Return one answer of the application; the connection stays open."""
    found = b""
    while not found.endswith(b"kite"):
        piece = connection.recv(65536)
        assert piece, found
        found += piece
    return found


@pytest.mark.parametrize("sent", [b"", b"GET", b"GET /quick HTTP/1.1\r\nHost: kites\r\nX-Kite: "])
def test_who_does_not_end_the_head_of_a_request_is_not_waited_for(
    door: Door, monkeypatch: pytest.MonkeyPatch, sent: bytes
) -> None:
    """Nothing at all, a word, a head without its end: the connection is closed without an answer."""
    monkeypatch.setattr(Connection, "head_seconds", 0.1)
    assert rest(door.connected(sent)) == b""


def test_the_second_request_has_its_time_too(door: Door, monkeypatch: pytest.MonkeyPatch) -> None:
    """After an answer the first byte of the next request begins it, and what drips does not prolong it."""
    connection = door.connected(ASK)
    answer(connection)
    monkeypatch.setattr(Connection, "head_seconds", 0.1)
    connection.sendall(b"GET /quick HTTP/1.1\r\nX-Kite: ")
    until(lambda: is_over(connection))


def test_a_body_that_nobody_reads_is_not_waited_for(door: Door, monkeypatch: pytest.MonkeyPatch) -> None:
    """An answer before the body has come leaves little time for its rest, however it drips."""
    monkeypatch.setattr(Connection, "rest_seconds", 0.1)
    connection = door.connected(b"POST /quick HTTP/1.1\r\nHost: kites\r\nContent-Length: 999999999\r\n\r\n")
    answer(connection)
    until(lambda: is_over(connection))


@pytest.mark.parametrize("limit", ["most_each", "most"])
def test_many_that_say_nothing_keep_nobody_out(
    door: Door, monkeypatch: pytest.MonkeyPatch, limit: str
) -> None:
    """The one that was quiet for the longest time gives way, and not one whose answer is being made."""
    monkeypatch.setattr(Connection, limit, 4)
    slow = door.connected(b"GET /slow HTTP/1.1\r\nHost: kites\r\n\r\n")
    assert door.app.asked.wait(GIVE_UP)
    talks = door.connected(ASK)
    answer(talks)
    quiet = [door.connected() for _ in range(6)]
    assert [rest(one) for one in quiet[:3]] == [b""] * 3
    for _ in range(9):
        assert answer(door.connected(ASK)).startswith(b"HTTP/1.1 200 ")
    assert [rest(one) for one in quiet] == [b""] * 6
    assert answer(door.connected(ASK.replace(b"/quick", b"/fly")))
    assert answer(slow).startswith(b"HTTP/1.1 200 ")


def test_hundreds_that_say_nothing_keep_nobody_out(tmp_path: Path) -> None:
    """With our own limits, on the door itself: nobody is told to come back later."""
    with served(tmp_path) as made, ExitStack() as stack:
        port = made.access.port
        for _ in range(250):
            stack.enter_context(create_connection(("127.0.0.1", port), timeout=GIVE_UP))
        asks = stack.enter_context(create_connection(("127.0.0.1", port), timeout=GIVE_UP))
        asks.sendall(f"GET /sign-in HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nConnection: close\r\n\r\n".encode())
        assert rest(asks).startswith(b"HTTP/1.1 404 ")


@pytest.mark.parametrize(
    "way", ["Transfer-Encoding: chunked\r\nContent-Length: 5", "Transfer-Encoding: chunked"]
)
def test_a_form_of_unclear_length_ends_its_connection(tmp_path: Path, way: str) -> None:
    """What follows it is taken for no request of its own."""
    with served(tmp_path) as made:
        port = made.access.port
        cookie = f"{made.access.cookie}={made.access.sessions.begun()}"
        head = f"POST /welcome HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nCookie: {cookie}\r\n{way}\r\n\r\n"
        smuggled = f"GET / HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\n\r\n"
        with create_connection(("127.0.0.1", port), timeout=GIVE_UP) as asks:
            asks.sendall(f"{head}0\r\n\r\n{smuggled}".encode())
            came = rest(asks)
    assert came.startswith(b"HTTP/1.1 400 " if "Length" in way else b"HTTP/1.1 411 ")
    assert came.count(b"HTTP/1.1") == 1
    assert b"connection: close" in came.lower()
