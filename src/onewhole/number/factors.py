"""Common denominators."""

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
