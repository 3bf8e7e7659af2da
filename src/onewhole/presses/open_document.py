"""What is in a spreadsheet of the OpenDocument kind (ODS), read cell by cell for `workbook`.

Elements and attributes are those of OASIS OpenDocument 1.3, part 3 (chapters 9 and 19, from memory), and of
files that LibreOffice writes. XML with a document type is refused, so no entity is expanded; a sheet is never
laid out in memory, however many of its rows and columns are said to repeat.
"""

from collections.abc import Callable, Iterator
from datetime import date
from fractions import Fraction
from typing import IO, Final
from xml.etree.ElementTree import Element
from zipfile import ZipFile

from defusedxml.ElementTree import iterparse

MIMETYPE: Final = b"application/vnd.oasis.opendocument.spreadsheet"
_OF = "{urn:oasis:names:tc:opendocument:xmlns:"
TABLE, OFFICE, TEXT, CONFIG = (
    f"{_OF}table:1.0}}",
    f"{_OF}office:1.0}}",
    f"{_OF}text:1.0}}",
    f"{_OF}config:1.0}}",
)
#: What stands in a cell and is not its text.
_BESIDE = {f"{OFFICE}annotation", f"{_OF}drawing:1.0}}frame"}
_CELLS = {f"{TABLE}table-cell", f"{TABLE}covered-table-cell"}

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
    with parts.open("content.xml") as part:
        names = [one.get(f"{TABLE}name", "") for one in _walked(part, {f"{TABLE}table-row"}, f"{TABLE}table")]
    active = ""
    if "settings.xml" in parts.namelist():
        with parts.open("settings.xml") as part:
            item = f"{CONFIG}config-item"
            said = [
                one.text or ""
                for one in _walked(part, {item}, item)
                if one.get(f"{CONFIG}name") == "ActiveTable"
            ]
            active = said[0] if said else ""
    return names, active if active in names else names[0]


def open_rows(parts: ZipFile, name: str, rows: int, columns: int, longest: int) -> list[list[OpenCell]]:
    """Return the rows of a sheet, at most so many, with at most so many columns and signs of a text."""
    found: list[list[OpenCell]] = []
    with parts.open("content.xml") as part:
        for row in _walked(part, {f"{TABLE}table-row"}, f"{TABLE}table-row", inside=name):
            cells = _cells(row, columns, longest)
            times = min(_times(row.get(f"{TABLE}number-rows-repeated")), rows - len(found))
            found += [[*cells] for _ in range(times)]
    return found


def _walked(part: IO[bytes], whole: set[str], wanted: str, inside: str | None = None) -> Iterator[Element]:
    """Yield the elements of a name, of the sheet ``inside`` or of all, each forgotten after it was yielded.

    Elements of the names ``whole`` are there with all that is in them when they are yielded.
    """
    above: list[Element] = []
    held, sheet = 0, None
    for event, one in iterparse(part, events=("start", "end"), forbid_dtd=True):
        if event == "start":
            above.append(one)
            held += one.tag in whole
            sheet = one.get(f"{TABLE}name", "") if one.tag == f"{TABLE}table" else sheet
            continue
        above.pop()
        held -= one.tag in whole
        if one.tag == wanted and inside in {None, sheet}:
            yield one
        if not held:
            one.clear()
            if above:
                above[-1].remove(one)


def _cells(row: Element, columns: int, longest: int) -> list[OpenCell]:
    cells: list[OpenCell] = []
    for one in row:
        if one.tag in _CELLS and len(cells) < columns:
            shown = open_cell(
                one.get, "\n".join(_text(line) for line in one if line.tag == f"{TEXT}p")[:longest]
            )
            times = min(_times(one.get(f"{TABLE}number-columns-repeated")), columns - len(cells))
            cells += [shown] * times
    while cells and not (cells[-1][0] or cells[-1][2]):
        cells.pop()
    return cells


def _text(line: Element) -> str:
    """Return the text of a line: blanks that are counted, and no notes that stand in it."""
    if line.tag in _BESIDE:
        return ""
    if line.tag == f"{TEXT}s":
        return " " * min(_times(line.get(f"{TEXT}c")), 100)
    if line.tag in {f"{TEXT}tab", f"{TEXT}line-break"}:
        return " "
    return (line.text or "") + "".join(_text(one) + (one.tail or "") for one in line)


def _times(said: str | None) -> int:
    return max(int(said), 1) if said and said.isdecimal() else 1


def open_cell(of: Callable[[str], str | None], text: str) -> OpenCell:
    """Return a cell by its attributes and the text that it shows.

    A number shows as a fraction where the sheet wrote it so and it is that fraction; a date is told by month,
    day and year, a formula by itself.

    >>> open_cell({f"{OFFICE}value-type": "float", f"{OFFICE}value": "3.5"}.get, "3 1/2")
    ('3 1/2', 'fraction', '')
    >>> open_cell({f"{OFFICE}value-type": "date", f"{OFFICE}date-value": "2026-03-08"}.get, "Mar 8")
    ('3/8/2026', 'date', '')
    """
    formula = of(f"{TABLE}formula") or ""
    formula = "=" + formula.partition("=")[2][:200] if formula else ""
    match of(f"{OFFICE}value-type"):
        case "float" | "currency":
            return (*_number(of(f"{OFFICE}value"), text), formula)
        case "percentage":
            return f"{_plain(float(of(f'{OFFICE}value') or 0) * 100)}%", "typed", formula
        case "date":
            day = date.fromisoformat((of(f"{OFFICE}date-value") or "")[:10])
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
