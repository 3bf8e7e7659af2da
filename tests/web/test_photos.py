"""Papers from photos without a browser: sent, read, looked at, spot-checked, taken back, cleared."""

import json
import re
from collections.abc import Iterator
from html import unescape
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import set_night, start_room
from onewhole.desk.marking.grid import grid
from onewhole.desk.paper.paper_wishes import paper_wishes
from onewhole.findings.in_pictures import NoPage
from onewhole.marking.paper.sureness import Sureness
from onewhole.store.paper_cells import paper_cells_of
from tests.kit.doors import NOW, Answer, Clock, Opened, opened
from tests.kit.forms import form_to
from tests.kit.kept import DAY
from tests.kit.paper_cells import CROP
from tests.kit.photos_sent import PHOTOS, read, sent
from tests.kit.seen_papers import TYPED, Sees, seen, sure, unsure

PAPERS = seen(
    {
        "K01": {"1": sure("3 6/8"), "2": unsure("4 2/6", "4 3/6", "4"), "3": sure("")},
        "K02": {"1": unsure("5 1/8", "5 7/8"), "2": sure("4 2/6")},
    },
    NoPage("blurred.jpg"),
)


@pytest.fixture
def sees() -> Sees:
    """What the machine sees: two papers, and a picture that is none."""
    return Sees(PAPERS)


@pytest.fixture
def door(tmp_path: Path, sees: Sees) -> Iterator[Opened]:
    """Room 12 with three pupils and a night of twelve problems."""
    with opened(tmp_path, Clock(), sees=sees) as made:
        book = made.door.books["mine"]
        start_room(book, "Room 12", 3, NOW)
        set_night(book, 1, TYPED, DAY, NOW)
        yield made


def _words(page: str) -> str:
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", page)).split())


def _texts(door: Opened) -> dict[tuple[str, str], str]:
    rows = grid(door.door.books["mine"], 1, 1).rows
    return {(one.code, one.label): one.text for row in rows for one in row.cells if one.text}


def _key(door: Opened, what: str, **fields: str) -> Answer:
    return door.post(f"{PHOTOS}/{what}", **fields)


def test_pictures_are_read_and_what_became_of_them_is_told(door: Opened, sees: Sees) -> None:
    """Each picture comes with its name; sure readings stand, others wait, what else was found is listed."""
    page = read(door, "one.jpg", "two.jpg", "blurred.jpg")
    assert [name for name, _ in sees.shown] == ["one.jpg", "two.jpg", "blurred.jpg"]
    words = _words(page.text)
    assert "2 answers are read, 1 is empty, 2 are to be looked at" in words
    assert "blurred.jpg" in words
    assert "2 answers to look at" in words
    assert "No child's handwriting" in words
    assert _texts(door) == {("K01", "1"): "3 6/8", ("K02", "2"): "4 2/6"}


def test_no_picture_is_told(door: Opened) -> None:
    """An empty form changes nothing."""
    came = door.post(PHOTOS)
    assert (came.status, "There is no picture here" in came.text) == (422, True)
    assert sent(door, *(f"{at}.jpg" for at in range(151))).status == 413
    assert paper_cells_of(door.door.books["mine"], 1) == ()


def test_the_most_doubtful_is_looked_at_first_without_a_script(door: Opened) -> None:
    """Each button keeps its reading; what is typed is kept too; the page shows what comes next."""
    page = read(door, "one.jpg")
    first = form_to(page.text, f"{PHOTOS}/check")
    asked = dict(first.fields)["code"], dict(first.fields)["label"]
    assert _key(door, "check", **{**dict(first.fields), "text": " 5 1/8 "}).goes == f"{PHOTOS}#cell"
    assert _texts(door)[asked] == "5 1/8"
    second = form_to(door.get(PHOTOS).text, f"{PHOTOS}/check")
    other = dict(second.fields)["code"], dict(second.fields)["label"]
    assert {asked, other} == {("K01", "2"), ("K02", "1")}
    _key(door, "check", **{**dict(second.fields), "text": ""})
    assert other not in _texts(door)
    done = door.get(PHOTOS).text
    assert "A few that were read without you" in _words(done)


def test_a_script_gets_the_next_cell_and_takes_the_last_back(door: Opened) -> None:
    """Markup comes from the server; one step back shows the cell again, and it counts in nothing."""
    read(door, "one.jpg")
    came = json.loads(_key(door, "checked", code="K01", label="2", text="4 3/6", saw="").text)
    assert came["left"] == 1
    assert 'data-code="K02"' in came["row"]
    assert came["told"].startswith("K01, 2:")
    assert _texts(door)["K01", "2"] == "4 3/6"
    came = json.loads(_key(door, "unchecked", code="K01", label="2").text)
    assert (came["left"], 'data-code="K01"' in came["row"]) == (2, True)
    assert ("K01", "2") not in _texts(door)


def test_a_window_that_saw_another_answer_is_told(door: Opened) -> None:
    """What another window checked is not written over in silence."""
    read(door, "one.jpg")
    _key(door, "checked", code="K01", label="2", text="4", saw="")
    late = _key(door, "checked", code="K01", label="2", text="9", saw="")
    assert late.status == 409
    assert _texts(door)["K01", "2"] == "4"


def test_one_wrong_in_the_spot_check_makes_the_program_surer(door: Opened) -> None:
    """The wrong one waits with the others, the right ones are checked, and the setting is one step up."""
    read(door, "one.jpg")
    came = _key(door, "spot", seen="K01 1", wrong="K01 1")
    words = _words(came.text)
    assert "1 answer is read wrongly" in words
    assert "From now on the program must be surer" in words
    assert paper_wishes(door.door.books["mine"], 1).sureness is not Sureness.USUAL
    assert ("K01", "1") not in _texts(door)


def test_the_pictures_go_when_all_is_looked_at(door: Opened) -> None:
    """Not before; then nothing of a picture is in the file, and the answers stay."""
    read(door, "one.jpg")
    picture = door.get(f"{PHOTOS}/picture?code=K01&label=2")
    assert (picture.status, picture.content) == (200, CROP)
    assert "to be looked at first" in _words(_key(door, "finish").text)
    for code, label in (("K01", "2"), ("K02", "1")):
        _key(door, "checked", code=code, label=label, text="4", saw="")
    assert "taken away" in _words(_key(door, "finish").text)
    assert paper_cells_of(door.door.books["mine"], 1) == ()
    assert _texts(door)["K01", "1"] == "3 6/8"
    assert door.get(f"{PHOTOS}/picture?code=K01&label=2").status == 404


def test_a_reading_is_taken_back(door: Opened) -> None:
    """What the program wrote is gone; what was checked stays and is told."""
    page = read(door, "one.jpg")
    _key(door, "checked", code="K01", label="2", text="4", saw="")
    fields = dict(form_to(page.text, f"{PHOTOS}/back").fields)
    came = _words(_key(door, "back", **fields).text)
    assert "2 answers are as before these papers" in came
    assert "K01, 2" in came
    assert _texts(door) == {("K01", "2"): "4"}


def test_wishes_are_kept_and_a_stale_form_is_told(door: Opened) -> None:
    """How sure, whether it learns, whether pictures stay."""
    fields = dict(form_to(door.get(PHOTOS).text, f"{PHOTOS}/wish").fields)
    sent_ = {**fields, "sureness": "every", "keeps": "yes"}
    assert _key(door, "wish", **sent_).status == 303
    kept = paper_wishes(door.door.books["mine"], 1)
    assert (kept.sureness, kept.learns, kept.keeps) == (Sureness.EVERY, False, True)
    assert _key(door, "wish", **{**fields, "sureness": "few"}).status == 409
    assert _key(door, "wish", **{**fields, "sureness": "some"}).status == 422


def test_marking_shows_which_answers_came_from_paper(door: Opened) -> None:
    """The picture is beside what was read; what waits is counted above the grid."""
    read(door, "one.jpg")
    page = door.get("/mine/1/night/1/marking").text
    assert "2 answers on paper are to be looked at" in _words(page)
    assert page.count('data-paper="open"') == 2
    assert f"{PHOTOS}/picture?code=K01&amp;label=1" in page
