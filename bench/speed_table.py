"""What a teacher waits for, row by row, beside an empty Python and, where given, an earlier release.

Run: `python bench/speed_table.py [SOURCES]`. SOURCES is the `src` folder of an earlier release
(`git worktree add ../before COMMIT` makes one). All take turns in one run, each in a process of its own: a
row tells the median of the milliseconds, how many times `python -c pass` that is, the processor's
milliseconds, and how many times less of those than before. Goals are those of two quiet cores.
"""

import os
import subprocess
import sys
import tempfile
from collections.abc import Mapping
from pathlib import Path
from resource import RUSAGE_CHILDREN, getrusage
from statistics import median
from time import perf_counter

COMMAND = str(Path(sys.executable).with_name("onewhole"))
ROOM = Path(__file__).parents[1] / "examples" / "room12"
SHEET, ANSWERS = str(ROOM / "sheet.txt"), str(ROOM / "answers.csv")
ROUNDS = 7
#: Milliseconds on two quiet cores.
GOALS = {
    "mark": "400",
    "print": "350",
    "plan": "1200",
    "night": "1600",
    "film, unchanged": "700",
    "workings under a new title": "100",
    "one checked working": "0.1",
}
#: A page set anew under another title, in a process that has set it before: the workings.
NEW_TITLE = """
import datetime as dt, sys
from pathlib import Path
from time import perf_counter
from onewhole.desk.page.print_pages import sheet_pages
from onewhole.desk.page.sheets import sheet_in
from onewhole.presses.pdf import press
from onewhole.sheets.worked import WorkedSheet
pages = dict(sheet_pages(WorkedSheet(sheet_in(Path(sys.argv[1])))))
page, when = pages["workings"], dt.datetime(2025, 3, 6, tzinfo=dt.UTC)
press(page.source, data=page.content, when=when)
taken = []
for at in range(7):
    content = page.content.replace(b'"title": "', b'"title": "%d ' % at)
    began = perf_counter()
    press(page.source, data=content, when=when)
    taken.append(perf_counter() - began)
print(sorted(taken)[3])
"""
#: One problem worked with all its checks, again and again: seconds each.
WORKING = """
from time import perf_counter
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.table import strategy_named
from onewhole.working.work import work
typed = [f"{a} {b}/8 - 3 {c}/8" for a in range(5, 9) for b in range(1, 4) for c in range(4, 8)]
asked = list(map(read_statement, typed))
way, taken = strategy_named("regroup first"), []
for _ in range(9):
    began = perf_counter()
    for one in asked:
        work(one, way)
    taken.append((perf_counter() - began) / len(asked))
print(sorted(taken)[4])
"""


def main() -> None:
    before = sys.argv[1] if len(sys.argv) > 1 else None
    with tempfile.TemporaryDirectory() as folder:
        trees = [None] if before is None else [None, before]
        commands = {tree: rows(f"{folder}/{at}") for at, tree in enumerate(trees)}
        for tree, named in commands.items():
            ran(named["film, unchanged"], tree)
        taken: dict[tuple[str, str | None], list[tuple[float, float]]] = {}
        for _ in range(ROUNDS):
            for name in commands[None]:
                for tree in trees:
                    taken.setdefault((name, tree), []).append(ran(commands[tree][name], tree))
    usual = median(one for one, _ in taken["python -c pass", None])
    print(f"{'':34} {'ms':>8} {'goal':>6} {'times':>7} {'cpu ms':>8} {'before':>8}")
    for name in commands[None]:
        wall, cpu = (median(each) for each in zip(*taken[name, None], strict=True))
        was = median(cpu for _, cpu in taken[name, before]) if before else None
        less = f"{was / cpu:7.2f}x" if was is not None and cpu else ""
        goal = GOALS.get(name, "")
        print(f"{name:34} {1000 * wall:8.2f} {goal:>6} {wall / usual:7.2f} {1000 * cpu:8.1f} {less:>8}")


def rows(folder: str) -> Mapping[str, list[str]]:
    """Return the commands by name, which write into a folder."""
    night = f"{folder}/night"
    return {
        "python -c pass": [sys.executable, "-c", "pass"],
        "work": [COMMAND, "work", "7 2/6 - 3 5/6"],
        "patterns": [COMMAND, "patterns", "9 5/8 - 4 6/8"],
        "audit": [COMMAND, "audit", SHEET],
        "mark": [COMMAND, "mark", SHEET, ANSWERS],
        "print": [COMMAND, "print", SHEET, "--to", night],
        "plan": [COMMAND, "plan", SHEET, ANSWERS, "--to", night],
        "night": [COMMAND, "night", str(ROOM), "--to", night],
        "film, unchanged": [COMMAND, "film", SHEET, "--to", f"{folder}/film"],
        "load the browser door": [sys.executable, "-c", "import onewhole.web.serving"],
        "workings under a new title": [sys.executable, "-c", NEW_TITLE, SHEET],
        "one checked working": [sys.executable, "-c", WORKING],
    }


def ran(command: list[str], tree: str | None) -> tuple[float, float]:
    """Return the seconds and the processor seconds of a command; what it says, where it measures itself."""
    environment = dict(os.environ) | ({} if tree is None else {"PYTHONPATH": tree})
    before, began = getrusage(RUSAGE_CHILDREN), perf_counter()
    done = subprocess.run(command, check=True, capture_output=True, text=True, env=environment)
    wall, after = perf_counter() - began, getrusage(RUSAGE_CHILDREN)
    if command[2:3] in ([NEW_TITLE], [WORKING]):
        return float(done.stdout), float(done.stdout)
    return wall, after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


if __name__ == "__main__":
    main()
