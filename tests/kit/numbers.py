"""Numbers as the reader can make them, for Hypothesis and for walking a small space whole."""

from collections.abc import Iterator
from functools import cache
from itertools import product

from hypothesis import strategies as st

from onewhole.number.ladder import decimal, measure, mixed, places
from onewhole.number.quantity import Quantity, whole, with_mark
from onewhole.number.unit import DOLLAR, MEASURES, Kind

#: The denominators of grade 4. Source: Common Core State Standards for Mathematics (2010), footnote to 4.NF.
GRADE_4 = (2, 3, 4, 5, 6, 8, 10, 12, 100)

COUNTS = st.integers(0, 999_999_999)
SMALL_COUNTS = st.integers(0, 25)
DENOMINATORS = st.one_of(st.sampled_from(GRADE_4), st.integers(1, 1000))
MEASURED = tuple(dict.fromkeys(unit.kind for unit in MEASURES))


def whole_numbers() -> st.SearchStrategy[Quantity]:
    """Whole numbers in digits: 304."""
    return st.one_of(SMALL_COUNTS, COUNTS).map(whole)


@st.composite
def mixed_numbers(draw: st.DrawFn, counts: st.SearchStrategy[int] = SMALL_COUNTS) -> Quantity:
    """Mixed numbers and fractions, also with no wholes written, no pieces, or pieces that fill wholes."""
    wholes = draw(st.one_of(st.none(), counts))
    return Quantity(mixed(draw(DENOMINATORS)), (wholes, draw(st.one_of(counts, COUNTS))))


@st.composite
def decimals(draw: st.DrawFn) -> Quantity:
    """Decimals in digits: 5.2, also 05.20."""
    digits = draw(st.lists(st.integers(0, 9), min_size=2, max_size=8))
    after = draw(st.integers(1, len(digits) - 1))
    return Quantity(decimal(len(digits) - after, after), tuple(digits))


@st.composite
def placed_numbers(draw: st.DrawFn) -> Quantity:
    """Numbers in place words: 4 tens 12 ones, 4 ones 12 tenths."""
    before, after = draw(st.integers(1, 4)), draw(st.integers(0, 3))
    count = st.one_of(SMALL_COUNTS, COUNTS)
    counts = draw(st.lists(count, min_size=before + after, max_size=before + after))
    return Quantity(decimal(before, after) if after else places(before), tuple(counts))


@st.composite
def measures(draw: st.DrawFn, kinds: tuple[Kind, ...] = MEASURED) -> Quantity:
    """Measures in one or more units of one kind: 5 ft 2 in, 14 in."""
    kind = draw(st.sampled_from(kinds))
    marks = [unit.mark for unit in MEASURES if unit.kind is kind]
    kept = draw(st.lists(st.sampled_from(marks), min_size=1, unique=True))
    counts = draw(st.lists(st.one_of(SMALL_COUNTS, COUNTS), min_size=len(kept), max_size=len(kept)))
    return Quantity(measure(*sorted(kept, key=marks.index)), tuple(counts))


@st.composite
def numbers_with_units(draw: st.DrawFn) -> Quantity:
    """Numbers with a unit behind them, and money: 5 5/8 in, 13/8 c, 5.2 km, $3.25, $40."""
    if draw(st.booleans()):
        mark = draw(st.sampled_from([unit.mark for unit in MEASURES if unit.mark != "¢"]))
        return with_mark(draw(st.one_of(mixed_numbers(), decimals())), mark)
    dollars, cents = draw(st.one_of(SMALL_COUNTS, st.integers(0, 999_999))), draw(st.integers(0, 99))
    if draw(st.booleans()):
        return whole(dollars, DOLLAR)
    digits = f"{dollars}{cents:02}"
    return Quantity(decimal(len(digits) - 2, 2, DOLLAR), tuple(map(int, digits)))


def plain_numbers() -> st.SearchStrategy[Quantity]:
    """Any number that is no measure."""
    return st.one_of(whole_numbers(), mixed_numbers(), decimals(), placed_numbers())


def quantities() -> st.SearchStrategy[Quantity]:
    """Any quantity that the reader can make."""
    return st.one_of(plain_numbers(), measures(), numbers_with_units())


@cache
def amounts_of(kind: Kind) -> st.SearchStrategy[Quantity]:
    """Any quantity of one kind."""
    return plain_numbers() if kind is Kind.NUMBER else measures((kind,))


def every_mixed_number(denominator: int, wholes: int) -> Iterator[Quantity]:
    """Every number from 0 up to so many wholes, in the usual form, fractions without wholes included."""
    for count, top in product(range(wholes + 1), range(denominator)):
        if top == 0:
            yield whole(count)
        else:
            yield Quantity(mixed(denominator), (count or None, top))
