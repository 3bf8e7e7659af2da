"""The Marking page asked without a browser: what it takes, what it tells, what it refuses."""

import json
from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from onewhole.desk.classes.class_records import set_night, start_room
from onewhole.desk.marking.grid import grid
from onewhole.store.classes import name_pupil
from tests.kit.doors import NOW, Answer, Opened, opened
from tests.kit.marking_book import SHEET

PLACE = "/mine/1/night/1/marking"
HOSTILE = (
    "<script>alert(1)</script>",
    '"><img src=x onerror=alert(1)>',
    '=HYPERLINK("x")',
    "a\0b",
    "\u202e8/7 5",
    "{{ 7 * 7 }}",
    "'; DROP TABLE answers; --",
    "\N{PILE OF POO}" * 200,
)


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """Room 12 with three pupils and a night of four problems."""
    with opened(tmp_path) as made:
        book = made.door.books["mine"]
        start_room(book, "Room 12", 3, NOW)
        set_night(book, 1, SHEET, date(2026, 9, 1), NOW)
        yield made


def _post(door: Opened, act: str, **fields: str) -> Answer:
    """Ask as the page's script does."""
    door.client.headers["Accept"] = "application/json"
    return door.post(f"{PLACE}/{act}", **fields)


def _keep(door: Opened, *cells: tuple[str, str, str, str]) -> dict[str, Any]:
    answer = _post(door, "keep", cells=json.dumps(cells))
    assert answer.status == 200
    told: dict[str, Any] = json.loads(answer.text)
    return told


def _texts(door: Opened) -> list[list[str]]:
    return [[cell.text for cell in row.cells] for row in grid(door.door.books["mine"], 1, 1).rows]


@pytest.mark.parametrize("text", [text for text in HOSTILE if "\0" not in text], ids=ascii)
def test_hostile_cells_and_names_end_as_text(door: Opened, text: str) -> None:
    """Kept exactly, shown escaped, on the page as loaded and in what the script is told."""
    name_pupil(door.door.books["mine"], 1, "K02", text)
    told = _keep(door, ("K01", "1", text, ""))
    assert [cell["text"] for cell in told["kept"]] == [text]
    assert told["kept"][0]["judged"]["mathml"] is None
    assert _texts(door)[0][0] == text
    page = door.get(PLACE).text
    assert "<script>alert" not in page
    assert "<img" not in page.replace('<img src="/static/', "").replace('<img id="crop"', "")
    assert json.loads(door.get(f"{PLACE}/now").text)["cells"][0]["text"] == text


@pytest.mark.asvs("V2.2.1", "V2.2.2")
@pytest.mark.parametrize(
    "cells",
    [
        "",
        "no",
        "{}",
        "[1]",
        '[["K01", "1", "a"]]',
        '[["K01", "1", "a", null]]',
        "[" * 100_000,
        "[[1, 2, 3, 4]]",
    ],
    ids=lambda cells: cells[:20],
)
def test_cells_that_are_none_are_refused(door: Opened, cells: str) -> None:
    """Nothing is kept, and no fault of the program comes of it."""
    assert _post(door, "keep", cells=cells).status == 422
    assert _texts(door) == [[""] * 4] * 3


def test_what_cannot_be_kept_is_told_by_its_place(door: Opened) -> None:
    """Half a character, too long, no such problem, no such pupil; the good one among them is kept."""
    told = _keep(
        door,
        ("K01", "1", "\ud83d", ""),
        ("K01", "2", "x" * 201, ""),
        ("K01", "\ud83d", "4", ""),
        ("\ud83d", "1", "4", ""),
        ("K01", "3", ">", ""),
    )
    assert [one["at"] for one in told["refused"]] == [0, 1, 2, 3]
    assert [(cell["label"], cell["judged"]["sign"]) for cell in told["kept"]] == [("3", "✓")]
    assert _texts(door)[0] == ["", "", ">", ""]


def test_a_clash_tells_what_stands_there(door: Opened) -> None:
    """With its verdict, so that the window can show both."""
    _keep(door, ("K01", "1", "4 7/8", ""))
    told = _keep(door, ("K01", "1", "5", ""), ("K02", "1", "5", ""))
    assert [(cell["text"], cell["judged"]["verdict"]) for cell in told["clashes"]] == [("4 7/8", "right")]
    assert [cell["code"] for cell in told["kept"]] == ["K02"]


def test_nothing_new_is_told_in_a_word(door: Opened) -> None:
    """The stamp alone, until a cell is written or read otherwise; also a reading counts."""
    stamps = []
    found: dict[str, Any] = {}
    for act, fields in (
        ("", {}),
        ("keep", {"cells": '[["K01", "1", "smudge", ""]]'}),
        ("read-as", {"code": "K01", "label": "1", "typed": "smudge", "read": "4 7/8", "saw": "smudge"}),
    ):
        if act:
            assert _post(door, act, **fields).status == 200
        found = json.loads(door.get(f"{PLACE}/now").text)
        assert json.loads(door.get(f"{PLACE}/now?since={found['stamp']}").text) == {"stamp": found["stamp"]}
        stamps.append(found["stamp"])
    assert len(set(stamps)) == 3
    assert (found["cells"][0]["readAs"], found["cells"][0]["judged"]["sign"]) == ("4 7/8", "✓")
    assert 'data-read="4 7/8"' in door.get(PLACE).text
    written = json.loads(door.get(f"{PLACE}/written?code=K01&label=1").text)["writings"]
    assert [(one["text"], one["by"]) for one in written] == [("smudge", "teacher")]


def test_the_acts_beside_the_grid(door: Opened) -> None:
    """A verdict without keeping, what patterns would write, a column filled in."""
    judged = json.loads(_post(door, "judge", label="1", text="4 7/8").text)
    assert (judged["sign"], judged["verdict"]) == ("✓", "right")
    foretold = json.loads(_post(door, "foretell", label="1", row="[]").text)["predicted"]
    assert ["A01", "takes the smaller number of pieces from the larger", "5 1/8"] in foretold
    row = json.dumps([["1", "5 7/8"], ["3", ""]])
    assert json.loads(_post(door, "foretell", label="2", row=row).text)["predicted"][0][0] == "A02"
    assert _texts(door) == [[""] * 4] * 3
    column = json.loads(_post(door, "column", label="2", wrong="2").text)
    assert (len(column["kept"]), column["left"]) == (2, ["K02"])
    assert [row[1] for row in _texts(door)] == ["3 2/6", "", "3 2/6"]


@pytest.mark.parametrize(
    ("act", "fields", "status"),
    [
        ("judge", {"label": "9", "text": "4"}, 422),
        ("judge", {"label": "1"}, 422),
        ("judge", {"label": "1", "text": "4" * 100_000}, 200),
        ("foretell", {"label": "9", "row": "[]"}, 422),
        ("foretell", {"label": "1", "row": '[["9", "4"], ["\\ud83d", "4"], ["2", "\\ud83d"]]'}, 200),
        ("foretell", {"label": "1", "row": '[["2", 4]]'}, 422),
        ("column", {"label": "9", "wrong": ""}, 422),
        ("column", {"label": "1", "wrong": "99"}, 422),
        ("read-as", {"code": "K77", "label": "1", "typed": "a", "read": "4", "saw": "a"}, 404),
        ("read-as", {"code": "K01", "label": "1", "typed": "a", "read": "b", "saw": "a"}, 422),
    ],
    ids=str,
)
def test_what_is_not_there_is_refused(door: Opened, act: str, fields: dict[str, str], status: int) -> None:
    """With words, and nothing is written."""
    assert _post(door, act, **fields).status == status
    assert _texts(door) == [[""] * 4] * 3


@pytest.mark.asvs("V8.2.2")
def test_another_class_s_night_is_not_there(door: Opened) -> None:
    """Neither its page nor any act on it."""
    start_room(door.door.books["mine"], "Room 13", 1, NOW)
    other = PLACE.replace("/mine/1", "/mine/2")
    assert door.get(other).status == 404
    assert door.get(f"{other}/now").status == 404
    assert door.post(f"{other}/keep", cells='[["K01", "1", "4", ""]]').status == 404
    assert door.get(f"{other}/written?code=K01&label=1").status == 404


def test_a_class_without_pupils_is_led_to_the_list(door: Opened) -> None:
    """There is nothing to mark yet."""
    book = door.door.books["mine"]
    made = start_room(book, "Room 13", 0, NOW)
    set_night(book, made.number, SHEET, date(2026, 9, 1), NOW)
    page = door.get("/mine/2/night/2/marking")
    assert page.status == 200
    assert "/mine/2/class" in page.text
