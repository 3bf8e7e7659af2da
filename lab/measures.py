"""What many trials show: how often the truth is named, how often an idea is wrongly given, calibration."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from math import sqrt

from lab.pupils import Kind
from lab.trials import NONE, Trial

#: Sets with at least these odds are what a teacher is shown beside the likeliest.
SHOWN = 0.05
#: Two findings on different problems are the least that can show an idea; three are a fair chance.
FAIR = 3
BINS = 10
SURE = 1.96


@dataclass(frozen=True, slots=True)
class Share:
    """So many of so many."""

    hits: int
    of: int

    @property
    def value(self) -> float:
        """Return the share; 0 of none."""
        return self.hits / self.of if self.of else 0.0

    @property
    def between(self) -> tuple[float, float]:
        """Return the 95 % interval of Wilson (1927): what the true share may be.

        >>> [round(end, 3) for end in Share(0, 100).between]
        [0.0, 0.037]
        """
        if not self.of:
            return 0.0, 1.0
        square = SURE * SURE
        middle = (self.hits + square / 2) / (self.of + square)
        wide = SURE * sqrt(self.hits * (self.of - self.hits) / self.of + square / 4) / (self.of + square)
        return max(0.0, middle - wide), min(1.0, middle + wide)


def share(trials: Iterable[Trial], holds: Callable[[Trial], bool]) -> Share:
    """Count how many trials something holds for."""
    found = [holds(one) for one in trials]
    return Share(sum(found), len(found))


def named_first(one: Trial) -> bool:
    """Say whether the truth is what is said first: as the best set, or as one it cannot be told from."""
    return one.named and one.together >= one.none


def shown(one: Trial) -> bool:
    """Say whether the truth is among the sets that a teacher is shown."""
    return one.named or any(ideas == one.truth and odds >= SHOWN for ideas, odds in one.odds)


def wrongly_given(trials: Iterable[Trial]) -> Share:
    """Count the pupils without a steady idea who are said to fit one."""
    return share([one for one in trials if not one.truth], lambda one: one.likely)


def other_named(trials: Iterable[Trial]) -> Share:
    """Count the pupils with a steady idea who are said to fit others that they have not."""
    return share([one for one in trials if one.truth], lambda one: one.likely and not one.holds)


@dataclass(frozen=True, slots=True)
class Said:
    """One statement with its odds, and whether it was true."""

    odds: float
    true: bool


def first_said(trials: Iterable[Trial]) -> list[Said]:
    """Return what is said first of each pupil: no steady idea, one of the sets that fit best, or one not
    listed.
    """
    return [_first(one) for one in trials]


def _first(one: Trial) -> Said:
    outside = one.kind is Kind.OUTSIDE
    if one.unlisted > max(one.none, one.together):
        return Said(one.unlisted, outside)
    if one.none > one.together:
        return Said(one.none, one.truth == NONE and not outside)
    return Said(one.together, one.holds)


def ideas_said(trials: Iterable[Trial], least: float = SHOWN) -> list[Said]:
    """Return what is said about ideas alone, from some odds on: the harder half of the same statements."""
    return [Said(one.together, one.holds) for one in trials if one.together >= least]


@dataclass(frozen=True, slots=True)
class Bin:
    """Statements with nearly the same odds: how many, their mean odds, the share that was true."""

    low: float
    count: int
    said: float
    true: float


def reliability(said: Sequence[Said], bins: int = BINS) -> tuple[Bin, ...]:
    """Sort statements into bins of equal width by their odds; empty ones are left out.

    >>> reliability([Said(0.75, True), Said(0.78, False)])
    (Bin(low=0.7, count=2, said=0.765, true=0.5),)
    """
    found = []
    for at in range(bins):
        here = [one for one in said if min(bins - 1, int(one.odds * bins)) == at]
        if here:
            mean = sum(one.odds for one in here) / len(here)
            found.append(Bin(at / bins, len(here), mean, sum(one.true for one in here) / len(here)))
    return tuple(found)


def calibration_error(said: Sequence[Said]) -> float:
    """Return the expected calibration error: the mean gap between odds said and share true, bin by bin.

    >>> calibration_error([Said(0.9, True)] * 9 + [Said(0.9, False)]) < 1e-9
    True
    """
    return sum(one.count * abs(one.said - one.true) for one in reliability(said)) / max(1, len(said))
