"""A workbook read back: whatever is in a text stays a text."""

from datetime import UTC, datetime
from io import BytesIO

from openpyxl import load_workbook

from onewhole.presses.workbook_writing import TableCell, TableSheet, workbook_bytes

WHEN = datetime(2026, 9, 1, 18, 30, 12, 345, tzinfo=UTC)
TEXTS = (
    "=1+1",
    "+1",
    "-1",
    "@now",
    "1/2",
    "3.50",
    "8-Mar",
    "007",
    "TRUE",
    "#N/A",
    "\u202e8/7",
    "<b>&",
    " ",
    "{=1}",
)


def test_every_text_comes_back_as_it_was_and_as_text() -> None:
    """A formula, a date, a truth, an error: none of them is one; a number is one."""
    rows: list[tuple[TableCell, TableCell]] = [("Code", "n")]
    rows += [*((text, at) for at, text in enumerate(TEXTS)), (None, None)]
    book = load_workbook(BytesIO(workbook_bytes([TableSheet("Scores", rows)], WHEN)))
    page = book["Scores"]
    found = [(row[0].value, row[0].data_type, row[1].value) for row in page.iter_rows(min_row=2)]
    assert found[: len(TEXTS)] == [(text, "s", at) for at, text in enumerate(TEXTS)]
    assert (page["A1"].font.bold, page["A2"].font.bold, page.freeze_panes) == (True, False, "C2")
    assert book.properties.created == WHEN.replace(tzinfo=None, microsecond=0)


def test_a_sign_that_xml_cannot_hold_is_replaced() -> None:
    """A file of an earlier release may have one; the table is made all the same."""
    made = workbook_bytes([TableSheet("A", [["a\0b", "\x1b[2J", "\uffff"]])], WHEN)
    (row,) = load_workbook(BytesIO(made))["A"].values
    assert row == ("a\ufffdb", "\ufffd[2J", "\ufffd")
