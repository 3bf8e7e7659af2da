"""Week, asked without a browser."""

import re
from collections.abc import Iterator
from pathlib import Path
from urllib.parse import urlencode

import pytest

from onewhole.desk.classes.class_records import night_pages, start_room
from onewhole.desk.classes.marked_nights import night_summaries
from onewhole.desk.classes.week import NightStep, week
from onewhole.web.jobs import Jobs
from tests.kit.club import small_club
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


def test_every_night_has_a_link_and_is_found(club: Opened) -> None:
    """Each is a link to its week, and found by a date or a title; a day that is none is refused."""
    page = club.get("/mine/1/week").text
    nights = [one.night for one in night_pages(club.door.books["mine"], 1)]
    first = min(night.day for night in nights)
    linked = re.findall(r'"\?of=([\d-]+)#night-(\d+)"', page)
    assert set(linked) == {(f"{night.day}", f"{night.number}") for night in nights}
    found = club.get("/mine/1/week?find=joining+strips").text
    assert "1 night has “<bdi>joining strips</bdi>”" in found
    assert found.count(f"?of={first}#night-") == 2
    assert "No night has “<bdi>&lt;script&gt;</bdi>”" in club.get("/mine/1/week?find=<script>").text
    assert "Joining strips" in club.get(f"/mine/1/week?of={first}").text
    assert club.get("/mine/1/week?of=1900-01-01").status == 200
    for odd in ("tomorrow", "2026-02-30", "", "9" * 5000):
        assert club.get(f"/mine/1/week?of={odd}").status == 422


def test_a_skill_that_is_due_says_why(club: Opened) -> None:
    """How many would still have it, what was counted, a new problem; that it promises nothing."""
    page = club.get("/mine/1/week").text
    told = re.search(r"Adding, nothing to regroup: .*\n<span>About (\d+) in 10 would still have it ", page)
    assert told
    assert 0 < int(told[1]) < 10
    assert "How this is known" in page
    assert "days ago" in page
    assert "how much it helps one class is not certain" in page


def test_one_page_begins_with_the_problems_that_were_chosen(club: Opened) -> None:
    """In the order of the list; what cannot be read stands there as well, and a thousand are not begun."""
    page = club.get("/mine/1/week").text
    problems = [*re.findall(r'name="with" value="([^"]+)"', page), "7 2/6 - 3 5/6"]
    assert len(problems) > 1
    desk = club.get(f"/mine/1/page?{urlencode([('with', one) for one in problems])}").text
    assert "".join(f"{one}\n" for one in problems) in desk
    assert "\n5 - 2\nkites\n</textarea>" in club.get("/mine/1/page?with=5+-+2&with=kites").text
    many = club.get(f"/mine/1/page?{'&'.join(['with=5-2'] * 800)}").text
    assert many.partition("</textarea>")[0].rpartition("<textarea")[2].count("\n5-2") == 40


def test_the_name_of_the_class_stands_on_every_page_and_its_tab_is_marked(club: Opened) -> None:
    """Also on the Page desk and on Keep; a night's pages are under the Week, a child's under the Class."""
    for place, tab in (
        ("1/week", "Week"),
        ("1/page", "Page desk"),
        ("1/class", "Class"),
        ("1/pupil/K05", "Class"),
        ("1/night/9/marking", "Week"),
        ("1/night/9/walkthrough", "Week"),
        ("1/night/9/tomorrow", "Week"),
        ("keep", "Keep"),
        ("keep/check", "Keep"),
    ):
        page = club.get(f"/mine/{place}").text
        head = page[page.index("<header") : page.index("</header>")]
        assert "Room 12" in head, place
        assert re.findall(r'aria-current="(?:page|true)">([^<]+)<', head) == [tab], place


def test_another_class_is_a_link_beside_the_name(club: Opened) -> None:
    """On every page, Keep too, which shows the class one came from."""
    other = start_room(club.door.books["mine"], "Room 13", 2, club.door.now())
    for place in ("1/week", "1/class", "keep"):
        page = club.get(f"/mine/{place}").text
        assert f'<a href="/mine/{other.number}/week"><bdi>Room 13</bdi></a>' in page
    assert f'"/mine/{other.number}/class"' in club.get(f"/mine/keep?of={other.number}").text
    assert club.get("/mine/keep?of=kites").status == 200


@pytest.mark.more("desk/classes/test_week.py")
def test_nights_are_read_by_a_button_and_counted_then(tmp_path: Path) -> None:
    """The page says how many are not read; the reading is long work and leads back."""
    with lived_in(tmp_path, read=False) as club:
        assert "The answers of 9 nights are not read yet" in club.get("/mine/1/week").text
        work = club.post("/mine/1/read", pupil="K05").goes
        until(lambda: "<progress" not in club.get(work).text, "the end of the reading")
        assert "/mine/1/pupil/K05" in club.get(work).text
        assert night_summaries(club.door.books["mine"], 1).missing == ()
        assert "not read yet" not in club.get("/mine/1/week").text
        assert "right then" in club.get("/mine/1/week").text


def test_tomorrow_of_the_last_night_with_answers_is_worked_out_ahead(
    door: Opened, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Also where papers are still missing: who looks at the Week goes there next."""
    small_club(door.door.books["mine"], 2)
    ahead: list[str] = []
    monkeypatch.setattr(Jobs, "prefetch", lambda _jobs, what, run: ahead.append(what) if run() else None)
    assert door.get("/mine/1/week").status == 200
    assert ahead == ["mine 2 morning"]
