"""Pupil, asked without a browser: the story, all that is held, erased."""

import csv
import json
import re
from collections.abc import Iterator
from io import StringIO
from pathlib import Path
from threading import Event

import pytest
from markupsafe import escape

from onewhole.desk.classes.class_records import room
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.desk.keep.backups import Erased
from onewhole.store.answers import KeptAnswer
from onewhole.web.jobs import Outcome
from tests.kit.doors import Opened
from tests.kit.kept import keep_answer
from tests.kit.rounds import lived_in
from tests.kit.waiting import until

PLACE = "/mine/1/pupil/K05"


def _name(door: Opened) -> str:
    return room(door.door.books["mine"], 1).pupil("K05").name or ""


@pytest.fixture(scope="module")
def club(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Opened]:
    """A door on the invented class, every night read."""
    with lived_in(Path(tmp_path_factory.mktemp("club"))) as door:
        mark_missing(door.door.books["mine"], 1, lambda _done, _of: None)
        yield door


def test_the_story_has_its_cautions_and_its_numbers_twice(club: Opened) -> None:
    """The caution stands before the findings, the rules on records beside what is held; picture and table."""
    page = club.get("/mine/1/pupil/K01").text
    assert page.index("never a label") < page.index("fit “takes the smaller")
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
    assert [escape(night["says"]) in page for night in held["findings"]["nights"]] == [True] * 9
    assert "<bdi>=1+2</bdi>" in page


def test_what_was_given_out_is_noted_shown_and_taken_back(tmp_path: Path) -> None:
    """On the child's page, among all that is held, on Keep, and before the child is erased; as text."""
    with lived_in(tmp_path) as door:
        line = {"what": "<b>the table", "to": "Ms Lark", "why": "next year", "day": "2026-08-31"}
        assert door.post(f"{PLACE}/given", **line).goes == f"{PLACE}#given"
        for place in (PLACE, f"{PLACE}/held", "/mine/keep", f"{PLACE}/erase"):
            assert "<bdi>&lt;b&gt;the table</bdi>, to <bdi>Ms Lark</bdi>" in door.get(place).text
        assert json.loads(door.get(f"{PLACE}/held.json").content)["given_out"][0]["to"] == "Ms Lark"
        assert "Ms Lark" not in door.get("/mine/1/pupil/K06").text
        assert door.post("/mine/1/pupil/K06/given/back", line="1").status == 404
        assert door.post(f"{PLACE}/given/back", line="1").goes == f"{PLACE}#given"
        assert "Nothing is noted." in door.get("/mine/keep").text


@pytest.mark.parametrize(
    ("field", "typed", "said"),
    [
        ("what", " ", "What was given out is missing"),
        ("to", "", "To whom it was given is missing"),
        ("day", "soon", "This is not a day"),
        ("day", "2026-09-02", "still to come"),
    ],
)
def test_a_line_that_cannot_be_noted_stays_typed(tmp_path: Path, field: str, typed: str, said: str) -> None:
    """The page comes back with what is wrong and with all that was typed; nothing is noted."""
    with lived_in(tmp_path) as door:
        line = {"what": "a kite page", "to": "Ms Lark", "why": "next year", "day": "2026-08-31"}
        page = door.post(f"{PLACE}/given", **{**line, field: typed})
        assert (page.status, said in page.text) == (422, True)
        assert f'name="why" value="{line["why"]}"' in page.text
        assert "Nothing is noted." in page.text


@pytest.mark.asvs("V2.3.1")
def test_erasing_wants_the_code_and_takes_everything(tmp_path: Path) -> None:
    """Another code, or none, erases nothing; the right one leaves no trace of the name in the file."""
    with lived_in(tmp_path) as door:
        assert b"Box Kite" in _bytes(tmp_path)
        for sure in ("", "K06", "yes"):
            page = door.post(f"{PLACE}/erase", sure=sure, backups="yes")
            assert (page.status, "Nothing was erased" in page.text) == (422, True)
        assert len(room(door.door.books["mine"], 1).pupils) == 24
        page = door.post(
            f"{PLACE}/erase",
            sure=" k05 ",
            backups="yes",
            saw=_name(door),
        )
        assert (page.status, "K05 is erased" in page.text) == (200, True)
        assert door.get(PLACE).status == 404
        assert len(room(door.door.books["mine"], 1).pupils) == 23
        assert b"Box Kite" not in _bytes(tmp_path)


def test_nothing_is_erased_while_work_with_the_class_is_under_way(tmp_path: Path) -> None:
    """It might write of the child afterwards; what ended before is forgotten with the child."""
    over = Event()
    with lived_in(tmp_path) as door:
        jobs = door.door.jobs
        ended = jobs.start("Kite", PLACE, lambda _progress: Outcome("/"))
        until(lambda: jobs[ended.name].ended, "the work")
        jobs.start("Kites", "/mine/1/night/3/tomorrow", lambda _progress: Outcome(str(over.wait(60))))
        page = door.post(f"{PLACE}/erase", sure="K05", backups="yes", saw=_name(door))
        assert (page.status, "under way" in page.text) == (422, True)
        over.set()
        until(lambda: not jobs.under_way(), "the work")
        assert door.post(f"{PLACE}/erase", sure="K05", backups="yes", saw=_name(door)).status == 200
        with pytest.raises(KeyError):
            jobs[ended.name]


def test_traces_that_may_be_left_are_told_with_a_button(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where the file could not be written anew, the page says so and offers to do it again."""
    traced = Erased("K05", (), (tmp_path / "<b>.damaged",), "Another window is reading the file")
    monkeypatch.setattr("onewhole.web.pages.pupil.erase_everywhere", lambda *_, **__: traced)
    with lived_in(tmp_path) as door:
        page = door.post(f"{PLACE}/erase", sure="K05", saw=_name(door)).text
        assert "Traces may still be in the file" in page
        assert "<bdi>&lt;b&gt;.damaged</bdi>" in page
        assert door.post("/mine/1/clean").goes == "/mine/1/class"


def _bytes(folder: Path) -> bytes:
    return b"".join(path.read_bytes() for path in folder.rglob("*") if path.is_file())
