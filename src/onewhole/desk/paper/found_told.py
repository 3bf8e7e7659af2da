"""What was found when the papers of a class were read, in sentences for the teacher."""

from collections.abc import Iterable, Iterator

from msgspec.structs import replace

from onewhole.desk.classes.class_records import Classroom, room
from onewhole.desk.page.printed_ways import night_printed
from onewhole.findings.in_papers import PaperFinding, PaperMissing, StrangeCell, UnawaitedPaper
from onewhole.findings.in_pictures import OtherPage, PageMissing, SameTwice
from onewhole.languages.english.in_papers import found_in_papers
from onewhole.languages.english.nights_told import day_said
from onewhole.notations.sentences.text import text_of
from onewhole.store.opening import Store


def found_told(book: Store, room_number: int, night: int, found: Iterable[PaperFinding]) -> tuple[str, ...]:
    """Tell what was found in the papers of a night, in sentences: a page of another night by its name.

    Pupils are told as the teacher knows them. Raises NotThere for a class that is not there.
    """
    with book.snapshot() as seen:
        return tuple(_told(seen, room(seen, room_number), night, found))


def _told(book: Store, here: Classroom, night: int, found: Iterable[PaperFinding]) -> Iterator[str]:
    for one in found:
        match one:
            case OtherPage(_, key, _):
                yield text_of(found_in_papers(one, _printed_for(book, here, night, key)))
            case (
                PaperMissing(code)
                | StrangeCell(code)
                | UnawaitedPaper(code)
                | SameTwice(code)
                | PageMissing(code)
            ):
                yield text_of(found_in_papers(replace(one, pupil=here.shown(code))))
            case _:
                yield text_of(found_in_papers(one))


def _printed_for(book: Store, here: Classroom, night: int, key: int) -> str:
    """Say of which night a printed page is, or that this one was changed since; nothing for neither."""
    known = night_printed(book, here.number, key)
    if known is None:
        return ""
    page, _ = known
    if page.night.number == night:
        return f"“{page.name}” as it was before it was changed"
    return f"“{page.name}” of {day_said(page.night.day).text}"
