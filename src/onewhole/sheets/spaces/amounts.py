"""Amounts as they are typed, to put into forms."""

from collections.abc import Iterable, Sequence
from itertools import combinations
from math import gcd, lcm

#: Pieces finer than these are no work for paper: our own.
MOST_COMMON = 24


def fractions(denominator: int, *, simplest: bool = False) -> Sequence[str]:
    """Return the fractions below one with a denominator; ``simplest`` leaves out 2/4 and the like.

    >>> fractions(4), fractions(4, simplest=True)
    (('1/4', '2/4', '3/4'), ('1/4', '3/4'))
    """
    tops = (top for top in range(1, denominator) if not simplest or gcd(top, denominator) == 1)
    return tuple(f"{top}/{denominator}" for top in tops)


def mixed_numbers(denominator: int, largest: int, *, least: int = 1, simplest: bool = False) -> Sequence[str]:
    """Return mixed numbers with so many wholes; with ``least`` 0 the fractions below one too.

    >>> mixed_numbers(3, 1, least=0)
    ('1/3', '2/3', '1 1/3', '1 2/3')
    """
    parts = fractions(denominator, simplest=simplest)
    return tuple(
        f"{wholes} {part}" if wholes else part for wholes in range(least, largest + 1) for part in parts
    )


def decimals(places: int, largest: int, *, least: int = 0) -> Sequence[str]:
    """Return decimals with so many places, none of which ends in 0, and wholes up to ``largest``.

    >>> decimals(1, 0)[:3], decimals(2, 3)[-1]
    (('0.1', '0.2', '0.3'), '3.99')
    """
    ends = [f"{end:0{places}}" for end in range(1, 10**places) if end % 10]
    return tuple(f"{wholes}.{end}" for wholes in range(least, largest + 1) for end in ends)


def numbers_of_length(digits: int) -> range:
    """Return the whole numbers with so many digits.

    >>> numbers_of_length(2)
    range(10, 100)
    """
    return range(10 ** (digits - 1), 10**digits)


def with_zeros(digits: int) -> Sequence[int]:
    """Return numbers whose inner digits are zeros: 300, 4006, 60000.

    >>> with_zeros(3)[:3], 4006 in with_zeros(4)
    ((100, 101, 102), True)
    """
    return tuple(lead * 10 ** (digits - 1) + last for lead in range(1, 10) for last in range(10))


def unlike_pairs(denominators: Iterable[int]) -> tuple[tuple[int, int], ...]:
    """Return pairs of denominators whose common pieces can be written on paper, both orders.

    >>> unlike_pairs((2, 3, 10))
    ((2, 3), (3, 2), (2, 10), (10, 2))
    """
    pairs = (pair for pair in combinations(sorted(set(denominators)), 2) if lcm(*pair) <= MOST_COMMON)
    return tuple(both for a, b in pairs for both in ((a, b), (b, a)))
