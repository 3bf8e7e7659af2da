"""Papers of a night and the days of pupils, asked without a browser."""

import json
from datetime import date, timedelta

from onewhole.desk.classes.class_records import set_night
from tests.kit.doors import NOW, Opened
from tests.kit.marking_book import SHEET

NIGHT = "/mine/1/night/1"


def test_papers_are_shown_kept_and_told_where_answers_are_typed(door: Opened) -> None:
    """From the page to the grid and back: the word stands beside the name, a late paper is told."""
    door.post("/welcome", name="Room 12", pupils="", names="Ada\n<b>Bo</b>\nCy")
    set_night(door.door.books["mine"], 1, SHEET, date(2026, 9, 1), NOW)
    page = door.get(f"{NIGHT}/papers").text
    assert "3 papers still to come" in page
    assert "<b>Bo" not in page
    rows = {"code": ["K02", "K03"], "said": ["absent", "no page"], "saw": ["here", "here"]}
    came = door.client.post(
        f"{NIGHT}/papers", data={"csrf_token": door.csrf_token, **rows}, headers=door.origin
    )
    assert (came.status_code, came.headers["location"]) == (303, f"{NIGHT}/papers?kept=yes")
    assert "1 paper still to come" in door.get(f"{NIGHT}/papers?kept=yes").text
    marking = door.get(f"{NIGHT}/marking").text
    assert 'class="paper-word">absent<' in marking
    assert "Not on this page: <bdi>K03 Cy</bdi>" in marking
    door.client.headers["Accept"] = "application/json"
    kept = door.post(f"{NIGHT}/marking/keep", cells=json.dumps([["K02", "1", "5 1/8", ""]]))
    (told,) = json.loads(kept.text)["told"]
    assert told.startswith("K02 <b>Bo</b> is down as absent")
    del door.client.headers["Accept"]
    assert door.post(f"{NIGHT}/papers", code="K01", said="ill", saw="here").status == 422
    assert door.post("/mine/1/class/days", code="K01", joined="x", left="", saw="|").status == 422
    week = door.get("/mine/1/week").text
    assert "for 2 of 3 pupils" in week


def test_a_night_that_nobody_got_says_so(door: Opened) -> None:
    """And a class without pupils has none to ask."""
    door.post("/welcome", name="Room 12", pupils="1", names="")
    set_night(door.door.books["mine"], 1, SHEET, date(2026, 9, 1), NOW)
    door.post(f"{NIGHT}/papers", code="K01", said="no page", saw="here")
    assert "Nobody got this page" in door.get(f"{NIGHT}/marking").text
    assert door.get(f"{NIGHT}/tomorrow").status == 422


def test_scores_are_shown_and_saved(door: Opened) -> None:
    """On the page of a night, of three weeks, and as files that a browser saves under names of their own."""
    door.post("/welcome", name="Room 12", pupils="", names="Ada\n<b>Bo</b>")
    book = door.door.books["mine"]
    for typed in (SHEET, "title: Others\n1. 52 - 27\n"):
        set_night(book, 1, typed, NOW.date() - timedelta(days=1), NOW)
    cells = [["K01", "1", "4 7/8", ""], ["K01", "2", "5", ""], ["K02", "1", "=1/2", ""]]
    assert door.post(f"{NIGHT}/marking/keep", cells=json.dumps(cells)).status == 200
    assert "1 of 2" in door.get(f"{NIGHT}/papers").text
    page = door.get("/mine/1/scores").text
    assert "1 of 2" in page
    assert page.count("not here yet") == 2
    assert "<b>Bo" not in page
    for address, names in (
        (f"{NIGHT}/papers/scores", "scores-2026-08-31-page-1"),
        ("/mine/1/scores/scores", "scores-2026-08-17-to-2026-09-01"),
    ):
        for ending, begins in (("csv", b'\xef\xbb\xbf"Code"'), ("xlsx", b"PK")):
            came = door.client.get(f"{address}.{ending}")
            assert came.content.startswith(begins)
            assert came.headers["content-disposition"].endswith(f"{names}.{ending}")
    assert "'=1/2" in door.get(f"{NIGHT}/papers/scores.csv").text
    assert "No page was set" in door.get("/mine/1/scores?from=2026-01-01&to=2026-01-02").text
    for wrong in ("from=2026-09-02&to=2026-09-01", "from=soon", "to=0001-01-01"):
        assert door.get(f"/mine/1/scores?{wrong}").status == 422
