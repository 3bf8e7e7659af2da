"""A sheet read from its file, with settings of the moment."""

from pathlib import Path

import pytest

from onewhole.desk.page.sheets import sheet_in
from onewhole.sheets.header import CornerMarks, Paper, Print, SettingError


def test_the_moment_speaks_before_the_sheet(tmp_path: Path) -> None:
    """Paper and print may be chosen when printing; the sheet's own stand otherwise."""
    path = tmp_path / "sheet.txt"
    path.write_text("paper: a4\nprint: large\n\n1. 52 - 27\n")
    assert (sheet_in(path).header.paper, sheet_in(path).header.print) == (Paper.A4, Print.LARGE)
    now = sheet_in(path, paper="Letter", size="ordinary").header
    assert (now.paper, now.print) == (Paper.LETTER, Print.ORDINARY)


def test_marks_of_the_moment(tmp_path: Path) -> None:
    """A sheet that has none gets them, and one that has them may be printed to hang up."""
    path = tmp_path / "sheet.txt"
    path.write_text("corner marks: windows\n\n1. 52 - 27\n")
    assert sheet_in(path).header.marks is CornerMarks.WINDOWS
    assert sheet_in(path, marks="none").header.marks is CornerMarks.NONE
    with pytest.raises(SettingError, match=r"boxes.*the corner marks asked for"):
        sheet_in(path, marks="boxes")


def test_a_choice_that_there_is_not(tmp_path: Path) -> None:
    """It says which choice was meant."""
    path = tmp_path / "sheet.txt"
    path.write_text("1. 52 - 27\n")
    with pytest.raises(SettingError, match=r"a5.*the paper asked for"):
        sheet_in(path, paper="a5")
