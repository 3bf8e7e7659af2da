"""Week, asked without a browser."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import night_pages
from onewhole.desk.classes.marked_nights import night_summaries
from onewhole.desk.classes.week import NightStep, week
from tests.kit.doors import Opened
from tests.kit.rounds import lived_in
from tests.kit.waiting import until


@pytest.fixture
def club(tmp_path: Path) -> Iterator[Opened]:
    """A door on the invented class."""
    with lived_in(tmp_path) as door:
        yield door


def test_each_night_leads_on_to_the_page_where_the_next_thing_is_done(club: Opened) -> None:
    """Last night to its groups, tonight's page to the walkthrough; all four pages of a night are there."""
    page = club.get("/mine/1/week").text
    assert """"/mine/1/night/9/tomorrow">Make tomorrow's groups""" in page
    assert '"/mine/1/night/10/walkthrough">Show the walkthrough' in page
    for place in ("walkthrough", "marking", "tomorrow"):
        assert f'"/mine/1/night/8/{place}"' in page
    assert "marked: 23 of 24" in page


def test_the_teacher_says_that_a_step_is_done(club: Opened) -> None:
    """It is kept, and the page goes back to that night; a step or a night that is not there is refused."""
    said = club.post("/mine/1/night/10/step", step="shown")
    assert said.goes.endswith("#night-10")
    night = week(club.door.books["mine"], 1, club.door.today()).shown[0].nights[-1]
    assert NightStep.SHOWN in night.steps
    assert club.post("/mine/1/night/10/step", step="eaten").status == 422
    assert club.post("/mine/1/night/99/step", step="shown").status == 404


def test_every_week_can_be_reached(club: Opened) -> None:
    """Each is a link; a day that is none is refused."""
    page = club.get("/mine/1/week").text
    days = {one.night.day for one in night_pages(club.door.books["mine"], 1)}
    first = min(days)
    assert "?of=" in page
    assert "Joining strips" in club.get(f"/mine/1/week?of={first}").text
    assert club.get("/mine/1/week?of=1900-01-01").status == 200
    for odd in ("tomorrow", "2026-02-30", "", "9" * 5000):
        assert club.get(f"/mine/1/week?of={odd}").status == 422


def test_a_skill_that_is_due_says_why(club: Opened) -> None:
    """How many would still have it, what was counted, a new problem; that it promises nothing."""
    page = club.get("/mine/1/week").text
    told = re.search(
        r"<strong>Adding, nothing to regroup:</strong> about (\d+) in 10 would still have it ", page
    )
    assert told
    assert 0 < int(told[1]) < 10
    assert "How this is known" in page
    assert "days ago" in page
    assert "how much it helps one class is not certain" in page


def test_nights_are_read_by_a_button_and_counted_then(club: Opened) -> None:
    """The page says how many are not read; the reading is long work and leads back."""
    assert "The answers of 9 nights are not read yet" in club.get("/mine/1/week").text
    work = club.post("/mine/1/read", pupil="K05").goes
    until(lambda: "<progress" not in club.get(work).text, "the end of the reading")
    assert "/mine/1/pupil/K05" in club.get(work).text
    assert night_summaries(club.door.books["mine"], 1).missing == ()
    assert "not read yet" not in club.get("/mine/1/week").text
    assert "right then" in club.get("/mine/1/week").text
