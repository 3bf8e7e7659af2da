"""Laws of a sheet: written and read it is the same, and nothing that can be typed makes it crash."""

from hypothesis import assume, given
from hypothesis import strategies as st

from onewhole.notations.text import text
from onewhole.sheets.audit import audit
from onewhole.sheets.document import Sheet, SheetError
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.room import RoomError
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.writing import write_sheet
from onewhole.statements.statement import Statement
from tests.kit.sheets import room_of, sheets
from tests.kit.statements import statements


@given(sheets())
def test_written_and_read_it_is_the_same(sheet: Sheet) -> None:
    """read(write(sheet)) == sheet."""
    assert read_sheet(write_sheet(sheet)) == sheet


@given(sheets(), st.sampled_from(("\r\n", "\r", "\n")), st.booleans())
def test_line_ends_and_a_mark_at_the_start_change_nothing(sheet: Sheet, end: str, marked: bool) -> None:
    """As any computer saves the text."""
    saved = ("\N{ZERO WIDTH NO-BREAK SPACE}" if marked else "") + write_sheet(sheet).replace("\n", end)
    assert read_sheet(saved) == sheet


@given(st.text(st.sampled_from("17/2-+=?.):#| \n\r\tabtile:½﻿\x0b\x0c\x85\u2028🪁٣"), max_size=80))
def test_any_text_is_read_or_refused_with_its_place(typed: str) -> None:
    """A refusal says where each mistake stands, and that place is in the text."""
    refused = refusal(typed)
    if refused is None:
        return
    assert refused.mistakes
    for mistake in refused.mistakes:
        assert mistake.remedy
        assert mistake.file == "monday.txt"
        assert mistake.line is not None
        assert mistake.column is not None
        assert 1 <= mistake.line <= 1 + typed.count("\n") + typed.count("\r")


def refusal(typed: str) -> SheetError | None:
    """Return why a text is no sheet, or None when it is one."""
    try:
        read_sheet(typed, "monday.txt")
    except SheetError as refused:
        return refused
    return None


@given(statements())
def test_every_statement_can_be_audited_and_given_room(statement: Statement) -> None:
    """Whatever can be asked has an audit, and room on the paper or a refusal of its own kind."""
    typed = f"1. {text(statement)}"
    assume(refusal(typed) is None)
    sheet = read_sheet(typed)
    assert len(audit(WorkedSheet(sheet)).page.problems) == 1
    try:
        found = room_of(sheet.problems[0], sheet)
    except RoomError:
        return
    assert found.height_mm == found.lines * found.pitch_mm
