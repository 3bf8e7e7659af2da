"""Background jobs: a job runs on in its own thread when its page is left, and any page can show it."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from dataclasses import dataclass, field
from secrets import token_urlsafe
from threading import Event, Lock, Timer
from time import monotonic

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import OnewholeError

#: The most jobs that run at once, and the most ended ones that are remembered.
MAX_RUNNING, MAX_REMEMBERED = 2, 40
#: Delay in seconds before a prefetch starts.
PREFETCH_DELAY = 0.3
#: Seconds without anything new after which what follows from it is worked out ahead.
QUIET = 2.5

Progress = Callable[[int, int], None]


class Stopped(OnewholeError, RuntimeError):
    """The program is closing: a job ends at its next step."""


class Draft(Struct, frozen=True):
    """A page that a job composed and that is not saved: its text, notes on it, and its recipe."""

    typed: str
    told: tuple[str, ...] = ()
    recipe: str = ""


class Job(Struct, frozen=True):
    """The state of a job: ``done`` of ``of`` steps (0 of 0: unknown yet); ended when ``goes`` or ``refused``.

    ``back`` is the page it was asked for on, ``goes`` the address of what it made, ``said`` a sentence on it,
    ``told`` what else there is to know,
    ``began`` the second of the jobs' clock at which it started (None: it waits for other jobs to end).
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
    told: tuple[str, ...] = ()

    @property
    def ended(self) -> bool:
        """Say whether the job is over."""
        return bool(self.goes or self.refused)


class Outcome(Struct, frozen=True):
    """Where what was made can be looked at, a sentence on it, and what else is ``told`` of it.

    The page at ``goes`` shows a ``draft`` or what is told: its address gets ``?made=`` and the job's name.
    """

    goes: str
    said: str = "Done."
    draft: Draft | None = None
    told: tuple[str, ...] = ()


@dataclass(slots=True)
class Jobs:
    """All jobs of the running server."""

    _pool: ThreadPoolExecutor = field(
        default_factory=lambda: ThreadPoolExecutor(MAX_RUNNING, thread_name_prefix="work")
    )
    _jobs: dict[str, Job] = field(default_factory=dict)
    _turn: Lock = field(default_factory=Lock)
    _closing: Event = field(default_factory=Event)
    _prefetching: set[str] = field(default_factory=set)
    _waiting: dict[str, Timer] = field(default_factory=dict)
    _quiet: float = QUIET
    _clock: Callable[[], float] = monotonic

    def start(self, title: str, back: str, run: Callable[[Progress], Outcome], *, again: bool = False) -> Job:
        """Start a job; with ``again`` also where one with the same title and page is running already."""
        with self._turn:
            for under_way in () if again else self._jobs.values():
                if (under_way.title, under_way.back) == (title, back) and not under_way.ended:
                    return under_way
            job = Job(token_urlsafe(9), title, back)
            self._jobs[job.name] = job
            ended = [name for name, one in self._jobs.items() if one.ended]
            for name in ended[: max(0, len(ended) - MAX_REMEMBERED)]:
                del self._jobs[name]
        self._pool.submit(self._do, job.name, run)
        return job

    def prefetch(self, what: str, run: Callable[[], object]) -> None:
        """Compute in another thread what is likely to be needed next, unless that is running already.

        Errors are ignored here: they show when the page itself is loaded.
        """
        with self._turn:
            if what in self._prefetching or self._closing.is_set():
                return
            self._prefetching.add(what)
        self._pool.submit(self._prefetch, what, run)

    def prefetch_when_quiet(self, what: str, run: Callable[[], object]) -> None:
        """Compute the same way what is likely to be needed, once it was not asked for anew for a while."""
        with self._turn:
            if self._closing.is_set():
                return
            if waiting := self._waiting.pop(what, None):
                waiting.cancel()
            self._waiting[what] = timer = Timer(self._quiet, self._is_quiet, (what, run))
            timer.daemon = True
            timer.start()

    def _is_quiet(self, what: str, run: Callable[[], object]) -> None:
        with self._turn:
            self._waiting.pop(what, None)
        with suppress(RuntimeError):  # the program is closing
            self._pool.submit(self._prefetch, what, run)

    def _prefetch(self, what: str, run: Callable[[], object]) -> None:
        try:
            if not self._closing.wait(PREFETCH_DELAY):  # the page that is loading now comes first
                with suppress(Exception):
                    run()
        finally:
            with self._turn:
                self._prefetching.discard(what)

    def __getitem__(self, name: str) -> Job:
        """Return the state of a job. Raises KeyError."""
        return self._jobs[name]

    def seconds(self, job: Job) -> int | None:
        """Return for how many whole seconds a job has run; None while it waits for its turn."""
        return None if job.began is None else int(self._clock() - job.began)

    def under_way(self, back: str = "") -> tuple[Job, ...]:
        """Return the jobs that have not ended, or those of one page."""
        return tuple(
            one for one in tuple(self._jobs.values()) if not one.ended and (not back or one.back == back)
        )

    def goes_on(self, back: str) -> bool:
        """Say whether a job is under way for a page whose address begins so."""
        return any(one.back.startswith(back) for one in self.under_way())

    def forget(self, back: str) -> None:
        """Forget the ended jobs of the pages whose addresses begin so."""
        with self._turn:
            for name in [one.name for one in self._jobs.values() if one.ended and one.back.startswith(back)]:
                del self._jobs[name]

    def close(self) -> None:
        """Let every job end at its next step, and wait for it."""
        self._closing.set()
        with self._turn:
            for timer in self._waiting.values():
                timer.cancel()
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
            goes = f"{outcome.goes}?made={name}" if outcome.draft or outcome.told else outcome.goes
            self._put(name, goes=goes, said=outcome.said, draft=outcome.draft, told=outcome.told)

    def _put(self, name: str, **changes: float | str | Draft | tuple[str, ...] | None) -> None:
        with self._turn:
            if name in self._jobs:
                self._jobs[name] = replace(self._jobs[name], **changes)
