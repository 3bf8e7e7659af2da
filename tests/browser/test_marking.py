"""The Marking page in a real browser: typed at speed without a lost key, kept cell by cell, never unseen."""

import os
import re
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Dialog, Locator, Page, expect

from onewhole.desk.classbook import Store, open_book, set_night, start_room
from onewhole.desk.marking_cells import Change, keep_cells
from onewhole.desk.marking_grid import cell_history, grid
from tests.house.plan import ROOT
from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, WIDE, broken_rules, chromium, runs_off, window
from tests.kit.doors import NOW, Served, served

pytestmark = NEEDS_CHROMIUM

SHEET = (ROOT / "examples" / "room12" / "sheet.txt").read_text(encoding="utf-8")
PUPILS, PROBLEMS = 30, 12
#: Keys a second; without a number the keys come as fast as the browser takes them. `ONEWHOLE_TYPIST=10`.
TYPIST = int(os.environ.get("ONEWHOLE_TYPIST", "0"))
#: Copied from a class's spreadsheet: two lines, one cell in quotation marks.
BLOCK = '3 3/6\t3 5/8\t"2 4/5"\r\n4 3/6\t\tsmudge\r\n'

SERVER = """
import sys
from datetime import UTC, datetime
from pathlib import Path
from onewhole.web.serving import serve
path, port = Path(sys.argv[1]), int(sys.argv[2])
serve(path, port=port, now=lambda: datetime.now(UTC), told=lambda at: print(at, flush=True))
"""


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    """One browser for all tests here."""
    with chromium() as started:
        yield started


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Served]:
    """A class of 30 with a night of twelve problems, nothing typed yet."""
    with served(tmp_path) as made:
        _class_with_night(made.door.books["mine"])
        yield made


@pytest.fixture
def page(door: Served, browser: Browser) -> Iterator[Page]:
    """A window with the grid open, the first cell ready."""
    with window(browser, door.address, forgives=("422",)) as opened:
        _open(opened, door.base)
        yield opened


def _class_with_night(book: Store) -> None:
    start_room(book, "Room 12", PUPILS, NOW)
    set_night(book, 1, SHEET, date(2026, 9, 1), NOW)


def _open(page: Page, base: str) -> None:
    page.goto(f"{base}/mine/1/night/1/marking")
    _cell(page, 1, 1).focus()


def _cell(page: Page, pupil: int, problem: int) -> Locator:
    return page.locator(f"td[data-code=K{pupil:02}][data-label='{problem}'] input")


def _all_kept(page: Page) -> None:
    """Wait until nothing waits any more."""
    expect(page.locator("td:is([data-state=waiting], [data-state=failed])")).to_have_count(0, timeout=30_000)


def _texts(book: Store) -> list[list[str]]:
    """The grid as it stands on the disk."""
    return [[cell.text for cell in row.cells] for row in grid(book, 1, 1).rows]


def _keep(book: Store, pupil: int, problem: int, text: str) -> None:
    """Write a cell past this window, as another one would."""
    keep_cells(book, 1, 1, [Change(f"K{pupil:02}", str(problem), text)], now=NOW, by="teacher")


def _answer(at: int) -> str:
    """An answer that differs from those around it: most are short, some mixed numbers, some no number."""
    short = str(at % 97)
    return {4: f"{at % 7}/8", 5: f"{at % 10} {at % 5}/6"}.get(at % 6, "smudge" if at % 60 == 7 else short)


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


@pytest.mark.slow
def test_a_class_is_typed_without_a_lost_key(door: Served, page: Page) -> None:
    """30 papers of 12 answers, digits, blanks, slashes and Enter, key after key: all 360 are on the disk."""
    answers = [_answer(at) for at in range(PUPILS * PROBLEMS)]
    keys = "".join(f"{answer}\n" for answer in answers)
    began = time.perf_counter()
    for at, key in enumerate(keys):
        if TYPIST:
            time.sleep(max(0, began + at / TYPIST - time.perf_counter()))
        page.keyboard.press("Enter" if key == "\n" else key)
    taken = time.perf_counter() - began
    print(f"{len(keys)} keys in {taken:.1f} s, {len(keys) / taken:.0f} a second")
    _all_kept(page)
    assert page.locator("td[data-state=kept]").count() == PUPILS * PROBLEMS
    assert [text for row in _texts(door.door.books["mine"]) for text in row] == answers
    assert {len(cell_history(door.door.books["mine"], 1, 1, "K17", str(at))) for at in range(1, 13)} == {1}


def test_every_key_shows_its_verdict_before_it_is_kept(door: Served, page: Page) -> None:
    """Sign, formula and words of each text on the way, beside the cell; nothing of it is on the disk."""
    _cell(page, 1, 7).focus()
    seen = []
    for key in "4 7/8":
        page.keyboard.press(key)
        expect(page.locator("#verdict .words")).not_to_have_text("")
        page.wait_for_timeout(100)
        seen.append(
            (page.locator("#verdict .sign").inner_text(), page.locator("#verdict .words").inner_text())
        )
    signs = [sign for sign, _ in seen]
    assert signs == ["✗", "✗", "?", "?", "✓"]
    assert seen[-1][1].startswith("four and seven eighths: right")
    assert page.locator("#verdict math").get_attribute("aria-label") == "four and seven eighths"
    assert _texts(door.door.books["mine"])[0][6] == ""
    page.keyboard.press("Enter")
    _all_kept(page)
    assert page.locator("#heard-K01-7").inner_text().endswith("Kept.")
    assert _texts(door.door.books["mine"])[0][6] == "4 7/8"
    page.keyboard.press("ArrowLeft")
    page.keyboard.press("5")
    expect(page.locator("#heard-K01-7")).to_contain_text("five: not right")
    expect(page.locator("#heard-K01-7")).to_contain_text("Not kept yet.")
    page.keyboard.press("Escape")
    expect(page.locator("#heard-K01-7")).to_contain_text("right; 39/8 is the same amount. Kept.")


def test_arrows_and_their_like_move_the_cell(page: Page) -> None:
    """From a cell at rest; inside a text the arrows go to its ends first; the edges hold."""
    steps = [
        ("ArrowLeft", 1, 1),
        ("ArrowRight", 1, 2),
        ("ArrowDown", 2, 2),
        ("End", 2, 12),
        ("Home", 2, 1),
        ("ArrowUp", 1, 1),
        ("ArrowUp", 1, 1),
        ("Control+End", 30, 12),
        ("Enter", 30, 12),
        ("Control+Home", 1, 1),
    ]
    for key, pupil, problem in steps:
        page.keyboard.press(key)
        expect(_cell(page, pupil, problem)).to_be_focused()
    page.keyboard.type("12")
    page.keyboard.press("ArrowLeft")
    page.keyboard.type("/")
    expect(_cell(page, 1, 1)).to_have_value("1/2")
    page.keyboard.press("ArrowRight")
    page.keyboard.press("ArrowRight")
    expect(_cell(page, 1, 2)).to_be_focused()
    page.get_by_label("down the problem").check()
    _cell(page, 30, 2).focus()
    page.keyboard.press("Enter")
    expect(_cell(page, 1, 3)).to_be_focused()
    assert page.locator("td input[tabindex='0']").count() == 1


def test_escape_and_undo_bring_back_what_was(door: Served, page: Page) -> None:
    """The cell as it was before it was left; then the last writings, one by one."""
    page.keyboard.type("3 3/6")
    page.keyboard.press("Escape")
    expect(_cell(page, 1, 1)).to_have_value("")
    for text in ("3", "4"):
        page.keyboard.type(text)
        page.keyboard.press("Enter")
    page.keyboard.press("Control+z")
    _all_kept(page)
    assert _texts(door.door.books["mine"])[0][:2] == ["3", ""]
    page.keyboard.press("Control+z")
    _all_kept(page)
    assert _texts(door.door.books["mine"])[0][:2] == ["", ""]
    assert [one.text for one in cell_history(door.door.books["mine"], 1, 1, "K01", "1")] == ["3", ""]


def test_the_predicted_answer_is_one_key_away(door: Served, page: Page) -> None:
    """A star brings what the likeliest pattern would write, the next star the next; plus the right answer."""
    _cell(page, 1, 7).focus()
    found = []
    for _ in range(2):
        page.keyboard.press("*")
        expect(page.locator("#verdict .words")).to_contain_text("would write it")
        page.wait_for_timeout(200)
        found.append(_cell(page, 1, 7).input_value())
    assert found == ["5 1/8", "5 7/8"]
    page.keyboard.press("Enter")
    page.keyboard.press("*")
    expect(page.locator("#verdict .words")).to_contain_text("A02")
    expect(_cell(page, 1, 8)).to_have_value("4 6/8")
    page.keyboard.press("Enter")
    page.keyboard.press("+")
    expect(_cell(page, 1, 9)).to_have_value("3 1/4")
    page.keyboard.press("Enter")
    _all_kept(page)
    assert _texts(door.door.books["mine"])[0][6:9] == ["5 7/8", "4 6/8", "3 1/4"]


def test_everyone_is_right_except(door: Served, page: Page) -> None:
    """By keys alone: the column is chosen from its cell, those who are not right are typed and stay empty."""
    _keep(door.door.books["mine"], 5, 3, "smudge")
    _cell(page, 9, 3).focus()
    page.keyboard.press("Shift+Enter")
    page.keyboard.type("4 99")
    page.keyboard.press("Enter")
    expect(page.locator("#said")).to_contain_text("“99”")
    page.keyboard.press("Control+a")
    page.keyboard.type("4 K12")
    page.keyboard.press("Enter")
    expect(page.locator("#said")).to_contain_text("27 filled in, 2 left to type.")
    expect(_cell(page, 4, 3)).to_be_focused()
    column = [row[2] for row in _texts(door.door.books["mine"])]
    assert [column[at] for at in (3, 4, 11)] == ["", "smudge", ""]
    assert column.count("2 4/5") == 27
    page.keyboard.press("Control+z")
    _all_kept(page)
    assert [row[2] for row in _texts(door.door.books["mine"])].count("2 4/5") == 0


def test_a_block_from_a_spreadsheet_is_laid_on_the_grid(door: Served, page: Page) -> None:
    """From the cell one is in; what falls outside is told; an empty cell of it changes nothing."""
    _keep(door.door.books["mine"], 30, 12, "5")
    page.reload()
    page.context.grant_permissions(["clipboard-read", "clipboard-write"])
    page.evaluate("text => navigator.clipboard.writeText(text)", BLOCK)
    _cell(page, 29, 11).focus()
    page.keyboard.press("Control+v")
    expect(page.locator("#said")).to_contain_text("3 answers pasted. 2 answers fall outside the grid")
    expect(page.locator("#said")).to_contain_text("“2 4/5”, “smudge”")
    _all_kept(page)
    assert [row[10:] for row in _texts(door.door.books["mine"])[28:]] == [["3 3/6", "3 5/8"], ["4 3/6", "5"]]


def test_what_cannot_be_read_stays_as_typed_and_is_read_as_the_teacher_says(door: Served, page: Page) -> None:
    """The cell keeps its text, the verdict is of the reading; written who and when."""
    page.keyboard.type("3 or 5")
    page.keyboard.press("ArrowDown")
    page.keyboard.press("ArrowUp")
    expect(page.locator("#verdict .words")).to_contain_text("cannot be read")
    page.locator("#more summary").click()
    expect(page.locator("#history")).to_contain_text("“3 or 5”")
    page.get_by_label("Read it as").fill("3 3/6")
    page.keyboard.press("Enter")
    expect(page.locator("td[data-code=K01][data-label='1'] > .sign")).to_have_text("✓")
    expect(page.locator("#heard-K01-1")).to_contain_text("Read as 3 3/6. Kept.")
    page.reload()
    expect(page.locator("td[data-code=K01][data-label='1'] > .sign")).to_have_text("✓")
    assert _texts(door.door.books["mine"])[0][0] == "3 or 5"


def test_an_answer_too_long_is_told_and_stays_in_its_cell(door: Served, page: Page) -> None:
    """Nothing of it is cut; the others go on being kept."""
    _cell(page, 1, 1).fill("3" * 201)
    page.keyboard.press("Enter")
    page.keyboard.type("4")
    page.keyboard.press("Enter")
    expect(page.locator("#heard-K01-1")).to_contain_text("Not kept. This has 201 characters")
    _all_kept(page)
    assert _texts(door.door.books["mine"])[0][:2] == ["", "4"]
    _cell(page, 1, 1).fill("3")
    page.keyboard.press("Enter")
    _all_kept(page)
    assert _texts(door.door.books["mine"])[0][0] == "3"


def test_two_windows_never_overwrite_unseen(door: Served, page: Page) -> None:
    """A cell that both changed shows both texts and keeps what one chooses; one only read is renewed."""
    book = door.door.books["mine"]
    _keep(book, 1, 1, "other")
    _keep(book, 2, 1, "seen")
    page.keyboard.type("mine")
    page.keyboard.press("Enter")
    expect(page.locator("#clashes li")).to_contain_text("here “mine”, in the other window “other”")
    expect(_cell(page, 1, 1)).to_have_value("mine")
    assert _texts(book)[0][0] == "other"
    expect(_cell(page, 2, 1)).to_have_value("seen")
    page.get_by_role("button", name="Keep “mine”").click()
    _all_kept(page)
    expect(page.locator("#clashes")).to_be_hidden()
    assert [one.text for one in cell_history(book, 1, 1, "K01", "1")] == ["other", "mine"]
    _keep(book, 3, 1, "third")
    _cell(page, 3, 1).fill("here")
    page.keyboard.press("Enter")
    page.get_by_role("button", name="Take “third”").click()
    expect(_cell(page, 3, 1)).to_have_value("third")
    expect(page.locator("td[data-code=K03][data-label='1']")).to_have_attribute("data-state", "kept")
    assert [one.text for one in cell_history(book, 1, 1, "K03", "1")] == ["third"]


@pytest.mark.slow
def test_what_shows_as_kept_outlives_a_killed_program(tmp_path: Path, browser: Browser) -> None:
    """Killed while one types: typing goes on, nothing false shows as kept; all is, once it runs again."""
    book = open_book(tmp_path / "room12.class")
    _class_with_night(book)
    with socket.create_server(("127.0.0.1", 0)) as free:
        port = free.getsockname()[1]
    forgives = ("ERR_CONNECTION", "Failed to load resource")
    with _serving(tmp_path, port) as (running, address):
        base = re.sub("/open.*", "", address)
        with window(browser, address, forgives=forgives) as page:
            _open(page, base)
            for at in range(30):
                page.keyboard.type(f"{at}\n")
                if at == 20:
                    running.send_signal(signal.SIGKILL)
                    running.wait()
            expect(page.locator("#unkept")).to_contain_text("not kept yet. The program does not answer.")
            shown = page.locator("td[data-state=kept] input").evaluate_all("all => all.map(one => one.value)")
            stands = [text for row in _texts(book) for text in row if text]
            assert set(shown) <= set(stands)
            assert len(shown) < 30
            typed = [_cell(page, at // 12 + 1, at % 12 + 1).input_value() for at in range(30)]
            assert typed == [str(at) for at in range(30)]
            with _serving(tmp_path, port) as (_, again):
                page.context.new_page().goto(again)
                page.bring_to_front()
                _all_kept(page)
                expect(page.locator("#unkept")).to_be_hidden()
                page.keyboard.type("last\n")
                _all_kept(page)
            stands = [text for row in _texts(book) for text in row if text]
            assert stands == [*typed, "last"]
    book.close()


@pytest.mark.parametrize("size", [WIDE, PHONE], ids=["wide", "phone"])
def test_no_rule_of_axe_is_broken(door: Served, browser: Browser, size: tuple[int, int]) -> None:
    """Empty, with every verdict, and with all that opens open; nothing runs off the page."""
    with window(browser, door.address, size) as page:
        _open(page, door.base)
        assert broken_rules(page) == []
        for text in ("3 3/6", "21/6", "9", "-", "smudge", "<script>alert(1)</script>"):
            page.keyboard.type(f"{text}\n")
        page.keyboard.press("?")
        page.locator("#more summary").click()
        _all_kept(page)
        page.wait_for_timeout(700)
        assert broken_rules(page) == []
        assert not runs_off(page)
        page.reload()
        assert _cell(page, 1, 6).input_value() == "<script>alert(1)</script>"
        assert broken_rules(page) == []


def test_the_next_page_waits_for_the_last_cell(door: Served, page: Page) -> None:
    """A link clicked while a cell is being typed is followed when that cell is on the disk."""
    page.keyboard.type("4 7/8")
    page.get_by_role("link", name="Walkthrough").click()
    page.wait_for_url("**/walkthrough")
    assert _texts(door.door.books["mine"])[0][0] == "4 7/8"


def test_a_full_disk_is_told_and_tried_again(door: Served, browser: Browser) -> None:
    """Nothing shows as kept meanwhile, the text stays, and leaving the page is asked about."""
    with window(browser, door.address, forgives=("503",)) as page:
        _open(page, door.base)
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
        _all_kept(page)
        assert _texts(door.door.books["mine"])[0][:2] == ["3 3/6", "4"]
