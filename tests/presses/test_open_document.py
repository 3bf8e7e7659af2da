"""Spreadsheets of the OpenDocument kind: read as workbooks are, and as little trusted."""

from datetime import date

import pytest

from onewhole.errors import InputError
from onewhole.presses.workbook import LARGEST_UNPACKED
from onewhole.presses.workbook_reading import WorkbookRows, workbook_rows
from tests.kit.open_documents import OpenValue, open_document, sheet_xml

# What stands in an ODS file (OpenDocument 1.3, part 3, chapters 9 and 19) was looked at in files that
# LibreOffice Calc wrote: ActiveTable in settings.xml, number-rows-repeated, text:s, a note in a cell.


def test_a_sheet_comes_as_it_was_left() -> None:
    """The one open last; dates by month and day, fractions as shown, a lone formula as its text."""
    rows: list[list[OpenValue]] = [
        ["Name", 1.0, "2"],
        ["K01", (3.5, "3 1/2"), "=7/2"],
        ["K02", date(2026, 3, 8), 0.25],
    ]
    found = workbook_rows(
        open_document(sheet_xml("Notes", [["x"]]) + sheet_xml("Tuesday", rows), active="Tuesday"), "a.ods"
    )
    assert found == WorkbookRows(
        (
            (("Name", "typed"), ("1", "typed"), ("2", "typed")),
            (("K01", "typed"), ("3 1/2", "fraction"), ("=7/2", "formula")),
            (("K02", "typed"), ("3/8/2026", "date"), ("0.25", "typed")),
        ),
        "Tuesday",
        ("Notes",),
        1,
        ("=7/2",),
    )


def _one_cell(inside: str, row: str = "", cell: str = 'office:value-type="string"') -> bytes:
    rows = f"<table:table-row {row}><table:table-cell {cell}>{inside}</table:table-cell></table:table-row>"
    return open_document(f'<table:table table:name="a">{rows}</table:table>')


@pytest.mark.parametrize(
    ("inside", "cell", "shown"),
    [
        ("<text:p>a<text:s text:c='2'/>b</text:p><text:p>c</text:p>", "", ("a  b\nc", "typed")),
        ("<office:annotation><text:p>why</text:p></office:annotation><text:p>3</text:p>", "", ("3", "typed")),
        ("<text:p>3 <text:span>3/6</text:span></text:p>", "", ("3 3/6", "typed")),
        ("<text:p>3 1/3</text:p>", 'office:value-type="float" office:value="3.5"', ("3.5", "typed")),
        ("<text:p>-1 1/2</text:p>", 'office:value-type="float" office:value="-1.5"', ("-1 1/2", "fraction")),
        ("<text:p>50%</text:p>", 'office:value-type="percentage" office:value="0.5"', ("50%", "typed")),
        ("<text:p>k</text:p>", 'office:value-type="string" table:formula="of:=A9"', ("k", "formula")),
    ],
    ids=["blanks", "a note", "bold", "another fraction", "negative", "percent", "a formula"],
)
def test_a_cell_is_what_it_shows(inside: str, cell: str, shown: tuple[str, str]) -> None:
    """Not the note beside it, and no fraction that its number is not."""
    found = workbook_rows(_one_cell(inside, cell=cell or 'office:value-type="string"'), "a.ods")
    assert found.rows == ((shown,),)


def test_what_repeats_is_cut() -> None:
    """A cell that is said to fill a whole sheet is taken 401 times across and down."""
    far = _one_cell(
        "<text:p>3</text:p>",
        'table:number-rows-repeated="1048576"',
        'office:value-type="string" table:number-columns-repeated="16384"',
    )
    found = workbook_rows(far, "a.ods")
    assert (len(found.rows), {len(row) for row in found.rows}) == (401, {401})


ENTITIES = (
    '<!DOCTYPE a [<!ENTITY b "' + "k" * 1000 + '"><!ENTITY c "' + "&b;" * 1000 + '">'
    '<!ENTITY d "' + "&c;" * 1000 + '">]><a>&d;</a>'
)
OUTSIDE = '<!DOCTYPE a [<!ENTITY b SYSTEM "file:///etc/hostname">]><a>&b;</a>'
GOOD = open_document(sheet_xml("a", [["K01", "3"]]))


@pytest.mark.asvs("V1.5.1", "V5.2.1", "V5.2.3")
@pytest.mark.parametrize(
    ("content", "why"),
    [
        (open_document("", content=ENTITIES), "damaged"),
        (open_document("", content=OUTSIDE), "damaged"),
        (open_document("", settings=ENTITIES), "damaged"),
        (open_document("", content="<a>" + " " * LARGEST_UNPACKED + "</a>"), "too much memory or time"),
        (
            _one_cell(
                f"<text:p>{'k' * 500}</text:p>",
                'table:number-rows-repeated="400"',
                'office:value-type="string" table:number-columns-repeated="400"',
            ),
            "too much memory or time",
        ),
        (open_document("", content="<a>"), "damaged"),
        (open_document(""), "damaged"),
        (open_document("", **{"META-INF/manifest": "<encryption-data/>"}), "locked"),
        (_one_cell("", cell='office:value-type="date" office:date-value="soon"'), "damaged"),
        (GOOD[: len(GOOD) // 2], "damaged"),
    ],
    ids=[
        "entities", "a file outside", "entities in settings", "bomb", "long texts", "no XML", "no sheet",
        "locked", "no day", "half",
    ],
)  # fmt: skip
def test_what_cannot_be_read_is_refused(content: bytes, why: str) -> None:
    """With what to do instead."""
    with pytest.raises(InputError, match=why) as told:
        workbook_rows(content, "a.ods")
    assert "copy its cells and paste them" in str(told.value)


def test_a_name_of_ten_thousand_signs_is_cut() -> None:
    """A text is handed on to its five hundredth sign."""
    found = workbook_rows(open_document(sheet_xml("a", [["k" * 10_000]])), "a.ods")
    assert len(found.rows[0][0][0]) == 500
