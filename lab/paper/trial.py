"""Invented pupils' papers photographed and read: every cell with what was written and what was made of it."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from functools import cache
from random import Random
from typing import Final

import numpy as np
import pypdfium2

from lab.paper.hands import Grey, Hand, Pen, can_be_written
from lab.pupils import school_class
from lab.rates import USUAL
from lab.steps import page_of
from lab.trials import problems
from onewhole.desk.page.print_pages import fitted_pupil_page
from onewhole.marking.paper.foreseen import Foreseen
from onewhole.marking.paper.ink_reading import InkReading
from onewhole.marking.paper.judging import judged
from onewhole.marking.paper.read_cell import ReadCell
from onewhole.marking.reading.expected import expect
from onewhole.presses.blank_pages import blank_pages
from onewhole.presses.page_map import page_map
from onewhole.presses.paper.ink import read_ink
from onewhole.presses.paper.reading_pages import KnownPaper, read_pages
from onewhole.presses.pdf import press
from onewhole.sheets.page_map import AnswerBox, PageMap
from onewhole.sheets.page_marks import page_key
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.marked import of_pupil
from onewhole.writers.printed import Printed
from tests.kit.photos import Shot, jpeg, photographed

#: Picture elements a millimetre of a paper before it is photographed.
FINE: Final = 10
_POINTS: Final = 72 / 25.4
_WHEN: Final = datetime(2025, 3, 6, 7, 30, tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class Sheet:
    """A sheet as it is printed with marks, and what its papers are read by."""

    name: str
    typed: tuple[str, ...]
    head: str

    @property
    def text(self) -> str:
        """Return it as a teacher types it."""
        rows = (f"{number}. {typed}" for number, typed in enumerate(self.typed, start=1))
        return "\n".join((self.head, "", *rows, ""))

    def known(self) -> KnownPaper:
        """Return its map and blank pages."""
        return KnownPaper(_map(self.text), lambda: _blank(self.text))


@dataclass(frozen=True, slots=True)
class Cell:
    """One answer: what a pupil wrote, what its picture says, and how it is judged with what is expected."""

    wrote: str
    ink: InkReading | None
    judged: Callable[[int], ReadCell]


def papers(
    sheet: Sheet, hand: Callable[[Random], Hand], shot: Shot, pupils: int, seed: str, *, tall: float = 8.5
) -> tuple[Cell, ...]:
    """Return every cell of so many pupils' papers, each photographed once a page.

    A cell that was in no picture has no ink, so that it counts as one that was not read.
    """
    asked = problems(sheet.typed)
    files, wrote = [], {}
    for at, pupil in enumerate(school_class(USUAL, pupils, seed)):
        chance = Random(f"{seed} {pupil.code} hand")
        answers = dict(zip(sheet.typed, page_of(pupil, asked, seed), strict=True))
        written = {str(number): answers[typed] for number, typed in enumerate(sheet.typed, start=1)}
        written = {label: text if can_be_written(text) else "" for label, text in written.items()}
        wrote[pupil.code] = written
        pen = Pen(hand(chance), chance, FINE, tall * chance.uniform(0.85, 1.1), chance.uniform(0.45, 0.9))
        for number, page in enumerate(_written(sheet.text, pupil.code, pen, written), start=1):
            turned = replace(shot, turn=shot.turn + chance.uniform(-3, 3))
            seen = photographed(page, FINE, turned, chance.randrange(1 << 30))
            files.append((f"{at}-{number}.jpg", jpeg(seen, shot.quality)))
    found = read_pages(files, [sheet.known()], tuple(wrote))
    cut = {(page.pupil, cell.label): cell for page in found.pages if page.pupil for cell in page.cells}
    read = read_ink([one.crop for one in cut.values()], [one.finer for one in cut.values()])
    inks = dict(zip(cut, read, strict=True))
    expected = {str(number): expect(problem) for number, problem in enumerate(asked, start=1)}

    def judge(ink: InkReading, label: str) -> Callable[[int], ReadCell]:
        return lambda limit: judged(ink, Foreseen(expected[label]), limit)

    nothing = InkReading((), 0, 0)
    return tuple(
        Cell(text, inks.get((code, label)), judge(inks.get((code, label), nothing), label))
        for code, written in wrote.items()
        for label, text in written.items()
    )


def _written(text: str, code: str, pen: Pen, answers: dict[str, str]) -> Iterator[Grey]:
    for page, drawn in zip(_map(text).pages, _drawn(text, code), strict=True):
        paper = drawn.copy()
        for cell in page.cells:
            pen.write(_place(paper, cell), answers[cell.label], windows=_windows(cell))
        yield paper


def _place(paper: Grey, cell: AnswerBox) -> Grey:
    box = cell.box
    left, top = box.left * FINE // 100, box.top * FINE // 100
    return paper[top : top + box.height * FINE // 100, left : left + box.width * FINE // 100]


def _windows(cell: AnswerBox) -> tuple[tuple[float, float, float, float], ...]:
    return tuple(
        (
            (one.left - cell.box.left) / 100,
            (one.top - cell.box.top) / 100,
            (one.left - cell.box.left + one.width) / 100,
            (one.top - cell.box.top + one.height) / 100,
        )
        for one in cell.windows
    )


@cache
def _page(text: str) -> Printed:
    return fitted_pupil_page(WorkedSheet(read_sheet(text))).page


@cache
def _map(text: str) -> PageMap:
    return page_map(_page(text), page_key(read_sheet(text)))


@cache
def _blank(text: str) -> Sequence[Grey]:
    return blank_pages(_page(text))


def _drawn(text: str, code: str) -> list[Grey]:
    plain = _page(text)
    page = Printed(plain.kind, plain.data | {"pupil": of_pupil(code)})
    document = pypdfium2.PdfDocument(press(page.source, data=page.content, when=_WHEN))
    drawn = [
        np.array(one.render(scale=FINE / _POINTS, grayscale=True).to_numpy(), dtype=np.uint8)
        for one in document
    ]
    return [one[..., 0] if one.ndim == 3 else one for one in drawn]
