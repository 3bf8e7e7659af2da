"""Many invented classes write pages, worked by both cores: the trials of one condition."""

from collections.abc import Iterable, Sequence
from concurrent.futures import Executor
from dataclasses import dataclass
from functools import partial

from lab.pupils import school_class
from lab.rates import USUAL, Rates
from lab.trials import Trial, problems, trials

CLASS = 25
Typed = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Night:
    """So many invented classes, each with one of the pages in turn; the seed tells which classes."""

    pages: tuple[Typed, ...]
    classes: int
    rates: Rates = USUAL
    seed: str = "lab"


def seen(night: Night, which: int) -> tuple[Trial, ...]:
    """Let one class of a night write its page, and diagnose it."""
    seed = f"{night.seed} {which}"
    page = problems(night.pages[which % len(night.pages)])
    return trials(school_class(night.rates, CLASS, seed), page, seed)


def all_seen(night: Night, pool: Executor | None = None) -> tuple[Trial, ...]:
    """Return the trials of every class of a night, in order; the same with any number of processes."""
    work = partial(seen, night)
    found: Iterable[Sequence[Trial]] = (pool.map if pool else map)(work, range(night.classes))
    return tuple(trial for one in found for trial in one)
