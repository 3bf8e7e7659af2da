"""Pictures of cells go once they are checked; a reading is taken back; what was confirmed is learnt."""

from collections import defaultdict
from collections.abc import Iterator
from contextlib import suppress
from datetime import datetime, timedelta
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.classes.class_records import rooms
from onewhole.desk.keep.erasing import erased_in_backups
from onewhole.desk.paper.judged_cells import Key
from onewhole.desk.paper.night_papers import NightPapers, night_papers
from onewhole.desk.paper.paper_by import PaperReading
from onewhole.desk.paper.paper_wishes import PaperWishes, keep_wishes
from onewhole.errors import InputError
from onewhole.marking.paper.calibration import Looked
from onewhole.marking.paper.verdict import PaperWhy
from onewhole.store.answers import KeptAnswer, keep_answers, writings_of
from onewhole.store.keeping import clean
from onewhole.store.nights import KeptNight, nights_of
from onewhole.store.opening import Store
from onewhole.store.paper_cells import CellState, ReadBy, forget_paper_cells, nights_with_paper
from onewhole.store.refusals import StoreRefused
from onewhole.store.settings import set_setting, setting

#: So long pictures stay at most from the last reading of their night's papers on; our own, no source.
KEPT_FOR: Final = timedelta(days=30)


class FinishedPapers(Struct, frozen=True):
    """How many cells' pictures went; ``left`` are cells that wait to be looked at, which keep theirs.

    ``stays`` says that they stay, because the teacher wishes so.
    """

    cleared: int
    left: int
    stays: bool = False


class PapersBack(Struct, frozen=True):
    """A reading taken back: how many answers are as they were before, and the cells that stay, in words."""

    cells: int
    stay: tuple[str, ...]


def finish_papers(book: Store, room_number: int, night: int) -> FinishedPapers:
    """Take the pictures of a night's cells away once all are looked at, out of the automatic backups too.

    As long as one waits, all stay. Who reads what is kept beside each answer, also then. Where the class
    learns, what was confirmed is counted now, once. Raises NotThere and StoreRefused.
    """
    with book.transaction() as within:
        papers = night_papers(within, room_number, night)
        left = sum(papers.state(key) is CellState.OPEN for key in papers.cells)
        if left or not papers.cells:
            return FinishedPapers(0, left)
        _learn(within, papers)
        if papers.wishes.keeps:
            return FinishedPapers(0, 0, stays=True)
        forget_paper_cells(within, night)
    _without_trace(book, papers.page.night)
    return FinishedPapers(len(papers.cells), 0)


def sweep_papers(book: Store, *, now: datetime) -> int:
    """Take the pictures away of nights whose papers were last read 30 days ago or more, looked at or not.

    A cell that still waits then has no answer, as before: its paper can be read again, or its answer typed.
    What the teacher wishes to keep stays. Returns from how many nights pictures went. Raises StoreRefused.
    """
    old: list[KeptNight] = []
    for classroom in rooms(book):
        for night in nights_with_paper(book, classroom.number):
            with book.transaction() as within:
                papers = night_papers(within, classroom.number, night)
                last = max(one.written for one in papers.cells.values())
                if papers.wishes.keeps or now - last < KEPT_FOR:
                    continue
                _learn(within, papers)
                forget_paper_cells(within, night)
            old.append(papers.page.night)
    for one in old:
        _without_trace(book, one)
    return len(old)


def _without_trace(book: Store, night: KeptNight) -> None:
    """Take a night's cells, which are gone from the file, out of its log and the automatic backups too."""
    if book.shared is None:
        with suppress(StoreRefused):  # another window is reading: the rows are gone, and the log goes later
            clean(book)
        erased_in_backups(book.path, lambda saved: _forget_in(saved, night), backups=True)


def _forget_in(saved: Store, night: KeptNight) -> None:
    """Take a night's cells out of a backup, if this night is in it: another may have had its number."""
    mine = night.number, night.sheet_number, night.day
    if mine in {(one.number, one.sheet_number, one.day) for one in nights_of(saved, night.class_number)}:
        forget_paper_cells(saved, night.number)


def take_back_papers(book: Store, room_number: int, night: int, reading: int, *, now: datetime) -> PapersBack:
    """Give every cell of a reading the answer that it held before, and take its pictures away.

    A cell that a person checked, or that was written since, stays, and is told. Raises NotThere, and
    InputError for a reading of which nothing is there.
    """
    with book.transaction() as within:
        papers = night_papers(within, room_number, night)
        by = PaperReading(reading).by
        rows: dict[Key, list[KeptAnswer]] = defaultdict(list)
        for one in writings_of(within, night):
            rows[one.code, one.problem].append(one)
        wrote = {key for key, those in rows.items() if any(one.by == by for one in those)}
        mine = {key for key, one in papers.cells.items() if one.reading == reading}
        if not wrote and not mine:
            raise InputError("There is no such reading on this night", remedy="Load the page again.")
        checked = {key for key in mine if papers.cells[key].by is ReadBy.PERSON}
        back = [key for key in wrote if rows[key][-1].by == by]
        keep_answers(within, [_before(rows[key], by, now) for key in back])
        forget_paper_cells(within, night, mine - checked)
        stay = sorted(checked | {key for key in wrote if rows[key][-1].by != by})
    return PapersBack(len(back), tuple(f"{papers.room.shown(code)}, {label}" for code, label in stay))


def _before(rows: list[KeptAnswer], by: str, now: datetime) -> KeptAnswer:
    """Return what stood before a reading wrote, as it is written now."""
    first = next(at for at, row in enumerate(rows) if row.by == by)
    if first:
        return replace(rows[first - 1], written=now)
    return replace(rows[0], text="", written=now, by="teacher")


def _learn(within: Store, papers: NightPapers) -> None:
    """Count what was confirmed, once a night, where the teacher wishes the class to learn."""
    name = f"papers learnt night {papers.page.night.number}"
    if not papers.wishes.learns or setting(within, name):
        return
    came = [one.cell.doubt for one in papers.cells.values() if _by_doubt(one.cell.why)]
    learnt = papers.wishes.learnt.with_cells(came, _looked(papers))
    wishes: PaperWishes = replace(papers.wishes, learnt=learnt)
    keep_wishes(within, papers.room.number, wishes)
    set_setting(within, name, "yes")


def _looked(papers: NightPapers) -> Iterator[Looked]:
    for key, one in papers.cells.items():
        if papers.state(key) is CellState.CHECKED and _by_doubt(one.cell.why):
            yield Looked(one.cell.doubt, wrong=" ".join(papers.text(key).split()) != one.cell.text)


def _by_doubt(why: PaperWhy) -> bool:
    """Say whether a cell was judged by its doubt, and so tells something of the threshold."""
    return not why.always_shown or why in {PaperWhy.DECIDES, PaperWhy.SPOT_CHECK}
