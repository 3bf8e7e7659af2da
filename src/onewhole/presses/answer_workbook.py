"""A workbook (XLSX) to type answers into: a sheet a class, pupils down, problems across, all cells text."""

import re
from collections.abc import Iterator, Sequence
from datetime import datetime
from io import BytesIO
from typing import TYPE_CHECKING

from msgspec import Struct

from onewhole.marking.reading.tables.table_cell import column_letters
from onewhole.presses.workbook_writing import plain_text

if TYPE_CHECKING:
    from openpyxl import Workbook
    from openpyxl.worksheet.worksheet import Worksheet

#: What a sheet is called has at most so many signs, none of these, no apostrophe at an end (as spreadsheets
#: say themselves; from memory).
LONGEST_NAME = 31
_NOT_IN_A_NAME = re.compile(r"[\[\]:*?/\\]")
#: A hint has at most 255 signs, its title 32 (ECMA-376 part 1, 18.3.1.32, from memory).
_LONGEST_HINT, _LONGEST_TITLE = 255, 32
_HOW = "Type the answer just as it was written, such as 3 3/6. Leave it empty if nothing was."
#: The row of labels; above it stands what is asked.
HEAD = 2
#: Widths in signs: of codes, names and answers.
_CODES, _NAMES, _ANSWERS = 8, 22, 14
#: The letters of a new workbook, and how high a line of them is, in points.
_FONT, _SIZE, _LINE = "Calibri", 11, 15


class ClassSheet(Struct, frozen=True):
    """A class: its name, its pupils' codes with their names, empty where none was typed."""

    name: str
    pupils: Sequence[tuple[str, str]]


class AskedColumn(Struct, frozen=True):
    """A problem: its label, the line that is asked, and what a cell says of it while one is in it."""

    label: str
    typed: str
    words: str


def answer_workbook(asked: Sequence[AskedColumn], classes: Sequence[ClassSheet], when: datetime) -> bytes:
    """Return a workbook for the answers of classes; ``asked`` are the problems of the page.

    Every cell for an answer is a cell of text, so that 3/8 stays 3/8, and shows its problem while one is in
    it. The codes and the labels stay in sight and are printed on every page.

    >>> made = answer_workbook(
    ...     [AskedColumn("1", "52 - 27", "52 - 27")],
    ...     [ClassSheet("Room 12", [("K01", "")])],
    ...     datetime(2026, 9, 1),
    ... )
    >>> from openpyxl import load_workbook
    >>> sheet = load_workbook(BytesIO(made))["Room 12"]
    >>> sheet["A3"].value, sheet["C2"].value, sheet["C3"].number_format
    ('K01', '1', '@')
    """
    from openpyxl import Workbook  # noqa: PLC0415 - only who saves a workbook waits for its 175 modules

    book = Workbook()
    book.remove(book.worksheets[0])
    moment = when.replace(tzinfo=None, microsecond=0)
    book.properties.created = book.properties.modified = moment
    book.properties.creator = "onewhole"
    for name, one in zip(_names(one.name for one in classes), classes, strict=True):
        _sheet(book, name, asked, one.pupils)
    held = BytesIO()
    book.save(held)
    return held.getvalue()


def _names(called: Iterator[str]) -> Iterator[str]:
    """Yield names of sheets, each once, small and large letters taken as the same."""
    used: set[str] = set()
    for one in called:
        name = _NOT_IN_A_NAME.sub(" ", plain_text(one)).strip(" '")[:LONGEST_NAME].strip(" '") or "Class"
        number, found = 2, name
        while found.casefold() in used:
            end = f" {number}"
            found, number = f"{name[: LONGEST_NAME - len(end)]}{end}", number + 1
        used.add(found.casefold())
        yield found


def _sheet(
    book: "Workbook", name: str, asked: Sequence[AskedColumn], pupils: Sequence[tuple[str, str]]
) -> None:
    page = book.create_sheet(name)
    page.freeze_panes = "C3"
    page.print_title_rows, page.print_title_cols = f"1:{HEAD}", "A:B"
    page.page_setup.orientation = "landscape"
    page.page_setup.fitToWidth, page.page_setup.fitToHeight = 1, 0
    page.sheet_properties.pageSetUpPr.fitToPage = True
    page.print_options.gridLines = True
    rows = [
        ("", "Problem", *(one.typed for one in asked)),
        ("Code", "Name", *(one.label for one in asked)),
        *((code, called, *("" for _ in asked)) for code, called in pupils),
    ]
    for at, cells in enumerate(rows, start=1):
        for beside, text in enumerate(cells, start=1):
            _cell(page, at, beside, text)
    for beside, width in enumerate((_CODES, _NAMES, *(_ANSWERS for _ in asked)), start=1):
        page.column_dimensions[column_letters(beside)].width = width
    lines = max((-(-len(one.typed) // (_ANSWERS - 2)) for one in asked), default=1)
    page.row_dimensions[1].height = _LINE * min(lines, 8)
    _hints(page, asked, len(rows))


def _cell(page: "Worksheet", row: int, column: int, text: str) -> None:
    from openpyxl.styles import Alignment, Border, Font, PatternFill, Side  # noqa: PLC0415 - as above

    cell = page.cell(row, column)
    if text:
        cell.value = plain_text(text)
        cell.data_type = "s"
    cell.number_format = "@"
    line = Side(style="thin")
    cell.border = Border(
        left=line, right=line, top=line, bottom=Side(style="medium") if row == HEAD else line
    )
    if row <= HEAD:
        cell.font = Font(name=_FONT, size=_SIZE, bold=row == HEAD)
        cell.fill = PatternFill("solid", fgColor="EDEDED")
        cell.alignment = Alignment(wrap_text=True, vertical="bottom", horizontal="left")


def _hints(page: "Worksheet", asked: Sequence[AskedColumn], last: int) -> None:
    """Say in each column what its problem is; a very long entry is asked about."""
    from openpyxl.worksheet.datavalidation import DataValidation  # noqa: PLC0415 - as above

    for beside, one in enumerate(asked, start=3):
        hint = DataValidation(type="textLength", operator="lessThanOrEqual", formula1="500", allow_blank=True)
        hint.showInputMessage = hint.showErrorMessage = True
        hint.promptTitle = f"Problem {one.label}"[:_LONGEST_TITLE]
        told = f"{plain_text(one.words)}\n{_HOW}"
        hint.prompt = told if len(told) <= _LONGEST_HINT else f"{told[: _LONGEST_HINT - 1]}…"
        hint.errorStyle, hint.errorTitle = "warning", "A long answer"
        hint.error = "More than 500 signs are not read."
        letters = column_letters(beside)
        hint.add(f"{letters}{HEAD + 1}:{letters}{max(last, HEAD + 1)}")
        page.add_data_validation(hint)
