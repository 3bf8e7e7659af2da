"""Small workbooks for the tests, as openpyxl writes them."""

from collections.abc import Sequence
from datetime import date
from io import BytesIO

from openpyxl import Workbook

Value = str | float | date | None
Rows = Sequence[Sequence[Value | tuple[Value, str]]]


def workbook(rows: Rows, *others: str) -> bytes:
    """Return an XLSX file of a sheet, with empty ones beside it; a pair is a value and its number format."""
    book = Workbook()
    sheet = book.worksheets[0]
    sheet.title = "Tuesday"
    for at, row in enumerate(rows, start=1):
        for beside, one in enumerate(row, start=1):
            value, number_format = one if isinstance(one, tuple) else (one, "")
            cell = sheet.cell(at, beside, value)
            if number_format:
                cell.number_format = number_format
    for name in others:
        book.create_sheet(name)
    file = BytesIO()
    book.save(file)
    return file.getvalue()
