"""What the tests of the terminal door share."""

from pathlib import Path

import pytest

from tests.kit.terminal import Terminal


@pytest.fixture
def onewhole(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Terminal:
    """The command, called in this process, on 80 columns; a door is noted in the test's folder."""
    monkeypatch.setenv("COLUMNS", "80")
    monkeypatch.setenv("XDG_RUNTIME_DIR", str(tmp_path))
    return Terminal(capsys)


@pytest.fixture
def sheet(tmp_path: Path) -> Path:
    """A small sheet of Room 12's kite club."""
    path = tmp_path / "sheet.txt"
    path.write_text("title: Kite tails\n\n1. 6 7/8 - 3 2/8\n2. 9 5/8 - 4 6/8\n3a) 5 - 1 3/8\n")
    return path


@pytest.fixture
def answers(tmp_path: Path) -> Path:
    """What three pupils wrote: one right, one by the smaller-from-larger idea, one in other ways."""
    path = tmp_path / "answers.csv"
    path.write_text("pupil,1,2,3a\nK01,3 5/8,39/8,3 5/8\nK02,3 5/8,5 1/8,4 3/8\nK03,-,smudge,\n")
    return path
