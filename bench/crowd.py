"""How long it takes to diagnose 100,000 pupils x 12 problems from a file, and how much memory.

Run: `python bench/crowd.py`. Beside it stands the same computation in plain Python for some of them: the
marking's own exact road, pupil by pupil, with the tables of the page and the chances of each reply worked out
once. The pupils are invented by the laboratory, which takes longer than to diagnose them.
"""

import resource
import subprocess
import sys
from pathlib import Path
from tempfile import TemporaryDirectory
from time import perf_counter

from onewhole.desk.crowd import crowd_file
from onewhole.desk.page.sheets import sheet_in
from onewhole.marking.diagnosis.prior import from_class
from onewhole.marking.diagnosis.tables import all_likelihoods, replies, tables
from onewhole.marking.diagnosis.weighing import weights
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import ClassMarks, PupilMarks, mark_row
from onewhole.presses.crowd_rows import crowd_rows

ROOT = Path(__file__).parents[1]
SHEET = ROOT / "examples" / "room12" / "sheet.txt"
PUPILS, PLAIN = 100_000, 2_000
#: Beside the thread that reads.
WORKERS = 1
#: Peak memory is told in kilobytes, on a Mac in bytes.
UNIT = 1024 * 1024 if sys.platform == "darwin" else 1024


def main() -> None:
    if len(sys.argv) > 2:
        print(*_part(sys.argv[1], Path(sys.argv[2])))
        return
    with TemporaryDirectory() as folder:
        answers = Path(folder) / "answers.csv"
        make = [sys.executable, "-m", "lab.answers", str(PUPILS), str(answers)]
        subprocess.run(make, cwd=ROOT, check=True)
        rows = {name: _measured(name, answers) for name in ("crowd", "plain")}
    print(f"{PUPILS} pupils x 12 problems from a file, two threads; plain Python: the first {PLAIN} of them")
    print(f"{'':14} {'seconds':>9} {'pupils/s':>10} {'MB peak':>9}")
    for name, (pupils, seconds, memory) in rows.items():
        print(f"{name:14} {seconds:9.1f} {pupils / seconds:10.0f} {memory:9.0f}")
    crowd, plain = (pupils / seconds for pupils, seconds, _ in rows.values())
    print(f"the crowd goes {crowd / plain:.0f} times as fast")


def _measured(name: str, answers: Path) -> tuple[float, float, float]:
    """Run one road in a process of its own: pupils, seconds, megabytes at the peak."""
    command = [sys.executable, __file__, name, str(answers)]
    ran = subprocess.run(command, check=True, capture_output=True, text=True)
    pupils, seconds, memory = map(float, ran.stdout.split())
    return pupils, seconds, memory


def _part(name: str, answers: Path) -> tuple[int, float, float]:
    began = perf_counter()
    if name == "crowd":
        pupils = crowd_file(SHEET, answers, answers.with_suffix(".odds.csv"), workers=WORKERS).pupils
    else:
        pupils = _plainly(answers)
    return pupils, perf_counter() - began, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / UNIT


def _plainly(answers: Path) -> int:
    """Diagnose the first pupils of the file by the marking's own road; the likeliest set of each is found."""
    problems = sheet_in(SHEET).problems
    expected = tuple(expect(problem) for problem in problems)
    page, given = tables(expected), []
    for pupil, cells in crowd_rows(answers, problems):
        marks = PupilMarks(pupil, mark_row(expected, tuple(map(read_written, cells))))
        given.append(replies(ClassMarks(expected, (marks,)), marks))
        if len(given) == PLAIN:
            break
    likely = all_likelihoods(page, given)
    for prior, row in zip(from_class(page.hypotheses, likely), likely, strict=True):
        weighed = weights(prior, row)
        max(zip(weighed, (one.ids for one in page.hypotheses), strict=True))
    return len(given)


if __name__ == "__main__":
    main()
