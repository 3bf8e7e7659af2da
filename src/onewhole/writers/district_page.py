"""A district's report to print."""

from onewhole.marking.district.district_found import DistrictFound
from onewhole.sheets.header import Header
from onewhole.writers.district_picture import difficulty_picture, right_told
from onewhole.writers.district_told import DISTRICT_TITLE, ToldTable, district_sentences, district_tables
from onewhole.writers.frame import frame
from onewhole.writers.printed import Json, Printed

#: So many columns of numbers stand beside the names on a page; more go on in a table below.
ACROSS = 6


def district_page(found: DistrictFound) -> Printed:
    """Return the report as a page."""
    data = frame(Header(), title=DISTRICT_TITLE)
    alt = " ".join(f"{one.kind.name}: {right_told(one)}." for one in found.difficulty)
    data |= {
        "sentences": list(district_sentences(found)),
        "picture": {"svg": difficulty_picture(found.difficulty), "alt": alt or "Nothing can be shown."},
        "difficulty": "How hard each kind is",
        "tables": [part for one in district_tables(found) for part in _parts(one)],
    }
    return Printed("district", data)


def _parts(told: ToldTable) -> list[Json]:
    """Cut a table of many columns into several with the same rows."""
    if told.heads[0] == "Problem":
        return [_part(told, range(1, len(told.heads)), wide=True)]
    columns = range(1, len(told.heads))
    starts = columns[::ACROSS]
    return [_part(told, columns[at - 1 : at - 1 + ACROSS], wide=False) for at in starts]


def _part(told: ToldTable, columns: range, *, wide: bool) -> Json:
    kept = (0, *columns)
    return {
        "title": told.title,
        "says": told.says,
        "wide": wide,
        "heads": [told.heads[at] for at in kept],
        "rows": [[row[at] for at in kept] for row in told.rows],
    }
