"""A year in rows: a week a row for the table, a topic a row for the picture."""

from collections.abc import Iterator, Sequence
from datetime import date
from fractions import Fraction
from xml.etree.ElementTree import tostring

from msgspec import Struct

from onewhole.languages.class_words import ClassWords
from onewhole.notations.svg import draw
from onewhole.pictures.year_weeks import EDGE, HEAD, ROW, TopicWeeks, left_of, top_of, year_weeks
from onewhole.writers.squared import day_name, month_name, squared_page, words

#: Letters of the names, and of the months: 10 points.
_NAME, _MONTH = Fraction(353, 100), Fraction(353, 100)
_WEEKS_FOR_A_NAME = 3
#: Words in the place of a topic once all are taught.
REVIEW = "review"
#: More weeks in a row than these are written as one.
IN_A_ROW = 2


class YearRow(Struct, frozen=True):
    """A week: its number and nights, its topic, whether pages on it are composed, and what comes back.

    ``called`` is empty where all topics are taught; ``back`` are the weeks of the topics that come back.
    """

    week: int
    nights: tuple[date, ...]
    called: str
    codes: tuple[str, ...]
    composed: bool
    back: tuple[int, ...]

    @property
    def days(self) -> str:
        """Return its first and its last night in short, such as 8 Sep to 11 Sep.

        >>> YearRow(1, (date(2026, 9, 8), date(2026, 9, 11)), "", (), True, ()).days
        '8 Sep to 11 Sep'
        """
        first, last = self.nights[0], self.nights[-1]
        return day_name(first) if first == last else f"{day_name(first)} to {day_name(last)}"

    @property
    def comes_back(self) -> str:
        """Say the topics of which weeks come back; "" for none.

        >>> YearRow(9, (date(2026, 11, 2),), "", (), True, (1, 2, 3, 7)).comes_back
        'weeks 1 to 3, 7'
        """
        return _weeks(self.back) if self.back else ""

    @property
    def own(self) -> str:
        """Say what is asked of the teacher; "" where nothing is."""
        return "" if self.composed else "the pages bring earlier topics back; set your own on this topic"


def year_picture(rows: Sequence[YearRow], *, grid: bool = True) -> str:
    """Write the weeks of a year as one ``svg`` element, in millimetres.

    >>> row = YearRow(1, (date(2026, 9, 8),), "adding", ("4.NBT.B.4",), True, ())
    >>> "Adding: taught in week 1." in year_picture([row])
    True
    """
    topics = [row for row in rows if row.called]
    back = {row.week: frozenset(at.week for at in rows if row.week in at.back) for row in topics}
    scene = year_weeks([TopicWeeks(row.week, back[row.week]) for row in topics], len(rows))
    told = " ".join(_told(row, back[row.week]) for row in topics)
    page = squared_page("year", "The weeks of the year", told, scene.width, scene.height, grid=grid)
    draw(page, scene, ClassWords())
    for at, row in enumerate(topics, start=1):
        words(page, EDGE, top_of(at) + ROW * 7 / 10, _begun(row.called), "start", size=_NAME)
    for week, month in _months(rows):
        words(page, left_of(week), HEAD - Fraction(6), month, "start", size=_MONTH)
    return tostring(page, encoding="unicode")


def _months(rows: Sequence[YearRow]) -> Iterator[tuple[int, str]]:
    """Yield each month with its first week, where there is room for its name before the next one."""
    begins = [
        (row.week, month_name(row.nights[0]))
        for before, row in zip((None, *rows), rows, strict=False)
        if before is None or month_name(before.nights[0]) != month_name(row.nights[0])
    ]
    ends = [week for week, _ in begins[1:]] + [len(rows) + 1]
    return (one for one, end in zip(begins, ends, strict=True) if end - one[0] >= _WEEKS_FOR_A_NAME)


def _told(row: YearRow, back: frozenset[int]) -> str:
    again = f"; comes back in {_weeks(sorted(back))}" if back else ""
    return f"{_begun(row.called)}: taught in week {row.week}{again}."


def _weeks(weeks: Sequence[int]) -> str:
    """Write the numbers of weeks, those in a row as one.

    >>> _weeks((4, 5)), _weeks((9,))
    ('weeks 4, 5', 'week 9')
    """
    parts: list[list[int]] = []
    for week in weeks:
        if parts and parts[-1][-1] == week - 1:
            parts[-1].append(week)
        else:
            parts.append([week])
    said = (f"{one[0]} to {one[-1]}" if len(one) > IN_A_ROW else ", ".join(map(str, one)) for one in parts)
    return f"week{'s' * (len(weeks) > 1)} {', '.join(said)}"


def _begun(said: str) -> str:
    return said[:1].upper() + said[1:]
