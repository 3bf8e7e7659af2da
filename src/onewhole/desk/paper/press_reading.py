"""The machine that looks at pictures of papers, for a night of a class or for a sheet in a file.

What it needs is large and is loaded when it looks for the first time.
"""

from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from functools import partial
from typing import TYPE_CHECKING

from msgspec.structs import replace

from onewhole.desk.classes.class_languages import languages_of
from onewhole.desk.classes.class_records import night_page, room
from onewhole.desk.page.class_prints import prints_of
from onewhole.desk.page.printed_ways import (
    PrintedWay,
    blank_printed,
    class_ways,
    map_printed,
    printed_ways,
)
from onewhole.desk.paper.seen_papers import NamedPicture, SeenCell, SeenPapers, SeesPapers
from onewhole.findings.in_pictures import Nobody
from onewhole.marking.paper.ink_reading import InkReading
from onewhole.marking.paper.written_code import written_code
from onewhole.sheets.class_languages import in_languages
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import CornerMarks, Header
from onewhole.sheets.page_marks import page_key
from onewhole.store.opening import Store

if TYPE_CHECKING:
    from onewhole.presses.paper.cells import CutCell
    from onewhole.presses.paper.reading_pages import PagesRead
    from onewhole.presses.paper.seen_marks import Grey


def sees_papers(book: Store, room_number: int, night: int) -> SeesPapers:
    """Return what looks at pictures of a night's papers: by the codes of its class, as it prints its pages.

    A page that was printed another way is known too, once one is in the pictures. Raises NotThere.
    """
    with book.snapshot() as seen:
        page, here = night_page(seen, room_number, night), room(seen, room_number)
        spoken = in_languages(page.sheet, languages_of(seen, room_number))
        header = prints_of(seen, room_number).of(spoken.header)
    codes = tuple(pupil.code for pupil in here.pupils)
    return _sees(partial(class_ways, page.sheet), _usual(page.sheet, header), codes)


def sees_sheet(sheet: Sheet, codes: Collection[str]) -> SeesPapers:
    """Return what looks at pictures of a sheet's papers, whose codes are among these."""
    return _sees(partial(printed_ways, sheet), _usual(sheet, sheet.header), tuple(codes))


def _usual(sheet: Sheet, header: Header) -> PrintedWay:
    """Return the way in which a sheet is printed with these settings; with lines where they name no marks."""
    marks = CornerMarks.LINES if header.marks is CornerMarks.NONE else header.marks
    printed = replace(sheet, header=replace(header, marks=marks))
    return PrintedWay(page_key(printed), printed)


def _sees(
    ways: Callable[[], Mapping[int, PrintedWay]], usual: PrintedWay, codes: Collection[str]
) -> SeesPapers:
    def sees(pictures: Iterable[NamedPicture]) -> SeenPapers:
        """Look at pictures, each once; a page that was printed another way is known when it comes."""
        from onewhole.presses.paper.ink import read_ink  # noqa: PLC0415 - see the house's list
        from onewhole.presses.paper.reading_pages import KnownPaper, read_pages  # noqa: PLC0415

        there = {**ways(), usual.key: usual}

        def known(key: int) -> KnownPaper | None:
            way = there.get(key)
            return None if way is None else KnownPaper(map_printed(way), partial(blank_printed, way))

        first = known(usual.key)
        assert first is not None
        read = read_pages(pictures, [first], codes, more=known)
        cells, nobody = _owned(read, codes, read_ink)
        inks = read_ink([cell.crop for _, cell in cells], [cell.finer for _, cell in cells])
        return SeenPapers(
            tuple(
                SeenCell(code, cell.label, cell.png(), ink)
                for (code, cell), ink in zip(cells, inks, strict=True)
            ),
            (*read.found, *nobody),
        )

    return sees


def _owned(
    read: "PagesRead", codes: Collection[str], reads: Callable[[Sequence["Grey"]], Sequence[InkReading]]
) -> tuple[list[tuple[str, "CutCell"]], list[Nobody]]:
    """Return the cells of pages whose pupil is known, by a printed code or a written one, and the others."""
    strangers = {(one.picture, one.page) for one in read.found if isinstance(one, Nobody)}
    cells: list[tuple[str, CutCell]] = []
    nobody: list[Nobody] = []
    for page in read.pages:
        code = page.pupil
        if code is None and (page.picture, page.page) not in strangers:
            code = written_code(reads([box.crop for box in page.letters]), codes)
            if code is None:
                nobody.append(Nobody(page.picture, page.page, stranger=False))
        if code is not None:
            cells += [(code, cell) for cell in page.cells]
    return cells, nobody
