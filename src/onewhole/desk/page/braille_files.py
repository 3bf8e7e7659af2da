"""The pages of a sheet in braille, as files for an embosser, for a braille display and for a screen."""

from collections.abc import Iterable, Mapping
from enum import Enum
from types import MappingProxyType

from onewhole.desk.page.print_choice import SheetPage
from onewhole.desk.page.put_pages import Ready
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.braille_page import BraillePage, braille_key_page, braille_pupil_page
from onewhole.writers.tactile_page import tactile_pages


class BrailleFile(Enum):
    """A page in braille as a file, by its name: ASCII braille, or Unicode braille."""

    PUPIL = "pupil.brf"
    PUPIL_UNICODE = "pupil-braille.txt"
    KEY = "key.brf"
    KEY_UNICODE = "key-braille.txt"


_WRITERS = MappingProxyType({SheetPage.PUPIL: braille_pupil_page, SheetPage.KEY: braille_key_page})
_PAGES: Mapping[BrailleFile, SheetPage] = MappingProxyType(
    {
        BrailleFile.PUPIL: SheetPage.PUPIL,
        BrailleFile.PUPIL_UNICODE: SheetPage.PUPIL,
        BrailleFile.KEY: SheetPage.KEY,
        BrailleFile.KEY_UNICODE: SheetPage.KEY,
    }
)


def braille_where_asked(worked: WorkedSheet) -> tuple[Ready, ...]:
    """Return the pages in braille of a sheet that asks for them; none of another. Raises NoBrailleError.

    The amounts of each problem that is drawn as strips are a picture of raised lines: tactile-1.svg.
    """
    if not worked.header.braille:
        return ()
    pictures = (Ready(f"tactile-{one.label}", "svg", one.svg.encode()) for one in tactile_pages(worked))
    return (*braille_ready(worked, BrailleFile), *pictures)


def braille_ready(worked: WorkedSheet, wanted: Iterable[BrailleFile]) -> tuple[Ready, ...]:
    """Return pages of a sheet in braille, ready for a folder. Raises NoBrailleError."""
    written: dict[SheetPage, BraillePage] = {}
    found: list[Ready] = []
    for one in wanted:
        page = _PAGES[one]
        if page not in written:
            written[page] = _WRITERS[page](worked)
        name, _, ending = one.value.partition(".")
        found.append(Ready(name, ending, written[page].brf if ending == "brf" else written[page].text))
    return tuple(found)
