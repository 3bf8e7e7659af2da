"""What is in a spreadsheet of the OpenDocument kind (ODS), read cell by cell for `workbook`.

Elements and attributes are those of OASIS OpenDocument 1.3, part 3 (chapters 9 and 19, from memory), and of
files that LibreOffice writes. XML with a document type is refused, so no entity is expanded; a sheet is never
laid out in memory, however many of its rows and columns are said to repeat.
"""

from collections.abc import Callable, Mapping
from datetime import date
from fractions import Fraction
from typing import Final
from xml.sax.handler import ContentHandler, feature_namespaces
from xml.sax.xmlreader import AttributesNSImpl
from zipfile import ZipFile

from defusedxml.sax import make_parser

MIMETYPE: Final = b"application/vnd.oasis.opendocument.spreadsheet"
_OF = "urn:oasis:names:tc:opendocument:xmlns:"
TABLE, OFFICE, TEXT, CONFIG = f"{_OF}table:1.0", f"{_OF}office:1.0", f"{_OF}text:1.0", f"{_OF}config:1.0"
#: What stands in a cell and is not its text.
_BESIDE = {(OFFICE, "annotation"), ("urn:oasis:names:tc:opendocument:xmlns:drawing:1.0", "frame")}
_CELLS = {(TABLE, "table-cell"), (TABLE, "covered-table-cell")}
_PART = 1 << 16

Named = tuple[str | None, str]
OpenCell = tuple[str, str, str]
"""The text of a cell, what the sheet made of what was typed, and its formula."""


def is_open_document(parts: ZipFile) -> bool:
    """Say whether a zip is a spreadsheet of this kind, by the part that says so."""
    return "mimetype" in parts.namelist() and parts.read("mimetype")[: len(MIMETYPE)] == MIMETYPE


def is_locked(parts: ZipFile) -> bool:
    """Say whether a password is needed to read it."""
    name = "META-INF/manifest.xml"
    return name in parts.namelist() and b"encryption-data" in parts.read(name)


def sheet_names(parts: ZipFile) -> tuple[list[str], str]:
    """Return the names of the sheets, and of the one that was open last, the first where nothing says it."""
    found, active = _Names(), _Active()
    _walked(parts, "content.xml", found)
    if "settings.xml" in parts.namelist():
        _walked(parts, "settings.xml", active)
    return found.names, active.name if active.name in found.names else found.names[0]


def open_rows(parts: ZipFile, name: str, rows: int, columns: int, longest: int) -> list[list[OpenCell]]:
    """Return the rows of a sheet, at most so many, with at most so many columns and signs of a text."""
    found = _Cells(name, rows, columns, longest)
    _walked(parts, "content.xml", found)
    return found.rows


def _walked(parts: ZipFile, name: str, handler: ContentHandler) -> None:
    parser = make_parser()
    parser.setFeature(feature_namespaces, True)  # noqa: FBT003 - as SAX takes it
    parser.forbid_dtd = True
    parser.setContentHandler(handler)
    with parts.open(name) as part:
        while read := part.read(_PART):
            parser.feed(read)
    parser.close()


class _Names(ContentHandler):
    """The names of the sheets."""

    def __init__(self) -> None:
        super().__init__()
        self.names: list[str] = []

    def startElementNS(self, name: Named, qname: str | None, attrs: AttributesNSImpl) -> None:  # noqa: ARG002, N802 - as SAX calls it
        if name == (TABLE, "table"):
            self.names.append(attrs.get((TABLE, "name"), ""))


class _Active(ContentHandler):
    """The name of the sheet that was open last."""

    def __init__(self) -> None:
        super().__init__()
        self.name = ""
        self._inside = False

    def startElementNS(self, name: Named, qname: str | None, attrs: AttributesNSImpl) -> None:  # noqa: ARG002, N802 - as SAX calls it
        self._inside = name[1] == "config-item" and attrs.get((CONFIG, "name")) == "ActiveTable"

    def endElementNS(self, name: Named, qname: str | None) -> None:  # noqa: ARG002, N802 - as SAX calls it
        self._inside = False

    def characters(self, content: str) -> None:
        if self._inside:
            self.name += content


class _Cells(ContentHandler):
    """The cells of one sheet."""

    def __init__(self, sheet: str, rows: int, columns: int, longest: int) -> None:
        super().__init__()
        self.rows: list[list[OpenCell]] = []
        self._most_rows, self._most_columns, self._longest = rows, columns, longest
        self._sheet, self._here, self._beside = sheet, False, 0
        self._row: list[OpenCell] | None = None
        self._row_times = self._times = 1
        self._cell: Mapping[Named, str] | None = None
        self._text = ""
        self._lines = 0

    def startElementNS(self, name: Named, qname: str | None, attrs: AttributesNSImpl) -> None:  # noqa: ARG002, N802 - as SAX calls it
        if name == (TABLE, "table"):
            self._here = attrs.get((TABLE, "name"), "") == self._sheet
        elif not self._here or self._beside or name in _BESIDE:
            self._beside += self._beside > 0 or name in _BESIDE
        elif name == (TABLE, "table-row"):
            self._row, self._row_times = [], _times(attrs.get((TABLE, "number-rows-repeated")))
        elif name in _CELLS:
            self._cell, self._text, self._lines = dict(attrs.items()), "", 0
            self._times = _times(attrs.get((TABLE, "number-columns-repeated")))
        elif name == (TEXT, "p"):
            self._text += "\n" * (self._lines > 0)
            self._lines += 1
        elif name == (TEXT, "s"):
            self._text += " " * min(_times(attrs.get((TEXT, "c"))), self._longest)
        elif name in {(TEXT, "tab"), (TEXT, "line-break")}:
            self._text += " "

    def endElementNS(self, name: Named, qname: str | None) -> None:  # noqa: ARG002, N802 - as SAX calls it
        if self._beside:
            self._beside -= 1
        elif name == (TABLE, "table"):
            self._here = False
        elif name in _CELLS and self._row is not None and self._cell is not None:
            room = self._most_columns - len(self._row)
            if room > 0:
                shown = open_cell(self._cell.get, self._text[: self._longest])
                self._row += [shown] * min(self._times, room)
            self._cell = None
        elif name == (TABLE, "table-row") and self._row is not None:
            while self._row and not (self._row[-1][0] or self._row[-1][2]):
                self._row.pop()
            room = max(self._most_rows - len(self.rows), 0)
            self.rows += [[*self._row] for _ in range(min(self._row_times, room))]
            self._row = None

    def characters(self, content: str) -> None:
        if self._cell is not None and self._lines and not self._beside and len(self._text) <= self._longest:
            self._text += content


def _times(said: str | None) -> int:
    return max(int(said), 1) if said and said.isdecimal() else 1


def open_cell(of: Callable[[Named], str | None], text: str) -> OpenCell:
    """Return a cell by its attributes and the text that it shows.

    A number shows as a fraction where the sheet wrote it so and it is that fraction; a date is told by month,
    day and year, a formula by itself.

    >>> open_cell({(OFFICE, "value-type"): "float", (OFFICE, "value"): "3.5"}.get, "3 1/2")
    ('3 1/2', 'fraction', '')
    >>> open_cell({(OFFICE, "value-type"): "date", (OFFICE, "date-value"): "2026-03-08"}.get, "Mar 8")
    ('3/8/2026', 'date', '')
    """
    formula = of((TABLE, "formula")) or ""
    formula = "=" + formula.partition("=")[2][:200] if formula else ""
    match of((OFFICE, "value-type")):
        case "float" | "currency":
            return (*_number(of((OFFICE, "value")), text), formula)
        case "percentage":
            return f"{_plain(float(of((OFFICE, 'value')) or 0) * 100)}%", "typed", formula
        case "date":
            day = date.fromisoformat((of((OFFICE, "date-value")) or "")[:10])
            return f"{day.month}/{day.day}/{day.year}", "date", formula
        case _:
            return (text, "typed", formula)


def _number(value: str | None, text: str) -> tuple[str, str]:
    exact = Fraction(value or 0)
    if "/" in text and (shown := _fraction(text)) is not None and abs(shown - exact) < Fraction(1, 10**9):
        return " ".join(text.split()), "fraction"
    return _plain(float(exact)), "typed"


def _plain(value: float) -> str:
    return f"{value:.15g}"


def _fraction(text: str) -> Fraction | None:
    """Return what a shown fraction is worth, with a whole number before it or without."""
    *wholes, last = text.split()
    try:
        whole = Fraction(wholes[0]) if wholes else Fraction(0)
        part = Fraction(last)
    except (ValueError, ZeroDivisionError):
        return None
    return whole - part if text.lstrip().startswith("-") and wholes else whole + part
