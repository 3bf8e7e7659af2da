"""The weeks of a year and their nights, each week with its topic."""

from collections.abc import Iterator
from datetime import date

from msgspec import Struct

from onewhole.sheets.years.table import WEEKS, YEAR_WEEKS
from onewhole.sheets.years.topic import YearTopic
from onewhole.sheets.years.year_wishes import YearError, YearWishes

#: No school year is longer than so many weeks by the calendar.
LONGEST, WEEK = 60, 7


class YearWeek(Struct, frozen=True):
    """A week with school, from 1: its Monday, its nights, and its topic; None once all are taught."""

    number: int
    monday: date
    nights: tuple[date, ...]
    topic: YearTopic | None


def weeks_of(year: YearWishes) -> tuple[YearWeek, ...]:
    """Return the 36 weeks of a year that have a night. Raises YearError where they do not fit.

    >>> weeks = weeks_of(YearWishes(date(2026, 9, 8)))
    >>> len(weeks), sum(len(one.nights) for one in weeks), weeks[0].nights[0].isoformat()
    (36, 179, '2026-09-08')
    """
    topics = topics_of(year)
    found: list[YearWeek] = []
    monday = year.first_day.toordinal() - year.first_day.weekday()
    for turn in range(LONGEST):
        begins = date.fromordinal(monday + WEEK * turn)
        nights = tuple(_nights(year, begins))
        if nights:
            topic = topics[len(found)] if len(found) < len(topics) else None
            found.append(YearWeek(len(found) + 1, begins, nights, topic))
        if len(found) == WEEKS:
            return tuple(found)
    raise YearError(
        f"only {len(found)} weeks with a night fit into {LONGEST} weeks",
        remedy="Name more nights of the week, or fewer days without school.",
    )


def topics_of(year: YearWishes) -> tuple[YearTopic, ...]:
    """Return the topics in the order in which they are taught.

    >>> from onewhole.sheets.years.year_wishes import WeeksMoved
    >>> moved = topics_of(YearWishes(date(2026, 9, 8), moves=(WeeksMoved(18, 25, 9),)))
    >>> [one.week for one in moved][7:18]
    [8, 18, 19, 20, 21, 22, 23, 24, 25, 9, 10]
    """
    order: list[YearTopic] = list(YEAR_WEEKS[year.grade])
    for move in year.moves:
        moved = [one for one in order if move.first <= one.week <= move.last]
        rest = [one for one in order if one not in moved]
        at = min(move.to - 1, len(rest))
        order = [*rest[:at], *moved, *rest[at:]]
    return tuple(one for one in order if one.week not in year.left_out)


def _nights(year: YearWishes, monday: date) -> Iterator[date]:
    for at in sorted(year.weekdays):
        day = date.fromordinal(monday.toordinal() + at)
        if day >= year.first_day and day not in year.free:
            yield day
