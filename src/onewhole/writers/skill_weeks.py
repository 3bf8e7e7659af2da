"""Skills by weeks as a drawing: for each skill a row, for each week a hatched band round the share right."""

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from fractions import Fraction
from xml.etree.ElementTree import Element, tostring

from msgspec import Struct

from onewhole.marking.diagnosis.interval import Interval
from onewhole.notations.pencil import BOLD, HATCH
from onewhole.notations.svg import mm
from onewhole.writers.squared import LETTERS, day_name, hatched, line, squared_page, words

#: So many weeks find room, each with its counts readable; what is older stands in the table.
MOST_WEEKS = 7

_LEFT, _TOP, _RIGHT = Fraction(13), Fraction(9), Fraction(2)
_HIGH, _BELOW = Fraction(20), Fraction(11)
_BAND, _WEEK = Fraction(6), Fraction(31, 2)
_LEAST_WEEKS = 4
_ROW = _TOP + _HIGH + _BELOW


class SkillRow(Struct, frozen=True):
    """A skill's name and its bands by week, each week told by its Monday; a week may have none."""

    name: str
    weeks: Mapping[date, Interval]


def skill_weeks_picture(rows: Sequence[SkillRow]) -> str:
    """Write the last weeks of some skills as one ``svg`` element, in millimetres.

    A band reaches from its low to its high share, a bold stroke marks the share right, and under it stand
    the counts and the Monday of the week. Weeks follow each other without a gap, also those in which nothing
    was answered. Title and description say the same in words. Returns "" where nothing was answered.

    >>> from onewhole.marking.diagnosis.interval import interval
    >>> drawn = skill_weeks_picture([SkillRow("comparing", {date(2026, 11, 23): interval(3, 4)})])
    >>> "3 of 4" in drawn, drawn.count("<title")
    (True, 1)
    """
    weeks = last_weeks(rows)
    shown = [row for row in rows if any(week in row.weeks for week in weeks)]
    if not shown:
        return ""
    height = _ROW * len(shown)
    width = _LEFT + _WEEK * max(_LEAST_WEEKS, len(weeks)) + _RIGHT
    page = squared_page("skill-weeks", "Skills by weeks", " ".join(_told(shown, weeks)), width, height)
    for at, row in enumerate(shown):
        _row(page, row, weeks, at * _ROW, width)
    return tostring(page, encoding="unicode")


def last_weeks(rows: Sequence[SkillRow]) -> tuple[date, ...]:
    """Return the Mondays of the weeks that are drawn, up to the last in which anything was answered."""
    every = sorted({week for row in rows for week in row.weeks})
    if not every:
        return ()
    first, last = every[0].toordinal(), every[-1].toordinal()
    start = max(first, last - 7 * (MOST_WEEKS - 1))
    return tuple(date.fromordinal(day) for day in range(start, last + 1, 7))


def _told(rows: Sequence[SkillRow], weeks: Sequence[date]) -> Iterator[str]:
    for row in rows:
        said = [
            f"week of {day_name(week)} {one.right} of {one.of}"
            for week in weeks
            if (one := row.weeks.get(week)) is not None
        ]
        yield f"{row.name[:1].upper()}{row.name[1:]}: {', '.join(said)}."


def _middle(at: int) -> Fraction:
    return _LEFT + _WEEK * (2 * at + 1) / 2


def _row(page: Element, row: SkillRow, weeks: Sequence[date], top: Fraction, width: Fraction) -> None:
    floor = top + _TOP + _HIGH
    words(page, Fraction(1), top + 5, row.name, "start", size=LETTERS * 6 / 5)
    for share, said in ((Fraction(1), "all"), (Fraction(1, 2), "half"), (Fraction(0), "none")):
        y = floor - _HIGH * share
        line(page, f"M{mm(_LEFT)} {mm(y)}H{mm(width - _RIGHT)}", HATCH)
        words(page, _LEFT - 1, y + 1, said, "end")
    for at, week in enumerate(weeks):
        words(page, _middle(at), floor + 8, day_name(week), "middle")
        if one := row.weeks.get(week):
            _band(page, one, _middle(at), floor)


def _band(page: Element, one: Interval, x: Fraction, floor: Fraction) -> None:
    left = x - _BAND / 2
    hatched(page, left, floor - _HIGH * one.high, _BAND, _HIGH * (one.high - one.low))
    y = floor - _HIGH * one.share
    line(page, f"M{mm(left - 1)} {mm(y)}H{mm(left + _BAND + 1)}", 2 * BOLD)
    words(page, x, floor + 4, f"{one.right} of {one.of}", "middle")
