"""Pasted text cut into rows of cells, as a spreadsheet puts it on the clipboard or into a file."""

import csv
from io import StringIO

from onewhole.errors import InputError
from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.tables.table_cell import Table, table_of

LONGEST_BLOCK = 200_000
#: As many rows and columns as a grade of a school has pupils, with room for headings.
MOST_ROWS, MOST_COLUMNS = 400, 400
_MARK = "\N{ZERO WIDTH NO-BREAK SPACE}"  # the byte-order mark that some spreadsheets write first


def cut_table(text: str) -> Table:
    r"""Cut a text into a table.

    Cells are divided by tabs; where there is no tab, by the comma or the semicolon, whichever stands in
    more lines, unless every line is one answer by itself. Line ends of any computer are fine, and so are
    cells in quotation marks, with line ends in them. Where quotation marks do not close, they are text.
    Raises InputError for more than 200,000 characters, 400 rows or 400 columns.

    >>> [[cell.text for cell in row] for row in cut_table('3 3/6\t"4 ""or"" 5"\r\n\t7\r\n')]
    [['3 3/6', '4 "or" 5'], ['', '7']]
    >>> [[cell.text for cell in row] for row in cut_table("1,000\n2")]
    [['1,000'], ['2']]
    """
    if len(text) > LONGEST_BLOCK:
        raise InputError(
            f"This block has {len(text)} characters; {LONGEST_BLOCK} are taken at once",
            remedy="Paste the answers of one night, or a part of them.",
        )
    text = text.removeprefix(_MARK)
    found = table_of(_rows(text, _divider(text)))
    check_size(found)
    return found


def check_size(table: Table) -> None:
    """Refuse a table with more rows or columns than the answers of a night have. Raises InputError."""
    if len(table) > MOST_ROWS or (table and len(table[0]) > MOST_COLUMNS):
        raise InputError(
            f"This table has {len(table)} rows and {len(table[0])} columns; {MOST_ROWS} and {MOST_COLUMNS} "
            "are taken at once",
            remedy="Take the answers of one night, or a part of them.",
        )


def _divider(text: str) -> str:
    lines = [line for line in text.splitlines() if line.strip()]
    if "\t" in text or not lines or all(_one_answer(line) for line in lines):
        return "\t"
    return max(",;", key=lambda sign: sum(sign in line for line in lines))


def _one_answer(line: str) -> bool:
    return not isinstance(read_written(line).read, Unreadable)


def _rows(text: str, divider: str) -> list[list[str]]:
    try:
        return list(csv.reader(StringIO(text, newline=""), delimiter=divider, strict=True))
    except csv.Error:
        return [line.split(divider) for line in text.splitlines()]
