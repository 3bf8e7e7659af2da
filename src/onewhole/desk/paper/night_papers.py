"""The papers of a night as they are kept, and what is done so that cells, answers and threshold agree."""

from collections.abc import Collection, Iterable, Iterator, Mapping
from datetime import datetime

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.classes.class_records import Classroom, NightPage, night_page, room
from onewhole.desk.paper.judged_cells import Key, deciding_cells
from onewhole.desk.paper.paper_by import PaperReading, reading_of
from onewhole.desk.paper.paper_wishes import PaperWishes, paper_wishes
from onewhole.desk.paper.recent_fits import recent_fits
from onewhole.marking.paper.read_cell import ReadCell, by_limit, to_be_shown
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy
from onewhole.store.answers import KeptAnswer, answers_of, keep_answers
from onewhole.store.opening import Store
from onewhole.store.paper_cells import CellState, PaperCell, ReadBy, change_paper_cells, paper_cells_of


class NightPapers(Struct, frozen=True):
    """A night with its page, its class, the cells of its papers, its answers, and the wishes on papers."""

    room: Classroom
    page: NightPage
    cells: Mapping[Key, PaperCell]
    answers: Mapping[Key, KeptAnswer]
    wishes: PaperWishes

    def text(self, key: Key) -> str:
        """Return the answer that stands in a cell of the grid."""
        return self.answers[key].text if key in self.answers else ""

    def state(self, key: Key) -> CellState:
        """Return what is to be done with a cell: who typed its answer since it was read has looked at it."""
        cell = self.cells[key]
        since = self.typed(key) and self.answers[key].written > cell.written
        return CellState.CHECKED if since else cell.state

    def typed(self, key: Key) -> bool:
        """Say whether an answer stands there that did not come from a picture."""
        return bool(self.text(key).strip()) and reading_of(self.answers[key].by) is None


def night_papers(book: Store, room_number: int, night: int) -> NightPapers:
    """Return the papers of a night as they are kept. Raises NotThere."""
    with book.snapshot() as seen:
        return NightPapers(
            room(seen, room_number),
            night_page(seen, room_number, night),
            {one.key: one for one in paper_cells_of(seen, night)},
            {(one.code, one.problem): one for one in answers_of(seen, night)},
            paper_wishes(seen, room_number),
        )


def settle_cells(within: Store, papers: NightPapers, codes: Iterable[str], now: datetime) -> frozenset[Key]:
    """Judge the cells of some pupils anew by threshold and by what alone decides a group; write what changes.

    A reading that stands is the answer, by the program's name; one that is to be looked at is none, and is
    taken out where it was. What a person checked stays. Returns the cells that are to be looked at now and
    were not before. All within the transaction of ``within``.
    """
    mine = [key for key in papers.cells if key[0] in set(codes)]
    decides = _deciding(within, papers, sorted({code for code, _ in mine}))
    changed: list[PaperCell] = []
    answers: list[KeptAnswer] = []
    new: set[Key] = set()
    for key in mine:
        was = papers.cells[key]
        if was.by is ReadBy.PERSON:
            continue
        cell = _judged(was.cell, papers.wishes.limit(), decides=key in decides)
        if cell != was.cell:
            changed.append(replace(was, cell=cell))
            if PaperVerdict.UNSURE in {cell.verdict} - {was.cell.verdict}:
                new.add(key)
        answers.extend(_answer(papers, key, replace(was, cell=cell), now))
    change_paper_cells(within, papers.page.night.number, changed)
    keep_answers(within, answers)
    return frozenset(new)


def _judged(was: ReadCell, limit: int, *, decides: bool) -> ReadCell:
    """Judge a cell anew; that it once decided a group is forgotten where it does not any more."""
    free = was
    if was.why is PaperWhy.DECIDES:
        free = replace(was, verdict=PaperVerdict.UNSURE, why=PaperWhy.DOUBTFUL)
    cell = by_limit(free, limit)
    return to_be_shown(cell, PaperWhy.DECIDES) if decides and cell.text else cell


def _answer(papers: NightPapers, key: Key, cell: PaperCell, now: datetime) -> Iterator[KeptAnswer]:
    """Give the answer that is to be written where the program's reading changed what stands."""
    if papers.typed(key):
        return
    text = cell.cell.text if cell.cell.verdict is PaperVerdict.READ else ""
    if text != papers.text(key):
        by = PaperReading(cell.reading).by
        yield KeptAnswer(papers.page.night.number, key[0], key[1], text, now, by)


def _deciding(within: Store, papers: NightPapers, codes: Collection[str]) -> Collection[Key]:
    """Return the cells of some pupils that alone decide a group, as far as all likeliest readings go."""
    sheet = papers.page.sheet
    texts = {key: one.text for key, one in papers.answers.items()}
    for key, one in papers.cells.items():
        if one.by is ReadBy.PROGRAM and not papers.typed(key):
            texts[key] = one.cell.text
    recent = recent_fits(within, papers.page)
    return deciding_cells(sheet.problems, sheet.header.form, texts, codes, recent)
