"""The whole round in a real browser, from an empty start and by keys alone."""

from collections.abc import Iterator
from pathlib import Path
from zipfile import ZipFile

import pytest
from playwright.sync_api import Browser, Page, expect

from onewhole.desk.classbook import night_pages, room
from onewhole.store.answers import answers_of
from onewhole.store.steps import Step, steps_of
from tests.kit.browsers import NEEDS_CHROMIUM, broken_rules, chromium, runs_off, window
from tests.kit.doors import Served, served

pytestmark = NEEDS_CHROMIUM

#: So many times Tab may be pressed before something is reached: a page has no more stops than this.
STOPS = 400
TYPED = (
    "title: Tails for the long kite\nwhole: strip\nwholes: strips\nminutes: 20\n\n"
    "# Look at the pieces first.\n1. 5 4/6 - 2 1/6\n2. 4 1/5 - 1 2/5\n3. 9 5/8 - 4 6/8\n4. 7 1/6 - 3 5/6\n"
)
#: What five pupils wrote. K02 takes the smaller number of pieces from the larger, K04 smudged one.
PAPERS = (
    ("3 3/6", "2 4/5", "4 7/8", "3 2/6"),
    ("3 3/6", "3 1/5", "5 1/8", "4 4/6"),
    ("21/6", "14/5", "39/8", "20/6"),
    ("3 3/6", "2 4/5", "smudge", "3 2/6"),
    ("3 3/6", "2 4/5", "4 6/8", "3 2/6"),
)


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    """One browser for the round."""
    with chromium() as started:
        yield started


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Served]:
    """An empty start."""
    with served(tmp_path) as made:
        yield made


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
        go(page, "link", "Class")
        go(page, "link", "K02")
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
    assert {Step.SHOWN, Step.REGROUPED} <= set(steps_of(book, 1)[night.night.number])


def start_the_class(page: Page) -> None:
    """Name the class and say how many pupils it has."""
    expect(page).to_have_title("Welcome · onewhole")
    keeps_the_rules(page)
    reach(page, "textbox", "What is the class called?")
    page.keyboard.type("Room 12")
    reach(page, "textbox", "How many pupils?")
    page.keyboard.press("Control+a")
    page.keyboard.type("5")
    press(page, "button", "Start the class")
    expect(page).to_have_title("Week · onewhole")
    keeps_the_rules(page)


def set_the_page(page: Page) -> None:
    """Type the page, see it as it prints, set it for tonight."""
    go(page, "link", "Make a page")
    reach(page, "textbox", "Problems, one on a line")
    page.keyboard.insert_text(TYPED)
    expect(page.locator("#pages img").first).to_be_visible()
    expect(page.locator("#told")).to_contain_text("4 problems")
    keeps_the_rules(page)
    press(page, "button", "Set for tonight")
    expect(page).to_have_title("Week · onewhole")
    expect(page.locator(".night")).to_have_count(1)


def print_it(page: Page) -> None:
    """Save all pages at once."""
    go(page, "link", "Print the page of Tails for the long kite")
    page.locator("summary", has_text="Print").focus()
    page.keyboard.press("Enter")
    with page.expect_download() as saved:
        press(page, "button", "All four as one zip")
    with ZipFile(saved.value.path()) as pages:
        assert pages.namelist() == ["pupil.pdf", "key.pdf", "workings.pdf", "family.pdf"]
        assert all(pages.read(name).startswith(b"%PDF-") for name in pages.namelist())
    go(page, "link", "Week")
    expect(page.locator(".round").first).to_contain_text("printed, done")


def show_it(page: Page) -> None:
    """Step the board to the next part, then say that it was shown."""
    go(page, "link", "Show the walkthrough of Tails for the long kite")
    keeps_the_rules(page)
    board = page.frame_locator("iframe")
    first = board.locator("body").inner_text()
    tab_into_the_board(page)
    page.keyboard.press("ArrowRight")
    page.keyboard.press("ArrowRight")
    expect(board.locator("body")).not_to_have_text(first)
    page.reload()
    press(page, "button", "I showed it")
    expect(page.locator("#film")).to_contain_text("Shown since")


def mark_the_papers(page: Page) -> None:
    """Type every paper with digits, space, slash and Enter."""
    go(page, "link", "Marking")
    reach(page, "textbox", "K01, problem 1")
    for paper in PAPERS:
        for answer in paper:
            page.keyboard.type(answer)
            page.keyboard.press("Enter")
    expect(page.locator("td[data-state=kept]")).to_have_count(len(PAPERS) * len(PAPERS[0]))
    expect(page.locator("td[data-code=K02][data-label='3'] .sign")).to_have_text("✗")
    expect(page.locator("td[data-code=K03][data-label='3'] .sign")).to_have_text("✓")
    expect(page.locator("td[data-code=K04][data-label='3'] .sign")).to_have_text("?")
    keeps_the_rules(page)


def regroup(page: Page) -> None:
    """Look whom to see first, move a pupil, make the pages, and go back to the Week."""
    go(page, "link", "Tomorrow")
    expect(page.locator("#tomorrow")).to_contain_text("See first", timeout=30_000)
    keeps_the_rules(page)
    press(page, "button", "Make the pages to print")
    expect(page.get_by_role("link", name="Look at it")).to_be_visible(timeout=60_000)
    keeps_the_rules(page)
    go(page, "link", "Look at it")
    expect(page.locator("#paper")).to_contain_text("Made from the answers")
    go(page, "link", "Week")


def keeps_the_rules(page: Page) -> None:
    """No rule of axe is broken and nothing runs off sideways."""
    assert broken_rules(page) == []
    assert not runs_off(page)


def reach(page: Page, role: str, name: str) -> None:
    """Press Tab until the thing with this role and name has the focus."""
    thing = page.get_by_role(role, name=name).first  # type: ignore[arg-type] # the roles are ARIA's own
    expect(thing).to_be_visible()
    for _ in range(STOPS):
        if thing.evaluate("one => one === document.activeElement"):
            return
        page.keyboard.press("Tab")
    raise AssertionError(f"Tab does not reach the {role} “{name}”")


def press(page: Page, role: str, name: str) -> None:
    """Reach something and press it."""
    reach(page, role, name)
    page.keyboard.press("Enter")


def go(page: Page, role: str, name: str) -> None:
    """Follow a link by keys and wait for the page behind it."""
    reach(page, role, name)
    with page.expect_navigation():
        page.keyboard.press("Enter")


def tab_into_the_board(page: Page) -> None:
    """Press Tab until the focus is inside the board's own document."""
    for _ in range(STOPS):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.tagName") == "IFRAME":
            return
    raise AssertionError("Tab does not reach the board")
