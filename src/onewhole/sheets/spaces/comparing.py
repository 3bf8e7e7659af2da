"""Which is more: 4.NBT.A.2, 4.NF.A.2, 4.NF.C.7 (CCSSM 2010)."""

from collections.abc import Iterator
from itertools import permutations

from onewhole.sheets.spaces.amounts import decimals, fractions, mixed_numbers, unlike_pairs
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

USUAL_DIGITS = 4
DIGITS = range(10)
LEADING = range(1, 10)


def whole_numbers(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield numbers that begin alike, that have their digits in another order, or another length."""
    digits = wishes.digits or USUAL_DIGITS
    rest = "{2}" * (digits - 2)
    yield ProblemForm(f"{{0}}{{1}}{rest} ? {{0}}{{3}}{rest}", (LEADING, DIGITS, DIGITS, DIGITS))
    yield ProblemForm(f"{{0}}{{1}}{rest} ? {{1}}{{0}}{rest}", (LEADING, LEADING, DIGITS))
    yield ProblemForm(f"{{0}}{rest}{{1}} ? {{0}}{rest}{{3}}", (LEADING, DIGITS, DIGITS, DIGITS))
    yield ProblemForm(f"{{0}}{{1}}{rest} ? {{3}}{rest}", (LEADING, DIGITS, DIGITS, LEADING))


def of_fractions(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield fractions with one denominator, with one numerator, and with neither."""
    alike = tuple(
        f"{top}/{first} ? {top}/{second}"
        for first, second in permutations(wishes.denominators, 2)
        for top in range(1, min(first, second))
    )
    yield ProblemForm("{0}", (alike,))
    for denominator in wishes.denominators:
        yield ProblemForm("{0} ? {1}", (fractions(denominator), fractions(denominator)))
    for first, second in unlike_pairs(wishes.denominators):
        yield ProblemForm("{0} ? {1}", (fractions(first), fractions(second)))


def mixed(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield mixed numbers with equal wholes, and with others."""
    for first, second in unlike_pairs(wishes.denominators):
        wholes = range(1, wishes.largest + 1)
        yield ProblemForm("{0} {1} ? {0} {2}", (wholes, fractions(first), fractions(second)))
        yield ProblemForm(
            "{0} ? {1}", (mixed_numbers(first, wishes.largest), mixed_numbers(second, wishes.largest))
        )


def of_decimals(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield decimals with equal wholes, of equal and unequal length, and digits that mislead."""
    wholes = range(wishes.largest + 1)
    tenths, hundredths = range(1, 10), [f"{end:02}" for end in range(1, 100) if end % 10]
    yield ProblemForm("{0}.{1} ? {0}.{2}", (wholes, tenths, hundredths))
    yield ProblemForm("{0}.{2} ? {0}.{1}", (wholes, tenths, hundredths))
    yield ProblemForm("{0}.{1} ? {0}.{2}", (wholes, hundredths, hundredths))
    yield ProblemForm("{0}.{1} ? {0}.0{1}", (wholes, tenths))
    yield ProblemForm("{0}.{1} ? {0}.{1}0", (wholes, tenths))
    yield ProblemForm("{0} ? {1}", (decimals(1, wishes.largest), decimals(2, wishes.largest)))


def of_measures(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield a measure in the larger unit beside one in the smaller, and two in both: 4.MD.A.1."""
    counts = range(1, wishes.largest + 1)
    for large, small, ratio in (("ft", "in", 12), ("lb", "oz", 16), ("gal", "qt", 4), ("h", "min", 60)):
        smaller = range(ratio + 1, (wishes.largest + 1) * ratio)
        yield ProblemForm(f"{{0}} {large} ? {{1}} {small}", (counts, smaller))
        parts = range(1, ratio)
        yield ProblemForm(
            f"{{0}} {large} {{1}} {small} ? {{0}} {large} {{2}} {small}", (counts, parts, parts)
        )
