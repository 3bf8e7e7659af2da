"""Pictures of papers taken apart: whose page each is, and the place of every answer cut out."""

import os
from collections import defaultdict, deque
from collections.abc import Callable, Collection, Iterable, Iterator, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass, field
from threading import Lock
from typing import Final

import numpy as np
from msgspec import Struct

from onewhole.findings.in_pictures import (
    HalfPage,
    Nobody,
    NoPage,
    NotFlat,
    OtherPage,
    PageMissing,
    PictureFinding,
    PicturesLeft,
    SameTwice,
)
from onewhole.presses.paper.cells import CutCell, crop_of, cut_cell
from onewhole.presses.paper.decoding import GreyPage, decoded
from onewhole.presses.paper.found_papers import (
    ENOUGH,
    FoundPaper,
    MarkedPage,
    found_papers,
    in_picture,
    other_pages,
    within,
)
from onewhole.presses.paper.matching import LaidPage, laid, seen_through
from onewhole.presses.paper.seen_marks import Grey, SeenMark, seen_marks
from onewhole.sheets.page_map import MappedPage, PageBox, PageMap
from onewhole.sheets.page_marks import PageMarks, corner_marks
from onewhole.sheets.pupil_marks import pupil_marked

#: So many files are looked at: those of a class of 60 with two photos a page of four.
MOST_FILES: Final = 500
#: Of the print of our own page so much must be found in the picture: less is another page, or a crumpled one.
_SHARE: Final = 0.3
#: The place for the code is looked at with so many picture elements a millimetre, and so much around it.
_FINE: Final = 12
_ROUND_CODE: Final = 200
#: A mark of the code stands where the map says, but for so many millimetres.
_CODE_OFF: Final = 3.0
#: More processes at a time decode no faster on a teacher's computer.
_MOST_AT_ONCE: Final = 4


class KnownPaper(Struct, frozen=True, eq=False):
    """A printed version that a page may be of: its map, and how its blank pages look (4 a millimetre)."""

    map: PageMap
    draw: Callable[[], Sequence[Grey]]


class ReadPage(Struct, frozen=True, eq=False):
    """A page in a picture: which printed version and page it is, whose, and the places for its answers.

    Where ``pupil`` is None nothing printed says whose it is: ``code`` is the place where a code is written,
    and ``letters`` are its boxes. ``sharp`` says how sharp the picture is, to choose among several.
    """

    picture: str
    key: int
    page: int
    pupil: str | None
    cells: tuple[CutCell, ...]
    code: CutCell
    letters: tuple[CutCell, ...]
    sharp: float


class PagesRead(Struct, frozen=True, eq=False):
    """The pages of all pictures, in the order of the files, and what was found beside them."""

    pages: tuple[ReadPage, ...]
    found: tuple[PictureFinding, ...]


def _no_more(key: int) -> None:
    """Know no other printed version, whatever its key."""
    assert key >= 0, key


def read_pages(
    files: Iterable[tuple[str, bytes]],
    known: Sequence[KnownPaper],
    codes: Collection[str] = (),
    *,
    more: Callable[[int], KnownPaper | None] = _no_more,
) -> PagesRead:
    """Return the pages in files of pictures, each a name and its bytes; it is asked for when it is its turn.

    ``known`` are the printed versions that a page may be of, ``codes`` the codes of the class; ``more`` is
    asked once for each other key that a page shows, and may know it. A bad file never stops the others, and
    whatever could not be used is told. Of one page of one pupil the sharpest is kept.
    """
    pages = tuple(page for one in known for page in _marked(one))
    reader = _Reader(tuple(known), pages, tuple(codes), more)
    there: list[ReadPage] = []
    found: list[PictureFinding] = []
    for one in _at_once(reader.read, files):
        for page in one:
            (there if isinstance(page, ReadPage) else found).append(page)  # type: ignore[arg-type]
    kept, twice = _once(there)
    return PagesRead(kept, (*found, *twice, *_missing(kept, reader.known)))


@dataclass(slots=True)
class _Reader:
    """Reads files against the same printed versions; blank pages are drawn once, and only where needed."""

    known: tuple[KnownPaper, ...]
    pages: tuple[MarkedPage, ...]
    codes: Sequence[str]
    more: Callable[[int], KnownPaper | None]
    _asked: set[int] = field(default_factory=set)
    _blanks: dict[int, Sequence[Grey]] = field(default_factory=dict)
    _lock: Lock = field(default_factory=Lock)

    def read(self, file: tuple[str, bytes] | None) -> list[ReadPage | PictureFinding]:
        """Return what is in one file; None is one too many."""
        if file is None:
            return [PicturesLeft(MOST_FILES)]
        name, content = file
        found: list[ReadPage | PictureFinding] = []
        for one in decoded(content, name, [one.numbers for one in self.pages]):
            found.extend(self._pages(one) if isinstance(one, GreyPage) else [one])
        return found

    def _pages(self, picture: GreyPage) -> Iterator[ReadPage | PictureFinding]:
        papers = found_papers(picture.marks, self.pages)
        if self._learnt(_outside(picture.marks, papers)):
            papers = found_papers(picture.marks, self.pages)
        told = False
        for paper in papers:
            page = laid(picture.grey, paper, self._blank(paper))
            told = True
            if page.share < _SHARE:
                yield NotFlat(picture.name)
            else:
                yield from self._page(picture, paper, page)
        for finding in self._rest(picture.name, _outside(picture.marks, papers)):
            told = True
            yield finding
        if not told:
            yield NoPage(picture.name)

    def _learnt(self, marks: Sequence[SeenMark]) -> bool:
        """Ask for the printed versions that these marks are of; whether one of them is known now."""
        learnt = False
        with self._lock:
            for key in {says.key for says in other_pages(marks)} - {one.map.key for one in self.known}:
                paper = None if key in self._asked else self.more(key)
                self._asked.add(key)
                if paper is not None:
                    self.known, self.pages = (*self.known, paper), (*self.pages, *_marked(paper))
                    learnt = True
        return learnt

    def _blank(self, paper: FoundPaper) -> Grey:
        with self._lock:
            if paper.key not in self._blanks:
                (of,) = (one for one in self.known if one.map.key == paper.key)
                self._blanks[paper.key] = of.draw()
            return self._blanks[paper.key][paper.page.number - 1]

    def _page(
        self, picture: GreyPage, paper: FoundPaper, page: LaidPage
    ) -> Iterator[ReadPage | PictureFinding]:
        marks = _code_marks(picture.grey, paper.page, page)
        pupil = pupil_marked(marks, self.codes) if len(marks) == len(paper.page.pupil_marks) else None
        if pupil is None and marks:
            yield Nobody(picture.name, paper.page.number, stranger=True)
        around = page.around(paper.page.pupil)
        yield ReadPage(
            picture.name,
            paper.key,
            paper.page.number,
            pupil,
            tuple(cut_cell(picture.grey, page, cell) for cell in paper.page.cells),
            CutCell("", crop_of(picture.grey, around, paper.page.pupil)),
            tuple(
                CutCell(str(at), crop_of(picture.grey, around, box, frame=0.7))
                for at, box in enumerate(paper.page.letters, start=1)
            ),
            page.sharp,
        )

    def _rest(self, name: str, marks: Sequence[SeenMark]) -> Iterator[PictureFinding]:
        """Tell of marks that belong to no page that was found: half a page, or a page of another version."""
        left = {mark.number for mark in marks}
        halves = [there for one in self.pages if (there := len(left.intersection(one.numbers)))]
        others = other_pages(marks)
        ours = {one.map.key for one in self.known}
        for says in dict.fromkeys(others):
            yield NotFlat(name) if says.key in ours else OtherPage(name, says.key, says.page)
        if halves and not others:
            most = max(halves)
            yield HalfPage(name, most) if most < ENOUGH else NotFlat(name)
        elif len(marks) >= ENOUGH - 1 and not others:
            yield HalfPage(name, len(marks)) if len(marks) < ENOUGH else NotFlat(name)


def _marked(paper: KnownPaper) -> Iterator[MarkedPage]:
    for page in paper.map.pages:
        yield MarkedPage(paper.map.key, page, corner_marks(PageMarks(paper.map.key, page.number)))


def _outside(marks: Sequence[SeenMark], papers: Sequence[FoundPaper]) -> list[SeenMark]:
    return [mark for mark in marks if not any(within(paper, mark) for paper in papers)]


def _code_marks(grey: Grey, page: MappedPage, lies: LaidPage) -> tuple[int, ...]:
    """Return the marks of the pupil's code, from the left, as many as are where they should be."""
    if not page.pupil_marks:
        return ()
    left, top = (max(0, side - _ROUND_CODE) / 100 for side in (page.pupil.left, page.pupil.top))
    wide = (page.pupil.width + 2 * _ROUND_CODE) * _FINE // 100
    high = (page.pupil.height + 2 * _ROUND_CODE) * _FINE // 100
    place = np.array([[1 / _FINE, 0, left], [0, 1 / _FINE, top], [0, 0, 1]])
    there = seen_through(grey, lies.around(page.pupil) @ place, wide, high)
    seen = seen_marks(there) or seen_marks(there, finely=True)
    found = []
    for box in page.pupil_marks:
        middle = _middle(box)
        near = [
            mark.number
            for mark in seen
            if np.linalg.norm(in_picture(place, mark.middle[None])[0] - middle) < _CODE_OFF
        ]
        found.extend(near[:1])
    return tuple(found)


def _middle(box: PageBox) -> tuple[float, float]:
    return (box.left + box.width / 2) / 100, (box.top + box.height / 2) / 100


def _once(pages: Sequence[ReadPage]) -> tuple[tuple[ReadPage, ...], list[SameTwice]]:
    """Keep the sharpest of each page of each pupil, and tell of the others."""
    best: dict[tuple[str, int, int], ReadPage] = {}
    twice = []
    for page in pages:
        if page.pupil is None:
            continue
        which = (page.pupil, page.key, page.page)
        before = best.get(which)
        if before is None:
            best[which] = page
            continue
        best[which], left = (page, before) if page.sharp > before.sharp else (before, page)
        twice.append(SameTwice(page.pupil, page.page, best[which].picture, left.picture))
    chosen = set(map(id, best.values()))
    return tuple(page for page in pages if page.pupil is None or id(page) in chosen), twice


def _missing(pages: Sequence[ReadPage], known: Sequence[KnownPaper]) -> Iterator[PageMissing]:
    """Tell of the pages that a pupil lacks of whom another page of the same version is there."""
    there: dict[tuple[int, str], set[int]] = defaultdict(set)
    for page in pages:
        if page.pupil is not None:
            there[page.key, page.pupil].add(page.page)
    wanted = {one.map.key: [page.number for page in one.map.pages if page.cells] for one in known}
    for (key, pupil), numbers in sorted(there.items()):
        missing = tuple(number for number in wanted[key] if number not in numbers)
        if missing:
            yield PageMissing(pupil, missing)


def _at_once(
    work: Callable[[tuple[str, bytes] | None], list[ReadPage | PictureFinding]],
    files: Iterable[tuple[str, bytes]],
) -> Iterator[list[ReadPage | PictureFinding]]:
    """Yield what comes of each file in their order; some are worked at a time, and few are in memory."""
    many = max(1, min(_MOST_AT_ONCE, os.cpu_count() or 1))
    waiting: deque[Future[list[ReadPage | PictureFinding]]] = deque()
    with ThreadPoolExecutor(many) as workers:
        for number, file in enumerate(files):
            waiting.append(workers.submit(work, file if number < MOST_FILES else None))
            if len(waiting) > many:
                yield waiting.popleft().result()
            if number == MOST_FILES:
                break
        while waiting:
            yield waiting.popleft().result()
