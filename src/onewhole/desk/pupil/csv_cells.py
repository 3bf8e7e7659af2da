"""Tables for other programs: a cell that a spreadsheet would take for a formula is made text."""

import csv
from collections.abc import Iterable, Sequence
from io import StringIO

#: What a formula begins with; the last four are how = + - @ are written at full width.
_BEGINS = tuple("=+-@\t\r\n＝＋－＠")


def guarded(cell: str) -> str:
    """Return a cell that stays text in a spreadsheet: an apostrophe before what begins a formula.

    The signs = + - @, tab and carriage return are those of OWASP's page "CSV Injection", which also asks for
    quotes around every cell (`csv_text` puts them); the line feed and the wide signs are named there too.

    >>> guarded("=1+1"), guarded("2 4/8"), guarded("-")
    ("'=1+1", '2 4/8', "'-")
    """
    return f"'{cell}" if cell.startswith(_BEGINS) else cell


def csv_bytes(text: str) -> bytes:
    r"""Return CSV as it is saved, with the mark at its start that tells a spreadsheet that it is UTF-8.

    >>> csv_bytes("a")
    b'\xef\xbb\xbfa'
    """
    return text.encode("utf-8-sig")


def csv_text(rows: Iterable[Sequence[str]]) -> str:
    """Return rows as CSV, every cell guarded and in quotes.

    >>> print(csv_text([("pupil", "1"), ("K01", "@now")]), end="")
    "pupil","1"
    "K01","'@now"
    """
    made = StringIO()
    writer = csv.writer(made, quoting=csv.QUOTE_ALL, lineterminator="\n")
    writer.writerows([guarded(cell) for cell in row] for row in rows)
    return made.getvalue()
