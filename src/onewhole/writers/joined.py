"""Several pages in one file: one print job, in the order in which they are wanted."""

from collections.abc import Iterable, Sequence

from onewhole.languages.table import spoken_by
from onewhole.sheets.header import Header
from onewhole.writers.printed import Json, Printed


def joined(
    pages: Iterable[tuple[Printed, int | Sequence[Json]]],
    header: Header,
    *,
    title: str,
    both_sides: bool = False,
) -> Printed:
    """Return pages, each with how many copies are wanted or what each has besides, as one page for the press.

    Each page keeps its own numbers ("page 1 of 2"). ``both_sides`` begins each one, and each copy, on a new
    sheet of paper where the printer prints on both sides. ``title`` is the file's.

    >>> one = Printed("key", {"title": "Kites"})
    >>> found = joined([(one, 2)], Header(), title="Kites, to print").data
    >>> found["title"], [(page["kind"], page["copies"]) for page in found["pages"]]
    ('Kites, to print', [('key', [{}, {}])])
    """
    laid: list[Json] = [
        {"kind": page.kind, "data": page.data, "copies": [{}] * copies if isinstance(copies, int) else copies}
        for page, copies in pages
    ]
    return Printed(
        "joined",
        {
            "title": title,
            "lang": spoken_by(header.words).tag,
            "paper": header.paper.value,
            "both_sides": both_sides,
            "pages": laid,
        },
    )
