"""docs/privacy.md: every place where something of a child can stand, and what becomes of it."""

from collections.abc import Iterator
from itertools import groupby

from onewhole.desk.keep.place import PlaceRow
from onewhole.desk.keep.places import DataPlace

HEAD = """\
# Where a child's data can stand

Made from the table of places (`src/onewhole/desk/keep/places.py`) by `python -m tools.docs`. The table is a
law of the code: a test works a class through a whole round (set, print, mark, tomorrow, save, back up, what
kills leave), erases a child, and holds every place to its row; a table, a file or a cache that no row tells
of turns it red. After erasing, no byte of the child's name or of an answer is in any file that the program
made, nor in any object of the running program, but where the teacher was told.

What a school's rules ask is told in [cautions.md](cautions.md), what keeps others out in
[browser.md](browser.md).
"""
AFTER = """
The finding of a pattern is held too, with how it is known, and with the caution that it is a hint for a talk,
never a label.

What was given out stays in the record as long as what is held on the child, and goes with it: that is what
FERPA asks of a record of disclosures (34 CFR 99.32, from memory). The page before erasing lists it once more,
since those who were given something may have to be told (GDPR, article 19, from memory).
"""


def places_page() -> str:
    """Return the page."""
    return "\n".join([HEAD, *_tables(), AFTER])


def _tables() -> Iterator[str]:
    for where, rows in groupby((place.value for place in DataPlace), key=lambda row: row.where):
        yield from (f"## {where.value[:1].upper()}{where.value[1:]}", "")
        yield "| what | where | when all is shown | when a child is erased | when the last day is over |"
        yield "| --- | --- | --- | --- | --- |"
        yield from map(_line, rows)
        yield ""


def _line(row: PlaceRow) -> str:
    found = row.found if " " in row.found else f"`{row.found}`"
    return f"| {row.what} | {found} | {row.held.value} | {row.erasing.value} | {row.last_day.value} |"
