"""A night on which the program fails, from the terminal: told whole, noted, and left behind."""

from pathlib import Path

import pytest

from onewhole.desk.marking import mark
from tests.kit.terminal import Terminal


def test_it_is_noted_and_the_next_night_says_so(
    onewhole: Terminal, sheet: Path, answers: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The fault ends with 3; the next night is marked, and standard error tells of the one before."""
    book = tmp_path / "class.json"

    def fails(*_args: object, **_options: object) -> None:
        raise ZeroDivisionError

    monkeypatch.setattr(mark, "mark_sheet", fails)
    failed = onewhole("mark", sheet, answers, "--notebook", book, "--date", "2026-11-10")
    assert (failed.code, failed.out) == (3, "")
    monkeypatch.undo()
    after = onewhole("mark", sheet, answers, "--notebook", book, "--date", "2026-11-11")
    assert (after.code, after.out.count("K02")) == (0, onewhole("mark", sheet, answers).out.count("K02"))
    assert "The answers of 10 November (“Kite tails”) could not be worked through" in after.err


def test_the_page_that_once_failed_is_marked(onewhole: Terminal, tmp_path: Path) -> None:
    """Two innocent answers on which an earlier release ended with a traceback."""
    page, wrote, book = tmp_path / "page.txt", tmp_path / "wrote.csv", tmp_path / "class.json"
    page.write_text("1. 4 1/2 - 2 1/2\n2. 9 1/6 - 4 4/6\n")
    wrote.write_text("pupil,1,2\nK01,2/2,4 5/6\nK02,2,4 3/6\n")
    for day in ("2026-11-10", "2026-11-11"):
        shown = onewhole("mark", page, wrote, "--notebook", book, "--date", day)
        assert (shown.code, shown.err) == (0, "")
