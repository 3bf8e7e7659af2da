"""The Marking page in a real browser: what shows as kept is on the disk, nothing is overwritten unseen."""

import re
import signal
import socket
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Dialog, Page, expect

from onewhole.desk.classes.class_records import open_book
from onewhole.desk.marking.grid import cell_history
from tests.kit.browsers import NEEDS_CHROMIUM, window
from tests.kit.doors import Served, served
from tests.kit.marking_window import all_kept, cell_of, class_with_night, open_grid, texts_on_disk, write_past

pytestmark = NEEDS_CHROMIUM

SERVER = """
import sys
from datetime import UTC, datetime
from pathlib import Path
from onewhole.web.serving import serve
path, port = Path(sys.argv[1]), int(sys.argv[2])
serve(path, port=port, now=lambda: datetime.now(UTC), told=lambda at: print(at, flush=True))
"""
#: The first answer of each address ends before its end.
BREAKS_OFF = """
const own = Response.prototype.json, broken = new Set();
Response.prototype.json = function () {
  if (broken.has(this.url)) return own.call(this);
  broken.add(this.url);
  return Promise.reject(new TypeError("Failed to fetch"));
};
null;
"""


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Served]:
    """A class with a night of twelve problems, nothing typed yet."""
    with served(tmp_path) as made:
        class_with_night(made.door.books["mine"])
        yield made


@pytest.fixture
def page(door: Served, browser: Browser) -> Iterator[Page]:
    """A window with the grid open, the first cell ready."""
    with window(browser, door.address, forgives=("422",), blank=True) as opened:
        open_grid(opened, door.base)
        yield opened


@contextmanager
def _serving(folder: Path, port: int) -> Iterator[tuple[subprocess.Popen[str], str]]:
    """A program of its own that serves the class file of a folder; killed at the end at the latest."""
    command = [sys.executable, "-c", SERVER, str(folder / "room12.class"), str(port)]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True) as running:
        assert running.stdout is not None
        try:
            yield running, running.stdout.readline().strip()
        finally:
            running.kill()


def test_two_windows_never_overwrite_unseen(door: Served, page: Page) -> None:
    """A cell that both changed shows both texts and keeps what one chooses; one only read is renewed."""
    book = door.door.books["mine"]
    write_past(book, 1, 1, "other")
    write_past(book, 2, 1, "seen")
    page.keyboard.type("mine")
    page.keyboard.press("Enter")
    expect(page.locator("#clashes li")).to_contain_text("here “mine”, in the other window “other”")
    expect(cell_of(page, 1, 1)).to_have_value("mine")
    assert texts_on_disk(book)[0][0] == "other"
    expect(cell_of(page, 2, 1)).to_have_value("seen")
    page.get_by_role("button", name="Keep “mine”").click()
    all_kept(page)
    expect(page.locator("#clashes")).to_be_hidden()
    assert [one.text for one in cell_history(book, 1, 1, "K01", "1")] == ["other", "mine"]
    write_past(book, 3, 1, "third")
    cell_of(page, 3, 1).fill("here")
    page.keyboard.press("Enter")
    page.get_by_role("button", name="Take “third”").click()
    expect(cell_of(page, 3, 1)).to_have_value("third")
    expect(page.locator("td[data-code=K03][data-label='1']")).to_have_attribute("data-state", "kept")
    assert [one.text for one in cell_history(book, 1, 1, "K03", "1")] == ["third"]


@pytest.mark.more("browser/test_marking.py")
def test_the_choice_keeps_the_focus_while_other_windows_are_looked_at(door: Served, page: Page) -> None:
    """A row that says the same stays where it is; one that says something else is made anew."""
    book = door.door.books["mine"]
    write_past(book, 1, 1, "other")
    page.keyboard.type("mine\n")
    keep = page.get_by_role("button", name="Keep “mine”")
    keep.focus()
    write_past(book, 3, 1, "seen")
    expect(cell_of(page, 3, 1)).to_have_value("seen")
    expect(keep).to_be_focused()
    write_past(book, 1, 1, "newer")
    page.get_by_role("button", name="Take “newer”").click()
    expect(cell_of(page, 1, 1)).to_have_value("newer")
    expect(page.locator("#clashes")).to_be_hidden()


@pytest.mark.more("store/test_kills.py")
@pytest.mark.slow
def test_what_shows_as_kept_outlives_a_killed_program(tmp_path: Path, browser: Browser) -> None:
    """Killed while one types: typing goes on, nothing false shows as kept; all is, once it runs again."""
    book = open_book(tmp_path / "room12.class")
    class_with_night(book)
    with socket.create_server(("127.0.0.1", 0)) as free:
        port = free.getsockname()[1]
    forgives = ("ERR_CONNECTION", "Failed to load resource")
    with _serving(tmp_path, port) as (running, address):
        base = re.sub("/open.*", "", address)
        with window(browser, address, forgives=forgives, blank=True) as page:
            open_grid(page, base)
            for at in range(30):
                page.keyboard.type(f"{at}\n")
                if at == 20:
                    running.send_signal(signal.SIGKILL)
                    running.wait()
            expect(page.locator("#unkept")).to_contain_text("not kept yet. The program does not answer.")
            shown = page.locator("td[data-state=kept] input").evaluate_all("all => all.map(one => one.value)")
            stands = [text for row in texts_on_disk(book) for text in row if text]
            assert set(shown) <= set(stands)
            assert len(shown) < 30
            typed = [cell_of(page, at // 12 + 1, at % 12 + 1).input_value() for at in range(30)]
            assert typed == [str(at) for at in range(30)]
            with _serving(tmp_path, port) as (_, again):
                page.context.new_page().goto(again)
                page.bring_to_front()
                all_kept(page)
                expect(page.locator("#unkept")).to_be_hidden()
                page.keyboard.type("last\n")
                all_kept(page)
            stands = [text for row in texts_on_disk(book) for text in row if text]
            assert stands == [*typed, "last"]
    book.close()


def test_an_answer_of_the_program_that_breaks_off_is_no_answer(door: Served, page: Page) -> None:
    """The program ends while it answers: what was typed is sent again, and verdicts go on."""
    page.evaluate(BREAKS_OFF)
    page.keyboard.type("3 3/6\n")
    expect(page.locator("#unkept")).to_contain_text("The program does not answer.")
    all_kept(page)
    assert texts_on_disk(door.door.books["mine"])[0][0] == "3 3/6"
    page.keyboard.type("9")
    expect(page.locator("#verdict .words")).to_contain_text("nine: not right")


@pytest.mark.more("browser/test_marking.py")
def test_the_next_page_waits_for_the_last_cell(door: Served, page: Page) -> None:
    """A link clicked while a cell is being typed is followed when that cell is on the disk."""
    page.keyboard.type("4 7/8")
    page.get_by_role("link", name="Walkthrough").click()
    page.wait_for_url("**/walkthrough")
    assert texts_on_disk(door.door.books["mine"])[0][0] == "4 7/8"


def test_a_full_disk_is_told_and_tried_again(door: Served, browser: Browser) -> None:
    """Nothing shows as kept meanwhile, the text stays, and leaving the page is asked about."""
    with window(browser, door.address, forgives=("503",), blank=True) as page:
        open_grid(page, door.base)
        told = '{"refused": "The disk is full", "where": "", "remedy": "Make room on the disk."}'
        page.route(
            "**/keep", lambda route: route.fulfill(status=503, content_type="application/json", body=told)
        )
        page.keyboard.type("3 3/6\n4\n")
        expect(page.locator("#unkept")).to_contain_text(
            "2 cells are not kept yet. The disk is full. Make room"
        )
        assert page.locator("td[data-state=kept]").count() == 0
        asked: list[str] = []

        def stay(dialog: Dialog) -> None:
            asked.append(dialog.type)
            dialog.dismiss()

        page.once("dialog", stay)
        page.get_by_role("link", name="Walkthrough").click()
        expect(page.locator("#unkept")).to_be_visible()
        assert asked == ["beforeunload"]
        page.unroute("**/keep")
        page.get_by_role("button", name="Try now").click()
        all_kept(page)
        assert texts_on_disk(door.door.books["mine"])[0][:2] == ["3 3/6", "4"]


def test_an_answer_too_long_is_told_and_stays_in_its_cell(door: Served, page: Page) -> None:
    """Nothing of it is cut; the others go on being kept."""
    cell_of(page, 1, 1).fill("3" * 201)
    page.keyboard.press("Enter")
    page.keyboard.type("4")
    page.keyboard.press("Enter")
    expect(page.locator("#heard-K01-1")).to_contain_text("Not kept. This has 201 characters")
    all_kept(page)
    assert texts_on_disk(door.door.books["mine"])[0][:2] == ["", "4"]
    cell_of(page, 1, 1).fill("3")
    page.keyboard.press("Enter")
    all_kept(page)
    assert texts_on_disk(door.door.books["mine"])[0][0] == "3"
