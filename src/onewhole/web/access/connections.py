"""Connections to the door: each has little time to ask, and those that say nothing give way to those that do.

uvicorn closes a connection that is idle after an answer. It has no time for the first request, for the rest
of one, or for a body that nobody reads any more, and it refuses everybody when there are too many.
"""

import asyncio
from typing import ClassVar, Final

import h11
from uvicorn.protocols.http.h11_impl import H11Protocol, RequestResponseCycle

#: Seconds from the first byte of a request, or from the connection on, to the end of its head.
HEAD_SECONDS: Final = 10
#: Seconds for what is left of a body that was refused before it was read.
REST_SECONDS: Final = 5
#: The most connections from one address, and of all together. The next one closes the one that said nothing
#: for the longest time; one whose answer is being made is never closed.
MOST_EACH: Final = 48
MOST: Final = 160


class Connection(H11Protocol):
    """A connection of uvicorn's that ends when it takes too long to ask, or when others need its place.

    The body of a form has its own time (:func:`onewhole.web.http.forms.read_form`).
    """

    head_seconds: ClassVar[float] = HEAD_SECONDS
    rest_seconds: ClassVar[float] = REST_SECONDS
    most_each: ClassVar[int] = MOST_EACH
    most: ClassVar[int] = MOST

    _late: asyncio.TimerHandle | None = None
    _heard: float = 0

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        """Begin to wait for a request; make room where there are too many connections."""
        super().connection_made(transport)
        self._heard = self.loop.time()
        self._end_in(self.head_seconds)
        everybody = [one for one in self.connections if isinstance(one, Connection)]
        same = [one for one in everybody if one.client and self.client and one.client[0] == self.client[0]]
        for group, most in ((same, self.most_each), (everybody, self.most)):
            if len(group) > most:
                quiet = [one for one in group if one is not self and not one.is_at_work]
                min(quiet, key=lambda one: one._heard, default=self).end()  # noqa: SLF001 - one of its own kind

    def connection_lost(self, exc: Exception | None) -> None:
        """Wait for nothing any more."""
        self._wait_no_longer()
        super().connection_lost(exc)

    def data_received(self, data: bytes) -> None:
        """Take bytes in; the first of a request begin its time."""
        self._heard = self.loop.time()
        request = self._request()
        if self._late is None and (request is None or request.response_complete):
            self._end_in(self.head_seconds)
        super().data_received(data)

    def handle_events(self) -> None:
        """Handle what came in; a request whose head is whole has no more to hurry."""
        before = self._request()
        super().handle_events()
        if self._request() is not before:
            self._wait_no_longer()

    def on_response_complete(self) -> None:
        """Begin the short time for the next request, or for the rest of a body that nobody reads."""
        self._heard = self.loop.time()
        super().on_response_complete()
        self._end_if_unread()

    @property
    def is_at_work(self) -> bool:
        """Say whether an answer is being made, so that nothing is waited for from the other side."""
        cycle = self._request()
        return not (cycle is None or cycle.response_complete or cycle.more_body or self.flow.write_paused)

    def end(self) -> None:
        """Close the connection, whatever it is at; from now on it is not counted."""
        self.connections.discard(self)
        if not self.transport.is_closing():
            self.transport.abort()

    def _request(self) -> RequestResponseCycle | None:
        """Return the request that came last; None before the first, which the type of uvicorn leaves out."""
        return self.cycle

    def _end_if_unread(self) -> None:
        if self.cycle.response_complete and self.conn.their_state is h11.SEND_BODY and self._late is None:
            self._end_in(self.rest_seconds)

    def _end_in(self, seconds: float) -> None:
        self._late = self.loop.call_later(seconds, self.end)

    def _wait_no_longer(self) -> None:
        if self._late is not None:
            self._late.cancel()
            self._late = None
