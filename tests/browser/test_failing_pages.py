"""Pages that say no, in a real browser: the rules of axe (WCAG 2.2 AA) and the keyboard, wide and narrow."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from onewhole.desk.keep.backups import back_up_daily, backups_folder
from onewhole.desk.keep.password import set_password
from onewhole.web.access import sign_in
from onewhole.web.access.rate_limit import FREE
from onewhole.web.http import handling
from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, WIDE, broken_rules, runs_off, window
from tests.kit.doors import NOW, Served, served
from tests.kit.how_much import MORE
from tests.kit.marking_window import cell_of, class_with_night, open_grid, write_past

pytestmark = NEEDS_CHROMIUM
SIZES = (WIDE, PHONE)
#: What a browser tells in its console of an answer that refuses.
REFUSALS = ("Failed to load resource",)
SENT = """(grown) => {
    const form = document.querySelector('main form[method=post]');
    const field = (name, value) => {
        const made = document.createElement('input');
        Object.assign(made, { type: 'hidden', name, value });
        form.append(made);
    };
    if (grown === 'old') form.querySelector('[name=csrf_token]').value = 'of yesterday';
    if (grown === 'many') for (let at = 0; at < 2001; at++) field('more', '');
    if (grown === 'large') field('more', 'x'.repeat(600000));
    form.noValidate = true;
    if (grown === 'wrong') {
        form.querySelector('[name=pupils]').type = 'text';
        form.querySelector('[name=pupils]').value = 'many';
    }
    HTMLFormElement.prototype.submit.call(form);
}"""

#: Scroll so far that the second button of the clash lies where something is said.
TAKE_UNDER_SAID = """() => {
    const middle = (one) => { const box = one.getBoundingClientRect(); return (box.top + box.bottom) / 2; };
    const take = document.querySelectorAll('#clashes li button')[1];
    window.scrollBy(0, middle(take) - middle(document.querySelector('#said')));
}"""


@pytest.fixture(scope="module")
def door(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Served]:
    """A door to a class of two with a night."""
    with served(tmp_path_factory.mktemp("class")) as made:
        class_with_night(made.door.books["mine"], pupils=2)
        yield made


@pytest.fixture(scope="module")
def page(door: Served, browser: Browser) -> Iterator[Page]:
    """One window for all pages that refuse."""
    with window(browser, door.address, forgives=REFUSALS) as opened:
        yield opened


def _keeps_the_rules(page: Page) -> None:
    """On both widths: nothing against axe's rules, nothing that runs off sideways, one main heading."""
    for width, height in SIZES:
        page.set_viewport_size({"width": width, "height": height})
        assert not runs_off(page)
        if MORE or width == WIDE[0]:
            assert broken_rules(page) == []
    assert page.locator("h1").count() == 1


def _reached(page: Page, name: str) -> None:
    """Press Tab until what bears a name has the focus, and see that the focus shows."""
    for _ in range(30):
        page.keyboard.press("Tab")
        focused = page.locator(":focus")
        if name in (focused.get_attribute("aria-label") or focused.inner_text() or ""):
            assert focused.evaluate("(one) => getComputedStyle(one).outlineStyle") == "solid"
            return
    pytest.fail(f"Tab never came to {name}")


def _lies_under(page: Page, over: str) -> bool:
    """Say whether something lies over what has the focus (WCAG 2.2, 2.4.11)."""
    low, high = page.locator(":focus").bounding_box(), page.locator(over).bounding_box()
    assert low is not None
    assert high is not None
    apart = (
        low["x"] + low["width"] <= high["x"]
        or high["x"] + high["width"] <= low["x"]
        or low["y"] + low["height"] <= high["y"]
        or high["y"] + high["height"] <= low["y"]
    )
    return not apart


def _leads_back(page: Page) -> None:
    """One goes back to the Week by the keyboard alone."""
    _reached(page, "To the Week")
    with page.expect_navigation(
        url="**/mine/1/week"
    ):  # some of these pages stand under that address themselves
        page.keyboard.press("Enter")


@pytest.mark.parametrize(
    ("address", "heading"),
    [
        ("/nowhere", "There is no such page"),
        ("/mine/9/week", "This is not there"),
        (f"/under-way/{'9' * 2000}", "This address is too long"),
    ],
    ids=["no page", "no class", "too long"],
)
def test_what_is_not_there_is_a_page(page: Page, door: Served, address: str, heading: str) -> None:
    """It says so in its title and heading, and leads back."""
    page.goto(door.base + address)
    expect(page.get_by_role("heading", level=1)).to_have_text(heading)
    _keeps_the_rules(page)
    _leads_back(page)


@pytest.mark.parametrize(
    ("grown", "told"),
    [
        ("old", "This form is too old. Load the page again; nothing was changed."),
        ("many", "The form has more than 2000 fields. Send less at once; nothing was changed."),
        ("large", "At most 512 KiB may be sent. Send less, or choose a smaller file; nothing was changed."),
    ],
)
def test_a_form_that_is_not_read_says_why(page: Page, door: Served, grown: str, told: str) -> None:
    """What was wrong, and what to do next."""
    page.goto(f"{door.base}/mine/1/class")
    page.evaluate(SENT, grown)
    alert = page.get_by_role("alert")
    expect(alert).to_contain_text("This was not done")
    assert told in " ".join(alert.inner_text().split())
    _keeps_the_rules(page)
    _leads_back(page)


def test_a_form_that_is_refused_keeps_what_was_typed(page: Page, door: Served) -> None:
    """The fault is named beside the form, and the form holds what was sent."""
    page.goto(f"{door.base}/welcome")
    page.evaluate(SENT, "wrong")
    expect(page.get_by_role("alert")).to_contain_text("“pupils” is a whole number from 0 to 60")
    _keeps_the_rules(page)
    assert page.get_by_label("How many pupils?").input_value() == "many"


def test_what_a_disk_has_changed_is_taken_back_by_the_keyboard(page: Page, door: Served) -> None:
    """Every page of the class says it; the page that names it has one button first."""
    book = door.door.books["mine"]
    back_up_daily(book, backups_folder(book.path), NOW)
    with closing(sqlite3.connect(book.path)) as file, file:
        file.execute("UPDATE pupils SET code = 'K09' WHERE code = 'K02'")
    door.door.checks.look_again("mine", book)
    page.goto(f"{door.base}/mine/1/class")
    expect(page.get_by_role("alert")).to_contain_text("Something in this file is not as it was written.")
    _keeps_the_rules(page)
    _reached(page, "See what, and take it back")
    page.keyboard.press("Enter")
    expect(page.get_by_text("the code stands as “K09”")).to_be_visible()
    _keeps_the_rules(page)
    _reached(page, "Take it back")
    page.keyboard.press("Enter")
    expect(page.get_by_text("all are as they were written")).to_be_visible()
    _keeps_the_rules(page)


def test_a_fault_of_the_program_is_a_page(page: Page, door: Served, monkeypatch: pytest.MonkeyPatch) -> None:
    """It says that what was kept is kept, and leads back."""

    def torn(_template: str, _words: object) -> str:
        raise RuntimeError("a page that nobody thought of")

    with monkeypatch.context() as patched:
        patched.setattr(handling, "rendered", torn)
        page.goto(f"{door.base}/mine/1/week")
    expect(page.get_by_role("heading", level=1)).to_contain_text("what was kept before is kept")
    assert "nobody thought of" not in page.content()
    _keeps_the_rules(page)
    _leads_back(page)


def test_a_clash_of_two_windows_is_settled_by_keyboard(page: Page, door: Served) -> None:
    """Both texts stand there; Tab comes to the choice, Enter takes it; what is said does not lie over it."""
    page.set_viewport_size({"width": WIDE[0], "height": WIDE[1]})
    open_grid(page, door.base)
    write_past(door.door.books["mine"], 1, 1, "other")
    page.keyboard.type("mine\n")
    expect(page.locator("#clashes li")).to_contain_text("here “mine”, in the other window “other”")
    _keeps_the_rules(page)
    page.locator("#main").focus()
    _reached(page, "Keep “mine”")
    page.evaluate(TAKE_UNDER_SAID)
    _reached(page, "Take “other”")
    assert not _lies_under(page, "#said")
    page.keyboard.press("Enter")
    expect(page.locator("#clashes")).to_be_hidden()
    expect(cell_of(page, 1, 1)).to_have_value("other")


@pytest.mark.usefixtures("page")  # which has used the key
def test_a_window_that_is_not_open_says_how_it_is_opened(door: Served, browser: Browser) -> None:
    """Without a session, and with a key that was used: no button leads in a circle."""
    with window(browser, door.base, forgives=REFUSALS) as closed:
        for address, heading in (
            ("/mine/1/week", "This window is not open yet"),
            (door.address.removeprefix(door.base), "This address was opened already"),
        ):
            closed.goto(door.base + address)
            expect(closed.get_by_role("heading", level=1)).to_have_text(heading)
            _keeps_the_rules(closed)
            assert closed.get_by_role("link", name="To the Week").count() == 0


def test_a_damaged_file_is_mended_by_keyboard(door: Served, browser: Browser, tmp_path: Path) -> None:
    """The page says what is wrong; Tab comes to the backup, Enter brings it back."""
    with served(tmp_path) as torn, window(browser, torn.address, forgives=REFUSALS) as opened:
        book = torn.door.books["mine"]
        class_with_night(book, pupils=2)
        back_up_daily(book, backups_folder(book.path), NOW)
        torn.door.books.close()
        book.path.write_bytes(b"torn")
        opened.goto(f"{torn.base}/mine/keep")
        expect(opened.get_by_role("alert")).to_contain_text("cannot be opened")
        _keeps_the_rules(opened)
        _reached(opened, "Bring back room12.class")
        opened.keyboard.press("Enter")
        expect(opened.get_by_text("The backup is back.")).to_be_visible()


def test_one_who_tried_too_often_is_told_how_long_to_wait(
    browser: Browser, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The page to sign in says it in an alert; the field has the focus and the page is whole."""
    monkeypatch.setattr(sign_in, "is_password", lambda _path, _typed: False)  # the hash is slow on purpose
    set_password(tmp_path / "room12.class", "six kites over the hill")
    with (
        served(tmp_path, signs_in=True) as desk,
        window(browser, desk.address, forgives=REFUSALS) as opened,
    ):
        for tried in range(FREE + 1):
            expect(opened.get_by_label("Password")).to_be_focused()
            with opened.expect_navigation():
                opened.keyboard.type(f"guess {tried}\n")
        expect(opened.get_by_role("alert")).to_contain_text("Wait 1 second, then try again.")
        _keeps_the_rules(opened)
        expect(opened.get_by_label("Password")).to_be_focused()
