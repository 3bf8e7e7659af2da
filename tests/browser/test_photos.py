"""Papers from photos in a browser: dropped on Marking, looked at by keys alone, checked to the last one."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from msgspec.structs import replace
from playwright.sync_api import Browser, FilePayload, Page, expect

from onewhole.desk.classes.class_records import set_night, start_room
from onewhole.desk.marking.grid import grid
from onewhole.desk.paper.seen_papers import SeenPapers
from onewhole.findings.in_pictures import NoPage
from onewhole.marking.paper.ink_reading import InkReading
from onewhole.notations.text import text
from onewhole.problems.answer import answer
from onewhole.statements.reading import read_statement
from tests.kit.answers import TWELVE
from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, WIDE, broken_rules, runs_off, until, window
from tests.kit.crops import crop_of
from tests.kit.doors import NOW, Clock, Served, served
from tests.kit.kept import DAY
from tests.kit.photos_sent import JPEG
from tests.kit.seen_papers import TYPED, Sees, seen, sure, unsure

pytestmark = NEEDS_CHROMIUM

NIGHT = "/mine/1/night/1"
PUPILS = 6
RIGHT = [text(answer(read_statement(one))) for one in TWELVE]
#: Drops a file with each of these names on the page, as a teacher drops what was marked in a folder.
DROP = """(names) => {
  const held = new DataTransfer();
  const begins = new Uint8Array([255, 216, 255, 224]);
  for (const name of names) held.items.add(new File([begins], name, { type: "image/jpeg" }));
  document.body.dispatchEvent(new DragEvent("drop", { dataTransfer: held, bubbles: true, cancelable: true }));
}"""


def _ink(pupil: int, label: int) -> InkReading:
    """Every fifth answer is not clear: the right one is its first, second or third reading, or none."""
    right = RIGHT[label - 1]
    if (pupil + label) % 5:
        return sure(right)
    others = ["1 1/9", "2 1/9", "4 1/9"]
    others.insert((pupil + label) // 5 % 4, right)
    return unsure(*others[:3])


def _papers() -> SeenPapers:
    codes = [f"K{pupil:02}" for pupil in range(1, PUPILS + 1)]
    rows = {
        code: {str(label): _ink(pupil, label) for label in range(1, len(TWELVE) + 1)}
        for pupil, code in enumerate(codes, 1)
    }
    found = seen(rows, NoPage("blurred.jpg"))
    cells = (replace(one, crop=crop_of(RIGHT[int(one.label) - 1])) for one in found.cells)
    return replace(found, cells=tuple(cells))


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Served]:
    """Room 12 with six pupils, a night of twelve problems, and papers that wait to be photographed."""
    with served(tmp_path, Clock(), sees=Sees(_papers())) as made:
        book = made.door.books["mine"]
        start_room(book, "Room 12", PUPILS, NOW)
        set_night(book, 1, TYPED, DAY, NOW)
        yield made


def _cell(code: str, label: str) -> str:
    return f'#cell[data-code="{code}"][data-label="{label}"]'


def _shown(page: Page) -> tuple[str, str]:
    found = page.locator("#cell")
    return found.get_attribute("data-code") or "", found.get_attribute("data-label") or ""


def _press_until_looked(page: Page) -> int:
    """Look at each answer in turn by keys alone: 1, 2 or 3 where the right one is there, else it is typed."""
    keys = 0
    while page.locator("#cell").count():
        here = page.locator("#cell")
        code, label = _shown(page)
        right = RIGHT[int(label) - 1]
        choices = [one.get_attribute("value") for one in here.locator(".choices button").all()]
        pressed = [str(choices.index(right) + 1)] if right in choices else ["Enter", *right, "Enter"]
        for key in pressed:
            page.keyboard.press("Space" if key == " " else key)
        keys += len(pressed)
        expect(page.locator(_cell(code, label))).to_have_count(0)
        page.wait_for_load_state("load")
    return keys


def test_from_dropped_photos_to_all_answers_by_the_keyboard(browser: Browser, door: Served) -> None:
    """Nothing but keys after the drop; every answer is the one on the paper; no rule of axe is broken."""
    with window(browser, door.address) as page:
        page.goto(f"{door.base}{NIGHT}/marking")
        page.evaluate(DROP, ["one.jpg", "two.jpg", "blurred.jpg"])
        page.get_by_role("link", name="Look at it").click()
        expect(page.get_by_text("blurred.jpg")).to_be_visible()
        assert broken_rules(page) == []
        waits = int(page.locator("#count").inner_text().split()[0])
        keys = _press_until_looked(page)
        assert waits > 10
        assert keys <= 4 * waits
        expect(page.get_by_role("heading", name="A few that were read without you")).to_be_visible()
        assert broken_rules(page) == []
        page.keyboard.press("1")
        expect(page.locator("#spot input[type=checkbox]").first).to_be_checked()
        page.keyboard.press("1")
        page.get_by_role("button", name="All others are right").focus()
        page.keyboard.press("Enter")
        expect(page.get_by_role("heading", name="All is looked at")).to_be_visible()
    rows = grid(door.door.books["mine"], 1, 1).rows
    assert [[cell.text for cell in row.cells] for row in rows] == [RIGHT] * PUPILS


def test_the_last_one_is_taken_back_and_marking_shows_the_picture(browser: Browser, door: Served) -> None:
    """Backspace; then the grid has the picture of the cell that one is in; on a phone nothing runs off."""
    with window(browser, door.address, PHONE) as page:
        page.goto(f"{door.base}{NIGHT}/marking/photos")
        page.set_input_files("#pictures", FilePayload(name="a.jpg", mimeType="image/jpeg", buffer=JPEG))
        page.get_by_role("button", name="Read them").click()
        page.get_by_role("link", name="Look at it").click()
        page.wait_for_load_state("load")
        first = _cell(*_shown(page))
        page.keyboard.press("1")
        expect(page.locator(first)).to_have_count(0)
        page.keyboard.press("Backspace")
        expect(page.locator(first)).to_have_count(1)
        assert not runs_off(page)
        page.set_viewport_size({"width": WIDE[0], "height": WIDE[1]})
        page.goto(f"{door.base}{NIGHT}/marking")
        page.locator("td[data-paper=taken] input").first.focus()
        expect(page.locator("#crop")).to_be_visible()
        until(page, "document.querySelector('#crop').naturalWidth === 240")
