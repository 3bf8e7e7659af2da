"""What stands on squared paper, in plain text and as a MathML table: a digit a cell."""

from collections.abc import Sequence
from typing import assert_never
from xml.etree.ElementTree import Element, SubElement, tostring

from onewhole.notations.columns_mathml import MINUS, columns_mathml, number_cell
from onewhole.notations.columns_text import OPEN, columns_text
from onewhole.notations.mathml import NAMESPACE
from onewhole.pictures.columns_state import ColumnsState
from onewhole.pictures.squared import SquaredState
from onewhole.pictures.squares import RowSign, WrittenRow, WrittenState

_SIGNS = {RowSign.TIMES: "\N{MULTIPLICATION SIGN}", RowSign.PLUS: "+", RowSign.MINUS: MINUS}


def squared_text(states: Sequence[SquaredState], blank: int = 0) -> tuple[str, ...]:
    r"""Write what stands on squared paper at the last of some states, line by line.

    The last ``blank`` digits of the answer to be written are left open: those on the left of a sum or a
    product, and those on the right of a quotient, with all that is written below for them.

    >>> from onewhole.pictures.squared import squared_states
    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.quotients.long_division import LONG_DIVISION
    >>> from onewhole.working.work import work
    >>> print("\n".join(squared_text(squared_states(work(read_statement("87 / 4"), LONG_DIVISION)))))
       2 1 r 3
      ----
     4)8 7
     - 8
    ----
       0 7
       - 4
      ----
         3
    """
    last = states[-1]
    match last:
        case ColumnsState():
            return columns_text(last, blank)
        case WrittenState():
            return _lines(_opened([one for one in states if isinstance(one, WrittenState)], blank), blank)
        case _:
            assert_never(last)


def squared_mathml(state: SquaredState) -> str:
    """Write what stands on squared paper as one ``math`` element with a table.

    The sign stands in a cell before its number, and a bracket in the cell before the number that is divided.
    What is carried is small, and struck out once it was used. ``alttext`` is the plain text.

    >>> from onewhole.pictures.squared import squared_states
    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.products.in_columns import MULTIPLY_IN_COLUMNS
    >>> from onewhole.working.work import work
    >>> state = squared_states(work(read_statement("386 x 24"), MULTIPLY_IN_COLUMNS))[-1]
    >>> squared_mathml(state).count("<mtr>"), squared_mathml(state).count("<menclose")
    (8, 4)
    """
    match state:
        case ColumnsState():
            return columns_mathml(state)
        case WrittenState():
            return _table(state)
        case _:
            assert_never(state)


def _opened(states: Sequence[WrittenState], blank: int) -> WrittenState:
    """Return the state of a division at which so many digits of its quotient are still to be found."""
    last = states[-1]
    if not blank or last.bracket is None:
        return last
    known = max(0, _quotient_digits(last) - blank)
    return [one for one in states if _quotient_digits(one) <= known][-1]


def _quotient_digits(state: WrittenState) -> int:
    return sum(digit is not None for digit in state.rows[0].digits)


def _lines(state: WrittenState, blank: int) -> tuple[str, ...]:
    found: list[str] = []
    for at, row in enumerate(state.rows):
        if (row.empty and at) or row.struck:
            continue
        cells = [(" ", " " if digit is None else str(digit)) for digit in row.digits]
        if row.point is not None and row.point < len(cells):
            cells[row.point] = (".", cells[row.point][1])
        if row.sign is not None:
            cells[row.sign_at] = (" ", row.sign.value)
        if state.bracket is not None and at == 1:
            cells[state.bracket] = (")", cells[state.bracket][1])
        said = "".join(before + digit for before, digit in cells)
        if at == 0 and state.remainder_signs:
            said = f"{said.rstrip()} r {state.remainder_signs}"
        found.append(_open(said, state, row, blank).rstrip())
        if row.rule is not None:
            begin, end = row.rule
            found.append("  " * begin + "--" * (end - begin))
    return tuple([line for line in found if line])


def _open(said: str, state: WrittenState, row: WrittenRow, blank: int) -> str:
    """Leave so many digits open: the first of a product, those behind the last one of a quotient."""
    places = [at for at, digit in enumerate(row.digits) if digit is not None]
    if not blank:
        return said
    if state.bracket is None and row.name == "answer":
        chosen = places[:blank]
    elif state.bracket is not None and row.name == "quotient":
        begin = places[-1] + 1 if places else state.bracket
        chosen = list(range(begin, min(len(row.digits), begin + blank)))
    else:
        return said
    signs = list(said.ljust(2 * len(row.digits)))
    for at in chosen:
        signs[2 * at + 1] = OPEN
    return "".join(signs)


def _table(state: WrittenState) -> str:
    told = "\n".join(_lines(state, 0))
    root = Element("math", {"xmlns": NAMESPACE, "alttext": told})
    table = SubElement(root, "mtable", {"columnalign": "right"})
    shown = [(at, row) for at, row in enumerate(state.rows) if not row.empty]
    for at, row in shown:
        line = SubElement(table, "mtr")
        for square in range(len(row.digits)):
            line.append(_cell(state, at, row, square))
        if at == 0 and state.remainder_signs:
            cell = SubElement(line, "mtd")
            SubElement(cell, "mi").text = "r"
            SubElement(cell, "mn").text = state.remainder_signs
    table.set("rowlines", " ".join("solid" if row.rule else "none" for _, row in shown[:-1]))
    return tostring(root, encoding="unicode")


def _cell(state: WrittenState, at: int, row: WrittenRow, square: int) -> Element:
    cell = number_cell(row.digits[square], struck=row.struck)
    if row.small:
        cell.set("mathsize", "70%")
    if row.sign is not None and square == row.sign_at:
        SubElement(cell, "mo").text = _SIGNS[row.sign]
    if row.point == square + 1 and square + 1 < len(row.digits):
        SubElement(cell, "mo").text = "."
    if state.bracket == square + 1 and at == 1:
        SubElement(cell, "mo").text = ")"
    return cell
