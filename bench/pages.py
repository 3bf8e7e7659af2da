"""A night's pages: cold from the terminal, and warm in a process that has printed before.

Run: `python bench/pages.py`. Cold is a new process from the Enter key to its end, beside `python -c pass`.
Warm is one process that makes the data of the pages again and presses them under a new title each time, since
the press remembers a page that it has set before; then each page alone, in the same way.
Memory is the most a process holds at once. There is no goal yet: the table says what a night costs.
"""

import datetime as dt
import subprocess
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from statistics import median
from time import perf_counter

from measuring import process_megabytes

from onewhole.desk.marking.mark import mark_files
from onewhole.desk.page.print_pages import sheet_pages
from onewhole.desk.page.sheets import sheet_in
from onewhole.desk.tomorrow.plan import plan_pages
from onewhole.presses.pdf import press
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.printed import Printed

COMMAND = str(Path(sys.executable).with_name("onewhole"))
ROOM = Path(__file__).parents[1] / "examples" / "room12"
SHEET, ANSWERS = ROOM / "sheet.txt", ROOM / "answers.csv"
WHEN = dt.datetime(2025, 3, 6, 7, 30, tzinfo=dt.UTC)
ROUNDS = 7

Pages = tuple[tuple[str, Printed], ...]


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        cold(folder)
    acts: dict[str, Callable[[], Pages]] = {
        "night's pages": lambda: sheet_pages(WorkedSheet(sheet_in(SHEET))),
        "plan's pages": lambda: tuple(
            (page.kind, page) for _, page in plan_pages(mark_files(SHEET, ANSWERS))
        ),
    }
    warm(acts)
    each([page for act in acts.values() for page in act()])


def cold(folder: str) -> None:
    """Print what a new process takes, beside an empty one."""
    commands = {
        "python -c pass": [sys.executable, "-c", "pass"],
        "onewhole print": [COMMAND, "print", str(SHEET), "--to", folder],
        "onewhole plan": [COMMAND, "plan", str(SHEET), str(ANSWERS), "--to", folder],
        "onewhole night": [COMMAND, "night", str(ROOM), "--to", folder],
    }
    usual = None
    print(f"{'cold: a new process':22} {'median ms':>9} {'least ms':>9} {'times':>6} {'MB':>5}")
    for name, command in commands.items():
        taken = sorted(
            seconds(lambda ran=command: subprocess.run(ran, check=True, capture_output=True))
            for _ in range(ROUNDS)
        )
        usual = usual or median(taken)
        times = median(taken) / usual
        much = process_megabytes(command)
        print(f"{name:22} {1000 * median(taken):9.1f} {1000 * taken[0]:9.1f} {times:6.1f} {much:5.0f}")


def warm(acts: dict[str, Callable[[], Pages]]) -> None:
    """Print what the same costs again in one process: the data of the pages, and pressing them."""
    heads = (("first ms", 9), ("data ms", 9), ("press ms", 9), ("files", 6), ("KB", 6))
    print(f"\n{'warm: the same process':22}", *(f"{head:>{width}}" for head, width in heads))
    for name, act in acts.items():
        first = seconds(lambda made=act: pressed(made()))
        data = median(seconds(act) for _ in range(ROUNDS))
        pages = act()
        again = [titled(pages, at) for at in range(ROUNDS)]
        pressing = median(seconds(lambda made=made: pressed(made)) for made in again)
        size = sum(map(len, pressed(pages))) / 1024
        times = f"{1000 * first:9.1f} {1000 * data:9.1f} {1000 * pressing:9.1f}"
        print(f"{name:22} {times} {len(pages):6} {size:6.0f}")


def each(pages: list[tuple[str, Printed]]) -> None:
    """Print what each page takes to press when it is warm."""
    print(f"\n{'pressing one page':22} {'median ms':>9} {'KB':>6}")
    for name, page in pages:
        again = titled(((name, page),) * ROUNDS, ROUNDS)
        taken = median(seconds(lambda made=made: one(made)) for _, made in again)
        print(f"{name:22} {1000 * taken:9.1f} {len(one(page)) / 1024:6.0f}")


def titled(pages: Pages, number: int) -> Pages:
    """Return pages that were never pressed under these titles."""
    return tuple(
        (name, Printed(page.kind, page.data | {"title": f"{page.data['title']} {number * 1000 + at}"}))
        for at, (name, page) in enumerate(pages)
    )


def pressed(pages: Pages) -> list[bytes]:
    return [one(page) for _, page in pages]


def one(page: Printed) -> bytes:
    return press(page.source, data=page.content, when=WHEN)


def seconds(act: Callable[[], object]) -> float:
    began = perf_counter()
    act()
    return perf_counter() - began


if __name__ == "__main__":
    main()
