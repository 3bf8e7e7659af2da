"""How long it takes to mark a class: 25 papers of 12 problems, read, marked, found and grouped.

Run: `python bench/marking.py`. Beside it stand the same papers marked one by one, each as a class of its own,
which works out what every pattern writes once a paper instead of once a page.
"""

import sys
from pathlib import Path

from measuring import kilobytes, microseconds, process_megabytes

from onewhole.desk.marking.mark import mark

ROOM = Path(__file__).parents[1] / "examples" / "room12"
PAPERS = 25
ROUNDS = 5


def main() -> None:
    sheet = (ROOM / "sheet.txt").read_text(encoding="utf-8")
    head, *rows = (ROOM / "answers.csv").read_text(encoding="utf-8").splitlines()
    rows = [f"P{at:02},{rows[at % len(rows)].partition(',')[2]}" for at in range(PAPERS)]
    whole = "\n".join([head, *rows])
    single = [f"{head}\n{row}" for row in rows]
    acts = {
        "the class at once": (lambda answers: mark(sheet, answers), [whole]),
        "paper by paper": (lambda papers: [mark(sheet, paper) for paper in papers], [single]),
    }
    mark(sheet, whole)
    taken = microseconds(acts, ROUNDS)
    kept, peak = kilobytes(lambda answers: mark(sheet, answers), [whole])
    print(f"{PAPERS} papers of 12 problems, {ROUNDS} rounds by turns in one process")
    print(f"{'':20} {'ms':>9} {'times':>7}")
    for name, each in taken.items():
        print(f"{name:20} {each / 1000:9.1f} {each / taken['the class at once']:7.1f}")
    print(f"memory of the marked class: {kept:.0f} KB kept, {peak:.0f} KB peak")
    command = [str(Path(sys.executable).with_name("onewhole")), "mark", str(ROOM / "sheet.txt")]
    print(f"memory of the whole process: {process_megabytes([*command, str(ROOM / 'answers.csv')]):.0f} MB")


if __name__ == "__main__":
    main()
