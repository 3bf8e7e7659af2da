"""Pupil, asked without a browser: the story, all that is held, erased."""

import csv
import json
import re
from collections.abc import Iterator
from io import StringIO
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import room
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.desk.keep.backups import Erased
from onewhole.store.answers import KeptAnswer
from tests.kit.doors import Opened
from tests.kit.kept import keep_answer
from tests.kit.rounds import lived_in

PLACE = "/mine/1/pupil/K05"


@pytest.fixture(scope="module")
def club(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Opened]:
    """A door on the invented class, every night read."""
    with lived_in(Path(tmp_path_factory.mktemp("club"))) as door:
        mark_missing(door.door.books["mine"], 1, lambda _done, _of: None)
        yield door


def test_the_story_has_its_cautions_and_its_numbers_twice(club: Opened) -> None:
    """The caution stands before the findings, the rules on records beside what is held; picture and table."""
    page = club.get("/mine/1/pupil/K01").text
    assert page.index("never a label") < page.index("fit A01")
    assert "Good until" in page
    assert "Ask your school when in doubt" in page
    assert "Wilson 1927" in page
    before, drawn, after = re.split(r"<svg|</svg>", page)
    counts = re.findall(r">(\d+ of \d+)<", drawn)
    assert len(counts) > 10
    assert all(f"<td>{count}<br>" in after for count in counts)
    assert "<svg" not in before


def test_nothing_is_said_of_a_pupil_who_has_no_pattern(club: Opened) -> None:
    """K19 works soundly: no finding that is still good."""
    assert "Nothing that is still good" in club.get("/mine/1/pupil/K19").text


def test_a_pupil_who_is_not_there(club: Opened) -> None:
    """Refused kindly, whatever stands in the address."""
    for code in ("K99", "%3Cscript%3E", "k01", "%00"):
        for more in ("", "/held", "/held.json", "/held.csv", "/erase"):
            page = club.get(f"/mine/1/pupil/{code}{more}")
            assert page.status == 404
            assert "<script>" not in page.text


def test_all_that_is_held_is_given_out_three_ways(club: Opened) -> None:
    """On a page, as JSON, as a table in which nothing is a formula: each has every answer."""
    book = club.door.books["mine"]
    keep_answer(book, KeptAnswer(9, "K05", "1", "=1+2", club.door.now(), "teacher"))
    held = json.loads(club.get(f"{PLACE}/held.json").content)
    rows = list(csv.DictReader(StringIO(club.get(f"{PLACE}/held.csv").content.decode("utf-8-sig"))))
    texts = [row["text"] for row in rows if row["what"] == "answers"]
    assert len(texts) == len(held["answers"]) > 60
    assert "'=1+2" in texts
    page = club.get(f"{PLACE}/held").text
    assert page.count("<tr>") == len(held["answers"]) + 1
    assert "<bdi>=1+2</bdi>" in page


def test_erasing_wants_the_code_and_takes_everything(tmp_path: Path) -> None:
    """Another code, or none, erases nothing; the right one leaves no trace of the name in the file."""
    with lived_in(tmp_path) as door:
        assert b"Box Kite" in _bytes(tmp_path)
        for sure in ("", "K06", "yes"):
            page = door.post(f"{PLACE}/erase", sure=sure, backups="yes")
            assert (page.status, "Nothing was erased" in page.text) == (422, True)
        assert len(room(door.door.books["mine"], 1).pupils) == 24
        page = door.post(f"{PLACE}/erase", sure=" k05 ", backups="yes")
        assert (page.status, "K05 is erased" in page.text) == (200, True)
        assert door.get(PLACE).status == 404
        assert len(room(door.door.books["mine"], 1).pupils) == 23
        assert b"Box Kite" not in _bytes(tmp_path)


def test_traces_that_may_be_left_are_told_with_a_button(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where the file could not be written anew, the page says so and offers to do it again."""
    traced = Erased("K05", (), (tmp_path / "<b>.damaged",), "Another window is reading the file")
    monkeypatch.setattr("onewhole.web.pages.pupil.erase_everywhere", lambda *_, **__: traced)
    with lived_in(tmp_path) as door:
        page = door.post(f"{PLACE}/erase", sure="K05").text
        assert "Traces may still be in the file" in page
        assert "<bdi>&lt;b&gt;.damaged</bdi>" in page
        assert door.post("/mine/1/clean").goes == "/mine/1/class"


def _bytes(folder: Path) -> bytes:
    return b"".join(path.read_bytes() for path in folder.rglob("*") if path.is_file())
