"""A table of answers laid on a night: shown first, asked about where it is not sure, then kept."""

from collections.abc import Mapping
from datetime import datetime

from msgspec import Struct

from onewhole.desk.classes.class_list import enrol
from onewhole.desk.classes.class_records import Classroom, NightPage, night_page, room
from onewhole.desk.classes.rosters import roster_of, who_wrote
from onewhole.desk.marking.cells import keep_cells
from onewhole.desk.marking.grid import grid_fingerprint
from onewhole.desk.marking.handed_table import HandedTable
from onewhole.desk.marking.pastes import next_paste
from onewhole.errors import InputError
from onewhole.marking.reading.tables.answer_grid import AnswerGrid
from onewhole.marking.reading.tables.asking import (
    LEAVE,
    REPLACE,
    Decided,
    TableAsks,
    TableQuestion,
    TableTalk,
)
from onewhole.marking.reading.tables.cell_answers import PlacedCell
from onewhole.marking.reading.tables.class_names import ListedPupil
from onewhole.marking.reading.tables.placing import Placing, place
from onewhole.store.answers import answers_of
from onewhole.store.cells import Change
from onewhole.store.correction_rows import CellReadAs
from onewhole.store.corrections import Correction, keep_corrections
from onewhole.store.opening import Store

_ARROW = "\N{RIGHTWARDS ARROW}"


class LaidTable(Struct, frozen=True):
    """A table as it would be kept: where its answers go, the questions, and what is in their cells now.

    ``cells`` are what would be written, ``same`` how many have that text already. ``stamp`` is the state of
    the grid that was looked at, ``first`` the pupil of its first row; ``changed`` says that another window
    wrote in it since the form was shown.
    """

    room: Classroom
    page: NightPage
    handed: HandedTable
    placing: Placing
    questions: tuple[TableQuestion, ...]
    cells: tuple[PlacedCell, ...]
    same: int
    stamp: str
    first: str
    changed: bool = False

    @property
    def open(self) -> tuple[TableQuestion, ...]:
        """Return the questions that have no answer yet."""
        return tuple(one for one in self.questions if one.chosen is None)


class KeptTable(Struct, frozen=True):
    """What was kept of a table: the paste's number, its cells, and texts that no cell can hold, with why."""

    paste: int
    cells: int
    refused: tuple[tuple[str, str, str], ...] = ()


def lay_table(
    book: Store,
    room_number: int,
    night: int,
    handed: HandedTable,
    decided: Decided,
    *,
    code: str = "",
    label: str = "",
    saw: str | None = None,
) -> LaidTable:
    """Show what would be kept of a table, and what is to be asked; nothing is kept.

    ``code`` and ``label`` are the cell that one was in; ``saw`` is the state of the grid that an earlier form
    showed. Raises NotThere, and InputError for a table without any answer.
    """
    with book.snapshot() as seen:
        of, page = room(seen, room_number), night_page(seen, room_number, night)
        answers = answers_of(seen, night)
        stamp = grid_fingerprint(seen, room_number, night)
        marked = roster_of(seen, page.night).marked(who_wrote(answers))
    stands = {(one.code, one.problem): one.text for one in answers}
    listed = tuple(ListedPupil(pupil.code, pupil.name or "") for pupil in of.pupils)
    if not any(cell.plain for row in handed.table for cell in row):
        raise InputError("There is nothing in this block", remedy="Copy the answers and paste them again.")
    rows = tuple(pupil.code for pupil in of.pupils if pupil.code in marked)
    placing = place(handed.table, AnswerGrid(listed, page.sheet.problems, code, label, rows), decided)
    differ = [one for one in placing.cells if stands.get((one.code, one.label), "") not in {"", one.text}]
    talk = TableTalk(decided, list(placing.questions))
    over = None
    if differ:
        about = tuple(
            f"{of.shown(one.code)}, {one.label}: {stands[one.code, one.label]} {_ARROW} {one.text}"
            for one in differ
        )
        over = talk.ask("over", TableAsks.OVER, about, (REPLACE, LEAVE))
    left = differ if over != REPLACE else []
    cells = tuple(
        one
        for one in placing.cells
        if one not in left and (one.read or stands.get((one.code, one.label), "") != one.text)
    )
    same = len(placing.cells) - len(cells) - len(left)
    first = of.shown(rows[0]) if rows else ""
    changed = saw not in {None, "", stamp}
    return LaidTable(of, page, handed, placing, tuple(talk.questions), cells, same, stamp, first, changed)


def keep_table(
    book: Store,
    room_number: int,
    night: int,
    handed: HandedTable,
    decided: Decided,
    *,
    code: str = "",
    label: str = "",
    saw: str,
    now: datetime,
    by: str,
) -> KeptTable | LaidTable:
    """Keep a table, all of it in one transaction; the table as it lies where something is still to be asked.

    That is so too where another window wrote in the grid since it was shown (``saw``). Pupils who are to be
    added are, each under a code of their own. Raises as :func:`lay_table`, and StoreRefused.
    """
    with book.transaction() as within:
        laid = lay_table(within, room_number, night, handed, decided, code=code, label=label, saw=saw)
        if laid.open or laid.changed or saw != laid.stamp:
            return laid
        added = [name for _, name in laid.placing.added]
        fresh = enrol(within, room_number, 0, added) if added else ()
        codes = dict(zip((key for key, _ in laid.placing.added), (one.code for one in fresh), strict=True))
        number = next_paste(within, night)
        changes = {_of(one, codes): one for one in laid.cells}
        kept = keep_cells(within, room_number, night, tuple(changes), now=now, by=number.by)
        keep_corrections(within, _read(changes, codes, night, now, by))
    refused = tuple((one.code, one.problem, why) for one, why in kept.refused)
    return KeptTable(number.number, len(kept.kept), refused)


def _of(one: PlacedCell, codes: Mapping[str, str]) -> Change:
    return Change(codes.get(one.code, one.code), one.label, one.text)


def _read(
    changes: Mapping[Change, PlacedCell], codes: Mapping[str, str], night: int, now: datetime, by: str
) -> tuple[Correction, ...]:
    """Return how the cells are read that are read otherwise than they stand."""
    return tuple(
        Correction(night, codes.get(one.code, one.code), CellReadAs(one.label, one.text, one.read), now, by)
        for one in changes.values()
        if one.read
    )
