"""Common denominators, simplest form and prime factors."""

from collections.abc import Iterable
from math import gcd, lcm


def common_denominator(denominators: Iterable[int]) -> int:
    """Return the smallest number of equal parts that every given denominator divides.

    >>> common_denominator([4, 6])
    12
    """
    return lcm(*denominators)


def simplest(top: int, bottom: int) -> tuple[int, int]:
    """Return the equal fraction with the fewest parts.

    >>> simplest(3, 6)
    (1, 2)
    """
    shared = gcd(top, bottom)
    return top // shared, bottom // shared


def factors(number: int) -> tuple[int, ...]:
    """Return the prime factors of a number, smallest first; none for 1.

    >>> factors(12)
    (2, 2, 3)
    """
    found: list[int] = []
    by = 2
    while number > 1:
        while number % by == 0:
            found.append(by)
            number //= by
        by += 1
    return tuple(found)
