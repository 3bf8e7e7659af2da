"""A year to print: one picture and one table."""

from collections.abc import Sequence

from onewhole.sheets.header import Header
from onewhole.writers.frame import frame
from onewhole.writers.printed import Json, Printed
from onewhole.writers.year_rows import REVIEW, YearRow, year_picture

SHOWS = (
    "Hatched: the week in which a topic is taught. A small box: a week in which it comes back. The table has "
    "the same in words."
)
SOURCE = (
    "The weeks are common practice, no source; the standards set no order inside a year. What comes back is "
    "spaced by how a skill lasts, as for a class of which nothing is known yet."
)


def year_page(rows: Sequence[YearRow], header: Header, *, grade: int, told: str) -> Printed:
    """Return the year as a page; ``told`` says in a sentence how many nights it has."""
    data = frame(header, title=f"Grade {grade}, week by week", small=header.class_name or None)
    data |= {
        "told": told,
        "shows": SHOWS,
        "source": SOURCE,
        "picture": {"svg": year_picture(rows, grid=False), "alt": f"The weeks of the year. {SHOWS}"},
        "heads": ["Week", "Nights", "Topic", "Standards", "What comes back"],
        "rows": [_row(row) for row in rows],
    }
    return Printed("year", data)


def _row(row: YearRow) -> Json:
    called = row.called or REVIEW
    return {
        "week": str(row.week),
        "nights": f"{row.days} ({len(row.nights)})",
        "topic": called[:1].upper() + called[1:],
        "own": row.own,
        "codes": list(row.codes),
        "back": row.comes_back,
    }
