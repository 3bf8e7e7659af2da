"""The Page desk in a real browser: typed, noted, mended, reordered, undone, saved, set; by keys alone."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from onewhole.desk.classes.class_records import night_pages, start_room
from onewhole.desk.page.kept_pages import keep_page, kept_versions
from onewhole.store.sheets import newest_sheets
from tests.kit.browsers import NEEDS_CHROMIUM, broken_on_either_screen, broken_rules, until, window
from tests.kit.busy import busy
from tests.kit.doors import NOW, Served, served

pytestmark = NEEDS_CHROMIUM

AT = "/mine/1/page"
TWINS = (
    "title: Kites\nminutes: 20\n\n# Look first.\n1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6\n3. 5 4/6 - 2 1/6\n"
    "4. 5 1/3 - 2 2/3 | The kite club has 5 1/3 wholes of kite paper. It cuts 2 2/3 wholes. What is left?"
)


#: As it comes out of a word processor.
PASTED = (
    "Ribbons and bows\nWork with a friend.\n7 2/6 \N{EN DASH} 3 5/6 = ______\n"
    "\N{BULLET}\t5\N{VULGAR FRACTION ONE QUARTER} \N{EN DASH} 2\N{VULGAR FRACTION THREE QUARTERS}\n"
    "Maya has 4 1/4 yards of ribbon. She uses 1 3/4 yards. How much is left?\n52 -\n8 - 4 5/8"
)


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Served]:
    """A class of two pupils, and a page with two twins."""
    with served(tmp_path) as made:
        start_room(made.door.books["mine"], "Room 12", 2, NOW)
        keep_page(made.door.books["mine"], None, TWINS, NOW)
        yield made


@pytest.fixture
def page(door: Served, browser: Browser) -> Iterator[Page]:
    """A window with the page open. A refusal is an answer of the server, and no fault of the script."""
    with window(browser, door.address, forgives=("422", "409"), blank=True) as opened:
        opened.goto(f"{door.base}{AT}/1")
        expect(opened.locator("#pages img")).to_have_count(1)
        yield opened


def typed(page: Page) -> str:
    """Return what stands in the field."""
    return page.locator("#typed").input_value()


def draft_kept(page: Page) -> None:
    """Wait until the draft that this machine keeps is what stands in the field."""
    until(page, "Object.values(localStorage).includes(document.querySelector('#typed').value)")


def labelled(page: Page) -> list[str]:
    """Return the problems as they stand, without the header."""
    return [line for line in typed(page).splitlines() if line[:1].isdigit()]


def test_no_rule_is_broken(door: Served, browser: Browser) -> None:
    """On a wide screen and on a phone, with everything folded out; nothing runs off sideways."""
    with window(browser, door.address, blank=True) as page:
        page.goto(f"{door.base}{AT}/1")
        expect(page.locator("#pages img")).to_have_count(1)
        page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })")
        assert broken_on_either_screen(page) == []
        page.fill("#typed", PASTED)
        expect(page.locator("#notes li")).to_have_count(3)
        page.locator("#how-many-more").click()
        assert broken_on_either_screen(page) == []


def test_typing_shows_the_page(page: Page, door: Served) -> None:
    """An empty desk gets a page; what cannot be read is told beside its line, and the others stay."""
    page.goto(door.base + AT)
    page.locator("#typed").press_sequentially("1. 52 - 27", delay=5)
    image = page.locator("#pages img")
    expect(image).to_have_attribute("alt", "The page, page 1 of 1. Problem 1: fifty-two minus twenty-seven.")
    expect(page.locator("#told")).to_contain_text("One page, about")
    page.keyboard.type("\n2. 5 -")
    expect(page.locator("#notes")).to_contain_text("A number is missing")
    expect(page.locator("#told")).to_contain_text("Not on it yet: Problem 2.")
    expect(page.locator("#heard")).to_contain_text("Problem 2: a number is missing")
    expect(page.locator("#rows > .mistake")).to_have_text("2. 5 -")
    expect(image).to_have_attribute("alt", "The page, page 1 of 1. Problem 1: fifty-two minus twenty-seven.")
    page.fill("#typed", "52 -")
    expect(page.locator("#told")).to_have_text("This is the last page that could be read.")
    expect(image).to_have_count(1)


def test_the_rows_lie_under_the_letters(page: Page) -> None:
    """Each line of the field is as high as its row, so that numbers and marks stand beside the right one."""
    heights = page.evaluate(
        "[document.querySelector('#typed').scrollHeight, document.querySelector('#rows').scrollHeight]"
    )
    assert abs(heights[0] - heights[1]) <= 1
    assert page.locator("#rows > div").count() == len(TWINS.split("\n"))


def test_a_pasted_page_is_seen_to_note_by_note(page: Page) -> None:
    """Lines without a number are counted in the margin, a story is asked about, three notes are in view."""
    page.fill("#typed", PASTED)
    expect(page.locator("#rows > div").nth(2)).to_have_attribute("data-number", "1")
    expect(page.locator("#notes li")).to_have_count(3)
    expect(page.locator("#how-many-more")).to_contain_text("more")
    page.get_by_role("button", name="This is the title").first.click()
    expect(page.locator("#typed")).to_have_value(re.compile("^title: Ribbons and bows\n"))
    page.get_by_role("button", name="4 1/4 - 1 3/4?", exact=True).click()
    expect(page.locator("#said")).to_have_text("The story asks 4 1/4 - 1 3/4 now.")
    expect(page.locator("#typed")).to_have_value(re.compile("\n4 1/4 - 1 3/4 [|] Maya has"))
    page.get_by_role("button", name="Undo").click()
    expect(page.get_by_role("button", name="4 1/4 - 1 3/4?", exact=True)).to_be_visible()


def test_a_remedy_and_undo_by_keys(page: Page) -> None:
    """The note goes, the problem has other numbers; undone, it is as before, and done again."""
    click = page.get_by_role("button", name="Change the numbers of 2")
    click.focus()
    page.keyboard.press("Enter")
    expect(click).to_have_count(0)
    expect(page.locator("#said")).to_contain_text("Problem 2 asks")
    changed = typed(page)
    assert changed != TWINS
    page.locator("#typed").focus()
    page.keyboard.press("Control+z")
    assert typed(page) == TWINS
    expect(click).to_have_count(1)
    page.keyboard.press("Control+Shift+z")
    assert typed(page) == changed


def test_a_note_leads_to_its_line(page: Page) -> None:
    """The line is chosen in the field."""
    page.locator("#notes").get_by_role("link", name="Problem 2").first.click()
    chosen = (
        "(one => one.value.slice(one.selectionStart, one.selectionEnd))(document.querySelector('#typed'))"
    )
    assert page.evaluate(chosen) == "2. 8 1/6 - 4 4/6"


def test_problems_are_reordered_by_keys(page: Page) -> None:
    """Alt and an arrow in the field, an arrow on the handle: the caret and the focus go along."""
    page.locator("#typed").focus()
    page.evaluate("document.querySelector('#typed').setSelectionRange(45, 45)")
    page.keyboard.press("Alt+ArrowDown")
    expect(page.locator("#said")).to_have_text("Problem 1 is number 2 of 4 now.")
    assert labelled(page)[:2] == ["1. 8 1/6 - 4 4/6", "2. 7 2/6 - 3 5/6"]
    page.keyboard.press("Alt+ArrowDown")
    expect(page.locator("#said")).to_have_text("Problem 2 is number 3 of 4 now.")
    assert labelled(page)[2] == "3. 7 2/6 - 3 5/6"
    expect(page.locator("#order li").nth(2)).to_contain_text("7 2/6 - 3 5/6")
    page.locator("#order li").nth(2).get_by_role("button", name="Move problem 3").focus()
    page.keyboard.press("ArrowUp")
    expect(page.locator("#order li").nth(1)).to_contain_text("7 2/6 - 3 5/6")
    expect(page.get_by_role("button", name="Move problem 2")).to_be_focused()
    assert "# Look first." in typed(page).splitlines()[3]


def test_a_problem_is_told_as_a_story(page: Page) -> None:
    """By the button beside it, which keeps the focus; then in other words, and without them again."""
    row = page.locator("#order li").first
    row.get_by_role("button", name="Tell 1 as a story").click()
    expect(page.locator("#said")).to_have_text("Problem 1 told as a story.")
    first = next(line for line in typed(page).splitlines() if line.startswith("1. "))
    assert first.startswith("1. 7 2/6 - 3 5/6 | All the strips of kite paper are the same size.")
    row.get_by_role("button", name="Tell 1 in other words").click()
    expect(page.locator("#said")).to_have_text("Problem 1 told in other words.")
    assert first not in typed(page)
    expect(row.get_by_role("button", name="Tell 1 in other words")).to_be_focused()
    row.get_by_role("button", name="Ask 1 without words").click()
    expect(page.locator("#said")).to_have_text("Problem 1 asked without words.")
    assert labelled(page)[0] == "1. 7 2/6 - 3 5/6"
    assert not broken_on_either_screen(page)


def test_a_problem_is_dragged(page: Page) -> None:
    """From the third place to the first."""
    rows = page.locator("#order li")
    expect(rows).to_have_count(4)
    rows.nth(2).scroll_into_view_if_needed()
    start, end = rows.nth(2).locator(".handle").bounding_box(), rows.nth(0).bounding_box()
    assert start
    assert end
    page.mouse.move(start["x"] + 10, start["y"] + 10)
    page.mouse.down()
    page.mouse.move(start["x"] + 10, end["y"] + 12, steps=4)
    page.mouse.up()
    expect(rows.nth(0)).to_contain_text("5 4/6 - 2 1/6")
    assert labelled(page)[0] == "1. 5 4/6 - 2 1/6"


def test_versions_and_drafts(page: Page, door: Served) -> None:
    """Saved twice, the first can be brought back; what was not saved is there after the window was left."""
    page.locator("#typed").focus()
    page.keyboard.press("Control+End")
    page.keyboard.type("\n5. 6 - 3")
    page.keyboard.press("Control+s")
    expect(page.locator("#said")).to_have_text("Saved as version 2.")
    assert [one.version for one in kept_versions(door.door.books["mine"], 1)] == [2, 1]
    page.keyboard.type("4")
    draft_kept(page)
    page.reload()
    page.get_by_role("button", name="Bring it back").click()
    assert labelled(page)[-1] == "5. 6 - 34"
    page.get_by_text("Kept versions").click()
    page.get_by_role("button", name="Bring back version 1").click()
    expect(page.locator("#typed")).to_have_value(TWINS)


def test_what_another_window_saved_is_told(page: Page, door: Served) -> None:
    """It is listed, what is typed here stays; saved once more, both are kept, one after the other."""
    keep_page(door.door.books["mine"], 1, "1. 5 - 2", NOW)
    page.fill("#typed", "1. 6 - 2")
    page.click("#save")
    expect(page.locator("#refused")).to_contain_text("Another window saved version 2")
    expect(page.locator("#versions li")).to_have_count(2)
    assert typed(page) == "1. 6 - 2"
    page.click("#save")
    expect(page.locator("#said")).to_contain_text("Saved as version 3")
    kept = kept_versions(door.door.books["mine"], 1)
    assert [one.typed for one in kept[:2]] == ["1. 6 - 2", "1. 5 - 2"]


def test_composed_and_undone(page: Page) -> None:
    """A page by wishes, and the own one back; a wish that cannot be met is told."""
    page.get_by_text("Compose a page by wishes").click()
    page.get_by_label("How many problems").fill("3")
    page.get_by_label("Denominators").fill("7")
    page.get_by_role("button", name="Compose").click()
    expect(page.get_by_role("alert")).to_contain_text("Grade 4 does not meet the denominator 7")
    assert typed(page) == TWINS
    page.get_by_label("Denominators").fill("6")
    page.get_by_role("button", name="Compose").click()
    expect(page.locator("#order li")).to_have_count(3)
    expect(page.get_by_role("alert")).to_be_hidden()
    page.get_by_role("button", name="Undo").click()
    assert typed(page) == TWINS


@pytest.mark.more("web/test_page_desk.py")
def test_the_desk_is_left_while_a_page_is_composed(page: Page, door: Served) -> None:
    """The line on every page leads to it; it stands unsaved; undo leads to the draft and what is kept."""
    page.locator("#typed").focus()
    page.keyboard.press("Control+End")
    page.keyboard.type("\n5. 6 - 3")
    draft_kept(page)
    page.get_by_text("Compose a page by wishes").click()
    page.get_by_label("How many problems").fill("3")
    with busy(door.door.jobs):
        page.get_by_role("button", name="Compose").click()
        expect(page.locator("#composing")).to_contain_text("also when you leave this page")
        expect(page.locator("#so-far")).to_have_text("Waits for other work to end")
        page.goto(f"{door.base}/mine/1/week")
        page.get_by_role("link", name="A page is composed").click()
        assert broken_rules(page) == []
    page.get_by_role("link", name="Look at it").click()
    expect(page.locator("#order li")).to_have_count(3)
    assert page.url == f"{door.base}{AT}/1"
    composed = labelled(page)
    assert kept_versions(door.door.books["mine"], 1)[0].typed == TWINS
    expect(page.get_by_text("Something was typed here")).to_be_hidden()
    page.get_by_role("button", name="Undo").click()
    assert typed(page) == TWINS + "\n5. 6 - 3"
    page.get_by_role("button", name="Undo").click()
    assert typed(page) == TWINS
    page.get_by_role("button", name="Redo").click()
    page.get_by_role("button", name="Redo").click()
    page.get_by_role("button", name="Save").click()
    expect(page.locator("#said")).to_have_text("Saved as version 2.")
    (kept,) = newest_sheets(door.door.books["mine"])
    assert [line for line in kept.typed.splitlines() if line[:1].isdigit()] == composed
    assert kept.recipe


@pytest.mark.more("web/test_page_desk.py")
def test_wishes_that_clash_are_told(page: Page) -> None:
    """In words above the desk; what was typed stays."""
    page.get_by_text("Compose a page by wishes").click()
    page.get_by_label("How many problems").fill("20")
    page.get_by_label("Minutes at most").fill("1")
    page.get_by_role("button", name="Compose").click()
    expect(page.get_by_role("alert")).to_contain_text("minute")
    expect(page.locator("#composing")).to_be_empty()
    assert typed(page) == TWINS


def test_composed_without_a_script(door: Served, browser: Browser) -> None:
    """The form alone composes a page, and it stands on the desk."""
    context = browser.new_context(java_script_enabled=False)
    bare = context.new_page()
    bare.goto(f"{door.base}/open?key={door.access.sessions.new_key()}")
    bare.goto(f"{door.base}{AT}/1")
    bare.get_by_text("Compose a page by wishes").click()
    bare.get_by_label("How many problems").fill("3")
    bare.get_by_role("button", name="Compose").click()
    while not bare.get_by_role("link", name="Look at it").count():
        bare.reload()
    bare.get_by_role("link", name="Look at it").click()
    text = bare.locator("#typed").input_value()
    context.close()
    assert text.startswith("title: Kites\n")
    assert sum(line[:1].isdigit() for line in text.splitlines()) == 3
    assert "7 2/6 - 3 5/6" not in text


def test_one_click_prints_what_is_typed(page: Page) -> None:
    """The button at the top sends it to a new tab, which gets one PDF; the page stays as it is."""
    printed = page.context.expect_event("response", lambda one: one.url.endswith("/printed"))
    with page.expect_popup() as tab, printed as answered:
        page.locator("#print-it").get_by_role("button", name="Print").click()
    response = answered.value
    assert response.headers["content-type"] == "application/pdf"
    tab.value.close()
    assert typed(page) == TWINS


def test_set_for_tonight(page: Page, door: Served) -> None:
    """What cannot be printed is not set and stays; mended, it is, and the Week shows it."""
    page.locator("#typed").focus()
    page.keyboard.press("Control+End")
    page.keyboard.type("\n5. 5 -")
    page.get_by_role("button", name="Set for tonight").click()
    expect(page.get_by_role("alert")).to_contain_text("Line 9, column 7: A number is missing")
    assert night_pages(door.door.books["mine"], 1) == ()
    page.locator("#typed").focus()
    page.keyboard.type(" 2")
    page.get_by_role("button", name="Set for tonight").press("Enter")
    page.wait_for_url("**/week?of=2026-09-01#night-1")
    (night,) = night_pages(door.door.books["mine"], 1)
    assert night.labels == ("1", "2", "3", "4", "5")
    assert night.kept.version == 2


def test_notes_stand_beside_their_lines(page: Page) -> None:
    """On a wide screen the first note is as high as its line, also after the page was looked at again."""
    where = "(one => document.querySelector(one).getBoundingClientRect().top)"
    page.fill("#typed", "title: Kites\n\n# Look.\n\n\n1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6\n3. 5 4/6 - 2 1/6")
    for letter in (" ", ""):
        expect(page.get_by_role("button", name="Change the numbers of 2")).to_be_visible()
        note, row = (where + f"('{one}')" for one in ("#notes li", "#rows > div:nth-child(6)"))
        until(page, f"Math.abs({note} - {row}) <= 2")
        if letter:
            with page.expect_response("**/live"):
                page.locator("#typed").press_sequentially(letter)
