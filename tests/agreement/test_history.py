"""Two roads to a pupil's history: the filter, night after night, and the sum over every path there can be."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from fractions import Fraction

import pytest

from onewhole.marking.diagnosis.chances import MILLION
from onewhole.marking.diagnosis.history import IDEA_STAYS, OTHER_STAYS, History, Named, forecast
from onewhole.marking.diagnosis.hypothesis import NO_PATTERN, Hypothesis, Reliability
from onewhole.marking.diagnosis.prior import key_of

DAY = date(2026, 11, 24)
A01, A10, B03 = (Hypothesis(Reliability.SOUND, (key,)) for key in ("A01", "A10", "B03"))
BOTH = Hypothesis(Reliability.SOUND, ("A10", "A01"))


@dataclass(frozen=True, slots=True)
class _Night:
    """What a page can show, what the class gives each of it, how likely the answers are; days since."""

    ways: tuple[Hypothesis, ...]
    base: tuple[int, ...]
    likely: tuple[int, ...]
    days: int = 1


TAKING = _Night((*NO_PATTERN, A01, A10, BOTH), (50, 20, 13, 9, 5, 1), (3, 5, 8, 900, 40, 700))
ADDING = _Night((*NO_PATTERN, B03), (60, 15, 12, 7), (2, 9, 11, 400), days=3)
EITHER = _Night((*NO_PATTERN, A01, A10, B03), (40, 20, 20, 9, 8, 7), (70, 30, 20, 4, 9, 2), days=2)

Path = tuple[str, Fraction]


def _once(daily: int, days: int) -> Fraction:
    """How often something stays, as it is told: rounded down to millionths day by day."""
    left = MILLION
    for _ in range(days):
        left = left * daily // MILLION
    return Fraction(left, MILLION)


def _named(hidden: Sequence[str], shown: Hypothesis) -> str:
    if len(hidden) + len(shown.patterns) > 2:
        return key_of(shown)
    return " ".join(sorted({*hidden, *shown.patterns})) if hidden or shown.patterns else key_of(shown)


def _from_class(night: _Night) -> Iterator[tuple[int, Fraction]]:
    for at, share in enumerate(night.base):
        yield at, Fraction(share, sum(night.base))


def _moves(name: str, night: _Night) -> Iterator[tuple[str, int, Fraction]]:
    """Every way from a named set to tonight's: its name then, which hypothesis shows, how often."""
    idea, other = _once(IDEA_STAYS, night.days), _once(OTHER_STAYS, night.days)
    keys = [key_of(one) for one in night.ways]
    showing = {key for one in night.ways for key in one.patterns}
    seen = [key for key in name.split() if key in showing]
    splits: list[tuple[tuple[str, ...], str]]
    if name in keys:
        splits = [((), name)]
    elif len(seen) == 2:
        splits = [((seen[0],), seen[1]), ((seen[1],), seen[0])]
    else:
        splits = [(tuple(key for key in name.split() if key not in seen), seen[0] if seen else "sound")]
    for hidden, shown in splits:
        stays = idea if shown in showing or " " in shown else other
        for kept, often in ((hidden, idea), ((), 1 - idea)) if hidden else (((), Fraction(1)),):
            share = Fraction(1, len(splits)) * often
            at = keys.index(shown)
            yield _named(kept, night.ways[at]), at, share * stays
            for place, drawn in _from_class(night):
                yield _named(kept, night.ways[place]), place, share * (1 - stays) * drawn


def _paths(start: Mapping[str, Fraction], nights: Sequence[_Night]) -> Iterator[Path]:
    """Every path from a set through all nights, with its weight: where it ends."""
    if not nights:
        yield from start.items()
        return
    *before, last = nights
    for name, weight in _paths(start, before):
        moves = (
            _moves(name, last)
            if name
            else ((_named((), last.ways[at]), at, p) for at, p in _from_class(last))
        )
        for ends, at, often in moves:
            yield ends, weight * often * last.likely[at]


def _by_paths(start: Mapping[str, Fraction], nights: Sequence[_Night]) -> dict[str, Fraction]:
    found: dict[str, Fraction] = {}
    for name, weight in _paths(start, nights):
        found[name] = found.get(name, Fraction(0)) + weight
    whole = sum(found.values())
    return {name: weight / whole for name, weight in found.items()}


def _by_filter(history: History, nights: Sequence[_Night]) -> dict[str, Fraction]:
    for night in nights:
        on = history.on + timedelta(days=night.days)
        history = forecast(history, Named.of(night.ways), night.base, on).after(night.likely)
    return {name: Fraction(share, history.whole) for name, share in history.shares.items()}


@pytest.mark.parametrize(
    "nights",
    [
        (TAKING,),
        (TAKING, TAKING),
        (TAKING, ADDING),
        (TAKING, ADDING, TAKING),
        (TAKING, EITHER, ADDING),
        (ADDING, TAKING, ADDING),
    ],
)
@pytest.mark.parametrize(
    "start",
    [
        {},
        {"A01": 900_000, "sound": 60_000},
        {"A01 A10": 500_000, "A01 B03": 300_000, "scattered": 200_000},
    ],
)
def test_the_filter_is_the_sum_over_all_paths(nights: tuple[_Night, ...], start: Mapping[str, int]) -> None:
    """Equal as fractions, with ideas that a page hides and with days between."""
    named = {name: Fraction(share, MILLION) for name, share in start.items()}
    by_paths = _by_paths(named | {"": 1 - sum(named.values(), Fraction(0))}, nights)
    by_filter = _by_filter(History(DAY, start), nights)
    assert by_filter == by_paths
    assert sum(by_filter.values()) == 1


def test_before_the_answers_the_shares_are_those_of_all_paths() -> None:
    """What tonight's hypotheses get is how often every path leads there."""
    start = {"A01 B03": 700_000, "shaky": 250_000}
    priors = forecast(
        History(DAY, start), Named.of(TAKING.ways), TAKING.base, DAY + timedelta(days=1)
    ).priors()
    found = [Fraction(0)] * len(priors)
    for name, share in start.items():
        for _, at, often in _moves(name, TAKING):
            found[at] += Fraction(share, MILLION) * often
    for at, often in _from_class(TAKING):
        found[at] += Fraction(50_000, MILLION) * often
    assert [Fraction(one, sum(priors)) for one in priors] == found
