"""Which skill comes back on which night, as a drawing: a row for each skill, a column for each week."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from fractions import Fraction
from xml.etree.ElementTree import Element, SubElement, tostring

from onewhole.notations.pencil import BOLD, HATCH, INK, LINE, PAPER
from onewhole.notations.svg import mm
from onewhole.writers.squared import LETTERS, day_name, hatched, line, month_name, squared_page, words

_LEFT, _TOP, _RIGHT = Fraction(2), Fraction(11), Fraction(2)
_WEEK, _NAME, _LANE, _BELOW = Fraction(52, 5), Fraction(6), Fraction(11, 2), Fraction(3)
_ROW = _NAME + 2 * _LANE + _BELOW
_INSET = Fraction(3, 5)
_WEEKDAYS = ("Mo", "Tu", "We", "Th", "Fr", "Sa", "Su")
_LONG = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
#: How large the letters of one, two, three or more days are in a box, so that its bold edge stays whole.
_SMALLER = (Fraction(9, 10), Fraction(6, 10), Fraction(4, 10))


@dataclass(frozen=True, slots=True)
class TermRow:
    """A skill: by the Monday of a week on how many nights it is on a page, and the nights planned for it."""

    name: str
    on_page: Mapping[date, int]
    planned: tuple[date, ...]


def term_picture(rows: Sequence[TermRow], weeks: Sequence[date], this_week: date) -> str:
    """Write the weeks of a term as one ``svg`` element, in millimetres; "" where there is no skill.

    In the upper lane of a row a hatched box tells on how many nights of a week the skill is on a page, gone
    by or set; in the lower lane a box with a bold edge names the nights on which it is planned to come back.
    This week stands between bold lines. Title and description say the same in words.

    >>> monday = date(2026, 11, 23)
    >>> drawn = term_picture([TermRow("comparing", {monday: 2}, (date(2026, 11, 26),))], [monday], monday)
    >>> ">Th<" in drawn, "Comparing: on a page in the week of 23 Nov; planned for Thursday 26 Nov." in drawn
    (True, True)
    """
    if not rows:
        return ""
    width, height = _LEFT + _WEEK * len(weeks) + _RIGHT, _TOP + _ROW * len(rows)
    page = squared_page("term", "Which skill comes back when", " ".join(map(_told, rows)), width, height)
    for at, week in enumerate(weeks):
        words(page, _middle(at), Fraction(4), str(week.day), "middle")
        words(page, _middle(at), Fraction(8), month_name(week), "middle")
    for at, row in enumerate(rows):
        _row(page, row, weeks, _TOP + at * _ROW)
    if this_week in weeks:
        _between_lines(page, _LEFT + _WEEK * weeks.index(this_week), len(rows))
    return tostring(page, encoding="unicode")


def weekday_name(day: date) -> str:
    """Return a day with its weekday, such as Thursday 26 Nov.

    >>> weekday_name(date(2026, 11, 26))
    'Thursday 26 Nov'
    """
    return f"{_LONG[day.weekday()]} {day_name(day)}"


def _told(row: TermRow) -> str:
    many = "weeks" if len(row.on_page) > 1 else "week"
    on_page = f"on a page in the {many} of {', '.join(map(day_name, row.on_page))}" if row.on_page else ""
    planned = f"planned for {', '.join(map(weekday_name, row.planned))}" if row.planned else "nothing planned"
    return f"{row.name[:1].upper()}{row.name[1:]}: {'; '.join(filter(None, (on_page, planned)))}."


def _middle(at: int) -> Fraction:
    return _LEFT + _WEEK * (2 * at + 1) / 2


def _row(page: Element, row: TermRow, weeks: Sequence[date], top: Fraction) -> None:
    words(page, _LEFT, top + 4, row.name, "start", size=LETTERS * 6 / 5)
    floor = top + _NAME + 2 * _LANE
    line(page, f"M{mm(_LEFT)} {mm(floor)}H{mm(_LEFT + _WEEK * len(weeks))}", HATCH)
    for at, week in enumerate(weeks):
        left, upper = _LEFT + _WEEK * at + _INSET, top + _NAME
        if nights := row.on_page.get(week):
            hatched(page, left, upper, _WEEK - 2 * _INSET, _LANE - _INSET)
            words(page, _middle(at), upper + 4, str(nights), "middle")
        if days := list(_days(row.planned, week)):
            _planned(page, left, upper + _LANE)
            size = LETTERS * _SMALLER[min(len(days), len(_SMALLER)) - 1]
            words(page, _middle(at), upper + _LANE + Fraction(7, 2), " ".join(days), "middle", size=size)


def _between_lines(page: Element, left: Fraction, rows: int) -> None:
    """Draw a bold line to both sides of a week, but not through the names."""
    lanes = (_TOP + at * _ROW + _NAME for at in range(rows))
    for top, low in ((Fraction(0), _TOP - 2), *((lane, lane + 2 * _LANE) for lane in lanes)):
        for edge in (left, left + _WEEK):
            line(page, f"M{mm(edge)} {mm(top)}V{mm(low)}", BOLD)


def _days(planned: Sequence[date], week: date) -> Iterator[str]:
    return (_WEEKDAYS[day.weekday()] for day in planned if 0 <= (day - week).days < len(_WEEKDAYS))


def _planned(page: Element, left: Fraction, top: Fraction) -> None:
    SubElement(
        page,
        "rect",
        {
            "x": mm(left),
            "y": mm(top),
            "width": mm(_WEEK - 2 * _INSET),
            "height": mm(_LANE - _INSET),
            "fill": PAPER,
            "stroke": INK,
            "stroke-width": mm(BOLD + LINE / 2),
        },
    )
