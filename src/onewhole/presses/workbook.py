"""The process that reads a workbook for `workbook_reading`.

A workbook is of today's kind (XLSX) or of the OpenDocument kind (ODS). On standard input comes the file,
eight bytes that say how long it is first; on standard output goes one JSON object: the rows of the sheet that
was open last, or why there are none. Nothing of the file is worked: a formula is what its sheet showed last,
a link is never followed, XML entities are refused.
"""

import json
import os
import re
import sys
from collections.abc import Iterator
from datetime import date, datetime, time, timedelta
from fractions import Fraction
from io import BytesIO
from typing import TYPE_CHECKING, Final
from zipfile import BadZipFile, ZipFile

from onewhole.presses.limited import end_with_parent, read
from onewhole.presses.open_document import is_locked, is_open_document, open_rows, sheet_names

if TYPE_CHECKING:
    from openpyxl import Workbook
    from openpyxl.cell.cell import Cell, MergedCell

#: What the parts of a workbook may unpack to, all together, and how many there are: a sheet of a class's
#: answers has some 100 KiB in a dozen parts.
LARGEST_UNPACKED: Final = 40_000_000
MOST_PARTS: Final = 1_000
#: Rows and columns that are read; one more shows that there are more.
MOST_ROWS, MOST_COLUMNS = 400, 400
#: The longest text of a cell that is handed on, and the most signs of all cells together.
LONGEST: Final = 500
MOST_SIGNS: Final = 2_000_000

_QUOTED = re.compile(r'"[^"]*"|\[[^\]]*\]|\\.|_.')
_FRACTION = re.compile(r"([#0?]*)\s*([#0?]+)\s*/\s*([#0?]+|\d+)")
_CLOSE = Fraction(1, 10**9)

Shown = tuple[str, str]
"""The text of a cell, and what the sheet made of what was typed: typed, date, fraction; or a formula."""


def shown_cell(value: object, number_format: str) -> Shown:
    """Return a value as a sheet shows it in a number format, so that nothing of it is lost.

    A fraction with a fixed number of pieces is as it was typed; one whose pieces the sheet chose is in its
    lowest terms and is told as such.

    >>> shown_cell(3.5, "# ?/6"), shown_cell(3.5, "# ?/?"), shown_cell(3.5, "General")
    (('3 3/6', 'typed'), ('3 1/2', 'fraction'), ('3.5', 'typed'))
    >>> shown_cell(datetime(2026, 3, 8), "d-mmm"), shown_cell(datetime(1932, 3, 1), "mmm-yy")
    (('3/8/2026', 'date'), ('Mar-32', 'date'))
    """
    match value:
        case None:
            return "", "typed"
        case bool():
            return str(value).upper(), "typed"
        case int() | float():
            return _number(value, number_format)
        case datetime() | date():
            return _day(value, number_format), "date"
        case time() | timedelta():
            return str(value), "typed"
        case _:
            return str(value)[:LONGEST], "typed"


def _number(value: float, number_format: str) -> Shown:
    exact = Fraction(value)
    first = _QUOTED.sub("", number_format.partition(";")[0])
    if (found := _FRACTION.search(first)) is not None:
        return _fraction(exact, found[3], wholes=bool(found[1])) or (_plain(value), "typed")
    if first.rstrip().endswith("%"):
        return f"{_plain(value * 100)}%", "typed"
    return _plain(value), "typed"


def _plain(value: float) -> str:
    return f"{value:.15g}"


def _fraction(value: Fraction, pieces: str, *, wholes: bool) -> Shown | None:
    """Return a number in the pieces of a number format; None where it cannot be counted in them."""
    fixed = int(pieces) if pieces.isdigit() and int(pieces) else 0
    rest, sign = abs(value), "-" if value < 0 else ""
    found = (
        Fraction(round(rest * fixed), fixed)
        if fixed
        else rest.limit_denominator(10 ** min(len(pieces), 3) - 1)
    )
    if abs(found - rest) > _CLOSE:
        return None
    size = fixed or found.denominator
    whole, top = divmod(found.numerator * (size // found.denominator), size) if wholes else (0, 0)
    top = top if wholes else found.numerator * (size // found.denominator)
    if not top or size == 1:
        return f"{sign}{whole or top}", "typed"
    return f"{sign}{whole} {top}/{size}" if whole else f"{sign}{top}/{size}", "typed" if fixed else "fraction"


def _day(value: date, number_format: str) -> str:
    plain = _QUOTED.sub("", number_format).casefold()
    if "d" not in plain and "mmm" in plain:
        return f"{value:%b}-{value.year % 100:02d}"
    return f"{value.month}/{value.day}/{value.year}"


def rows_of(content: bytes) -> dict[str, object]:
    """Return the sheet that was open last: its rows, its name, the others' names, how many formulas.

    Where there is none, ``why`` says so in a word: large, none, locked.
    """
    if content[:8] == b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1":
        return {"why": "locked"}
    try:
        with ZipFile(BytesIO(content)) as parts:
            sizes = [part.file_size for part in parts.infolist()]
    except (BadZipFile, ValueError, OSError, NotImplementedError):
        return {"why": "none"}
    if sum(sizes) > LARGEST_UNPACKED or len(sizes) > MOST_PARTS:
        return {"why": "large"}
    try:
        return _of_kind(content)
    except (MemoryError, _TooMuchError):
        return {"why": "large"}
    except Exception:  # noqa: BLE001 - a damaged file fails in many ways, all alike
        return {"why": "none"}


class _TooMuchError(Exception):
    """The cells hold more than answers do."""


def _of_kind(content: bytes) -> dict[str, object]:
    with ZipFile(BytesIO(content)) as parts:
        if not is_open_document(parts):
            return _sheet(content)
        return {"why": "locked"} if is_locked(parts) else _open_sheet(parts)


def _small(rows: list[list[Shown]]) -> list[list[Shown]]:
    if sum(len(text) for row in rows for text, _ in row) > MOST_SIGNS:
        raise _TooMuchError
    return rows


def _sheet(content: bytes) -> dict[str, object]:
    formulas, name, others = _formulas(content)
    rows = [[*row] for row in _rows(content, name)]
    lost = []
    for row, column, formula in formulas:
        rows[row] += [("", "typed")] * (column + 1 - len(rows[row]))
        rows[row][column] = _formula_cell(rows[row][column], formula)
        lost += [formula] * (rows[row][column][0] == formula)
    return {"rows": _small(rows), "name": name, "others": others, "formulas": len(formulas), "lost": lost}


def _formula_cell(shown: Shown, formula: str) -> Shown:
    """Return a cell with a formula: what the sheet showed last, or the formula where it showed nothing."""
    text, made = shown
    return (text, "formula" if made == "typed" else made) if text else (formula, "formula")


def _open_sheet(parts: ZipFile) -> dict[str, object]:
    """Return the sheet of a file of the OpenDocument kind that was open last, as `_sheet` does."""
    names, name = sheet_names(parts)
    cells = open_rows(parts, name, MOST_ROWS + 1, MOST_COLUMNS + 1, LONGEST)
    formulas = [formula for row in cells for *_, formula in row if formula]
    rows = [
        [_formula_cell((text, made), formula) if formula else (text, made) for text, made, formula in row]
        for row in cells
    ]
    return {
        "rows": _small(rows),
        "name": name,
        "others": [one for one in names if one != name],
        "formulas": len(formulas),
        "lost": [formula for row in cells for text, _, formula in row if formula and not text],
    }


def _formulas(content: bytes) -> tuple[list[tuple[int, int, str]], str, list[str]]:
    """Return the formulas of the sheet that was open last, by row and column, its name and the others'."""
    book = _opened(content, values=False)
    sheets = [sheet.title for sheet in book.worksheets]
    active = book.active
    name = active.title if active is not None and active.title in sheets else sheets[0]
    found = [
        (row, column, str(cell.value)[:LONGEST])
        for row, cells in enumerate(_cut(book, name))
        for column, cell in enumerate(cells)
        if cell.data_type == "f"
    ]
    book.close()
    return found, name, [one for one in sheets if one != name]


def _opened(content: bytes, *, values: bool) -> "Workbook":
    """Open a workbook to be read; this process alone loads what does it, after its limits stand."""
    from openpyxl import load_workbook  # noqa: PLC0415

    return load_workbook(BytesIO(content), read_only=True, data_only=values, keep_links=False)


def _cut(book: "Workbook", name: str) -> Iterator[tuple["Cell | MergedCell", ...]]:
    """Yield the rows of a sheet, as many and as wide as are read; a text that begins with = is no formula."""
    yield from book[name].iter_rows(max_row=MOST_ROWS + 1, max_col=MOST_COLUMNS + 1)


def _rows(content: bytes, name: str) -> Iterator[list[Shown]]:
    book = _opened(content, values=True)
    for row in _cut(book, name):
        cells = [shown_cell(cell.value, getattr(cell, "number_format", "") or "General") for cell in row]
        while cells and not cells[-1][0]:
            cells.pop()
        yield cells
    book.close()


def read_for_parent() -> None:
    """Read the workbook that the parent sends, and write what is in it."""
    content = read(int.from_bytes(read(8), "little"))
    end_with_parent()
    # What openpyxl would load beside itself, where it is there, takes memory and reads XML in another way.
    os.environ["OPENPYXL_LXML"] = "False"
    sys.modules["numpy"] = sys.modules["PIL"] = None  # type: ignore[assignment]
    sys.stdout.write(json.dumps(rows_of(content)))
    sys.stdout.flush()
    os._exit(0)  # nothing is left to clear away, and a thread still waits
