"""What the page "Try and check" asks of the pure floors, asked here without a browser."""

import json
import sys
from pathlib import Path
from subprocess import run

import pytest

from onewhole.desk.marking import verdicts
from tests.house.plan import pure_rooms
from tools.try_page import trying
from tools.try_page.build import ROOMS, pack


def test_a_problem_is_worked_and_answers_are_marked() -> None:
    """Line by line with reasons; by sign and word, with the pattern that writes a wrong one."""
    told = json.loads(trying.tried("9 5/8 - 4 6/8", "4 7/8\n\n5 1/8\n39/8\nsmudge\n"))
    assert [(one["text"], one["sign"]) for one in told["answers"]] == [
        ("4 7/8", "✓"), ("5 1/8", "✗"), ("39/8", "✓"), ("smudge", "?"),
    ]  # fmt: skip
    assert told["answers"][1]["fits"] == ["takes the smaller number of pieces from the larger"]
    assert "One whole is 8 eighths." in [line["why"] for line in told["lines"]]
    assert 'alttext="4 7/8"' in told["answer"]


@pytest.mark.parametrize(("typed", "column"), [("9 5/0 - 1", 5), ("", 1), ("kites", 1)])
def test_what_cannot_be_read_is_told_with_its_place(typed: str, column: int) -> None:
    """And what to do; no answer is looked at."""
    told = json.loads(trying.tried(typed, "1"))
    assert told["refused"]
    assert told["column"] == column


def test_the_signs_are_those_of_the_program() -> None:
    """The page cannot ask the desk, which knows the file of a class."""
    assert trying.SIGNS == verdicts.SIGNS


def test_the_packed_rooms_tell_the_same(tmp_path: Path) -> None:
    """In a Python without packages, with records that no compiled part makes: word for word."""
    pack(packed := tmp_path / "onewhole.zip")
    asked = [
        ("9 5/8 - 4 6/8", "4 7/8\n5 1/8"),
        ("304 - 128", "176\n276"),
        ("5 ft 2 in - 9 in", "3 ft 5 in"),
    ]
    code = f"import json, trying; print(json.dumps([trying.tried(*one) for one in {asked!r}]))"
    told = run(
        [sys.executable, "-S", "-c", code],
        env={"PYTHONPATH": str(packed)}, check=True, capture_output=True, encoding="utf-8",
    ).stdout  # fmt: skip
    assert json.loads(told) == [trying.tried(*one) for one in asked]


def test_the_rooms_are_those_without_input_and_output() -> None:
    """Nothing of the desk or below it in the system: only pure rooms go along."""
    rooms = {f"{room}.py" if room == "errors" else room for room in pure_rooms()}
    assert set(ROOMS) <= rooms
