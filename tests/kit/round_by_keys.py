"""The round as a teacher does it in a browser, by keys alone: from no class to tomorrow's pages on paper."""

from playwright.sync_api import Page, expect

from tests.kit.browsers import broken_rules, runs_off
from tests.kit.keys import MOST, enter, go_to

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


def start_the_class(page: Page) -> None:
    """Name the class and say how many pupils it has."""
    expect(page).to_have_title("Welcome · onewhole")
    keeps_the_rules(page)
    go_to(page, "What is the class called?")
    page.keyboard.type("Room 12")
    go_to(page, "How many pupils?")
    page.keyboard.press("Control+a")
    page.keyboard.type("5")
    go(page, "Start the class")
    expect(page).to_have_title("Week · onewhole")
    keeps_the_rules(page)


def set_the_page(page: Page) -> None:
    """Type the page, see it as it prints, set it for tonight."""
    go(page, "Make a page")
    go_to(page, "Type or paste: one problem or story on a line")
    page.keyboard.insert_text(TYPED)
    expect(page.locator("#pages img").first).to_be_visible()
    expect(page.locator("#told")).to_contain_text("4 problems")
    keeps_the_rules(page)
    go(page, "Set for tonight")
    expect(page).to_have_title("Week · onewhole")
    expect(page.locator(".night")).to_have_count(1)


def print_it(page: Page) -> None:
    """Print all pages by one press of a key; they come in a tab of their own."""
    with page.context.expect_event("response", lambda one: one.url.endswith("/printed")) as came:
        go_to(page, "Print the pages of Tails for the long kite, in a new tab")
        page.keyboard.press("Enter")
    assert (came.value.status, came.value.headers["content-type"]) == (200, "application/pdf")
    go(page, "Week")
    expect(page.locator(".round").first).to_contain_text("printed, done")


def show_it(page: Page) -> None:
    """Step the board to the next part, then say that it was shown."""
    go(page, "Show the walkthrough of Tails for the long kite")
    keeps_the_rules(page)
    board = page.frame_locator("iframe")
    first = board.locator("body").inner_text()
    tab_into_the_board(page)
    page.keyboard.press("ArrowRight")
    page.keyboard.press("ArrowRight")
    expect(board.locator("body")).not_to_have_text(first)
    page.reload()
    go(page, "I showed it")
    expect(page.locator("#film")).to_contain_text("Shown since")


def mark_the_papers(page: Page) -> None:
    """Type every paper with digits, space, slash and Enter."""
    go(page, "Marking")
    go_to(page, "K01, problem 1")
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
    go(page, "Tomorrow")
    expect(page.locator("#tomorrow")).to_contain_text("See first")
    keeps_the_rules(page)
    go(page, "Make the pages to print")
    expect(page.get_by_role("link", name="Look at it")).to_be_visible()
    keeps_the_rules(page)
    go(page, "Look at it")
    expect(page.locator("#paper")).to_contain_text("Made from the answers")
    go(page, "Week")


def keeps_the_rules(page: Page) -> None:
    """No rule of axe is broken and nothing runs off sideways."""
    assert broken_rules(page) == []
    assert not runs_off(page)


def go(page: Page, name: str) -> None:
    """Follow a link or send a form, by keys alone."""
    go_to(page, name)
    enter(page)


def tab_into_the_board(page: Page) -> None:
    """Press Tab until the focus is inside the board's own document."""
    for _ in range(MOST):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.tagName") == "IFRAME":
            return
    raise AssertionError("Tab does not reach the board")
