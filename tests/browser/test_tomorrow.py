"""Tomorrow in a real browser: a pupil is moved by keys and by drag, pages come as PDFs, no rule is broken."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.store.answers import KeptAnswer, keep_answers
from onewhole.store.corrections import corrections_of
from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, broken_on_either_screen, broken_rules, runs_off, window
from tests.kit.club import NOW, small_club
from tests.kit.doors import Served, served
from tests.kit.waiting import until

pytestmark = NEEDS_CHROMIUM

PLACE = "/mine/1/night/2/tomorrow"
#: What K02 writes when the paper is looked at again: the smaller number of pieces from the larger.
WRONG = {"1": "5 1/8", "2": "5 4/6", "3": "3 1/4"}


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Served]:
    """Two nights of a class of five, both read."""
    with served(tmp_path) as made:
        small_club(made.door.books["mine"], 2)
        mark_missing(made.door.books["mine"], 1, lambda *_: None)
        yield made


@pytest.fixture
def page(door: Served, browser: Browser) -> Iterator[Page]:
    """A window with the page open."""
    with window(browser, door.address, blank=True) as opened:
        opened.goto(door.base + PLACE)
        yield opened


def card_of(page: Page, code: str) -> str:
    """Return the name of the group a pupil is shown in."""
    return str(
        page.locator(f"#seat-{code}").evaluate("seat => seat.closest('.card').querySelector('h3').innerText")
    )


def test_a_pupil_is_moved_by_the_arrow_keys_and_the_reason_stays(page: Page) -> None:
    """The move is said aloud, the focus stays with the pupil, a new load shows the same; undo by keys too."""
    before = card_of(page, "K02")
    page.locator("#seat-K02 .move summary").focus()
    page.keyboard.press("ArrowLeft")
    expect(page.locator("#said")).to_contain_text("K02 is in the group")
    assert card_of(page, "K02") != before
    expect(page.locator("#seat-K02 .move summary")).to_be_focused()
    expect(page.locator("#seat-K02 .because")).to_contain_text("Moved here by the teacher; the answers said")
    after = card_of(page, "K02")
    page.reload()
    assert card_of(page, "K02") == after
    expect(page.locator("#seat-K02 .because")).to_contain_text("Moved here by the teacher; the answers said")
    page.locator("#seat-K02 .move summary").focus()
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    page.keyboard.type("where")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(page.locator("#said")).to_contain_text("K02 is in the group")
    assert card_of(page, "K02") == before
    expect(page.locator("#seat-K02 .because")).not_to_contain_text("the teacher")
    page.locator("#undo").focus()
    page.keyboard.press("Enter")
    expect(page.locator("#seat-K02 .because")).to_contain_text("Moved here by the teacher")
    assert card_of(page, "K02") == after


def test_the_last_group_has_none_after_it(page: Page) -> None:
    """The arrow keys say so and move nobody."""
    last = page.locator(".card[data-key]").last.locator(".seat").first
    code = last.get_attribute("data-code") or ""
    last.locator(".move summary").focus()
    page.keyboard.press("ArrowRight")
    expect(page.locator("#said")).to_have_text("There is no group after this one.")
    expect(page.locator(f"#seat-{code} .because")).not_to_contain_text("the teacher")


def test_a_pupil_is_dragged_to_another_group(page: Page) -> None:
    """Dropping on a card moves; what was open stays open."""
    page.locator("#talks > summary").click()
    page.locator("#talk-K03 > summary").click()
    to = page.locator(".card[data-key]").last
    name = to.get_attribute("data-name")
    page.locator("#seat-K01 .grip").drag_to(to)
    expect(page.locator("#said")).to_have_text(f"K01 is in the group {name} now.")
    assert card_of(page, "K01").startswith(str(name))
    expect(page.locator("#talk-K03 .evidence")).to_be_visible()


def test_evidence_opens_from_the_reason(page: Page) -> None:
    """The link opens the talk, with caution, formulas and the question."""
    page.locator("#why-K01 summary").click()
    page.locator("#seat-K01 a.to-talk").click()
    talk = page.locator("#talk-K01")
    expect(talk.locator("table")).to_be_visible()
    expect(talk.locator(".caution")).to_contain_text("never a label")
    assert talk.locator("math").count() == 9
    talk.get_by_role("button", name="Set this finding aside").click()
    expect(page.locator("#talk-K01 > summary")).to_contain_text("You set this aside.")
    expect(page.locator("#seat-K01 .because")).to_contain_text("you set the finding aside")


def test_the_pages_are_made_and_come_as_pdf(page: Page) -> None:
    """Progress is shown on its own page; back on this one every page is a link to a PDF."""
    page.get_by_role("button", name="Make the pages to print").click()
    page.get_by_role("link", name="Look at it").click()
    links = page.locator("a[href*='/tomorrow/paper/']")
    expect(links.first).to_contain_text("Everything in one file")
    expect(page.locator(".printed a").first).to_contain_text("Morning page")
    assert links.count() >= 4
    for link in links.all():
        answer = page.request.get(page.url.split("/mine")[0] + str(link.get_attribute("href")))
        assert answer.headers["content-type"] == "application/pdf"
        assert answer.body().startswith(b"%PDF")


def test_the_page_is_short_an_address_opens_its_part_and_paper_shows_all(door: Served, page: Page) -> None:
    """On a phone groups are told by their codes until opened; nothing is left open after printing."""
    page.set_viewport_size({"width": PHONE[0], "height": PHONE[1]})
    page.reload()
    assert page.evaluate("document.documentElement.scrollHeight") < 4 * PHONE[1]
    expect(page.locator("#seat-K01")).not_to_be_visible()
    page.locator(".sits > summary", has_text="K01").press("Enter")
    expect(page.locator("#seat-K01")).to_be_visible()
    page.goto(f"{door.base}{PLACE}#talk-K01")
    expect(page.locator("#talk-K01 .evidence")).to_be_visible()
    page.evaluate("dispatchEvent(new Event('beforeprint'))")
    closed = "document.querySelectorAll('main details:not([open]):not(:has(form)):not(.how-to)').length"
    assert page.evaluate(closed) == 0
    expect(page.locator("#talk-K03 .evidence")).to_be_visible()
    page.evaluate("dispatchEvent(new Event('afterprint'))")
    expect(page.locator("#talk-K03 .evidence")).not_to_be_visible()
    expect(page.locator("#talk-K01 .evidence")).to_be_visible()


def test_groups_that_were_in_front_of_somebody_are_kept(door: Served, page: Page) -> None:
    """The page says so by itself; a late paper then moves nobody and is asked about."""
    book = door.door.books["mine"]
    until(lambda: {one.code for one in corrections_of(book, 2)} == {"K01", "K02", "K03", "K04"})
    before = card_of(page, "K02")
    keep_answers(book, [KeptAnswer(2, "K02", label, text, NOW, "teacher") for label, text in WRONG.items()])
    page.reload()
    assert card_of(page, "K02") == before
    expect(page.locator("#changes")).to_contain_text("Keep your groups, or take this change?")
    page.get_by_role("button", name="Take this change").press("Enter")
    expect(page.locator("#changes")).to_have_count(0)
    assert card_of(page, "K02") == card_of(page, "K01")


def test_no_rule_of_axe_is_broken_wide_or_narrow(page: Page) -> None:
    """Also with everything opened; nothing has to be scrolled sideways on a phone."""
    assert broken_rules(page) == []
    page.evaluate("for (const one of document.querySelectorAll('details')) one.open = true")
    assert broken_on_either_screen(page) == []


def test_the_map_tells_without_colour(page: Page) -> None:
    """Every hatched cell has its number, and more pupils are hatched more densely."""
    page.locator("#patterns > summary").click()
    cells = page.locator(".heat tbody.fit td[class*=' d']").all()
    told = {(cell.get_attribute("class") or "")[-1]: int(cell.inner_text()) for cell in cells}
    assert told == {"1": 1, "2": 2}


def test_what_a_child_said_is_written_down_by_keys_on_a_phone(page: Page) -> None:
    """The row stands there with a way to take it back; no rule is broken and nothing runs off."""
    page.set_viewport_size({"width": PHONE[0], "height": PHONE[1]})
    page.locator("#talks > summary").focus()
    page.keyboard.press("Enter")
    page.locator("#talk-K03 > summary").focus()
    page.keyboard.press("Enter")
    page.locator("#talk-K03 .ask-here summary").focus()
    page.keyboard.press("Enter")
    page.get_by_label("What you asked").locator("visible=true").fill("9 1/3 - 6 2/3")
    page.keyboard.press("Tab")
    page.keyboard.type("3 1/3")
    page.keyboard.press("Tab")
    page.keyboard.type("it was a slip")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    row = page.locator("#talk-K03 .asked li")
    expect(row).to_have_count(1)
    expect(row).to_contain_text("your word: it was a slip")
    page.locator("#talk-K03").evaluate("talk => { talk.open = true }")
    assert broken_rules(page) == []
    assert not runs_off(page)
    row.get_by_role("button").focus()
    page.keyboard.press("Enter")
    expect(row).to_have_count(0)
