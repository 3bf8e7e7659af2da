"""Long work: goes on in its own thread when its page is left, and can be looked at from any page."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from dataclasses import dataclass, field, replace
from secrets import token_urlsafe
from threading import Event, Lock
from time import monotonic

from onewhole.errors import OnewholeError

#: So many works go on at once, and so many ended ones are remembered.
AT_ONCE, REMEMBERED = 2, 40
#: What is made ready meanwhile waits so many seconds.
BREATH = 0.3

Progress = Callable[[int, int], None]


class Stopped(OnewholeError, RuntimeError):
    """The program is closing: work ends at its next step."""


@dataclass(frozen=True, slots=True)
class Draft:
    """A page that work has typed and that is kept nowhere: what was told about it, and its recipe."""

    typed: str
    told: tuple[str, ...] = ()
    recipe: str = ""


@dataclass(frozen=True, slots=True)
class Work:
    """Work as it stands: ``done`` of ``of`` steps (0 of 0: not told yet); ended with ``goes`` or ``refused``.

    ``back`` is the page it was asked for on, ``goes`` the address of what it made, ``said`` a sentence on it,
    ``began`` the second of the works' clock at which its turn came (None: it waits for other work to end).
    """

    name: str
    title: str
    back: str
    done: int = 0
    of: int = 0
    goes: str = ""
    said: str = ""
    refused: str = ""
    began: float | None = None
    draft: Draft | None = None

    @property
    def ended(self) -> bool:
        """Say whether the work is over."""
        return bool(self.goes or self.refused)


@dataclass(frozen=True, slots=True)
class Outcome:
    """Where what was made can be looked at, and a sentence on it.

    The page at ``goes`` takes up a ``draft``: it is asked with ``?made=`` and the name of the work.
    """

    goes: str
    said: str = "Done."
    draft: Draft | None = None


@dataclass(slots=True)
class Works:
    """All works of a running door."""

    _pool: ThreadPoolExecutor = field(
        default_factory=lambda: ThreadPoolExecutor(AT_ONCE, thread_name_prefix="work")
    )
    _works: dict[str, Work] = field(default_factory=dict)
    _turn: Lock = field(default_factory=Lock)
    _closing: Event = field(default_factory=Event)
    _readying: set[str] = field(default_factory=set)
    _clock: Callable[[], float] = monotonic

    def start(
        self, title: str, back: str, run: Callable[[Progress], Outcome], *, again: bool = False
    ) -> Work:
        """Start work; one under way with the same title and page is not started ``again`` unless told so."""
        with self._turn:
            for under_way in () if again else self._works.values():
                if (under_way.title, under_way.back) == (title, back) and not under_way.ended:
                    return under_way
            work = Work(token_urlsafe(9), title, back)
            self._works[work.name] = work
            ended = [name for name, one in self._works.items() if one.ended]
            for name in ended[: max(0, len(ended) - REMEMBERED)]:
                del self._works[name]
        self._pool.submit(self._do, work.name, run)
        return work

    def meanwhile(self, what: str, run: Callable[[], object]) -> None:
        """Make ready what is likely to be asked for next, in its own thread, unless that is going on already.

        Nobody is told: whatever is wrong with it is told when it is asked for.
        """
        with self._turn:
            if what in self._readying or self._closing.is_set():
                return
            self._readying.add(what)
        self._pool.submit(self._make_ready, what, run)

    def readying(self) -> frozenset[str]:
        """Return what is being made ready."""
        with self._turn:
            return frozenset(self._readying)

    def _make_ready(self, what: str, run: Callable[[], object]) -> None:
        try:
            if not self._closing.wait(BREATH):  # the page that is being shown comes first
                with suppress(Exception):
                    run()
        finally:
            with self._turn:
                self._readying.discard(what)

    def __getitem__(self, name: str) -> Work:
        """Return work as it stands. Raises KeyError."""
        return self._works[name]

    def seconds(self, work: Work) -> int | None:
        """Return for how many whole seconds work goes on; None while it waits for its turn."""
        return None if work.began is None else int(self._clock() - work.began)

    def under_way(self, back: str = "") -> tuple[Work, ...]:
        """Return the works that have not ended, or those of one page."""
        return tuple(
            one for one in tuple(self._works.values()) if not one.ended and (not back or one.back == back)
        )

    def close(self) -> None:
        """Let work end at its next step, and wait for it."""
        self._closing.set()
        self._pool.shutdown(cancel_futures=True)

    def _do(self, name: str, run: Callable[[Progress], Outcome]) -> None:
        def progress(done: int, of: int) -> None:
            if self._closing.is_set():
                raise Stopped("The program is closing", remedy="Start it again.")
            self._put(name, done=done, of=of)

        self._put(name, began=self._clock())
        try:
            outcome = run(progress)
        except OnewholeError as refused:
            self._put(name, refused=str(refused))
        except Exception as fault:  # noqa: BLE001 - a thread's fault is told on the page and not lost
            self._put(name, refused=f"This is a fault of the program ({type(fault).__name__}).")
        else:
            goes = f"{outcome.goes}?made={name}" if outcome.draft else outcome.goes
            self._put(name, goes=goes, said=outcome.said, draft=outcome.draft)

    def _put(self, name: str, **changes: float | str | Draft | None) -> None:
        with self._turn:
            if name in self._works:
                self._works[name] = replace(self._works[name], **changes)  # type: ignore[arg-type]
