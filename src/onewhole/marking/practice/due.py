"""When a skill is due to come back, and how sure that is."""

from bisect import bisect_left
from collections.abc import Callable, Sequence
from datetime import date
from math import isqrt

from msgspec import Struct

from onewhole.marking.practice.halving import MILLION

#: A skill is due when so much is left of the right answers that were to be expected after the last night
#: with it: four of five. Our own. Coming back "after weeks or months" is advised (Pashler and others 2007, as
#: quoted in their official summary); no source gives a share.
LEFT, OF = 4, 5
#: At the latest it comes back after so many days: 16 weeks, the longest step that is common practice.
LATEST = 112
#: A band reaches so many standard deviations to both sides, in tenths.
_DEVIATIONS = 20


class Band(Struct, frozen=True):
    """A share, per million, and between what bounds it lies most likely.

    Raises ValueError where it is not inside.
    """

    low: int
    share: int
    high: int

    def __post_init__(self) -> None:
        """Refuse a share outside its band."""
        if not 0 <= self.low <= self.share <= self.high <= MILLION:
            msg = f"{self.share} is not between {self.low} and {self.high}"
            raise ValueError(msg)

    @property
    def tenths(self) -> tuple[int, int, int]:
        """Return low, share and high in tenths: the share to the nearest, its bounds outwards.

        >>> Band(540_000, 720_000, 810_000).tenths
        (5, 7, 9)
        """
        nearest = (10 * self.share + MILLION // 2) // MILLION
        return 10 * self.low // MILLION, nearest, -(-10 * self.high // MILLION)


def due_day(share: Callable[[date], int], last: date) -> date:
    """Return the first day after the last night on which a skill is due, by what share is right on a day.

    The share never rises from day to day.

    >>> halves = lambda day: 1_000_000 >> (day - date(2026, 9, 1)).days // 7
    >>> due_day(halves, date(2026, 9, 1)).isoformat()
    '2026-09-08'
    """
    enough, day = share(last) * LEFT, last.toordinal()
    waited = bisect_left(
        range(day + 1, day + LATEST), x=True, key=lambda later: share(date.fromordinal(later)) * OF <= enough
    )
    return date.fromordinal(day + 1 + waited)


def class_band(chances: Sequence[int], by_course: Sequence[int], shares: Sequence[int], known: int) -> Band:
    """Return the band of the share of a class that would be right.

    ``chances`` are the pupils' own. ``by_course`` is the class's share if all took one course, ``shares`` how
    likely each course is, and ``known`` how many pupils' traces say so. It is two standard deviations wide to
    each side: chance of each pupil, and doubt about the course, less of it with every trace.

    >>> sure = class_band([900_000] * 25, [900_000] * 2, [500_000] * 2, 25)
    >>> unsure = class_band([500_000] * 25, [900_000, 100_000], [500_000] * 2, 0)
    >>> sure.tenths, unsure.tenths
    ((7, 9, 10), (0, 5, 10))
    """
    of = max(1, len(chances))
    share = sum(chances) // of
    alone = sum(one * (MILLION - one) for one in chances) // of**2
    total = max(1, sum(shares))
    middle = sum(one * held for one, held in zip(by_course, shares, strict=True)) // total
    together = sum((one - middle) ** 2 * held for one, held in zip(by_course, shares, strict=True)) // total
    half = isqrt(alone + together // (1 + known)) * _DEVIATIONS // 10
    return Band(max(0, share - half), share, min(MILLION, share + half))


def pupil_band(by_course: Sequence[int], shares: Sequence[int]) -> Band:
    """Return the chance of one pupil, and between which chances nine of ten parts of the courses lie.

    >>> pupil_band([200_000, 600_000, 900_000], [100_000, 800_000, 100_000]).tenths
    (2, 6, 9)
    """
    total = max(1, sum(shares))
    share = sum(one * held for one, held in zip(by_course, shares, strict=True)) // total
    rising = sorted(zip(by_course, shares, strict=True))
    low = _reached(rising, total)
    high = _reached(rising[::-1], total)
    return Band(min(low, share), share, max(high, share))


def _reached(chances: Sequence[tuple[int, int]], total: int) -> int:
    """Return the chance at which one twentieth of the shares is reached."""
    held = 0
    for chance, share in chances:
        held += share
        if 20 * held >= total:
            return chance
    return chances[-1][0]
