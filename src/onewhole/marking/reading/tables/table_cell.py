"""A cell of a table, and what the spreadsheet says that it is."""

import unicodedata
from collections.abc import Iterable, Sequence
from enum import Enum

from msgspec import Struct


class CellMade(Enum):
    """What a sheet made of what was typed: nothing, a date, a fraction in its lowest terms; or a formula."""

    TYPED = "typed"
    DATE = "date"
    FRACTION = "fraction"
    FORMULA = "formula"


class TableCell(Struct, frozen=True):
    r"""A cell: its text as the sheet shows it, and what the sheet made of it where the file tells.

    >>> TableCell("\N{NO-BREAK SPACE}K01 ").plain
    'K01'
    """

    text: str
    made: CellMade = CellMade.TYPED

    @property
    def plain(self) -> str:
        """Return the text with single blanks and without what nobody sees: joiners, direction marks."""
        seen = "".join(sign for sign in self.text if unicodedata.category(sign) != "Cf")
        return " ".join(seen.split())


Table = tuple[tuple[TableCell, ...], ...]
"""Rows of cells, all of one length."""

NOTHING = TableCell("")


def table_of(rows: Iterable[Sequence[str | TableCell]]) -> Table:
    """Return rows as a table: text becomes cells, short rows are filled, empty last rows and columns go.

    >>> [[cell.text for cell in row] for row in table_of([["1", "2", ""], ["3"], [" "]])]
    [['1', '2'], ['3', '']]
    """
    found = [[cell if isinstance(cell, TableCell) else TableCell(cell) for cell in row] for row in rows]
    while found and not any(cell.plain for cell in found[-1]):
        found.pop()
    width = max((at + 1 for row in found for at, cell in enumerate(row) if cell.plain), default=0)
    return tuple((*row[:width], *[NOTHING] * (width - len(row))) for row in found)


def turned(table: Table) -> Table:
    """Return a table with its rows as columns."""
    return tuple(zip(*table, strict=True))


def column_letters(column: int) -> str:
    """Return how a spreadsheet calls a column, counted from 1.

    >>> [column_letters(column) for column in (1, 26, 27, 703)]
    ['A', 'Z', 'AA', 'AAA']
    """
    before, last = divmod(column - 1, 26)
    return (column_letters(before) if before else "") + chr(ord("A") + last)
