"""A class's answers for the district, without names: a Parquet file a night."""

from datetime import date
from io import BytesIO
from pathlib import Path
from zipfile import ZipFile, ZipInfo

from msgspec import Struct

from onewhole.desk.classes.class_records import (
    Classroom,
    NightPage,
    named,
    night_pages,
    room,
    standing_answers,
)
from onewhole.desk.district.engines import needed
from onewhole.desk.district.school_key import pupil_hash
from onewhole.marking.district.shared_paper import SharedPaper, as_answered, as_asked, paper_lines
from onewhole.presses.files import write
from onewhole.presses.folders import made
from onewhole.store.opening import Store

#: What is told before the files are given away.
SHARING_CAUTION = (
    "These are answers of children, without names. Whoever has the school's key can tell whose they are: "
    "keep the key at the school. Give the files only where the law and the school allow it, and note to whom."
)
#: The first and the last day.
Days = tuple[date | None, date | None]
_PLAIN = frozenset("abcdefghijklmnopqrstuvwxyz0123456789")
#: The date of files in an archive: the same papers give the same bytes.
_NO_DAY = (1980, 1, 1, 0, 0, 0)


class SharedNight(Struct, frozen=True):
    """A night's papers as a file: its name, its bytes, how many papers, how many problems were left out."""

    name: str
    content: bytes
    papers: int
    left_out: int


def shared_nights(
    book: Store, room_number: int, school: str, key: bytes, days: Days = (None, None)
) -> tuple[SharedNight, ...]:
    """Return the papers of a class's nights from one day to another, a file a night; none of no papers.

    Where the first or the last day is None, there is no such bound.

    Of an answer that cannot be read, and of a problem that is more than its numbers and signs, nothing is
    passed on. Raises NotThere, and InputError for a school without a name and where Polars is missing.
    """
    needed("polars")
    from onewhole.presses.district.paper_files import paper_bytes  # noqa: PLC0415

    school, (first, last) = named(school, "The school"), days
    found = []
    with book.snapshot() as seen:
        here = room(seen, room_number)
        for page in night_pages(seen, room_number):
            if (first is None or first <= page.night.day) and (last is None or page.night.day <= last):
                papers, left_out = _papers(seen, here, page, school, key)
                if papers:
                    name = f"{_plain(here.name)}-{page.night.day.isoformat()}-{page.night.number}.parquet"
                    found.append(SharedNight(name, paper_bytes(papers), len(papers), left_out))
    return tuple(found)


def put_shared(nights: tuple[SharedNight, ...], folder: Path, school: str) -> tuple[Path, ...]:
    """Write the files of some nights into the school's own folder, for their owner alone. Raises FileRefused.

    A file of the same class and night is replaced.
    """
    place = made(folder / _plain(school), private=True)
    paths = tuple(place / night.name for night in nights)
    for path, night in zip(paths, nights, strict=True):
        write(path, night.content, private=True)
    return paths


def shared_archive(nights: tuple[SharedNight, ...], school: str) -> bytes:
    """Return the same folder as a ZIP file."""
    held = BytesIO()
    with ZipFile(held, "w") as archive:
        for night in nights:
            archive.writestr(ZipInfo(f"{_plain(school)}/{night.name}", _NO_DAY), night.content)
    return held.getvalue()


def _papers(
    book: Store, here: Classroom, page: NightPage, school: str, key: bytes
) -> tuple[tuple[SharedPaper, ...], int]:
    asked = [(at, problem, as_asked(problem)) for at, problem in enumerate(page.sheet.problems)]
    kept = [(at, problem, told) for at, problem, told in asked if told is not None]
    problems = paper_lines([told for _, _, told in kept])
    papers = []
    for row in standing_answers(book, page, here) if kept else ():
        answers = [as_answered(row.texts[at], problem) for at, problem, _ in kept]
        if any(answers):
            whose = pupil_hash(key, school, here.name, row.pupil)
            night, grade = page.night.day, page.sheet.header.grade
            papers.append(SharedPaper(whose, here.name, school, night, grade, problems, paper_lines(answers)))
    return tuple(papers), len(asked) - len(kept)


def _plain(name: str) -> str:
    """Return a name as a part of a file's name."""
    letters = "".join(sign if sign in _PLAIN else "-" for sign in name.casefold())
    return "-".join(filter(None, letters.split("-"))) or "class"
