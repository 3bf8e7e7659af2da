"""Numbers heard otherwise, in a real browser on a phone: said again or kept, by the rules of axe."""

import json
from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from playwright.sync_api import Browser, expect

from onewhole.desk.classes.class_records import set_night, start_room
from onewhole.desk.walkthrough.kept_slips import kept_slips
from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, broken_rules, runs_off, settled, window
from tests.kit.doors import Served, served

pytestmark = NEEDS_CHROMIUM

HOME = "/mine/1/night/1/walkthrough"


@pytest.fixture
def door() -> Iterator[Served]:
    """A served door with one night, of which a film lies there in which a number was heard otherwise."""
    with TemporaryDirectory() as folder, served(Path(folder)) as opened:
        book, now = opened.door.books["mine"], opened.door.now()
        start_room(book, "Room 12", 3, now)
        set_night(book, 1, "title: Kites\n1. 3 x 2/5\n", opened.door.today(), now)
        made = opened.door.folder / "mine" / "night-1"
        made.mkdir(parents=True)
        slip = {"label": "1", "at": 138_000, "said": "seven fifths", "board": "6/5", "key": "abc"}
        about = {"seconds": 180, "notes": [], "reads": "at grade 2", "stamp": "", "made": ""}
        (made / "about-film.json").write_text(json.dumps({**about, "slips": [slip]}))
        (made / "walkthrough-upright.mp4").write_bytes(b"film")
        yield opened


def test_a_number_is_kept_by_keyboard_on_a_phone(browser: Browser, door: Served) -> None:
    """It stands below the film; keeping it is remembered and can be taken back; nothing runs off the page."""
    with window(browser, door.address, PHONE, forgives=("Failed to load resource",), blank=True) as page:
        page.goto(f"{door.base}{HOME}")
        row = page.locator(".slips li")
        expect(row).to_contain_text("2:18, problem 1: you said “seven fifths”; the board says 6/5.")
        expect(row.get_by_role("button", name="Hear it")).to_be_visible()
        assert not runs_off(page)
        assert broken_rules(page) == []
        row.get_by_role("button", name="Keep it").press("Enter")
        expect(page.locator(".slips .kept")).to_have_text("✓ Kept as you said it")
        assert kept_slips(door.door.books["mine"], 1) == {"abc"}
        # The page goes to #film when it is loaded, and takes the focus from what had it before.
        settled(page)
        page.locator(".slips").get_by_role("button", name="Do not keep it").press("Enter")
        expect(page.locator(".slips .kept")).to_have_count(0)
        page.locator("#choices").evaluate("one => { one.open = true; }")
        page.get_by_label("Cut off silence at the ends").press(" ")
        expect(page.get_by_label("Cut off silence at the ends")).to_be_checked()
        expect(page.get_by_label("Stop before the answer, problem 1")).to_be_visible()
        assert not runs_off(page)
