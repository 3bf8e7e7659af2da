"""The cells of a night's papers are looked at one after another, and what a person says is the answer."""

from collections.abc import Iterable, Mapping
from datetime import datetime

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.classes.class_records import NightPage
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.marking.cells import text_refused
from onewhole.desk.marking.verdicts import Judged, judged
from onewhole.desk.paper.judged_cells import Key
from onewhole.desk.paper.night_papers import NightPapers, night_papers, settle_cells
from onewhole.desk.paper.paper_by import PaperReading
from onewhole.desk.paper.paper_wishes import keep_wishes
from onewhole.marking.paper.read_cell import to_be_shown
from onewhole.marking.paper.spot_check import SPOT_CHECKED, raised, spot_cells
from onewhole.marking.paper.sureness import Sureness
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy
from onewhole.store.answers import KeptAnswer, history_of, keep_answers
from onewhole.store.opening import Store
from onewhole.store.paper_cells import (
    CellState,
    PaperCell,
    ReadBy,
    change_paper_cells,
    no_cell,
    paper_crop,
)

__all__ = [
    "CheckedCell",
    "PapersToCheck",
    "ShownCell",
    "SpotChecked",
    "cell_picture",
    "check_cell",
    "papers_to_check",
    "spot_checked",
    "uncheck_cell",
]


class ShownCell(Struct, frozen=True):
    """A cell as it is looked at: whose, which problem as typed, what was read, the likeliest readings.

    ``why`` says why it is shown; ``stands`` is the answer that counts now, which a form sends back as what it
    saw.
    """

    code: str
    shown: str
    label: str
    problem: str
    text: str
    choices: tuple[str, ...]
    why: PaperWhy
    doubt: int
    stands: str
    state: CellState


class PapersToCheck(Struct, frozen=True):
    """What is to be looked at on a night, and what was.

    ``open`` are the cells that wait, largest doubt first; ``spot`` are those of the spot check that nobody
    has looked at yet; ``read`` and ``empty`` stand without a look, ``checked`` were looked at. ``cells`` are
    all of them by code and label. ``stamp`` changes with any of them.
    """

    page: NightPage
    open: tuple[ShownCell, ...]
    spot: tuple[ShownCell, ...]
    read: int
    empty: int
    checked: int
    cells: Mapping[Key, ShownCell]
    sureness: Sureness
    stamp: str

    @property
    def done(self) -> bool:
        """Say whether nothing is left to be looked at."""
        return not self.open and not self.spot


class CheckedCell(Struct, frozen=True):
    """A cell that was checked: its answer judged, and what is to be looked at now."""

    judged: Judged
    papers: PapersToCheck

    @property
    def next(self) -> ShownCell | None:
        """Return the cell to look at next; None where none waits."""
        return next(iter(self.papers.open), None)

    @property
    def left(self) -> int:
        """Return how many cells wait."""
        return len(self.papers.open)


class SpotChecked(Struct, frozen=True):
    """What a spot check led to: ``raised`` is the setting from now on where one was wrong, else None.

    ``shown`` is how many cells that had been read are to be looked at because of that.
    """

    wrong: int
    raised: Sureness | None
    shown: int


def papers_to_check(book: Store, room_number: int, night: int) -> PapersToCheck:
    """Return what is to be looked at on a night. Raises NotThere."""
    return _to_check(night_papers(book, room_number, night))


def _to_check(papers: NightPapers) -> PapersToCheck:
    cells = {key: _shown(papers, one) for key, one in papers.cells.items()}
    states = [one.state for one in cells.values()]
    waits = [key for key, one in cells.items() if one.state is CellState.OPEN]
    order = {label: at for at, label in enumerate(papers.page.labels)}
    waits.sort(key=lambda key: (-cells[key].doubt, order.get(key[1], 0), key))
    taken = [one for key, one in papers.cells.items() if papers.state(key) is CellState.TAKEN]
    read = sum(one.cell.verdict is PaperVerdict.READ for one in taken)
    stamp = f"{sum(one is CellState.CHECKED for one in states)}-{len(waits)}-{len(states)}"
    return PapersToCheck(
        papers.page,
        tuple(cells[key] for key in waits),
        tuple(cells[key] for key in _spot(papers)),
        read,
        len(taken) - read,
        states.count(CellState.CHECKED),
        cells,
        papers.wishes.sureness,
        stamp,
    )


def cell_picture(book: Store, room_number: int, night: int, code: str, label: str) -> bytes:
    """Return the picture of a cell as PNG. Raises NotThere."""
    with book.snapshot() as seen:
        papers = night_papers(seen, room_number, night)
        return paper_crop(seen, papers.page.night.number, code, label)


def check_cell(
    book: Store,
    room_number: int,
    night: int,
    key: Key,
    text: str,
    *,
    now: datetime,
    saw: str | None = None,
) -> CheckedCell:
    """Keep what a person reads in a cell (code and label) as the answer; an empty text: nothing is there.

    ``saw`` is the answer that stood when the window was shown (:attr:`ShownCell.stands`). Where the answer
    puts others of the pupil's readings to the test, these wait to be looked at, too. Raises InputError for a
    text that no cell holds, ChangedMeanwhile where another window was faster, NotThere and StoreRefused.
    """
    with book.transaction() as within:
        papers = night_papers(within, room_number, night)
        if key not in papers.cells:
            raise no_cell(*key)
        if (why := text_refused(text)) is not None:
            raise why
        person = papers.cells[key].by is ReadBy.PERSON or papers.typed(key)
        if person and text != papers.text(key):
            _as_seen(papers, key, saw)
        after = _checked(within, papers, {key: text}, now)
    return CheckedCell(judged(papers.page, key[1], text), _to_check(after))


def uncheck_cell(
    book: Store,
    room_number: int,
    night: int,
    key: Key,
    *,
    now: datetime,
    saw: str | None = None,
) -> ShownCell:
    """Take the check of a cell back: it is as the program read it, and waits again where that is not sure.

    ``saw`` is the answer that the window showed. Raises ChangedMeanwhile where another stands now, NotThere
    and StoreRefused.
    """
    with book.transaction() as within:
        papers = night_papers(within, room_number, night)
        if key not in papers.cells:
            raise no_cell(*key)
        _as_seen(papers, key, saw)
        was = papers.cells[key]
        if was.by is ReadBy.PERSON:
            change_paper_cells(within, night, [replace(was, by=ReadBy.PROGRAM, written=now)])
            keep_answers(within, _before_check(within, papers, was, now))
            settle_cells(within, night_papers(within, room_number, night), {key[0]}, now)
        after = night_papers(within, room_number, night)
    return _shown(after, after.cells[key])


def spot_checked(
    book: Store,
    room_number: int,
    night: int,
    seen: Iterable[Key],
    wrong: Mapping[Key, str | None],
    *,
    now: datetime,
) -> SpotChecked:
    """Keep what came of a spot check: ``seen`` are the cells that were shown, ``wrong`` those read wrongly.

    A wrong one has the text that is there, or None where it is to be looked at with the others. One wrong
    among them raises the class's threshold (:func:`~onewhole.marking.paper.spot_check.raised`), and the cells
    of the night are judged by the new one. Cells that do not stand as they were read any more are passed
    over. Raises InputError for a text that no cell holds, NotThere and StoreRefused.
    """
    with book.transaction() as within:
        papers = night_papers(within, room_number, night)
        looked = [key for key in dict.fromkeys(seen) if _is_read(papers, key)]
        bad = [key for key in looked if key in wrong]
        texts = {key: papers.cells[key].cell.text for key in looked if key not in wrong}
        for key in bad:
            said = wrong[key]
            if said is not None:
                if (why := text_refused(said)) is not None:
                    raise why
                texts[key] = said
        again = [key for key in bad if key not in texts]
        change_paper_cells(
            within,
            night,
            [
                replace(papers.cells[key], cell=to_be_shown(papers.cells[key].cell, PaperWhy.SPOT_CHECK))
                for key in again
            ],
        )
        wishes = papers.wishes
        sureness = raised(wishes.sureness, [papers.cells[key].cell.doubt for key in bad], wishes.limit)
        if sureness is not wishes.sureness:
            keep_wishes(within, room_number, replace(wishes, sureness=sureness))
        after = _checked(within, night_papers(within, room_number, night), texts, now, everyone=True)
    shown = sum(
        after.state(key) is CellState.OPEN and papers.state(key) is CellState.TAKEN for key in after.cells
    )
    return SpotChecked(len(bad), sureness if sureness is not wishes.sureness else None, shown - len(again))


def _checked(
    within: Store, papers: NightPapers, texts: Mapping[Key, str], now: datetime, *, everyone: bool = False
) -> NightPapers:
    """Keep what a person read in cells, settle the others, and return the papers as they are then."""
    night = papers.page.night.number
    cells = [replace(papers.cells[key], by=ReadBy.PERSON, written=now) for key in texts]
    change_paper_cells(within, night, cells)
    keep_answers(
        within,
        [
            KeptAnswer(night, *key, text, now, PaperReading(papers.cells[key].reading, checked=True).by)
            for key, text in texts.items()
            if text or papers.text(key)
        ],
    )
    fresh = night_papers(within, papers.room.number, night)
    codes = {code for code, _ in fresh.cells} if everyone else {code for code, _ in texts}
    settle_cells(within, fresh, codes, now)
    return night_papers(within, papers.room.number, night)


def _as_seen(papers: NightPapers, key: Key, saw: str | None) -> None:
    """Refuse where another window changed the answer that this one saw."""
    stands = papers.text(key)
    if saw not in {None, stands}:
        raise ChangedMeanwhile(
            f"This answer is {f'“{stands}”' if stands else 'empty'} since another window changed it",
            stands=stands,
            remedy="Nothing was kept yet. Look at it, and send yours again to put it in that place.",
        )


def _before_check(
    within: Store, papers: NightPapers, was: PaperCell, now: datetime
) -> tuple[KeptAnswer, ...]:
    """Return the answer that stood before a person checked a cell; none where another was written since."""
    night, checked = papers.page.night.number, PaperReading(was.reading, checked=True).by
    rows = history_of(within, night, *was.key)
    if not rows or rows[-1].by != checked:
        return ()
    before = [row for row in rows if row.by != checked]
    if before:
        return (replace(before[-1], written=now),)
    return (replace(rows[-1], text="", written=now, by=PaperReading(was.reading).by),)


def _is_read(papers: NightPapers, key: Key) -> bool:
    one = papers.cells.get(key)
    taken = one is not None and papers.state(key) is CellState.TAKEN
    return one is not None and taken and one.cell.verdict is PaperVerdict.READ


def _spot(papers: NightPapers) -> tuple[Key, ...]:
    """Return the cells of the spot check that nobody has looked at yet."""
    read = [key for key, one in papers.cells.items() if one.cell.verdict is PaperVerdict.READ]
    drawn = spot_cells(read, papers.page.night.number, SPOT_CHECKED)
    return tuple(key for key in drawn if papers.state(key) is CellState.TAKEN)


def _shown(papers: NightPapers, one: PaperCell) -> ShownCell:
    problems = papers.page.sheet.problems
    return ShownCell(
        one.code,
        papers.room.shown(one.code),
        one.problem,
        next((problem.typed for problem in problems if problem.label == one.problem), ""),
        one.cell.text,
        one.cell.choices,
        one.cell.why,
        one.cell.doubt,
        papers.text(one.key),
        papers.state(one.key),
    )
