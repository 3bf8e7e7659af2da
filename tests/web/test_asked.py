"""What a child was asked and said, typed beside “Ask next” on Tomorrow and on the child's page."""

import json
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import set_night
from onewhole.desk.classes.marked_nights import marked_night, missing_before
from onewhole.findings.status import Status
from onewhole.store.asked import asked_rows
from tests.kit.answers import by_pattern, page
from tests.kit.doors import NOW, Opened, opened
from tests.kit.forms import form_to

NIGHT, CHILD = "/mine/1/night/1", "/mine/1/pupil/K01"
TYPED = "1. 5 1/8 - 2 5/8\n2. 7 1/4 - 3 3/4\n"
LATER = "1. 6 2/8 - 3 6/8\n2. 9 1/3 - 2 2/3\n"


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """Two nights; after the first A01 and A02 fit K01 alike, and K02 has all right."""
    with opened(tmp_path) as made:
        made.post("/welcome", name="Room 12", pupils="", names="Wren\nLark")
        book = made.door.books["mine"]
        set_night(book, 1, TYPED, NOW.date(), NOW)
        set_night(book, 1, LATER, NOW.date().replace(day=2), NOW)
        cells = [("K01", "1", "3 4/8"), ("K01", "2", "4 2/4"), ("K02", "1", "2 4/8"), ("K02", "2", "3 2/4")]
        sent = json.dumps([[*cell, ""] for cell in cells])
        assert made.post(f"{NIGHT}/marking/keep", cells=sent).status == 200
        later = json.dumps([["K02", "1", "2 4/8", ""]])
        assert made.post("/mine/1/night/2/marking/keep", cells=later).status == 200
        yield made


def _status(door: Opened) -> tuple[Status, tuple[str, ...]]:
    found = marked_night(door.door.books["mine"], 1, 1).marked.findings[0]
    return found.status, found.patterns


def test_the_form_offers_the_suggestion_and_the_answer_settles(door: Opened) -> None:
    """Without a script: the form as it stands, with what the child wrote typed into it."""
    assert _status(door)[1] == ("A01", "A02")
    form = form_to(door.get(f"{NIGHT}/tomorrow").text, f"{NIGHT}/tomorrow/asked", code="K01")
    assert (form.value("wrote"), form.value("word")) == ("", "")
    (wrote,) = by_pattern("A01", page((form.value("asked"),)))
    came = door.post(form.action, **dict(form.filled(wrote=wrote, word="this idea: A01")))
    assert (came.status, came.goes) == (303, f"{NIGHT}/tomorrow#talk-K01")
    assert _status(door) == (Status.LIKELY, ("A01",))
    told = door.get(f"{NIGHT}/tomorrow").text
    assert "your word: this idea (“takes the smaller number of pieces from the larger”)" in told
    changed = r"changed in the odds: “takes the smaller [a-z ]+ larger” about \d\d in 100 before, "
    assert re.search(f"{changed}.*? 9\\d in 100 with it", told)
    assert form_to(told, f"{NIGHT}/tomorrow/asked", code="K01").value("asked") == ""


def test_a_row_is_taken_back_and_stays_in_what_is_held(door: Opened) -> None:
    """It counts no more; both rows are held on the child, on the page, as JSON and as a table."""
    before = _status(door)
    door.post(f"{NIGHT}/tomorrow/asked", code="K01", asked="9 3/5 - 5 4/5", wrote="4 1/5", word="")
    assert _status(door) != before
    form = form_to(door.get(f"{NIGHT}/tomorrow").text, f"{NIGHT}/tomorrow/asked/back", code="K01")
    assert door.post(form.action, **dict(form.filled())).goes == f"{NIGHT}/tomorrow#talk-K01"
    assert _status(door) == before
    assert "Take it back" not in door.get(f"{NIGHT}/tomorrow").text
    assert door.post(form.action, **dict(form.filled())).status == 404, "it is gone already"
    held = json.loads(door.get(f"{CHILD}/held.json").content)["asked_answers"]
    assert [(row["wrote"], row["takes_back"]) for row in held] == [("4 1/5", "0"), ("", "1")]
    assert "row 1 is taken back" in door.get(f"{CHILD}/held").text
    assert "row 1 is taken back" in door.get(f"{CHILD}/held.csv").text


def test_the_child_s_own_page_has_the_form_too(door: Opened) -> None:
    """It offers the problem of the last night on which the child wrote, and any other may be typed."""
    form = form_to(door.get(CHILD).text, f"{CHILD}/asked")
    tomorrow = form_to(door.get(f"{NIGHT}/tomorrow").text, f"{NIGHT}/tomorrow/asked", code="K01")
    assert (form.value("night"), form.value("asked")) == ("1", tomorrow.value("asked") or "none offered")
    came = door.post(form.action, **dict(form.filled(asked="9 3/5 - 5 4/5", wrote="4 1/5")))
    assert came.goes == f"{CHILD}#asked"
    told = door.get(CHILD).text
    assert (
        "What the talk changed in the odds: “takes the smaller number of pieces from the larger” about"
        in told
    )
    assert _status(door) == (Status.LIKELY, ("A01",))
    back = form_to(told, f"{CHILD}/asked/back")
    assert door.post(back.action, **dict(back.filled())).goes == f"{CHILD}#asked"
    assert "Nothing is written down." in door.get(CHILD).text


def test_a_word_alone_leaves_the_offered_problem_out(door: Opened) -> None:
    """The problem that the form offers was not asked where nothing was written."""
    form = form_to(door.get(f"{NIGHT}/tomorrow").text, f"{NIGHT}/tomorrow/asked", code="K01")
    assert door.post(form.action, **dict(form.filled(word="slip"))).status == 303
    (row,) = asked_rows(door.door.books["mine"], 1)
    assert (row.asked, row.wrote, row.said, row.by) == ("", "", "slip", "teacher")


@pytest.mark.parametrize("place", [f"{NIGHT}/tomorrow", CHILD])
@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ({"asked": "9 -", "wrote": "<b>4", "word": ""}, "A number is missing"),
        ({"asked": "9 - 4", "wrote": "", "word": ""}, "What the child wrote is missing"),
        ({"asked": "", "wrote": "<b>4", "word": ""}, "The problem is missing"),
        ({"asked": "9 - 4", "wrote": "5", "word": "perhaps"}, "no word about a talk"),
        ({"asked": "9 - 4", "wrote": "5", "word": "this idea"}, "none that has a name"),
        ({"asked": "9 - 4", "wrote": "5" * 401, "word": ""}, "too long"),
    ],
)
def test_what_cannot_be_kept_stays_typed(door: Opened, place: str, typed: dict[str, str], said: str) -> None:
    """The page comes back with what is wrong, and nothing is kept."""
    came = door.post(f"{place}/asked", code="K01", night="1", **typed)
    assert (came.status, "Nothing was written down." in came.text, said in came.text) == (422, True, True)
    form = form_to(came.text, f"{place}/asked", **({"code": "K01"} if place != CHILD else {}))
    assert (form.value("asked"), form.value("wrote")) == (typed["asked"], typed["wrote"])
    assert "<b>4" not in came.text
    assert asked_rows(door.door.books["mine"], 1) == ()


def test_a_pupil_or_a_night_of_another_class_is_not_there(door: Opened) -> None:
    """Whatever is sent."""
    typed = {"asked": "9 - 4", "wrote": "5", "word": ""}
    assert door.post(f"{NIGHT}/tomorrow/asked", code="K07", **typed).status == 404
    assert door.post(f"{CHILD}/asked", night="7", **typed).status == 404
    assert door.post(f"{CHILD}/asked/back", night="1", line="1").status == 404


def test_later_nights_follow(door: Opened) -> None:
    """A row makes the night and all later ones be worked out anew, and so does taking it back."""
    book = door.door.books["mine"]
    marked_night(book, 1, 2)
    assert missing_before(book, 1, 2) == 0
    door.post(f"{NIGHT}/tomorrow/asked", code="K01", asked="9 3/5 - 5 4/5", wrote="4 1/5", word="")
    assert missing_before(book, 1, 2) == 1
    marked_night(book, 1, 2)
    assert missing_before(book, 1, 2) == 0
    door.post(f"{NIGHT}/tomorrow/asked/back", code="K01", line="1")
    assert missing_before(book, 1, 2) == 1
