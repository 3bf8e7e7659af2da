"""Workbooks read in a process of their own: no value is lost, nothing is worked, no bomb goes off."""

import resource
import struct
import sys
import zipfile
from datetime import date
from io import BytesIO

import pytest

from onewhole.errors import InputError
from onewhole.presses.workbook import LARGEST_UNPACKED, shown_cell
from onewhole.presses.workbook_reading import LARGEST, WorkbookRows, workbook_rows
from tests.kit.workbooks import Rows, workbook


@pytest.mark.parametrize(
    ("value", "number_format", "shown"),
    [
        (3, "General", ("3", "typed")),
        (3.0, "General", ("3", "typed")),
        (3.5, "General", ("3.5", "typed")),
        (0.1 + 0.2, "General", ("0.3", "typed")),
        (3.5, "# ?/?", ("3 1/2", "fraction")),
        (3.5, "# ?/6", ("3 3/6", "typed")),
        (3.5, "# ??/16", ("3 8/16", "typed")),
        (3.5, '# ?/6" in"', ("3 3/6", "typed")),
        (3.5, "# ?/3", ("3.5", "typed")),
        (0.375, "# ?/?", ("3/8", "fraction")),
        (2.75, "?/?", ("11/4", "fraction")),
        (-1.5, "# ?/?", ("-1 1/2", "fraction")),
        (4, "# ?/?", ("4", "typed")),
        (3.14, "# ?/?", ("3.14", "typed")),
        (0.5, "0%", ("50%", "typed")),
        (True, "General", ("TRUE", "typed")),
        ("  3 3/6 ", "@", ("  3 3/6 ", "typed")),
        (date(2026, 3, 8), "d-mmm", ("3/8/2026", "date")),
        (date(1932, 3, 1), "mmm-yy", ("Mar-32", "date")),
        (None, "General", ("", "typed")),
    ],
    ids=str,
)
def test_a_value_is_told_as_the_sheet_shows_it(
    value: object, number_format: str, shown: tuple[str, str]
) -> None:
    """Fractions in the pieces of their format, dates by month and day, decimals without their binary dust."""
    assert shown_cell(value, number_format) == shown


def test_a_sheet_comes_as_it_was_left() -> None:
    """Its rows, its name, the sheets beside it; a formula without a result is its text and is told."""
    rows: Rows = [["Name", 1, 2], ["K01", (3.5, "# ?/?"), "=7/2"], ["K02", (date(2026, 3, 8), "d-mmm"), None]]
    assert workbook_rows(workbook(rows, "Notes"), "a.xlsx") == WorkbookRows(
        (
            (("Name", "typed"), ("1", "typed"), ("2", "typed")),
            (("K01", "typed"), ("3 1/2", "fraction"), ("=7/2", "formula")),
            (("K02", "typed"), ("3/8/2026", "date")),
        ),
        "Tuesday",
        ("Notes",),
        1,
        ("=7/2",),
    )


def _packed(parts: dict[str, bytes], like: bytes = b"") -> bytes:
    """Return a zip of these parts, over those of another one."""
    file = BytesIO()
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as made:
        if like:
            with zipfile.ZipFile(BytesIO(like)) as old:
                for name in old.namelist():
                    if name not in parts:
                        made.writestr(name, old.read(name))
        for name, content in parts.items():
            made.writestr(name, content)
    return file.getvalue()


GOOD = workbook([["Name", 1], ["K01", "3"]])
SHEET = "xl/worksheets/sheet1.xml"
ENTITIES = (
    b'<?xml version="1.0"?><!DOCTYPE a [<!ENTITY b "' + b"k" * 1000 + b'">'
    b'<!ENTITY c "' + b"&b;" * 1000 + b'"><!ENTITY d "' + b"&c;" * 1000 + b'">]>'
    b'<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row>'
    b'<c t="inlineStr"><is><t>&d;</t></is></c></row></sheetData></worksheet>'
)


def _says_less(content: bytes, name: str) -> bytes:
    """Return a zip whose list of contents says that a part unpacks to one byte."""
    at = content.rindex(b"PK\x01\x02", 0, content.rindex(name.encode()))
    return content[: at + 24] + struct.pack("<I", 1) + content[at + 28 :]


BOMB = _packed({SHEET: bytes(LARGEST_UNPACKED + 1)}, GOOD)


@pytest.mark.asvs("V1.5.1", "V5.2.1", "V5.2.3")
@pytest.mark.parametrize(
    ("content", "why"),
    [
        (BOMB, "too much memory or time"),
        (_says_less(BOMB, SHEET), "damaged"),
        (_packed({f"a{at}": b"" for at in range(1001)}, GOOD), "too much memory or time"),
        (_packed({SHEET: ENTITIES}, GOOD), "damaged"),
        (_packed({SHEET: b"<worksheet>"}, GOOD), "damaged"),
        (_packed({"a.txt": b"kites"}), "damaged"),
        (GOOD[: len(GOOD) // 2], "damaged"),
        (b"PK\3\4", "damaged"),
        (b"", "damaged"),
        (b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(600), "locked"),
        (bytes(LARGEST + 1), "more than 5 MB"),
    ],
    ids=[
        "bomb",
        "bomb that hides",
        "many parts",
        "entities",
        "no XML",
        "no workbook",
        "half",
        "PK",
        "empty",
        "old",
        "large",
    ],
)
def test_what_cannot_be_read_is_refused(content: bytes, why: str) -> None:
    """With what to do instead; this process takes no more memory for it."""
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    with pytest.raises(InputError, match=why) as told:
        workbook_rows(content, "a.xlsx")
    assert "copy its cells and paste them" in str(told.value)
    grown = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before
    assert sys.platform == "darwin" or grown < 64_000


def test_a_sheet_with_a_cell_far_away_is_cut() -> None:
    """A cell in the last row and column of a sheet does not make a million rows."""
    far = b'<row r="1048576"><c r="XFD1048576"><v>3</v></c></row></sheetData>'
    with zipfile.ZipFile(BytesIO(GOOD)) as old:
        sheet = old.read(SHEET).replace(b"</sheetData>", far)
    found = workbook_rows(_packed({SHEET: sheet}, GOOD), "a.xlsx")
    assert len(found.rows) == 401
    assert found.rows[1] == (("K01", "typed"), ("3", "typed"))
