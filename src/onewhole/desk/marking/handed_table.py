"""A table of answers that was pasted or handed in as a file, and how it travels with the form that asks."""

import re

import msgspec
from msgspec import Struct

from onewhole.errors import InputError
from onewhole.marking.reading.tables.cutting import check_size, cut_table
from onewhole.marking.reading.tables.table_cell import CellMade, Table, TableCell, table_of
from onewhole.presses.workbook_reading import LARGEST, WorkbookRows, workbook_rows

__all__ = [
    "LARGEST",
    "HandedTable",
    "is_workbook",
    "table_in_file",
    "table_sent",
    "table_to_send",
    "table_typed",
]

_ZIP, _OLD = b"PK\x03\x04", b"\xd0\xcf\x11\xe0"
_CODINGS = ("utf-8-sig", "cp1252")
#: What a web page, a drawing or XML begins with: some programs save one under the name of a workbook.
_MARKUP = re.compile(rb"(\xef\xbb\xbf)?\s*<[!?a-zA-Z]")
_WIDE = (b"\xff\xfe", b"\xfe\xff")


class HandedTable(Struct, frozen=True):
    """A table, and what is to be known of its file: which sheet was read, how many formulas are in it."""

    table: Table
    sheet: str = ""
    others: tuple[str, ...] = ()
    formulas: int = 0


def table_typed(text: str) -> HandedTable:
    """Return a pasted block as a table. Raises InputError for one that is too large."""
    return HandedTable(cut_table(text))


def table_in_file(content: bytes, name: str) -> HandedTable:
    """Return the table of a file: a workbook (XLSX, ODS), or text as CSV or with tabs.

    What a file is says its content and not its name. Raises InputError for one that is too large, locked,
    damaged, or no table.
    """
    if is_workbook(content):
        return _of_workbook(workbook_rows(content, name))
    return HandedTable(cut_table(_text(content, name)))


def is_workbook(content: bytes) -> bool:
    """Say whether a file is a workbook by what it begins with, of today's kind or the old one."""
    return content.startswith((_ZIP, _OLD))


def _of_workbook(found: WorkbookRows) -> HandedTable:
    table = table_of([[TableCell(text, CellMade(made)) for text, made in row] for row in found.rows])
    check_size(table)
    return HandedTable(table, found.name, found.others, found.formulas)


def _text(content: bytes, name: str) -> str:
    remedy = "Save the sheet as CSV, XLSX or ODS, or copy its cells and paste them."
    if not content.strip():
        raise InputError("This file is empty", file=name, remedy=remedy)
    if _MARKUP.match(content):
        raise InputError("This file is a web page or XML, and no table", file=name, remedy=remedy)
    for coding in ("utf-16",) if content.startswith(_WIDE) else _CODINGS:
        try:
            text = content.decode(coding)
        except UnicodeDecodeError:
            continue
        if text.replace("\t", "").replace("\n", "").replace("\r", "").isprintable():
            return text
    raise InputError("This file is no table of answers", file=name, remedy=remedy)


def table_to_send(handed: HandedTable) -> str:
    r"""Return a table as the hidden field of a form holds it.

    >>> table_to_send(table_typed("K01\t8-Mar"))
    '{"rows":[["K01","8-Mar"]],"sheet":"","others":[],"formulas":0}'
    """
    rows = [
        [cell.text if cell.made is CellMade.TYPED else (cell.text, cell.made.value) for cell in row]
        for row in handed.table
    ]
    sent = {"rows": rows, "sheet": handed.sheet, "others": handed.others, "formulas": handed.formulas}
    return msgspec.json.encode(sent).decode()


class _SentTable(msgspec.Struct, frozen=True):
    rows: list[list[str | tuple[str, str]]]
    sheet: str
    others: tuple[str, ...]
    formulas: int


def table_sent(sent: str) -> HandedTable:
    r"""Return the table of a form. Raises InputError for what no form of ours sends.

    >>> table_sent(table_to_send(table_typed("K01\t8-Mar"))) == table_typed("K01\t8-Mar")
    True
    """
    try:
        found = msgspec.json.decode(sent, type=_SentTable)
        rows = [
            [TableCell(one) if isinstance(one, str) else TableCell(one[0], CellMade(one[1])) for one in row]
            for row in found.rows
        ]
    except (ValueError, RecursionError) as error:
        what = "This table did not come through whole"
        raise InputError(what, remedy="Paste it again; nothing was kept.") from error
    table = table_of(rows)
    check_size(table)
    return HandedTable(table, found.sheet, found.others, found.formulas)
