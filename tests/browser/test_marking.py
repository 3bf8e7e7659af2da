"""The Marking page in a real browser: typed at speed without a lost key, kept cell by cell, never unseen."""

import os
import time
from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from onewhole.desk.classes.class_records import set_night
from onewhole.desk.marking.grid import cell_history
from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, WIDE, broken_rules, runs_off, window
from tests.kit.doors import NOW, Served, served
from tests.kit.how_much import WHOLE, sample
from tests.kit.marking_window import (
    MANY,
    PROBLEMS,
    PUPILS,
    all_kept,
    cell_of,
    class_with_night,
    open_grid,
    texts_on_disk,
    write_past,
)
from tests.kit.waiting import until

pytestmark = NEEDS_CHROMIUM

#: Keys a second; without a number the keys come as fast as the browser takes them. `ONEWHOLE_TYPIST=10`.
TYPIST = int(os.environ.get("ONEWHOLE_TYPIST", "0"))
#: So many papers are typed; `make walk` types those of the whole class.
PAPERS = sample(3, 6, MANY)
#: Copied from a class's spreadsheet: two lines, one cell in quotation marks.
BLOCK = '3 3/6\t3 5/8\t"2 4/5"\r\n4 3/6\t\tsmudge\r\n'


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Served]:
    """A class with a night of twelve problems, nothing typed yet."""
    with served(tmp_path) as made:
        class_with_night(made.door.books["mine"])
        yield made


@pytest.fixture
def large(tmp_path: Path) -> Iterator[Served]:
    """A class of 30 with such a night."""
    with served(tmp_path) as made:
        class_with_night(made.door.books["mine"], MANY)
        yield made


@pytest.fixture
def page(door: Served, browser: Browser) -> Iterator[Page]:
    """A window with the grid open, the first cell ready."""
    with window(browser, door.address, forgives=("422",), blank=True) as opened:
        open_grid(opened, door.base)
        yield opened


def open_with_standing_clock(page: Page, door: Served) -> None:
    """Open the grid again; nothing there goes by before a test says how long."""
    page.clock.install(time=NOW)
    open_grid(page, door.base)
    page.clock.pause_at(NOW + timedelta(hours=1))


def _answer(at: int) -> str:
    """An answer that differs from those around it: most are short, some mixed numbers, some no number."""
    short = str(at % 97)
    return {4: f"{at % 7}/8", 5: f"{at % 10} {at % 5}/6"}.get(at % 6, "smudge" if at % 60 == 7 else short)


@pytest.mark.slow
def test_a_class_is_typed_without_a_lost_key(large: Served, browser: Browser) -> None:
    """Papers of 12 answers, digits, blanks, slashes and Enter, key after key: all on the disk, each once."""
    answers = [_answer(at) for at in range(PAPERS * PROBLEMS)]
    keys = "".join(f"{answer}\n" for answer in answers)
    book = large.door.books["mine"]
    with window(browser, large.address, forgives=("422",), blank=True) as page:
        open_grid(page, large.base)
        began = time.perf_counter()
        for at, key in enumerate(keys):
            if TYPIST:
                time.sleep(max(0, began + at / TYPIST - time.perf_counter()))
            page.keyboard.press("Enter" if key == "\n" else key)
        taken = time.perf_counter() - began
        print(f"{len(keys)} keys in {taken:.1f} s, {len(keys) / taken:.0f} a second")
        all_kept(page)
        assert page.locator("td[data-state=kept]").count() == PAPERS * PROBLEMS
    typed = [text for row in texts_on_disk(book) for text in row]
    assert typed == answers + [""] * ((MANY - PAPERS) * PROBLEMS)
    assert {len(cell_history(book, 1, 1, f"K{PAPERS:02}", str(at))) for at in range(1, 13)} == {1}


def test_every_key_shows_its_verdict_before_it_is_kept(door: Served, page: Page) -> None:
    """Sign, formula and words of each text on the way, beside the cell; nothing of it is on the disk.

    The clock stands: a text that rests for two seconds is kept by itself.
    """
    open_with_standing_clock(page, door)
    cell_of(page, 1, 7).focus()
    seen = []
    for key in "4 7/8":
        page.keyboard.press(key)
        expect(page.locator("#verdict .words")).not_to_have_text("")
        seen.append(
            (page.locator("#verdict .sign").inner_text(), page.locator("#verdict .words").inner_text())
        )
    signs = [sign for sign, _ in seen]
    assert signs == ["✗", "✗", "?", "?", "✓"]
    assert seen[-1][1].startswith("four and seven eighths: right")
    assert page.locator("#verdict math mfrac").count() == 1
    assert texts_on_disk(door.door.books["mine"])[0][6] == ""
    page.keyboard.press("Enter")
    page.clock.run_for(100)
    all_kept(page)
    assert page.locator("#heard-K01-7").inner_text().endswith("Kept.")
    assert texts_on_disk(door.door.books["mine"])[0][6] == "4 7/8"
    page.keyboard.press("ArrowLeft")
    page.keyboard.press("5")
    expect(page.locator("#heard-K01-7")).to_contain_text("five: not right")
    expect(page.locator("#heard-K01-7")).to_contain_text("Not kept yet.")
    page.keyboard.press("Escape")
    expect(page.locator("#heard-K01-7")).to_contain_text("right; 39/8 is the same amount. Kept.")


#: Rows and columns of the grid that are in sight whole: not under the head, the foot or the line below.
IN_SIGHT = """() => {
  const [sheet, head, foot, bar] = [".sheet", "#grid thead", "#grid tfoot", "#verdict"].map(
    (one) => document.querySelector(one).getBoundingClientRect());
  const places = (which) => [...document.querySelectorAll(which)].map((one) => one.getBoundingClientRect());
  const low = Math.min(foot.top, bar.top, sheet.bottom) + 1;
  const rows = places("#grid tbody tr").filter((one) => one.top >= head.bottom - 1 && one.bottom <= low);
  const columns = places("#grid thead th[data-label]");
  return [rows.length, columns.filter((one) => one.left >= sheet.left && one.right <= sheet.right).length];
}"""


#: What of the grid shows: rows, fields, answers that leave their cell, signs, wrong cells that look as any.
ON_PAPER = """() => {
  const cells = [...document.querySelectorAll("#grid tbody td")];
  const seen = (one) => one.getClientRects().length > 0;
  const cut = (td) => {
    const [out, shown] = [td, td.querySelector(".shown")].map((one) => one.getBoundingClientRect());
    const wide = shown.left < out.left || shown.right > out.right;
    return shown.width > 0 && (wide || shown.top < out.top || shown.bottom > out.bottom);
  };
  const signs = [...document.querySelectorAll("#grid tbody td > .sign")].filter(seen);
  const wrong = cells.filter((td) => td.dataset.verdict === "wrong");
  return {
    rows: [...document.querySelectorAll("#grid tbody tr")].filter(seen).length,
    typed: cells.filter((td) => seen(td.querySelector("input"))).length,
    cut: cells.filter(cut).length,
    signs: [...new Set(signs.map((one) => one.textContent).filter(Boolean))],
    plain: wrong.filter((td) => getComputedStyle(td).backgroundColor === "rgba(0, 0, 0, 0)").length,
  };
}"""


@pytest.mark.more("browser/test_marking_kept.py")
def test_a_large_class_is_in_sight_and_counted_while_it_is_typed(large: Served, browser: Browser) -> None:
    """Twenty problems, twenty pupils on 1280 by 800; right of tried; no dot where kept; words leave."""
    typed = "\n".join(f"{at}. {at + 20} - {at}" for at in range(1, 21))
    set_night(large.door.books["mine"], 1, typed, date(2026, 9, 2), NOW)
    with window(browser, large.address, blank=True) as page:
        page.clock.install(time=NOW)
        page.goto(f"{large.base}/mine/1/night/2/marking")
        page.clock.pause_at(NOW + timedelta(hours=1))
        cell_of(page, 1, 1).focus()
        page.locator(".sheet").evaluate("sheet => sheet.scrollIntoView({ block: 'start' })")
        rows, columns = page.evaluate(IN_SIGHT)
        assert rows >= 20
        assert columns == 20
        page.keyboard.type("20\n21\n")
        page.clock.run_for(100)
        all_kept(page)
        expect(page.locator("#grid tbody .total").first).to_have_text("1 of 2")
        expect(page.locator("#grid tfoot td").first).to_have_text("1 of 1")
        edge = "one => getComputedStyle(one.querySelector('.dot')).borderTopColor"
        assert page.locator("td[data-code=K01][data-label='1']").evaluate(edge) == "rgba(0, 0, 0, 0)"
        page.locator("#column-label").select_option("3")
        page.get_by_role("button", name="Fill in").click()
        expect(page.locator("#grid tfoot td").nth(2)).to_have_text(f"{MANY} of {MANY}")
        until(lambda: _said(page) == "30 filled in, 0 left to type.")
        assert page.locator("#said").is_visible()
        page.clock.run_for(8000)
        expect(page.locator("#said")).to_be_hidden()
        page.clock.resume()
        page.reload()
        expect(page.locator("#grid tbody .total").first).to_have_text("2 of 3")
        assert broken_rules(page, contrast=WHOLE) == []
        page.get_by_label("Close together").uncheck()
        page.wait_for_load_state("networkidle")
        page.reload()
        expect(page.get_by_label("Close together")).not_to_be_checked()
        page.emulate_media(media="print")
        for width in (1047, 718):  # A4 with margins of a centimeter, lying and standing
            page.set_viewport_size({"width": width, "height": 700})
            assert page.evaluate(ON_PAPER) == {"rows": MANY, "typed": 0, "cut": 0, "signs": ["✗"], "plain": 0}


def _said(page: Page) -> str:
    """Return what is said a frame later, where the clock stands."""
    page.clock.run_for(20)
    return page.locator("#said").text_content() or ""


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
        ("Control+End", PUPILS, 12),
        ("Enter", PUPILS, 12),
        ("Control+Home", 1, 1),
    ]
    for key, pupil, problem in steps:
        page.keyboard.press(key)
        expect(cell_of(page, pupil, problem)).to_be_focused()
    page.keyboard.type("12")
    page.keyboard.press("ArrowLeft")
    page.keyboard.type("/")
    expect(cell_of(page, 1, 1)).to_have_value("1/2")
    page.keyboard.press("ArrowRight")
    page.keyboard.press("ArrowRight")
    expect(cell_of(page, 1, 2)).to_be_focused()
    page.get_by_label("down the problem").check()
    cell_of(page, PUPILS, 2).focus()
    page.keyboard.press("Enter")
    expect(cell_of(page, 1, 3)).to_be_focused()
    assert page.locator("td input[tabindex='0']").count() == 1


def test_escape_and_undo_bring_back_what_was(door: Served, page: Page) -> None:
    """The cell as it was before it was left; then the last writings, one by one."""
    open_with_standing_clock(page, door)
    page.keyboard.type("3 3/6")
    page.keyboard.press("Escape")
    expect(cell_of(page, 1, 1)).to_have_value("")
    for text in ("3", "4"):
        page.keyboard.type(text)
        page.keyboard.press("Enter")
    page.keyboard.press("Control+z")
    page.clock.run_for(100)
    all_kept(page)
    assert texts_on_disk(door.door.books["mine"])[0][:2] == ["3", ""]
    page.keyboard.press("Control+z")
    page.clock.run_for(100)
    all_kept(page)
    assert texts_on_disk(door.door.books["mine"])[0][:2] == ["", ""]
    assert [one.text for one in cell_history(door.door.books["mine"], 1, 1, "K01", "1")] == ["3", ""]


def test_the_predicted_answer_is_one_key_away(door: Served, page: Page) -> None:
    """A star brings what the likeliest pattern would write, the next star the next; plus the right answer."""
    cell_of(page, 1, 7).focus()
    for foretold in ("5 1/8", "5 7/8"):
        page.keyboard.press("*")
        expect(cell_of(page, 1, 7)).to_have_value(foretold)
        expect(page.locator("#verdict .words")).to_contain_text("would write it")
    page.keyboard.press("Enter")
    page.keyboard.press("*")
    expect(page.locator("#verdict .words")).to_contain_text("A02")
    expect(cell_of(page, 1, 8)).to_have_value("4 6/8")
    page.keyboard.press("Enter")
    page.keyboard.press("+")
    expect(cell_of(page, 1, 9)).to_have_value("3 1/4")
    page.keyboard.press("Enter")
    all_kept(page)
    assert texts_on_disk(door.door.books["mine"])[0][6:9] == ["5 7/8", "4 6/8", "3 1/4"]


def test_everyone_is_right_except(door: Served, page: Page) -> None:
    """By keys alone: the column is chosen from its cell, those who are not right are typed and stay empty."""
    write_past(door.door.books["mine"], 5, 3, "smudge")
    cell_of(page, 9, 3).focus()
    page.keyboard.press("Shift+Enter")
    page.keyboard.type("4 99")
    page.keyboard.press("Enter")
    expect(page.locator("#said")).to_contain_text("“99”")
    page.keyboard.press("Control+a")
    page.keyboard.type("4 K12")
    page.keyboard.press("Enter")
    expect(page.locator("#said")).to_contain_text(f"{PUPILS - 3} filled in, 2 left to type.")
    expect(cell_of(page, 4, 3)).to_be_focused()
    column = [row[2] for row in texts_on_disk(door.door.books["mine"])]
    assert [column[at] for at in (3, 4, 11)] == ["", "smudge", ""]
    assert column.count("2 4/5") == PUPILS - 3
    page.keyboard.press("Control+z")
    all_kept(page)
    assert [row[2] for row in texts_on_disk(door.door.books["mine"])].count("2 4/5") == 0


def test_a_block_from_a_spreadsheet_is_looked_at_kept_and_taken_back(door: Served, page: Page) -> None:
    """By keys alone: what it asks is said, what stands there already too, and all of it goes back."""
    book = door.door.books["mine"]
    write_past(book, PUPILS, 12, "5")
    page.reload()
    page.context.grant_permissions(["clipboard-read", "clipboard-write"])
    page.evaluate("text => navigator.clipboard.writeText(text)", BLOCK)
    cell_of(page, PUPILS - 1, 10).focus()
    page.keyboard.type("77")
    page.keyboard.press("Control+v")
    expect(page.get_by_role("heading", name="Look before it is kept")).to_be_visible()
    assert texts_on_disk(book)[PUPILS - 2][9:] == ["77", "", ""]
    page.get_by_label(f"from the cell I was in: K{PUPILS - 1}, problem 10").press("Space")
    page.keyboard.press("Enter")
    expect(page.get_by_text("2 cells hold other answers already")).to_be_visible()
    page.get_by_label("the pasted ones take their place").press("Space")
    with page.expect_navigation():
        page.keyboard.press("Enter")
    expect(page.get_by_text("2 pupils × 3 problems; 1 cell that cannot be read.")).to_be_visible()
    assert not runs_off(page)
    assert broken_rules(page) == []
    expect(page.get_by_role("button", name="Keep 5 answers")).to_be_focused()
    page.keyboard.press("Enter")
    expect(page.get_by_text("5 answers pasted")).to_be_visible()
    pasted = [["3 3/6", "3 5/8", "2 4/5"], ["4 3/6", "", "smudge"]]
    assert [row[9:] for row in texts_on_disk(book)[-2:]] == pasted
    page.get_by_role("button", name="Take back this paste").press("Enter")
    expect(page.get_by_text("5 cells are as before the paste.")).to_be_visible()
    assert [row[9:] for row in texts_on_disk(book)[-2:]] == [["77", "", ""], ["", "", "5"]]


def test_a_block_of_cells_is_picked_and_cleared(door: Served, page: Page) -> None:
    """With Shift and the arrows, or a click; all of it comes back at once."""
    book = door.door.books["mine"]
    write_past(book, PUPILS - 1, 10, "77")
    write_past(book, PUPILS, 12, "5")
    page.reload()
    expect(page.locator("#verdict .whose")).to_contain_text("K01")
    cell_of(page, PUPILS - 1, 10).focus()
    for key in ("Shift+ArrowRight", "Shift+End", "Shift+ArrowDown"):
        page.keyboard.press(key)
    expect(page.locator("#said")).to_contain_text("6 cells are picked")
    assert broken_rules(page) == []
    page.keyboard.press("Delete")
    all_kept(page)
    assert [row[9:] for row in texts_on_disk(book)[-2:]] == [[""] * 3, [""] * 3]
    page.keyboard.press("Control+z")
    all_kept(page)
    assert [row[9:] for row in texts_on_disk(book)[-2:]] == [["77", "", ""], ["", "", "5"]]
    cell_of(page, PUPILS, 12).click(modifiers=["Shift"])
    expect(page.locator("#said")).to_contain_text("6 cells are picked")
    page.keyboard.press("Escape")
    expect(page.locator("td[aria-selected]")).to_have_count(0)


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
    assert texts_on_disk(door.door.books["mine"])[0][0] == "3 or 5"


@pytest.mark.parametrize("size", sample([WIDE], [WIDE, PHONE]), ids=sample(["wide"], ["wide", "phone"]))
def test_no_rule_of_axe_is_broken(browser: Browser, tmp_path: Path, size: tuple[int, int]) -> None:
    """Empty, with every verdict, and with all that opens open; nothing runs off the page.

    Every row has the same cells: four pupils show what thirty would.
    """
    with served(tmp_path) as door, window(browser, door.address, size, blank=True) as page:
        class_with_night(door.door.books["mine"], 4)
        page.clock.install(time=NOW)
        open_grid(page, door.base)
        assert broken_rules(page) == []
        page.clock.pause_at(NOW + timedelta(hours=1))
        for text in ("3 3/6", "21/6", "9", "-", "smudge", "<script>alert(1)</script>"):
            page.keyboard.type(f"{text}\n")
        page.keyboard.press("?")
        page.locator("#more summary").click()
        all_kept(page)
        with page.expect_response(lambda answer: "/written" in answer.url):
            page.clock.run_for(1000)
        page.clock.resume()
        assert broken_rules(page) == []
        assert not runs_off(page)
        page.reload()
        assert cell_of(page, 1, 6).input_value() == "<script>alert(1)</script>"
        assert broken_rules(page) == []
