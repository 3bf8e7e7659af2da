"""The Marking page in a browser for the tests: a class with a night, its cells, what is on the disk."""

from datetime import date

from playwright.sync_api import Locator, Page, expect

from onewhole.desk.classes.class_records import Store, set_night, start_room
from onewhole.desk.marking.cells import Change, keep_cells
from onewhole.desk.marking.grid import grid
from tests.house.plan import ROOT
from tests.kit.doors import NOW

SHEET = (ROOT / "examples" / "room12" / "sheet.txt").read_text(encoding="utf-8")
#: Each row has the same cells: a class of twelve shows most of what a large one would.
PUPILS, MANY, PROBLEMS = 12, 30, 12


def class_with_night(book: Store, pupils: int = PUPILS) -> None:
    """Keep a class and a night of twelve problems."""
    start_room(book, "Room 12", pupils, NOW)
    set_night(book, 1, SHEET, date(2026, 9, 1), NOW)


def open_grid(page: Page, base: str) -> None:
    """Open the grid, the first cell ready."""
    page.goto(f"{base}/mine/1/night/1/marking")
    cell_of(page, 1, 1).focus()


def cell_of(page: Page, pupil: int, problem: int) -> Locator:
    """Return the field of a cell."""
    return page.locator(f"td[data-code=K{pupil:02}][data-label='{problem}'] input")


def all_kept(page: Page) -> None:
    """Wait until nothing waits any more."""
    expect(page.locator("td:is([data-state=waiting], [data-state=failed])")).to_have_count(0)


def texts_on_disk(book: Store) -> list[list[str]]:
    """The grid as it stands on the disk."""
    return [[cell.text for cell in row.cells] for row in grid(book, 1, 1).rows]


def write_past(book: Store, pupil: int, problem: int, text: str) -> None:
    """Write a cell past this window, as another one would."""
    keep_cells(book, 1, 1, [Change(f"K{pupil:02}", str(problem), text)], now=NOW, by="teacher")
