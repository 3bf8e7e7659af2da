"""The Tomorrow page, asked without a browser: moves, findings set aside, pages on paper, refusals."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import set_night
from onewhole.desk.classes.marked_nights import night_summaries
from onewhole.desk.tomorrow.morning import morning
from onewhole.store.classes import name_pupil
from tests.kit.club import DAY, NOW, TYPED, small_club
from tests.kit.doors import Opened, opened
from tests.kit.waiting import until

PLACE = "/mine/1/night/2/tomorrow"


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """Two nights of a class of five; one pupil has a hostile name."""
    with opened(tmp_path) as made:
        small_club(made.door.books["mine"], 2)
        name_pupil(made.door.books["mine"], 1, "K01", "<script>alert(1)</script>")
        yield made


def ended(door: Opened, work: str) -> str:
    """Wait until long work is over and return its page."""

    def page() -> str:
        now = door.get(work).text
        return "" if "<progress" in now else now

    return until(page, "the end of the work")


def test_the_page_tells_groups_evidence_and_the_caution(door: Opened) -> None:
    """Every finding has the caution beside it; a name is text."""
    page = door.get(PLACE)
    assert page.status == 200
    assert "<script>alert" not in page.text
    caution = "A pattern found in a few answers is a hint for a talk with the child, never a label."
    assert page.text.count(caution) == 1 + page.text.count('<details class="talk"')
    assert "Answers to 1, 2 and 3 may come from one idea." in page.text
    assert 'href="/mine/1/pupil/K01"' in page.text


def test_a_move_by_the_plain_form_goes_back_to_the_pupil(door: Opened) -> None:
    """The page then says that the teacher moved the pupil."""
    to = next(
        card for card in morning(door.door.books["mine"], 1, 2).cards if "K02" in {s.code for s in card.seats}
    )
    assert "Moved here by the teacher" not in door.get(PLACE).text
    answer = door.post(f"{PLACE}/move", code="K01", key=to.key, saw="")
    assert (answer.status, answer.goes) == (303, f"{PLACE}#seat-K01")
    assert "Moved here by the teacher; the answers said" in door.get(PLACE).text


def test_a_finding_is_set_aside_and_taken_up(door: Opened) -> None:
    """The page says so, and offers to take it up again."""
    assert door.post(f"{PLACE}/aside", code="K01", aside="yes").goes == f"{PLACE}#talk-K01"
    assert "You set this aside; it counts no more." in door.get(PLACE).text
    door.post(f"{PLACE}/aside", code="K01", aside="no")
    assert "You set this aside" not in door.get(PLACE).text


def test_what_cannot_be_is_refused_kindly(door: Opened) -> None:
    """A group or pupil that is not there, a night that is not there, a page that was not printed."""
    assert door.post(f"{PLACE}/move", code="K01", key="Owls: talk", saw="").status == 422
    assert door.post(f"{PLACE}/move", code="\0<b>", key="", saw="").status == 422
    assert door.post(f"{PLACE}/aside", code="K77", aside="yes").status == 422
    assert door.get("/mine/1/night/77/tomorrow").status == 404
    assert door.post("/mine/1/night/77/tomorrow/paper").status == 404
    assert door.get(f"{PLACE}/paper/morning").status == 404


def test_a_night_without_answers_points_to_the_marking(door: Opened) -> None:
    """There is nothing to be told yet."""
    night = set_night(door.door.books["mine"], 1, TYPED.format(9), DAY, NOW).night.number
    page = door.get(f"/mine/1/night/{night}/tomorrow").text
    assert "Nothing is written yet for this night" in page
    assert f'href="/mine/1/night/{night}/marking"' in page


def test_many_nights_not_read_yet_are_read_as_long_work(tmp_path: Path) -> None:
    """The first opening does not wait for them; when they are read, the page is there."""
    with opened(tmp_path) as door:
        book = door.door.books["mine"]
        small_club(book, 5)
        page = door.get("/mine/1/night/5/tomorrow").text
        assert "those nights are read first" in page
        work = page.split('data-work="')[1].split('/now"')[0]
        assert "nights are read." in ended(door, work)
        assert night_summaries(book, 1).missing == ()
        assert "See first" in door.get("/mine/1/night/5/tomorrow").text


def test_the_pages_are_made_as_long_work_and_given_as_pdf(door: Opened) -> None:
    """The work's page leads back to where they are listed; after a move they are out of date."""
    assert "Make the pages to print" in door.get(PLACE).text
    started = door.post(f"{PLACE}/paper")
    assert started.status == 303
    assert "pages are ready to print." in ended(door, started.goes)
    assert f'href="{PLACE}/paper/morning"' in door.get(PLACE).text
    assert door.get(f"{PLACE}/paper/morning").content.startswith(b"%PDF")
    key = morning(door.door.books["mine"], 1, 2).cards[-2].key
    door.post(f"{PLACE}/move", code="K05", key=key, saw="")
    assert door.get(f"{PLACE}/paper/morning").status == 404
    assert "Make the pages to print" in door.get(PLACE).text
