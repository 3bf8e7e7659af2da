"""How long it takes to mark a class: 25 papers of 12 problems, read, marked, found and grouped.

Run: `python bench/marking.py [SOURCES]`. Beside it stand the same papers marked one by one, each as a class
of its own, which works out what every pattern writes once a paper instead of once a page; and a district of
100,000 invented pupils in classes of 200, the most that a table of answers takes: some of its classes are
marked, and the whole is told by their share.

SOURCES is the `src` folder of an earlier release (`git worktree add ../before COMMIT` makes one): it marks
the same tables, by turns with these sources in a process of its own. Its processor seconds are compared, the
least of the rounds. Goal: no slower than that release.
"""

import os
import subprocess
import sys
import tempfile
from collections.abc import Iterator, Mapping, Sequence
from contextlib import ExitStack, contextmanager
from pathlib import Path

from measuring import kilobytes, microseconds, process_megabytes

from onewhole.desk.marking.mark import mark

REPOSITORY = Path(__file__).parents[1]
ROOM = REPOSITORY / "examples" / "room12"
PAPERS = 25
#: Rounds of what is marked in this process, and of the class by turns with an earlier release.
ROUNDS, TURNED = 5, 25
#: A district, its classes, and how many of them are marked.
DISTRICT, TOGETHER, SHARE = 100_000, 200, 5
#: What a process that takes turns is told: the table to mark, a line each; it answers with seconds.
TURNS = """
import sys
from pathlib import Path
from time import process_time
from onewhole.desk.marking.mark import mark
sheet = Path(sys.argv[1]).read_text(encoding="utf-8")
tables = [Path(name).read_text(encoding="utf-8") for name in sys.argv[2:]]
mark(sheet, tables[0])
print(0, flush=True)
for asked in sys.stdin:
    began = process_time()
    mark(sheet, tables[int(asked)])
    print(process_time() - began, flush=True)
"""


def main() -> None:
    sheet = (ROOM / "sheet.txt").read_text(encoding="utf-8")
    whole, single = papers()
    acts = {
        "the class at once": (lambda answers: mark(sheet, answers), [whole]),
        "paper by paper": (lambda each: [mark(sheet, paper) for paper in each], [single]),
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
    print(f"memory of the whole process: {process_megabytes([*command, str(ROOM / 'answers.csv')]):.0f} MB\n")
    before = {"before": Path(sys.argv[1])} if len(sys.argv) > 1 else {}
    by_turns({"now": REPOSITORY / "src", **before}, whole)


def papers() -> tuple[str, tuple[str, ...]]:
    """Return the example's papers as one table of answers, and each as a table of its own."""
    head, *rows = (ROOM / "answers.csv").read_text(encoding="utf-8").splitlines()
    rows = [f"P{at:02},{rows[at % len(rows)].partition(',')[2]}" for at in range(PAPERS)]
    return "\n".join([head, *rows]), tuple(f"{head}\n{row}" for row in rows)


def district(folder: Path) -> Iterator[str]:
    """Return the tables of the first classes of a district."""
    file = folder / "district.csv"
    command = [sys.executable, "-m", "lab.answers", str(SHARE * TOGETHER), str(file)]
    subprocess.run(command, check=True, cwd=REPOSITORY)
    head, *rows = file.read_text(encoding="utf-8").splitlines()
    for at in range(SHARE):
        yield "\n".join([head, *rows[at * TOGETHER : (at + 1) * TOGETHER]])


def by_turns(sources: Mapping[str, Path], whole: str) -> None:
    """Print the processor seconds of a class and of a district, by one source after another."""
    with tempfile.TemporaryDirectory() as folder, ExitStack() as all_of:
        tables = [Path(folder) / f"{at}.csv" for at in range(1 + SHARE)]
        for path, table in zip(tables, [whole, *district(Path(folder))], strict=True):
            path.write_text(table, encoding="utf-8")
        marking = {name: all_of.enter_context(turns(src, tables)) for name, src in sources.items()}
        least = {name: [0.0] * len(tables) for name in marking}
        for at in range(len(tables)):
            many = ROUNDS if at else TURNED
            rounds = [{name: seconds(each, at) for name, each in marking.items()} for _ in range(many)]
            for name in marking:
                least[name][at] = min(one[name] for one in rounds)
    print(f"{'processor seconds, least of the rounds':48} {'s':>9} {'times':>7}")
    classes = DISTRICT // TOGETHER
    for name, each in least.items():
        told(f"{PAPERS} x 12, {name}", each[0], least["now"][0])
        whole_district, usual = (sum(one[1:]) * classes / SHARE for one in (each, least["now"]))
        told(f"{DISTRICT:,} x 12 by {SHARE} of {classes} classes, {name}", whole_district, usual)


def told(name: str, seconds: float, usual: float) -> None:
    print(f"{name:48} {seconds:9.3f} {seconds / usual:7.2f}")


@contextmanager
def turns(sources: Path, tables: Sequence[Path]) -> Iterator[subprocess.Popen[str]]:
    """Give a process of some sources that marks a table when it is asked to."""
    command = [sys.executable, "-c", TURNS, str(ROOM / "sheet.txt"), *map(str, tables)]
    surroundings = {**os.environ, "PYTHONPATH": str(sources)}
    with subprocess.Popen(
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, env=surroundings
    ) as process:
        assert process.stdout is not None
        process.stdout.readline()
        yield process
        assert process.stdin is not None
        process.stdin.close()


def seconds(process: subprocess.Popen[str], table: int) -> float:
    assert process.stdin is not None
    assert process.stdout is not None
    print(table, file=process.stdin, flush=True)
    return float(process.stdout.readline())


if __name__ == "__main__":
    main()
