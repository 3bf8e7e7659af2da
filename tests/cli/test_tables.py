"""Marks as tables on the terminal."""

import subprocess
import sys
from pathlib import Path

import pytest

from tests.kit.terminal import Terminal

COMMAND = Path(sys.executable).with_name("onewhole")


def test_a_row_a_pupil_and_what_may_show(onewhole: Terminal, sheet: Path, answers: Path) -> None:
    """Each answer is a sign, the legend names each sign, and the finding stands beside them."""
    lines = onewhole("mark", sheet, answers).out.splitlines()
    assert [line.split() for line in lines[:6]] == [
        ["pupil", "1", "2", "3a", "answers", "may", "show"],
        ["K01", "✓", "✓", "✓"],
        ["K02", "✓", "✗", "✗", "likely:", "A01", "in", "2,", "3a"],
        ["K03", "-", "?", "-"],
        ["right", "2", "1", "1"],
        ["tried", "2", "2", "2"],
    ]
    assert lines[6] == ("✓ right   f right in another form than asked   ✗ wrong   - blank   ? unreadable")


def test_the_caution_stands_last(onewhole: Terminal, sheet: Path, answers: Path) -> None:
    """No table of findings without it."""
    shown = onewhole("mark", sheet, answers).out
    assert " ".join(shown.split()).endswith("is a hint for a talk with the child, never a label.")


@pytest.mark.parametrize("encoding", ["latin-1", "ascii", "cp1252"])
def test_a_terminal_without_the_signs(encoding: str, sheet: Path, answers: Path) -> None:
    """Right is + and wrong is x there: a ? keeps its meaning."""
    ran = subprocess.run(
        [COMMAND, "mark", sheet, answers],
        check=True,
        capture_output=True,
        env={"PYTHONIOENCODING": encoding, "PYTHONUTF8": "0", "COLUMNS": "80"},
    )
    lines = ran.stdout.decode(encoding).splitlines()
    assert [line.split()[:4] for line in lines[1:4]] == [
        ["K01", "+", "+", "+"],
        ["K02", "+", "x", "x"],
        ["K03", "-", "?", "-"],
    ]
    assert lines[6].startswith("+ right   f right in another form than asked   x wrong")


def test_what_a_pupil_is_called_is_shown_as_it_is(onewhole: Terminal, sheet: Path, tmp_path: Path) -> None:
    """A code in brackets, or one that looks like a colour, is text and nothing else."""
    path = tmp_path / "odd.csv"
    path.write_text("pupil,1,2,3a\n[red]K01[/red],3 5/8,4 7/8,3 5/8\n=1+1,1,1,1\n")
    shown = onewhole("mark", sheet, path).out
    assert "[red]K01[/red]" in shown
    assert "=1+1" in shown
