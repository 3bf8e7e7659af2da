"""Problems near one: the same operation and sort of numbers, with zeros, other lengths and other sizes.

A space is searched exhaustively, so that what is not found in it does not exist in it. Which numbers span it
is our own choice: small ones, with the zeros and unequal lengths that distinguish patterns.
"""

from collections.abc import Iterator
from functools import lru_cache
from itertools import product

from msgspec import Struct

from onewhole.errors import OnewholeError
from onewhole.findings.searched import NumberSort
from onewhole.misconceptions.pair import Pair, pair_of
from onewhole.number.ladder import Ladder, Style, joined
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement

_UNITS = 2
#: Digits of the first number after its leading one, and second numbers with digits above and below them.
_LEADING, _FOLLOWING = "158", "036"
_TAKEN = ("7", "20", "28", "45", "169", "245", "307", "1278", "1307")
#: A decimal's whole part and its places; none is a whole number.
_WHOLES = (("3", "5", "20"), ("0", "1", "2"))
_PLACES = ("", "2", "7", "00", "05", "31", "45", "70")
#: Wholes of the first and of the second number; every numerator goes with them.
_FIRST, _SECOND = (9, 6, 0), (4, 1, 0)


class Space(Struct, frozen=True):
    """Sums or differences of one sort, typed, in the order in which they are tried."""

    sort: NumberSort
    taken: bool
    problems: tuple[str, ...]


def near(statement: Statement) -> Space | None:
    """Return the space of problems near a sum or difference of two numbers, or None for anything else.

    >>> found = near(read_statement("5.2 - 2.7"))
    >>> found.sort.name, "3.00 - 0.45" in found.problems
    ('DECIMALS', True)
    """
    pair = pair_of(statement)
    if pair is None:
        return None
    found = _sides(pair)
    if found is None:
        return None
    sort, first, second = found
    return _space(sort, pair.taken, first, second)


@lru_cache(maxsize=64)
def _space(sort: NumberSort, taken: bool, first: tuple[str, ...], second: tuple[str, ...]) -> Space:
    """List a space whole; the problems of a page lie in few of them."""
    sign = "-" if taken else "+"
    typed = (f"{one} {sign} {other}" for one, other in product(first, second))
    return Space(sort, taken, tuple(one for one in typed if _can_be_asked(one)))


def _can_be_asked(typed: str) -> bool:
    """Say whether the answer is not below zero."""
    try:
        read_statement(typed)
    except OnewholeError:
        return False
    return True


def _sides(pair: Pair) -> tuple[NumberSort, tuple[str, ...], tuple[str, ...]] | None:
    """Return the sort, the first and the second numbers."""
    styles = pair.styles
    if styles == {Style.PLACES}:
        return NumberSort.WHOLE_NUMBERS, tuple(_whole_numbers()), _TAKEN
    if styles <= {Style.DECIMAL, Style.PLACES}:
        first, second = (tuple(_decimals(wholes)) for wholes in _WHOLES)
        return NumberSort.DECIMALS, first, second
    if styles == {Style.MEASURE}:
        ladder = joined(pair.first.ladder, pair.second.ladder)
        if len(ladder.units) != _UNITS:
            return None
        return NumberSort.MEASURES, tuple(_measures(ladder, (7, 5))), tuple(_measures(ladder, (4, 2)))
    ladders = {number.ladder for number in (pair.first, pair.second) if number.ladder.style is Style.MIXED}
    if not styles <= {Style.MIXED, Style.PLACES}:
        return None
    d1, d2 = (
        number.ladder.denominator if number.ladder in ladders else next(iter(ladders)).denominator
        for number in (pair.first, pair.second)
    )
    sort = NumberSort.LIKE_PARTS if d1 == d2 else NumberSort.UNLIKE_PARTS
    return sort, tuple(_mixed(_FIRST, d1)), tuple(_mixed(_SECOND, d2))


def _whole_numbers() -> Iterator[str]:
    for length in (1, 2, 3):
        yield from ("".join(digits) for digits in product(_LEADING, *[_FOLLOWING] * length))


def _decimals(wholes: tuple[str, ...]) -> Iterator[str]:
    for before, after in product(wholes, _PLACES):
        if after or before != "0":
            yield f"{before}.{after}" if after else before


def _mixed(wholes: tuple[int, ...], denominator: int) -> Iterator[str]:
    for whole, top in product(wholes, range(denominator)):
        if top:
            yield f"{whole} {top}/{denominator}" if whole else f"{top}/{denominator}"
        elif whole:
            yield str(whole)


def _measures(ladder: Ladder, large: tuple[int, ...]) -> Iterator[str]:
    """Give counts of both units; of the smaller one none, few, half of the ratio and nearly all."""
    ratio, (upper, lower) = ladder.ratios[0], (unit.mark for unit in ladder.units)
    for count in large:
        yield f"{count} {upper}"
        for small in sorted({1, 3, ratio // 4, ratio // 2, ratio - 1} - {0}):
            yield f"{count} {upper} {small} {lower}"
