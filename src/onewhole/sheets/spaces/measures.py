"""Measures in one, two and three units, clock times and money: 4.MD.A.1, 4.MD.A.2 (CCSSM 2010)."""

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
    """Yield differences, three forms a pair of units, one from larger units only; some in three units."""
    yield from _forms("-", wishes)
    yield _three("-", wishes)
    for large, small in PAIRS:
        yield ProblemForm(
            f"{{0}} {large} - {{1}} {large} {{2}} {small}",
            (_counts(wishes), _counts(wishes), _smaller(large, small)),
        )


def added(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield sums, two forms a pair of units, and some with yards, feet and inches."""
    yield from _forms("+", wishes)
    yield _three("+", wishes)


def _forms(sign: str, wishes: Wishes) -> Iterator[ProblemForm]:
    for large, small in PAIRS:
        counts, smaller = _counts(wishes), _smaller(large, small)
        yield ProblemForm(
            f"{{0}} {large} {{1}} {small} {sign} {{2}} {large} {{3}} {small}",
            (counts, smaller, counts, smaller),
        )
        yield ProblemForm(f"{{0}} {large} {{1}} {small} {sign} {{2}} {small}", (counts, smaller, smaller))


def conversions(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield measures to be written in the smaller unit, in both, and as is usual: 4.MD.A.1 (CCSSM 2010)."""
    for large, small in PAIRS:
        counts, smaller = _counts(wishes), _smaller(large, small)
        yield ProblemForm(f"{{0}} {large} = ? {small}", (counts,))
        yield ProblemForm(f"{{0}} {large} {{1}} {small} = ? {small}", (counts, smaller))
        many = _more_than_one(wishes, large, small)
        yield ProblemForm(f"{{0}} {small} = ? {large} ? {small}", (many,))
        yield ProblemForm(f"{{0}} {small}", (many,))


def parts_of_measures(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield fractions of measures that come out even in the smaller unit: 5.NF.B.4.a and B.6 (CCSSM 2010)."""
    for large, small in PAIRS:
        ratio = measure(large, small).ratios[0]
        for parts in (one for one in wishes.denominators if not ratio % one):
            fractions = tuple(f"{top}/{parts}" for top in range(1, parts))
            even = tuple(count for count in _smaller(large, small) if not count % parts)
            yield ProblemForm(f"{{0}} x {{1}} {large}", (fractions, range(1, 6)))
            yield ProblemForm(f"{{0}} {{1}} x {{2}} {large}", (range(1, 3), fractions, range(1, 6)))
            if even:
                yield ProblemForm(f"{{0}} x {{1}} {large} {{2}} {small}", (fractions, range(1, 6), even))


def parts_of_money(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield fractions of dollars that come out even: 5.NF.B.4.a (CCSSM 2010)."""
    for parts in wishes.denominators:
        fractions = tuple(f"{top}/{parts}" for top in range(1, parts))
        prices = tuple(parts * share for share in range(2, 10))
        yield ProblemForm("{0} x ${1}", (fractions, prices))
        yield ProblemForm("{0} {1} x ${2}", (range(1, 3), fractions, prices))


def clock_times(_: Wishes) -> Iterator[ProblemForm]:
    """Yield how long it is between two clock times, over noon too, and what time is later and earlier."""
    hours, minutes = range(1, 12), [f"{at:02}" for at in range(0, 60, 5)]
    long, short = range(1, 4), range(5, 60, 5)
    yield ProblemForm("{0}:{1} to {2}:{3}", (hours, minutes, hours, minutes))
    morning, afternoon = range(8, 12), range(1, 5)
    yield ProblemForm("{0}:{1} a.m. to {2}:{3} p.m.", (morning, minutes, afternoon, minutes))
    yield ProblemForm("{0}:{1} + {2} h {3} min", (hours, minutes, long, short))
    yield ProblemForm("{0}:{1} - {2} min", (hours, minutes, short))


def money(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield sums and differences of dollars and cents, change from whole dollars, and cents alone."""
    dollars, cents = _counts(wishes), [f"{at:02}" for at in range(5, 100, 5)]
    for sign in ("+", "-"):
        yield ProblemForm(f"${{0}}.{{1}} {sign} ${{2}}.{{3}}", (dollars, cents, dollars, cents))
    yield ProblemForm("${0} - ${1}.{2}", (range(2, 21), dollars, cents))
    few = range(5, 100, 5)
    yield ProblemForm("{0}¢ + {1}¢", (few, few))
    yield ProblemForm("{0}¢ - {1}¢", (few, few))


def _three(sign: str, wishes: Wishes) -> ProblemForm:
    side = (_counts(wishes), range(1, 3), range(1, 12))
    return ProblemForm(f"{{0}} yd {{1}} ft {{2}} in {sign} {{3}} yd {{4}} ft {{5}} in", (*side, *side))


def _counts(wishes: Wishes) -> range:
    return range(1, wishes.largest + 1)


def _more_than_one(wishes: Wishes, large: str, small: str) -> range:
    """Return counts of the smaller unit that fill a larger one and more, in the same steps."""
    smaller = _smaller(large, small)
    return range(smaller.stop + smaller.start, (wishes.largest + 1) * smaller.stop, smaller.step)


def _smaller(large: str, small: str) -> range:
    """Return the counts of the smaller unit that fill no larger one, in steps where there are many."""
    (ratio,) = measure(large, small).ratios
    step = next(step for least, step in STEPS if ratio >= least)
    return range(step, ratio, step)
