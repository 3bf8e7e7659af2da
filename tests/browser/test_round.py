"""The whole round in a real browser, from an empty start and by keys alone."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, expect

from onewhole.desk.classes.class_records import night_pages, room
from onewhole.store.answers import answers_of
from onewhole.store.steps import NightStep, steps_of
from tests.kit.browsers import NEEDS_CHROMIUM, window
from tests.kit.doors import Served, served
from tests.kit.round_by_keys import (
    PAPERS,
    go,
    keeps_the_rules,
    mark_the_papers,
    print_it,
    regroup,
    set_the_page,
    show_it,
    start_the_class,
)

pytestmark = NEEDS_CHROMIUM


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Served]:
    """An empty start."""
    with served(tmp_path) as made:
        yield made


@pytest.mark.more("browser/test_page_desk.py", "browser/test_marking.py", "browser/test_tomorrow.py")
@pytest.mark.slow
def test_a_teacher_does_the_whole_round_by_keys(door: Served, browser: Browser) -> None:
    """From no class at all to tomorrow's groups on paper; every page keeps the rules of axe on the way."""
    with window(browser, door.address) as page:
        start_the_class(page)
        set_the_page(page)
        print_it(page)
        show_it(page)
        mark_the_papers(page)
        regroup(page)
        expect(page).to_have_title("Week · onewhole")
        expect(page.locator(".night").first).to_contain_text("marked: 5 of 5")
        go(page, "Class")
        go(page, "K02 : story")
        expect(page.locator("main")).to_contain_text("takes the smaller number of pieces from the larger")
        keeps_the_rules(page)
    book = door.door.books["mine"]
    assert room(book, 1).name == "Room 12"
    (night,) = night_pages(book, 1)
    kept = {(one.code, one.problem): one.text for one in answers_of(book, night.night.number)}
    assert kept == {
        (f"K{row:02d}", str(column)): text
        for row, paper in enumerate(PAPERS, start=1)
        for column, text in enumerate(paper, start=1)
    }
    assert {NightStep.SHOWN, NightStep.REGROUPED} <= set(steps_of(book, 1)[night.night.number])
