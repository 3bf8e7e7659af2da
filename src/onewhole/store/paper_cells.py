"""Cells of papers that were read from pictures: each with its small picture, until a teacher has checked it.

What counts is in `onewhole.store.answers`; a cell here says what the program read, how sure it was, and
whether a person has looked at it.
"""

import json
from collections.abc import Collection, Sequence
from datetime import datetime
from enum import Enum
from typing import Any

import msgspec
from msgspec import Struct
from sqlalchemy import ColumnElement, Delete, delete, func, insert, select, update

from onewhole.marking.paper.read_cell import ReadCell
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy
from onewhole.store import tables
from onewhole.store.nights import pupil_numbers
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere, UnreadableValue


class ReadBy(Enum):
    """Who has read a cell: the program alone, or a person who looked at it."""

    PROGRAM = "program"
    PERSON = "person"


class CellState(Enum):
    """What is to be done with a cell: it waits for the teacher, it stands as it was read, it is checked."""

    OPEN = "open"
    TAKEN = "taken"
    CHECKED = "checked"


class PaperCell(Struct, frozen=True):
    """A cell of a pupil's paper; ``reading`` is the number, within its night, of the act that read it."""

    night: int
    code: str
    problem: str
    reading: int
    cell: ReadCell
    by: ReadBy
    written: datetime

    @property
    def state(self) -> CellState:
        """Return what is to be done with it."""
        if self.by is ReadBy.PERSON:
            return CellState.CHECKED
        return CellState.OPEN if self.cell.verdict is PaperVerdict.UNSURE else CellState.TAKEN

    @property
    def key(self) -> tuple[str, str]:
        """Return the pupil's code and the problem's label."""
        return self.code, self.problem


def keep_paper_cells(store: Store, night: int, cells: Sequence[tuple[PaperCell, bytes]]) -> None:
    """Keep cells of a night with their pictures (PNG), all or none, each in place of one that stood there.

    Raises `NotThere` for a night, or a code that is not in its class, `NotStorable` and `StoreRefused`.
    """
    if not cells:
        return
    with store.writing() as connection:
        pupils = pupil_numbers(connection, night, {cell.code for cell, _ in cells})
        for cell, _ in cells:
            connection.execute(_one(night, pupils[cell.code], cell.problem))
        rows = [
            {
                "night_number": night,
                "pupil_number": pupils[cell.code],
                "problem": cell.problem,
                "crop": crop,
                **_values(cell),
            }
            for cell, crop in cells
        ]
        connection.execute(insert(tables.paper_cells), rows)


def change_paper_cells(store: Store, night: int, cells: Sequence[PaperCell]) -> None:
    """Change what is kept of cells; their pictures stay. Raises `NotThere` for one that is not there."""
    with store.writing() as connection:
        pupils = pupil_numbers(connection, night, {cell.code for cell in cells})
        for cell in cells:
            where = _at(night, pupils[cell.code], cell.problem)
            done = connection.execute(update(tables.paper_cells).where(*where).values(**_values(cell)))
            if done.rowcount != 1:
                raise no_cell(cell.code, cell.problem)


def paper_cells_of(store: Store, night: int) -> tuple[PaperCell, ...]:
    """The cells of a night's papers, by pupil, then by problem; their pictures are not read."""
    columns = tables.paper_cells.c
    kept = (columns.verdict, columns.text, columns.choices, columns.doubt, columns.alone, columns.why)
    asked = (
        select(tables.pupils.c.code, columns.problem, columns.reading, columns.by, columns.written, *kept)
        .join(tables.pupils, tables.pupils.c.number == columns.pupil_number)
        .where(columns.night_number == night)
        .order_by(columns.pupil_number, columns.problem)
    )
    with store.reading() as connection:
        return tuple(
            PaperCell(night, code, problem, reading, _read(said), ReadBy(by), written)
            for code, problem, reading, by, written, *said in connection.execute(asked)
        )


def paper_crop(store: Store, night: int, code: str, problem: str) -> bytes:
    """The picture of one cell, as PNG. Raises `NotThere`."""
    columns = tables.paper_cells.c
    asked = (
        select(columns.crop)
        .join(tables.pupils, tables.pupils.c.number == columns.pupil_number)
        .where(columns.night_number == night, tables.pupils.c.code == code, columns.problem == problem)
    )
    with store.reading() as connection:
        found: bytes | None = connection.scalar(asked)
    if found is None:
        raise no_cell(code, problem)
    return found


def nights_with_paper(store: Store, class_number: int) -> dict[int, int]:
    """Of how many cells of each night of a class something is kept; no night without any is in it."""
    columns = tables.paper_cells.c
    asked = (
        select(columns.night_number, func.count())
        .join(tables.nights, tables.nights.c.number == columns.night_number)
        .where(tables.nights.c.class_number == class_number)
        .group_by(columns.night_number)
    )
    with store.reading() as connection:
        return {night: count for night, count in connection.execute(asked)}  # noqa: C416 - rows are no pairs for mypy


def forget_paper_cells(store: Store, night: int, keys: Collection[tuple[str, str]] | None = None) -> None:
    """Take cells of a night away with their pictures: some by code and label, or all."""
    columns = tables.paper_cells.c
    with store.writing() as connection:
        if keys is None:
            connection.execute(delete(tables.paper_cells).where(columns.night_number == night))
            return
        pupils = pupil_numbers(connection, night, {code for code, _ in keys})
        for code, problem in keys:
            connection.execute(_one(night, pupils[code], problem))


def no_cell(code: str, problem: str) -> NotThere:
    """Say that no such cell is kept."""
    return NotThere(
        "There is no such cell of a paper any more",
        where=f"pupil {code[:20]}, problem {problem[:20]}",
        remedy="Load the page again; what was checked is kept.",
    )


def _values(cell: PaperCell) -> dict[str, object]:
    read = cell.cell
    return {
        "reading": cell.reading,
        "verdict": read.verdict.value,
        "text": read.text,
        "choices": json.dumps(read.choices, ensure_ascii=False),
        "doubt": read.doubt,
        "alone": read.alone,
        "why": read.why.value,
        "by": cell.by.value,
        "written": cell.written,
    }


def _read(said: Sequence[Any]) -> ReadCell:
    """Put what was read together. Raises `UnreadableValue` for what cannot have been written."""
    verdict, text, choices, doubt, alone, why = said
    try:
        offered = msgspec.json.decode(choices, type=tuple[str, ...])
        return ReadCell(PaperVerdict(verdict), text, offered, doubt, alone, PaperWhy(why))
    except (ValueError, RecursionError) as error:
        raise UnreadableValue("a cell of a paper is not as ours are") from error


def _at(night: int, pupil: int, problem: str) -> tuple[ColumnElement[bool], ...]:
    columns = tables.paper_cells.c
    return columns.night_number == night, columns.pupil_number == pupil, columns.problem == problem


def _one(night: int, pupil: int, problem: str) -> Delete:
    return delete(tables.paper_cells).where(*_at(night, pupil, problem))
