"""Papers, days and scores in a real Chromium, for a class of 27 with two pages on one night."""

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from onewhole.desk.classes.class_list import new_class
from onewhole.desk.classes.class_records import set_night
from onewhole.desk.classes.page_for import give_page_to
from onewhole.desk.marking.cells import Change, keep_cells
from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, WIDE, broken_rules, runs_off, window
from tests.kit.doors import NOW, Served, served
from tests.kit.how_much import MORE
from tests.kit.marking_book import SHEET

pytestmark = NEEDS_CHROMIUM

NAMES = ("Maya Oduya", "Lucia Fernandez-Hidalgo of the Hill", *(f"Pupil {at}" for at in range(25)))
NIGHT = "/mine/1/night/1"


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Served]:
    """Two pages of yesterday, one for 14 pupils and one for the others; all but two of the first wrote."""
    with served(tmp_path) as made:
        book = made.door.books["mine"]
        new_class(book, "Ms. Ortiz, 4B", 0, NAMES, NOW)
        codes = [f"K{at:02d}" for at in range(1, 28)]
        for night, mine in ((1, codes[:14]), (2, codes[14:])):
            set_night(book, 1, SHEET, NOW.date() - timedelta(days=1), NOW)
            give_page_to(book, 1, night, mine, now=NOW, by="teacher")
        cells = [Change(code, "1", "4 7/8") for code in codes[2:14]]
        keep_cells(book, 1, 1, cells, now=NOW, by="teacher")
        yield made


def test_who_was_absent_hands_in_late(browser: Browser, door: Served) -> None:
    """From Papers to Marking, by keyboard: the word stands beside the name, and is told while one types.

    On the pages of papers, days and scores no rule is broken and nothing runs off, on a phone either.
    """
    with window(browser, door.address, blank=True) as page:
        _absent(page, door)
        page.goto(f"{door.base}{NIGHT}/marking")
        row = page.get_by_role("row").filter(has=page.get_by_role("rowheader", name="K02"))
        expect(row).to_contain_text("absent")
        assert page.get_by_role("rowheader").count() == 15  # with the row of totals
        row.get_by_role("textbox").first.fill("4 7/8")
        row.get_by_role("textbox").first.press("Enter")
        expect(page.locator("#said")).to_contain_text("this counts as a late paper now")
        page.goto(f"{door.base}{NIGHT}/papers")
        expect(page.get_by_role("row").filter(has_text="Lucia")).to_contain_text("handed in, late")
        for address in (f"{NIGHT}/papers", "/mine/1/class/days", "/mine/1/scores"):
            page.goto(door.base + address)
            for width, height in (PHONE, WIDE):
                page.set_viewport_size({"width": width, "height": height})
                assert (address, broken_rules(page) if MORE or width == PHONE[0] else []) == (address, [])
                assert (address, runs_off(page)) == (address, False)


def _absent(page: Page, door: Served) -> None:
    page.goto(f"{door.base}{NIGHT}/papers")
    expect(page.get_by_role("heading", name="2 papers still to come")).to_be_visible()
    page.get_by_label("Paper of K02").select_option("absent")
    page.get_by_role("button", name="Keep this").first.press("Enter")
    expect(page.get_by_role("heading", name="1 paper still to come")).to_be_visible()
