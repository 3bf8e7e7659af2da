"""Columns as MathML: a table with a column a place, for a browser, a braille display and a screen reader."""

from collections.abc import Iterable
from xml.etree.ElementTree import Element, SubElement, tostring

from onewhole.notations.columns_text import columns_text
from onewhole.notations.mathml import NAMESPACE
from onewhole.pictures.columns_state import ColumnsState, DigitColumn

MINUS = "\N{MINUS SIGN}"


def columns_mathml(state: ColumnsState) -> str:
    """Write what stands in columns as one ``math`` element with a table.

    The first cell of a row holds the sign. A point stands in the cell of the ones. Numbers above are small,
    the latest on top; a digit or number that is struck out stands in ``menclose``, which draws the stroke
    where a browser knows it and shows the digit alone where it does not. ``alttext`` is the plain text.

    >>> from onewhole.pictures.columns_state import columns_states
    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.columns import COLUMNS
    >>> from onewhole.working.work import work
    >>> written = columns_mathml(columns_states(work(read_statement("52 - 27"), COLUMNS))[-1])
    >>> written.count("<mtr>"), written.count("<menclose")
    (4, 2)
    """
    root = Element("math", {"xmlns": NAMESPACE, "alttext": "\n".join(columns_text(state))})
    table = SubElement(root, "mtable", {"columnalign": "right"})
    for row in reversed(range(max(len(column.above) for column in state.columns))):
        _row(table, "", (_above(column, row) for column in state.columns), state, small=True)
    for row in range(len(state.numbers)):
        sign = ("+", MINUS)[state.taken] if row == len(state.numbers) - 1 else ""
        _row(table, sign, (_digit(column, row, state) for column in state.columns), state)
    below = [number_cell(column.below) for column in state.columns]
    if any(len(cell) for cell in below):
        _row(table, "", below, state)
        table.set("rowlines", " ".join((*["none"] * (len(table) - 2), "solid")))
    return tostring(root, encoding="unicode")


def _row(
    table: Element, sign: str, cells: Iterable[Element], state: ColumnsState, *, small: bool = False
) -> None:
    row = SubElement(table, "mtr")
    first = SubElement(row, "mtd")
    if sign:
        SubElement(first, "mo").text = sign
    for column, cell in zip(state.columns, cells, strict=True):
        if small:
            cell.set("mathsize", "70%")
        elif column.unit.size == 1 and state.columns[-1].unit.size < 1 and len(cell):
            SubElement(cell, "mo").text = "."
        row.append(cell)


def _above(column: DigitColumn, row: int) -> Element:
    if row >= len(column.above):
        return number_cell(None)
    return number_cell(column.above[row], struck=row + 1 < len(column.above))


def _digit(column: DigitColumn, row: int, state: ColumnsState) -> Element:
    return number_cell(column.digits[row], struck=state.taken and not row and bool(column.above))


def number_cell(count: int | None, *, struck: bool = False) -> Element:
    """Return a cell of a table with a number, struck out or not; an empty one without a number."""
    cell = Element("mtd")
    if count is not None:
        holder = SubElement(cell, "menclose", {"notation": "updiagonalstrike"}) if struck else cell
        SubElement(holder, "mn").text = str(count)
    return cell
