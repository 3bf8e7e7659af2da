"""`onewhole compose` in the terminal: what goes where, and the numbers in its JSON."""

import json
from pathlib import Path

from tests.kit.terminal import Terminal

SMALL = ("compose", "--number", "4", "--denominators", "4,8")


def test_json_has_numbers(onewhole: Terminal) -> None:
    """Gap, what the page teaches and the bound are numbers; pairs of sets of ids say what is told apart."""
    shown = onewhole(*SMALL, "--json")
    found = json.loads(shown.out)
    assert shown.code == 0
    assert isinstance(found["gap"], float)
    assert found["gap"] < 0.01
    assert found["teaches"] <= found["bound"]
    assert {len(one["patterns"]) for one in found["tells_apart"]} == {2}
    labels = {one["label"] for one in found["problems"]}
    assert all(set(one["problems"]) <= labels for one in found["tells_apart"])


def test_the_sheet_is_what_is_printed(onewhole: Terminal, tmp_path: Path) -> None:
    """It can be piped into a file; with --to it goes there and JSON has it too."""
    shown = onewhole(*SMALL)
    path = tmp_path / "night.txt"
    told = onewhole(*SMALL, "--to", str(path), "--json")
    assert path.read_text() == shown.out == json.loads(told.out)["sheet"]
    assert onewhole(*SMALL, "--to", str(path)).out == ""


def test_a_file_that_cannot_be_written_is_refused(onewhole: Terminal, tmp_path: Path) -> None:
    """With exit code 2."""
    assert onewhole(*SMALL, "--to", str(tmp_path / "no" / "night.txt")).code == 2


def test_a_clash_is_no_fault(onewhole: Terminal) -> None:
    """It ends with 2, and nothing is on standard output."""
    found = onewhole(*SMALL, "--minutes", "1")
    assert (found.code, found.out) == (2, "")
