"""Keep in a real browser: with the keyboard only, on both widths, and where the file is damaged."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from onewhole.desk.keep.backups import back_up_daily, backups_folder, backups_of
from onewhole.store.answers import answers_of
from onewhole.store.classes import name_pupil
from tests.kit.age_format import lock_quickly
from tests.kit.browsers import NEEDS_CHROMIUM, broken_on_either_screen, broken_rules, window
from tests.kit.doors import NOW, Served, served
from tests.kit.kept import first_round, write

pytestmark = NEEDS_CHROMIUM


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Served]:
    """A door to a class with an answer, a backup made before it, and a name as long as names may be."""
    with served(tmp_path) as made:
        book = made.door.books["mine"]
        night = first_round(book).night
        back_up_daily(book, backups_folder(book.path), NOW)
        write(book, night, "late")
        name_pupil(book, 1, "K01", "Wren " + "a" * 75)
        yield made


def _to(page: Page, name: str) -> None:
    """Press Tab until what bears a name has the focus."""
    for _ in range(60):
        page.keyboard.press("Tab")
        focused = page.evaluate(
            "(document.activeElement.ariaLabel || document.activeElement.textContent || '').trim()"
        )
        if name in focused:
            return
    pytest.fail(f"Tab never came to {name}")


def test_the_page_breaks_no_rule(browser: Browser, door: Served) -> None:
    """Whole and damaged: axe finds nothing, nothing runs off the page."""
    with window(browser, door.address, forgives=("404", "503"), blank=True) as page:
        page.goto(f"{door.base}/mine/keep")
        page.locator("summary").first.click()
        assert broken_on_either_screen(page) == []
        path = door.door.books.paths["mine"]
        door.door.books.close()
        path.write_bytes(b"torn")
        page.goto(f"{door.base}/mine/keep")
        expect(page.get_by_role("alert")).to_contain_text("cannot be opened")
        assert broken_on_either_screen(page) == []


def test_a_backup_is_brought_back_with_the_keyboard(browser: Browser, door: Served) -> None:
    """The answer written after it is gone from the class and kept in the new backup, which is taken away."""
    path = door.door.books.paths["mine"]
    with window(browser, door.address, forgives=("404",), blank=True) as page:
        page.goto(f"{door.base}/mine/keep")
        _to(page, "Bring back room12.class")
        page.keyboard.press("Enter")
        expect(page.get_by_text("The backup is back.")).to_be_visible()
        assert answers_of(door.door.books["mine"], 1) == ()
        assert len(backups_of(path)) == 2
        _to(page, "Take away room12.class")
        page.keyboard.press("Enter")
        _to(page, "for good")
        page.keyboard.press("Enter")
        expect(page.get_by_text("The file was taken away.")).to_be_visible()
        assert len(backups_of(path)) == 1


def test_a_saved_backup_is_handed_in_again(browser: Browser, door: Served, tmp_path: Path) -> None:
    """Saved by the browser as a file, chosen again, and the class is as it was."""
    with window(browser, door.address, forgives=("404",), blank=True) as page:
        page.goto(f"{door.base}/mine/keep")
        with page.expect_download() as saving:
            page.get_by_role("link", name="Save a backup").click()
        saved = tmp_path / saving.value.suggested_filename
        saving.value.save_as(saved)
        assert saved.name == "room12-2026-09-01.backup"
        write(door.door.books["mine"], 1, "later still")
        page.get_by_label("A backup you saved").set_input_files(saved)
        page.get_by_role("button", name="Bring this file back").press("Enter")
        expect(page.get_by_text("The backup is back.")).to_be_visible()
        assert [one.text for one in answers_of(door.door.books["mine"], 1)] == ["late"]


def test_a_locked_backup_is_saved_and_handed_in_with_the_keyboard(
    browser: Browser, door: Served, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What happens when the passphrase is forgotten stands before its field; a wrong one changes nothing."""
    lock_quickly(monkeypatch)
    phrase = "six kites over the hill"
    with window(browser, door.address, forgives=("404", "422")) as page:
        page.goto(f"{door.base}/mine/keep")
        _to(page, "Lock it with a passphrase")
        page.keyboard.press("Enter")
        expect(page.get_by_text("The passphrase is kept nowhere.")).to_be_visible()
        assert broken_rules(page) == []
        page.keyboard.press("Tab")
        page.keyboard.type(phrase)
        page.keyboard.press("Tab")
        page.keyboard.type(phrase)
        with page.expect_download() as saving:
            page.keyboard.press("Enter")
        saved = tmp_path / saving.value.suggested_filename
        saving.value.save_as(saved)
        assert saved.name == "room12-2026-09-01.backup.age"
        write(door.door.books["mine"], 1, "later still")
        for typed, told in (("seven kites", "does not open this backup"), (phrase, "The backup is back.")):
            page.goto(f"{door.base}/mine/keep")
            page.get_by_label("A backup you saved").set_input_files(saved)
            page.get_by_label("Its passphrase, if it is locked").fill(typed)
            page.keyboard.press("Enter")
            expect(page.get_by_text(told)).to_be_visible()
        assert [one.text for one in answers_of(door.door.books["mine"], 1)] == ["late"]


def test_the_last_day_is_set_with_the_keyboard(browser: Browser, door: Served) -> None:
    """Typed into the day's field and told on the page."""
    with window(browser, door.address, forgives=("404",), blank=True) as page:
        page.goto(f"{door.base}/mine/keep")
        page.get_by_label("Hold this class until").focus()
        page.keyboard.type("06302027")
        page.keyboard.press("Enter")
        expect(page.get_by_text("The last day is set.")).to_be_visible()
        expect(page.get_by_text("30 June 2027")).to_be_visible()
