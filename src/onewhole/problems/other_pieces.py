"""A problem with other denominators that go together as its own do: fourths, eighths for thirds, sixths."""

from collections.abc import Iterator, Mapping
from itertools import combinations, permutations
from math import gcd, lcm

from msgspec.structs import replace

from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity
from onewhole.problems.numbers import numbers_of, with_numbers
from onewhole.statements.statement import MissingNumber, Statement

#: The denominators of grade 4 (footnote to 4.NF, CCSSM 2010) but for 100.
BOTTOMS = (2, 3, 4, 5, 6, 8, 10, 12)
#: Common pieces finer than these are no work for paper: our own.
MOST_COMMON = 24


def with_other_pieces(statement: Statement) -> Iterator[Statement]:
    """Yield a statement with other denominators, where it has several.

    Two that fit into each other stay so, and so do two that have a factor in common and two that have none.
    Fractions below one stay below one, and those above it above it; nothing else is promised of the numbers.

    >>> from itertools import islice
    >>> from onewhole.notations.text import text
    >>> from onewhole.statements.reading import read_statement
    >>> [text(one) for one in islice(with_other_pieces(read_statement("3/4 = ?/8")), 3)]
    ['1/2 = ?/4', '1/2 = ?/6', '1/2 = ?/8']
    """
    own = tuple(sorted({*_bottoms(statement)}))
    if len(own) > 1 and set(own) <= set(BOTTOMS):
        for others in permutations(BOTTOMS, len(own)):
            if others != own and _together(others) == _together(own) and lcm(*others) <= _finest(own):
                yield _with(statement, dict(zip(own, others, strict=True)))


def _finest(own: tuple[int, ...]) -> int:
    return max(MOST_COMMON, lcm(*own))


def _together(bottoms: tuple[int, ...]) -> tuple[tuple[bool, ...], ...]:
    """Return for every two whether one fits into the other, each way, and whether they have a factor."""
    return tuple((b % a == 0, a % b == 0, gcd(a, b) > 1) for a, b in combinations(bottoms, 2))


def _bottoms(statement: Statement) -> Iterator[int]:
    for number in numbers_of(statement):
        if number.ladder.style is Style.MIXED:
            yield number.ladder.denominator
    if isinstance(statement, MissingNumber) and isinstance(statement.gap.bottom, int):
        yield statement.gap.bottom


def _with(statement: Statement, other: Mapping[int, int]) -> Statement:
    found = with_numbers(statement, [_on(number, other) for number in numbers_of(statement)])
    if isinstance(found, MissingNumber) and isinstance(found.gap.bottom, int):
        return replace(found, gap=replace(found.gap, bottom=other[found.gap.bottom]))
    return found


def _on(number: Quantity, other: Mapping[int, int]) -> Quantity:
    """Return a number with other pieces, as many wholes put together from them as before."""
    if number.ladder.style is not Style.MIXED:
        return number
    *wholes, top = number.counts
    old, new = number.ladder.denominator, other[number.ladder.denominator]
    full, rest = divmod(top or 0, old)
    pieces = full * new + (max(1, rest * new // old) if rest else 0)
    return Quantity(mixed(new), (*wholes, pieces if top is not None else None))
