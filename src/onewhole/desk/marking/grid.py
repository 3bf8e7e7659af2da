"""The grid of a night: every pupil's answers as they stand on the disk, each judged."""

from collections.abc import Iterable, Sequence

from msgspec import Struct

from onewhole.desk.classes.class_records import Classroom, NightPage, night_page, room
from onewhole.desk.classes.rosters import roster_of, who_wrote
from onewhole.desk.marking.close_setting import is_close
from onewhole.desk.marking.pastes import NightPaste, pastes_in
from onewhole.desk.marking.readings import Readings, readings, readings_in
from onewhole.desk.marking.verdicts import Judged, judged, usual_right
from onewhole.findings.attendance import PaperWord
from onewhole.marking.reading.mark import Verdict
from onewhole.notations.mathml import mathml
from onewhole.store.answers import KeptAnswer, answers_of, history_of, last_writing
from onewhole.store.classes import Pupil
from onewhole.store.corrections import Correction, corrections_of
from onewhole.store.opening import Store

__all__ = [
    "Cell",
    "Column",
    "Grid",
    "GridRow",
    "cell_history",
    "cells_as",
    "grid",
    "grid_fingerprint",
    "night_page",
]


class Cell(Struct, frozen=True):
    """A cell: the text exactly as typed, how the teacher reads it where that differs, and the judgement."""

    code: str
    label: str
    text: str
    read_as: str | None
    judged: Judged


class GridRow(Struct, frozen=True):
    """A pupil's answers in the order of the page; ``shown`` is the code, with the name where there is one.

    ``paper`` is what the paper is: absent, excused, late, or just here.
    """

    pupil: Pupil
    shown: str
    cells: tuple[Cell, ...]
    paper: PaperWord

    @property
    def right_of_tried(self) -> str:
        """Return how many of the pupil's answers are right, of those that are there."""
        return _right_of_tried(self.cells)


class Column(Struct, frozen=True):
    """A problem: its label, as typed, as MathML with its words, and the right answer as it is typed."""

    label: str
    typed: str
    mathml: str
    right: str


class Grid(Struct, frozen=True):
    """A night as the marking page shows it; ``stamp`` is its :func:`grid_fingerprint`.

    ``rows`` are those who got the page or wrote something, ``others`` who else was in the class that day.
    ``pastes`` are the pastes that can be taken back, the last one first; ``close`` says that it stands close
    together.
    """

    room: Classroom
    page: NightPage
    columns: tuple[Column, ...]
    rows: tuple[GridRow, ...]
    others: tuple[str, ...]
    stamp: str
    pastes: tuple[NightPaste, ...]
    close: bool = False

    @property
    def right_of_tried(self) -> tuple[str, ...]:
        """Return problem by problem how many of the answers are right, of those that are there."""
        return tuple(_right_of_tried(row.cells[at] for row in self.rows) for at in range(len(self.columns)))


def grid(book: Store, room_number: int, night: int) -> Grid:
    """Return the grid of a night as it stands on the disk. Raises NotThere."""
    with book.snapshot() as seen:
        of, page = room(seen, room_number), night_page(seen, room_number, night)
        answers = answers_of(seen, night)
        said = corrections_of(seen, night)
        who = roster_of(seen, page.night)
        stamp = _stamp(seen, night, said)
        papers = len(who.marked(who_wrote(answers)))
        close = is_close(seen, room_number, problems=len(page.labels), papers=papers)
    written = {(one.code, one.problem): one.text for one in answers}
    read = readings_in(said)
    wrote = who_wrote(answers)
    marked = who.marked(wrote)
    rows = tuple(
        GridRow(
            pupil,
            of.shown(pupil.code),
            tuple(
                _cell(page, pupil.code, label, written.get((pupil.code, label), ""), read)
                for label in page.labels
            ),
            who.stands(pupil.code, wrote=pupil.code in wrote),
        )
        for pupil in of.pupils
        if pupil.code in marked
    )
    columns = tuple(
        Column(one.label, one.typed, mathml(one.statement), usual_right(page, one.label))
        for one in page.sheet.problems
    )
    others = tuple(map(of.shown, who.without_page(wrote)))
    return Grid(of, page, columns, rows, others, stamp, pastes_in(answers), close)


def cells_as(book: Store, page: NightPage, texts: Iterable[tuple[str, str, str]]) -> tuple[Cell, ...]:
    """Return cells (code, label, text) as the grid would show them with these texts. Raises InputError."""
    read = readings(book, page.night.number)
    return tuple(_cell(page, code, label, text, read) for code, label, text in texts)


def grid_fingerprint(book: Store, room_number: int, night: int) -> str:
    """Return a fingerprint that changes whenever a cell of a night, or its reading, is written.

    Raises NotThere.
    """
    with book.snapshot() as seen:
        night_page(seen, room_number, night)
        return _stamp(seen, night, corrections_of(seen, night))


def _right_of_tried(cells: Iterable[Cell]) -> str:
    """Count; the page counts the same while one types. Another form than is wanted is the right amount."""
    verdicts = [cell.judged.verdict for cell in cells]
    right = sum(one in {Verdict.RIGHT, Verdict.FORM} for one in verdicts)
    return f"{right} of {sum(one is not Verdict.BLANK for one in verdicts)}"


def _stamp(book: Store, night: int, said: Sequence[Correction]) -> str:
    return f"{last_writing(book, night)}-{len(said)}"


def _cell(page: NightPage, code: str, label: str, text: str, read: Readings) -> Cell:
    reading = read.get((code, label))
    as_read = text if reading is None else reading.of(text)
    return Cell(code, label, text, None if as_read == text else as_read, judged(page, label, as_read))


def cell_history(book: Store, room_number: int, night: int, code: str, label: str) -> tuple[KeptAnswer, ...]:
    """Return every writing of a cell, the first one first, each with when and by whom. Raises NotThere."""
    return history_of(book, night_page(book, room_number, night).night.number, code, label)
