"""The Tomorrow page, asked without a browser: moves, findings set aside, pages on paper, refusals."""

import json
import re
from collections.abc import Iterator
from html import unescape
from pathlib import Path
from urllib.parse import unquote

import pytest

from onewhole.desk.classes.class_records import set_night
from onewhole.desk.classes.marked_nights import mark_night, night_summaries
from onewhole.desk.marking.findings import most_useful
from onewhole.desk.tomorrow.morning import morning
from onewhole.store.answers import KeptAnswer, keep_answers
from onewhole.store.classes import name_pupil
from onewhole.store.corrections import corrections_of
from tests.kit.club import DAY, NOW, TYPED, small_club
from tests.kit.doors import Opened, opened
from tests.kit.forms import form_to
from tests.kit.waiting import until

PLACE = "/mine/1/night/2/tomorrow"
#: What K02 writes when the paper is looked at again: the smaller number of pieces from the larger.
WRONG = {"1": "5 1/8", "2": "5 4/6", "3": "3 1/4"}


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


@pytest.mark.more("desk/tomorrow/test_morning.py")
def test_the_pages_are_made_as_long_work_and_given_as_pdf(
    door: Opened, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The work's page leads back to where they are listed; after a move they are out of date."""
    assert "Make the pages to print" in door.get(PLACE).text
    started = door.post(f"{PLACE}/paper")
    assert started.status == 303
    assert "pages are ready to print." in ended(door, started.goes)
    assert f'href="{PLACE}/paper/morning"' in door.get(PLACE).text
    assert "There is no practice page" not in door.get(PLACE).text
    monkeypatch.setattr(
        "onewhole.web.pages.tomorrow.printed_pages", lambda *_: (("morning", "Morning page"),)
    )
    assert "There is no practice page: no other numbers make a problem like" in door.get(PLACE).text
    monkeypatch.undo()
    came = door.client.get(f"{PLACE}/paper/together")
    assert came.content.startswith(b"%PDF")
    how, _, name = came.headers["content-disposition"].partition("; filename*=UTF-8''")
    assert (how, unquote(name).endswith(", Everything in one file.pdf")) == ("inline", True)
    key = morning(door.door.books["mine"], 1, 2).cards[-2].key
    door.post(f"{PLACE}/move", code="K05", key=key, saw="")
    assert door.get(f"{PLACE}/paper/morning").status == 404
    assert "Make the pages to print" in door.get(PLACE).text


def _write(door: Opened, code: str, *texts: str) -> None:
    cells = [[code, label, text, ""] for label, text in zip("123", texts, strict=True)]
    assert json.loads(door.post("/mine/1/night/2/marking/keep", cells=json.dumps(cells)).text)["kept"]


def _group_of(door: Opened, code: str) -> str:
    cards = door.get(PLACE).text.split('<section class="paper card"')[1:]
    (card,) = (card for card in cards if f'id="seat-{code}"' in card)
    return card.split("<h3")[1].split(">")[1].split("<")[0].strip()


def test_a_late_paper_moves_nobody_unless_it_is_taken(door: Opened) -> None:
    """The page keeps the groups that were seen, lists the changes with reasons, and takes them when asked."""
    before = {code: _group_of(door, code) for code in ("K01", "K02", "K03", "K04")}
    seen = form_to(door.get(PLACE).text, f"{PLACE}/seen")
    assert door.post(seen.action, **dict(seen.filled())).goes == f"{PLACE}#groups-head"
    book = door.door.books["mine"]
    keep_answers(book, [KeptAnswer(2, "K02", label, text, NOW, "teacher") for label, text in WRONG.items()])
    _write(door, "K05", "5 1/8", "5 4/6", "3 1/4")
    page = door.get(PLACE).text
    assert {code: _group_of(door, code) for code in before} == before
    assert "Keep your groups, or take this change?" in page
    assert f"from {before['K02']} to {before['K01']}." in page
    form = form_to(page, f"{PLACE}/changes")
    assert door.post(f"{PLACE}/changes", take="yes", saw=form.value("saw")).goes == f"{PLACE}#groups-head"
    assert _group_of(door, "K02") == before["K01"]
    assert "Keep your groups, or take" not in door.get(PLACE).text
    assert door.post(f"{PLACE}/changes", take="yes", saw=form.value("saw")).status == 422


def test_looking_at_the_page_keeps_nothing_and_only_what_was_seen_is_kept(door: Opened) -> None:
    """The page itself writes nothing; its form says which groups were seen, and once kept it is gone."""
    book = door.door.books["mine"]
    seen = form_to(door.get(PLACE).text, f"{PLACE}/seen")
    assert corrections_of(book, 2) == ()
    _write(door, "K05", "5 1/8", "5 4/6", "3 1/4")
    assert door.post(seen.action, **dict(seen.filled())).status == 422
    assert corrections_of(book, 2) == ()
    again = form_to(door.get(PLACE).text, f"{PLACE}/seen")
    assert door.post(again.action, **dict(again.filled(script="yes"))).status == 200
    assert {one.code for one in corrections_of(book, 2)} == {"K01", "K02", "K03", "K04", "K05"}
    assert f"{PLACE}/seen" not in door.get(PLACE).text


def test_it_opens_with_the_ideas_largest_first_and_then_in_short(door: Opened) -> None:
    """With the children, the problem to show and the question; the sentences are those of the terminal."""
    page = door.get(PLACE).text
    ideas, first, groups = (page.index(f'id="{part}"') for part in ("ideas", "first", "groups"))
    assert ideas < first < groups
    opening = page[ideas:first]
    assert "Takes the smaller number of pieces from the larger" in opening
    assert re.search(r"2 children:</strong>.*?K01.*?, .*?K03", opening)
    assert "Ask: Show 9 5/8. Are there enough eighths to take 6 eighths away?" in opening
    told = most_useful(mark_night(door.door.books["mine"], 1, 2))
    assert told
    assert [unescape(said) in unescape(opening) for said in told] == [True] * len(told)


def test_ids_and_odds_are_told_on_demand(door: Opened) -> None:
    """Only within a part that is opened by “How this is known”, or by the name of a pattern."""
    page = door.get(PLACE).text
    shown = re.sub(r'<details class="known">.*?</details>', "", page, flags=re.DOTALL)
    shown = re.sub(r'<tbody class="fit">.*?</tbody>', "", shown, flags=re.DOTALL)
    words = re.sub(r"<[^>]*>", " ", shown)
    assert not re.search(r"\b[A-H][0-9]{2}\b|in 100|odds", words)
    assert "In the list of patterns it is A01." in page


def test_groups_are_put_together_begun_and_kept_in_place(door: Opened) -> None:
    """By plain forms; the settings too, and what is no number is refused."""
    keys = {
        seat.code: card.key for card in morning(door.door.books["mine"], 1, 2).cards for seat in card.seats
    }
    assert door.post(f"{PLACE}/merge", key=keys["K02"], into=keys["K01"]).status == 303
    assert _group_of(door, "K02") == _group_of(door, "K01")
    assert door.post(f"{PLACE}/move", code="K03", key="new", saw="", stays="yes").status == 303
    assert _group_of(door, "K03") != _group_of(door, "K01")
    assert "Stays here." in door.get(PLACE).text
    told = "4 groups of 3 to 6"
    sent = {"meets": "5", "smallest": "2", "largest": "4", "saw": told}
    assert door.post(f"{PLACE}/groups", **sent).status == 303
    assert "of the 5 you can" in door.get(PLACE).text
    for odd in ("", "0", "many", "-1", "\N{SUPERSCRIPT TWO}", "9999"):
        assert door.post(f"{PLACE}/groups", **(sent | {"meets": odd})).status == 422


def test_a_group_is_called_by_its_idea_with_the_question_to_ask(door: Opened) -> None:
    """In plain words, and how many of the teacher's meetings are used."""
    page = door.get(PLACE).text
    assert "Takes the smaller number of pieces from the larger" in page
    assert "Ask: Show 9 5/8. Are there enough eighths to take 6 eighths away?" in page
    assert "You meet 1 group of the 4 you can." in page
