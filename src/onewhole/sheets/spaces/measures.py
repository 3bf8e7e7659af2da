"""Measures in two units: 4.MD.A.2 (CCSSM 2010)."""

from collections.abc import Iterator

from onewhole.number.ladder import measure
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

#: Pairs of units that are worked in together, the larger first.
PAIRS = (
    ("ft", "in"),
    ("yd", "ft"),
    ("lb", "oz"),
    ("gal", "qt"),
    ("h", "min"),
    ("min", "s"),
    ("wk", "d"),
    ("km", "m"),
    ("m", "cm"),
    ("kg", "g"),
    ("L", "mL"),
)
#: Counts of a smaller unit go in steps where so many fill a larger one: minutes in fives, meters in fifties.
STEPS = ((1000, 50), (60, 5), (1, 1))


def taken(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield differences, a form a pair of units, some from larger units only, some in three units."""
    yield from _forms("-", wishes)
    yield _three("-", wishes)
    for large, small in PAIRS:
        yield ProblemForm(
            f"{{0}} {large} - {{1}} {large} {{2}} {small}",
            (_counts(wishes), _counts(wishes), _smaller(large, small)),
        )


def added(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield sums, a form a pair of units, and some with yards, feet and inches."""
    yield from _forms("+", wishes)
    yield _three("+", wishes)


def _forms(sign: str, wishes: Wishes) -> Iterator[ProblemForm]:
    for large, small in PAIRS:
        counts, smaller = _counts(wishes), _smaller(large, small)
        yield ProblemForm(
            f"{{0}} {large} {{1}} {small} {sign} {{2}} {large} {{3}} {small}",
            (counts, smaller, counts, smaller),
        )


def conversions(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield measures to be written in the smaller unit: 4.MD.A.1 (CCSSM 2010)."""
    for large, small in PAIRS:
        counts, smaller = _counts(wishes), _smaller(large, small)
        yield ProblemForm(f"{{0}} {large} = ? {small}", (counts,))
        yield ProblemForm(f"{{0}} {large} {{1}} {small} = ? {small}", (counts, smaller))


def clock_times(_: Wishes) -> Iterator[ProblemForm]:
    """Yield how long it is from one clock time to another, and what time it is later and earlier."""
    hours, minutes = range(1, 12), [f"{at:02}" for at in range(5, 60, 5)]
    long, short = range(1, 4), range(5, 60, 5)
    yield ProblemForm("{0}:{1} to {2}:{3}", (hours, minutes, hours, minutes))
    yield ProblemForm("{0}:{1} + {2} h {3} min", (hours, minutes, long, short))
    yield ProblemForm("{0}:{1} - {2} min", (hours, minutes, short))


def money(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield sums and differences of dollars and cents, and change from whole dollars."""
    dollars, cents = _counts(wishes), [f"{at:02}" for at in range(5, 100, 5)]
    for sign in ("+", "-"):
        yield ProblemForm(f"${{0}}.{{1}} {sign} ${{2}}.{{3}}", (dollars, cents, dollars, cents))
    yield ProblemForm("${0} - ${1}.{2}", (range(2, 21), dollars, cents))


def _three(sign: str, wishes: Wishes) -> ProblemForm:
    side = (_counts(wishes), range(3), range(12))
    return ProblemForm(f"{{0}} yd {{1}} ft {{2}} in {sign} {{3}} yd {{4}} ft {{5}} in", (*side, *side))


def _counts(wishes: Wishes) -> range:
    return range(1, wishes.largest + 1)


def _smaller(large: str, small: str) -> range:
    """Return the counts of the smaller unit that fill no larger one, in steps where there are many."""
    (ratio,) = measure(large, small).ratios
    step = next(step for least, step in STEPS if ratio >= least)
    return range(step, ratio, step)
