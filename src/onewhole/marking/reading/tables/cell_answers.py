"""What each cell of a table is read as: as it stands or, where a spreadsheet changed it, as one says."""

from collections.abc import Iterator, Mapping

from msgspec import Struct

from onewhole.marking.reading.tables.answer_grid import AnswerGrid
from onewhole.marking.reading.tables.asking import EACH, LIKELIEST, OTHER, SKIP, TYPED, TableAsks, TableTalk
from onewhole.marking.reading.tables.layout import TableLayout
from onewhole.marking.reading.tables.spoilt import Spoilt, SpoiltCell, spoilt

_Where = tuple[int, int]
_ARROW = "\N{RIGHTWARDS ARROW}"


class PlacedCell(Struct, frozen=True):
    """An answer and its cell: the text as it stood, and how it is to be read where that is not as it stands.

    ``code`` is of the class, or the key of a pupil who is to be added.
    """

    code: str
    label: str
    text: str
    read: str = ""


def cell_answers(
    layout: TableLayout,
    rows: Mapping[int, str],
    columns: Mapping[int, str],
    grid: AnswerGrid,
    talk: TableTalk,
) -> Iterator[PlacedCell]:
    """Yield the answers of the rows and columns that are settled; a cell that was changed is asked about.

    A date stays as it stands and is read as the teacher says; a fraction in its lowest terms is taken as it
    was written.
    """
    problems = {one.label: one for one in grid.problems}
    every = [
        (row, at)
        for row in layout.rows
        for at in layout.columns
        if row in rows and at in columns and layout.at(row, at)
    ]
    changed = {
        (row, at): found
        for row, at in every
        if (found := spoilt(layout.table[row][at], problems[columns[at]])) is not None
    }
    dates = {where: one for where, one in changed.items() if one.how is not Spoilt.REDUCED}
    reduced = {where: one for where, one in changed.items() if one.how is Spoilt.REDUCED}
    said = {
        **_settled(layout, dates, TableAsks.DATES, talk),
        **_settled(layout, reduced, TableAsks.REDUCED, talk),
    }
    for where in every:
        row, at = where
        text = layout.at(row, at)
        if where not in changed:
            yield PlacedCell(rows[row], columns[at], text)
        elif where not in said or said[where] == SKIP:
            continue
        elif said[where] == TYPED:
            yield PlacedCell(rows[row], columns[at], text)
        elif changed[where].how is Spoilt.REDUCED:
            yield PlacedCell(rows[row], columns[at], said[where])
        else:
            yield PlacedCell(rows[row], columns[at], text, said[where])


def _settled(
    layout: TableLayout, cells: Mapping[_Where, SpoiltCell], asks: TableAsks, talk: TableTalk
) -> dict[_Where, str]:
    """Ask for all changed cells at once, or for each; return what each is read as."""
    if not cells:
        return {}
    about = dict.fromkeys(
        f"{layout.at(row, at)} {_ARROW} {' or '.join(one.offers)}".rstrip(f" {_ARROW}")
        for (row, at), one in cells.items()
    )
    second = (OTHER,) if any(len(one.offers) > 1 for one in cells.values()) else ()
    said = talk.ask(asks.value, asks, tuple(about), (LIKELIEST, *second, EACH, TYPED, SKIP))
    if said is None:
        return {}
    if said != EACH:
        return {where: _offer(one, said) for where, one in cells.items()}
    found: dict[_Where, str] = {}
    for (row, at), one in cells.items():
        whose = tuple(layout.at(row, named) for named in layout.pupils[:1])
        told = (layout.at(row, at), *whose)
        answer = talk.ask(f"cell:{row}:{at}", TableAsks.CELL, told, (*one.offers, TYPED, SKIP), line=row + 1)
        if answer is not None:
            found[row, at] = answer
    return found


def _offer(cell: SpoiltCell, said: str) -> str:
    """Return what a cell is read as by an answer for all; what has no such offer stays as it stands."""
    if said in {LIKELIEST, OTHER} and not cell.offers:
        return TYPED
    return {LIKELIEST: cell.offers[:1], OTHER: cell.offers[-1:]}.get(said, (said,))[0]
