"""Which skill comes back on which night, with its words: a row for each skill, a column for each week."""

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from fractions import Fraction
from xml.etree.ElementTree import tostring

from msgspec import Struct

from onewhole.languages.class_words import ClassWords
from onewhole.notations.svg import draw
from onewhole.pictures.term_weeks import EDGE, LANE, NAME, SkillLanes, middle, term_weeks, top
from onewhole.writers.squared import LETTERS, day_name, month_name, squared_page, words

_WEEKDAYS = ("Mo", "Tu", "We", "Th", "Fr", "Sa", "Su")
_LONG = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
#: How large the letters of one, two, three or more days are in a box, so that its bold edge stays whole.
_SMALLER = (Fraction(9, 10), Fraction(6, 10), Fraction(4, 10))


class TermRow(Struct, frozen=True):
    """A skill: by the Monday of a week on how many nights it is on a page, and the nights planned for it."""

    name: str
    on_page: Mapping[date, int]
    planned: tuple[date, ...]

    def days(self, week: date) -> str:
        """Return the days of a week, told by its Monday, that are planned, in short; "" for none.

        >>> TermRow("comparing", {}, (date(2026, 11, 23), date(2026, 11, 26))).days(date(2026, 11, 23))
        'Mo Th'
        """
        return " ".join(_WEEKDAYS[day.weekday()] for day in self.planned if 0 <= (day - week).days < 7)


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
    now = weeks.index(this_week) if this_week in weeks else None
    scene = term_weeks([_lanes(row, weeks) for row in rows], [week.day for week in weeks], now)
    told = " ".join(map(_told, rows))
    page = squared_page("term", "Which skill comes back when", told, scene.width, scene.height)
    draw(page, scene, ClassWords())
    for x, y, said, anchor, size in _words(rows, weeks):
        words(page, x, y, said, anchor, size=size)
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


def _lanes(row: TermRow, weeks: Sequence[date]) -> SkillLanes:
    return SkillLanes(
        tuple(row.on_page.get(week, 0) for week in weeks), tuple(bool(row.days(week)) for week in weeks)
    )


def _words(
    rows: Sequence[TermRow], weeks: Sequence[date]
) -> Iterator[tuple[Fraction, Fraction, str, str, Fraction]]:
    """Return what is written beside the numbers: where, what, how it is placed there, and how large."""
    for at, week in enumerate(weeks, start=1):
        yield middle(at), Fraction(8), month_name(week), "middle", LETTERS
    for number, row in enumerate(rows, start=1):
        yield EDGE, top(number) + 4, row.name, "start", LETTERS * 6 / 5
        lower = top(number) + NAME + LANE + Fraction(7, 2)
        for at, days in enumerate(map(row.days, weeks), start=1):
            if days:
                size = LETTERS * _SMALLER[min(days.count(" "), len(_SMALLER) - 1)]
                yield middle(at), lower, days, "middle", size
