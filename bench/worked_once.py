"""A page that is worked once, beside pages that are each handed a sheet that nobody has worked yet.

Run: `python bench/worked_once.py`. Both roads run in turn in one process and make the same pages: only what
is worked twice is saved. "data" is all but setting the type; "whole" sets it too, as a teacher waits for it.
A ratio of 2 says that working once takes half the time. There is no goal: the table says what it gains.
"""

import datetime as dt
from collections.abc import Callable
from pathlib import Path
from statistics import median
from time import perf_counter

from onewhole.desk.page.live_page import laid
from onewhole.desk.page.print_pages import sheet_pages
from onewhole.presses.pdf import press
from onewhole.sheets.audit import audit
from onewhole.sheets.document import Sheet
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.audit_lines import audit_lines
from onewhole.writers.family_page import family_page
from onewhole.writers.key_page import key_page
from onewhole.writers.printed import Printed
from onewhole.writers.pupil_page import pupil_page
from onewhole.writers.workings_page import workings_page

TYPED = (Path(__file__).parents[1] / "examples" / "room12" / "sheet.txt").read_text(encoding="utf-8")
WHEN = dt.datetime(2025, 3, 6, 7, 30, tzinfo=dt.UTC)
ROUNDS = 15

Pages = list[Printed]


def main() -> None:
    print(f"{'':34} {'once ms':>8} {'apart ms':>9} {'ratio':>6}")
    row("print, data of the pages", print_once, print_apart)
    row("print, whole", lambda: pressed(print_once()), lambda: pressed(print_apart()))
    row("night without answers, data", night_once, night_apart)
    row("browser's page, data", browser_once, browser_apart)
    began = perf_counter()
    laid(TYPED, WHEN)
    print(f"\nthe browser's page, whole, with its type set: {1000 * (perf_counter() - began):.1f} ms")


def print_once() -> Pages:
    return [page for _, page in sheet_pages(WorkedSheet(sheet()))]


def print_apart() -> Pages:
    return [
        pupil_page(WorkedSheet(sheet())),
        key_page(WorkedSheet(sheet())),
        workings_page(WorkedSheet(sheet())),
        family_page(WorkedSheet(sheet())),
    ]


def night_once() -> object:
    worked = WorkedSheet(sheet())
    return sheet_pages(worked), audit_lines(audit(worked))


def night_apart() -> object:
    return print_apart(), audit_lines(audit(WorkedSheet(sheet())))


def browser_once() -> object:
    worked = WorkedSheet(sheet())
    return pupil_page(worked), audit_lines(audit(worked)), dict(worked.rooms)


def browser_apart() -> object:
    found = audit_lines(audit(WorkedSheet(sheet())))
    return pupil_page(WorkedSheet(sheet())), found, dict(WorkedSheet(sheet()).rooms)


def sheet() -> Sheet:
    return read_sheet(TYPED)


def pressed(pages: Pages) -> list[bytes]:
    return [press(page.source, data=page.content, when=WHEN) for page in pages]


def row(name: str, once: Callable[[], object], apart: Callable[[], object]) -> None:
    """Print both roads, taken in turn, and how many times longer the second takes."""
    taken: tuple[list[float], list[float]] = ([], [])
    for _ in range(ROUNDS):
        for road, times in zip((once, apart), taken, strict=True):
            began = perf_counter()
            road()
            times.append(perf_counter() - began)
    first, second = map(median, taken)
    print(f"{name:34} {1000 * first:8.1f} {1000 * second:9.1f} {second / first:6.2f}")


if __name__ == "__main__":
    main()
