"""The confidence interval of a share of right answers: wide where there are few answers."""

from fractions import Fraction
from math import isqrt

from msgspec import Struct

#: The square of 1.96, for a 95 % interval.
_SQUARE = Fraction(196, 100) ** 2
_THOUSANDTH = 1000


class Interval(Struct, frozen=True):
    """So many right of so many answers, and the bounds of the interval for the true share.

    ``low`` and ``high`` are thousandths, rounded outwards. Raises ValueError for no answers and for more
    right ones than there are.
    """

    right: int
    of: int
    low: Fraction
    high: Fraction

    def __post_init__(self) -> None:
        """Refuse counts that cannot be."""
        if not 0 <= self.right <= self.of or not self.of:
            msg = f"{self.right} right of {self.of}"
            raise ValueError(msg)

    @property
    def share(self) -> Fraction:
        """Return the share of right answers, exactly."""
        return Fraction(self.right, self.of)


def interval(right: int, of: int) -> Interval:
    """Return the 95 % score interval of a share.

    With r right of n, z = 1.96: (r + z²/2 ± z √(r(n-r)/n + z²/4)) / (n + z²). Source: Wilson (1927), Probable
    inference, the law of succession, and statistical inference, Journal of the American Statistical
    Association 22, 209-212 (from memory). It assumes independent answers; those of one evening are
    correlated, so that the true interval is wider.

    >>> few, many = interval(2, 2), interval(20, 20)
    >>> few.low < Fraction(35, 100) < Fraction(8, 10) < many.low, many.high == 1
    (True, True)
    """
    counts = Interval(right, of, Fraction(0), Fraction(1))
    inside = _SQUARE * (Fraction(right * (of - right), of) + _SQUARE / 4)
    half = Fraction(isqrt(int(inside * _THOUSANDTH**4)) + 1, _THOUSANDTH**2)
    middle, below = right + _SQUARE / 2, of + _SQUARE
    low, high = (middle - half) / below, (middle + half) / below
    return Interval(
        counts.right,
        counts.of,
        max(Fraction(0), Fraction(int(low * _THOUSANDTH // 1), _THOUSANDTH)),
        min(Fraction(1), Fraction(int(-(-high * _THOUSANDTH // 1)), _THOUSANDTH)),
    )
