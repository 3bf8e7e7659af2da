"""First start, Week and Class in a real Chromium: by keyboard alone, narrow and wide, by the rules of axe."""

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from onewhole.desk.classes.class_records import room
from tests.kit.browsers import NEEDS_CHROMIUM, broken_on_either_screen, broken_rules, window
from tests.kit.doors import Clock, served
from tests.kit.invented import lay_invented_class
from tests.kit.keys import enter, go_to

pytestmark = NEEDS_CHROMIUM

#: A Wednesday afternoon: two nights of this week are over, a third page goes home.
WEDNESDAY = datetime(2026, 11, 25, 16, tzinfo=UTC)
HOSTILE = '<script>alert(1)</script>\n=HYPERLINK("x")\n\N{RIGHT-TO-LEFT OVERRIDE}gnp.live\n' + "W" * 80


@pytest.fixture
def club(browser: Browser, tmp_path: Path) -> Iterator[Page]:
    """A window on the week of the invented class, every night read."""
    lay_invented_class(tmp_path, WEDNESDAY, read=True)
    with served(tmp_path, Clock(WEDNESDAY)) as door, window(browser, door.address) as page:
        yield page


def test_from_an_empty_file_to_a_class_by_keyboard(browser: Browser, tmp_path: Path) -> None:
    """Name, number and a pasted list typed; the week is there; then another pupil, and a name, on Class."""
    with served(tmp_path, Clock(WEDNESDAY)) as door, window(browser, door.address) as page:
        expect(page.get_by_role("heading", name="Welcome")).to_be_visible()
        go_to(page, "What is the class called?")
        page.keyboard.type("Room 12")
        go_to(page, "How many pupils?")
        page.keyboard.press("Control+A")
        page.keyboard.type("3")
        go_to(page, "Names, if you want them here")
        page.keyboard.type("Delta\nSled")
        go_to(page, "Start the class")
        enter(page)
        expect(page.get_by_role("heading", name="Week Room 12")).to_be_visible()
        expect(page.get_by_text("No page is set this week.")).to_be_visible()
        go_to(page, "Class")
        enter(page)
        go_to(page, "Name of K03")
        page.keyboard.type("Moth")
        enter(page)
        expect(page.get_by_label("Name of K03")).to_have_value("Moth")
        go_to(page, "How many")
        page.keyboard.type("1")
        enter(page)
        expect(page.get_by_role("heading", name="4 pupils")).to_be_visible()
        named = [pupil.name for pupil in room(door.door.books["mine"], 1).pupils]
        assert named == ["Delta", "Sled", "Moth", None]


@pytest.mark.more("web/test_welcome.py")
def test_the_demo_is_opened_and_put_away_by_keyboard(browser: Browser, tmp_path: Path) -> None:
    """Every page of it says what it is; afterwards the welcome is there as before."""
    with served(tmp_path, Clock(WEDNESDAY)) as door, window(browser, door.address) as page:
        go_to(page, "Open the kite club")
        enter(page)
        expect(page.get_by_role("complementary", name="Demo")).to_contain_text("Demo: invented class")
        expect(page.get_by_role("heading", name="Tails for windy days")).to_be_visible()
        assert broken_rules(page) == []
        go_to(page, "Put the demo away")
        enter(page)
        assert broken_rules(page) == []
        go_to(page, "Put the demo away", times=1)
        enter(page)
        expect(page.get_by_role("heading", name="Welcome")).to_be_visible()
        assert not door.door.books.there("demo")


def test_a_step_is_said_to_be_done_by_keyboard(club: Page) -> None:
    """Tonight's page was shown: its marking is next."""
    tonight = club.locator("#night-10")
    expect(tonight).to_contain_text("today")
    go_to(club, "Shown already: Kites for the school yard")
    enter(club)
    expect(tonight.get_by_role("link", name="Mark the answers")).to_be_visible()
    expect(tonight.get_by_role("listitem").filter(has_text="shown, done")).to_be_visible()


def test_every_rule_is_kept_on_either_screen(club: Page) -> None:
    """Welcome, Week, another week, Class: nothing against axe's rules, nothing runs off the page."""
    base = club.url.split("/mine", 1)[0]
    for place in ("/mine/1/week", "/mine/1/week?of=2026-11-05", "/mine/1/class", "/welcome"):
        club.goto(base + place)
        assert broken_on_either_screen(club) == [], place


@pytest.mark.more("web/test_hostile.py")
def test_hostile_names_are_text_and_push_nothing_off(browser: Browser, tmp_path: Path) -> None:
    """A script, a formula, a sign that turns the text round, eighty wide letters; one too long is told."""
    with (
        served(tmp_path, Clock(WEDNESDAY)) as door,
        window(browser, door.address, forgives=("422",)) as page,
    ):
        page.get_by_label("What is the class called?").fill('<img src=x onerror="alert(1)">' + "W" * 50)
        page.get_by_label("Names, if you want them here").fill(HOSTILE)
        page.get_by_role("button", name="Start the class").click()
        base = page.url.split("/mine", 1)[0]
        for place in ("week", "class", "pupil/K01", "pupil/K03/held", "pupil/K04", "pupil/K04/erase"):
            page.goto(f"{base}/mine/1/{place}")
            assert broken_on_either_screen(page) == [], place
        page.goto(f"{base}/mine/1/class")
        expect(page.get_by_label("Name of K01")).to_have_value("<script>alert(1)</script>")
        page.get_by_label("Or a list of names").fill("x" * 10_000)
        page.get_by_role("button", name="Add them").click()
        expect(page.get_by_role("alert")).to_contain_text("10000 characters")
        assert broken_on_either_screen(page) == []
