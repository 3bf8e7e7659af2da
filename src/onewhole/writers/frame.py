"""What every page of a sheet has round it: paper, size of print, title."""

from onewhole.languages.table import SPOKEN, spoken_by
from onewhole.sheets.header import Header
from onewhole.writers.printed import Json

UNTITLED = SPOKEN.page.untitled


def frame(header: Header, *, title: str | None = None, small: str | None = None) -> Json:
    """Return the data that every page takes; ``title`` and ``small`` stand over the page's own."""
    language = spoken_by(header.words)
    where = ", ".join(part for part in (header.class_name, header.date) if part)
    found: Json = {
        "title": title or header.title or language.page.untitled,
        "paper": header.paper.value,
        "print": header.print.value,
        "lang": language.tag,
        "page_of": language.page.page_of,
    }
    over = small if small is not None else where
    if over:
        found["small_title"] = over
    return found


def named(header: Header) -> str:
    """Return the page's name and day, to stand over a page that belongs to it."""
    return ", ".join(
        part for part in (header.title or spoken_by(header.words).page.untitled, header.date) if part
    )
