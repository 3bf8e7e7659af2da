"""A workbook (XLSX) for grade books: a text stays a text, whatever it looks like, a number is a number."""

import re
from collections.abc import Sequence
from datetime import datetime
from io import BytesIO
from typing import TYPE_CHECKING

from msgspec import Struct

from onewhole.marking.reading.tables.table_cell import column_letters

if TYPE_CHECKING:
    from openpyxl.cell.cell import Cell
    from openpyxl.worksheet._write_only import WriteOnlyWorksheet

#: A cell of a table: a text, a whole number, or nothing.
TableCell = str | int | None
#: Signs that XML 1.0 cannot hold.
_UNWRITABLE = re.compile("[\0-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff]")
#: The widest column, in signs, and the narrowest.
_WIDEST, _NARROWEST = 40, 6


class TableSheet(Struct, frozen=True):
    """A sheet of a workbook: its name, and its rows, the first of which is the head."""

    name: str
    rows: Sequence[Sequence[TableCell]]


def workbook_bytes(sheets: Sequence[TableSheet], when: datetime) -> bytes:
    """Return a workbook with these sheets.

    Every text is a cell of text (never a formula, a date or a number), a sign that XML cannot hold becomes
    U+FFFD. The head is bold, and it and the first two columns stay in sight.

    >>> from datetime import UTC
    >>> from openpyxl import load_workbook
    >>> made = workbook_bytes([TableSheet("Scores", [("Code", "1"), ("K01", "=1/2")])], datetime(2026, 9, 1))
    >>> cell = load_workbook(BytesIO(made))["Scores"]["B2"]
    >>> cell.value, cell.data_type, cell.number_format
    ('=1/2', 's', '@')
    """
    from openpyxl import Workbook  # noqa: PLC0415 - only who saves a workbook waits for its 175 modules

    book = Workbook(write_only=True)
    moment = when.replace(tzinfo=None, microsecond=0)
    book.properties.created = book.properties.modified = moment
    book.properties.creator = "onewhole"
    for sheet in sheets:
        page = book.create_sheet(sheet.name)
        page.freeze_panes = "C2"
        for at, row in enumerate(zip(*sheet.rows, strict=True)):
            widest = max((len(str(cell)) for cell in row if cell is not None), default=0)
            page.column_dimensions[column_letters(at + 1)].width = min(max(widest + 2, _NARROWEST), _WIDEST)
        for at, cells in enumerate(sheet.rows):
            page.append([_cell(page, cell, is_head=at == 0) for cell in cells])
    held = BytesIO()
    book.save(held)
    return held.getvalue()


def _cell(page: "WriteOnlyWorksheet", value: TableCell, *, is_head: bool) -> "Cell | None":
    from openpyxl.cell.cell import WriteOnlyCell  # noqa: PLC0415 - as above
    from openpyxl.styles import Alignment, Font  # noqa: PLC0415

    if value is None:
        return None
    cell = WriteOnlyCell(page)
    if isinstance(value, str):
        cell.value = plain_text(value)
        cell.data_type = "s"
        cell.number_format = "@"
    else:
        cell.value = value
    if is_head:
        cell.font = Font(bold=True)
        cell.alignment = Alignment(wrap_text=True, vertical="top")
    return cell


def plain_text(text: str) -> str:
    r"""Return a text without the signs that XML cannot hold: each becomes U+FFFD.

    >>> plain_text("a\0b")
    'a\ufffdb'
    """
    return _UNWRITABLE.sub("\ufffd", text)
