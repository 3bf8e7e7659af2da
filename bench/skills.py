"""Skill models fitted to right and wrong: seconds from the grouped rows to the maximum, and memory.

Run: `python bench/skills.py [RESPONSES Q]`. Without files 536 invented pupils answer 20 problems with 8
skills by DINA; with two CSV files, a published table. Beside it stands the EM algorithm alone, from the
same start until no step gains a thousandth of a millionth, in the same run: what most programs do. The
times of other programs for the published table (median of five, one thread, their own machine): R package
CDM 8.2-6 0.28 s at its usual stopping, 10.96 s at tight stopping, where it comes to our maximum to eight
digits.

100,000 pupils are drawn with seeded chance from the fitted model, so that their rows differ; told are the
walk over their CSV file, the fit, and all that is reported of it. Memory is that of whole processes that
read and fit so many pupils. Goals: 536 x 20 in 0.02 s, 100,000 x 20 in 0.5 s, memory that does not grow
with pupils.
"""

import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from statistics import median
from time import perf_counter, process_time
from typing import TypeVar

import numpy as np
from measuring import process_megabytes

from onewhole.mastery.q_matrix import QMatrix
from onewhole.mastery.q_table import read_q_matrix
from onewhole.mastery.right_wrong import RightWrong
from onewhole.mastery.right_wrong_table import read_right_wrong
from onewhole.mastery.skill_model import SkillModel
from onewhole.presses.skills.cells import Cells, cells_of
from onewhole.presses.skills.fit import fit_skills
from onewhole.presses.skills.likelihood import Point, better, walk
from onewhole.presses.skills.rows import row_arrays
from onewhole.presses.skills.starts import usual_start
from onewhole.presses.skills.summits import Summits, best_summit
from onewhole.presses.table_file import table_lines

Found = TypeVar("Found")

TURNS = 7
GAINED = 1e-9
MOST = 100_000
SIZES = (536, 100_000, 400_000)


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        if len(sys.argv) > 2:
            responses, q_file = map(Path, sys.argv[1:3])
        else:
            responses, q_file = invented(Path(folder))
        q = read_q_matrix(table_lines(q_file))
        table = read_right_wrong(lambda: table_lines(responses), q.problems)
        small(table, q)
        cells = cells_of(q, SkillModel.DINA)
        truth = best_summit(cells, row_arrays(table), 1, 1).best.point
        large(truth, cells, q, Path(folder))
        memory(truth, cells, q, Path(folder), q_file)


def small(table: RightWrong, q: QMatrix) -> None:
    """Print how long one fit takes, beside EM alone."""
    print(
        f"{table.pupils} pupils x {len(q.problems)}, {len(q.skills)} skills, {len(table.rows)} different rows"
    )
    print(f"{'':42} {'wall s':>8} {'CPU s':>8} {'times':>7}")
    usual = 0.0
    for model in SkillModel:
        found, wall, cpu = timed(lambda model=model: one_fit(table, q, model), TURNS)
        usual = usual or wall
        row(f"{model.name}, to {found.best.log_likelihood:.5f}", wall, cpu, usual)
    (height, steps), wall, cpu = timed(lambda: em_alone(table, q), 1)
    row(f"EM alone, {steps} steps, to {height:.5f}", wall, cpu, usual)
    _, wall, cpu = timed(lambda: fit_skills(table, q, SkillModel.DINA, climbs=1, seed=1), TURNS)
    row("DINA with errors, fit, accuracy, Q-check", wall, cpu, usual)
    print("goal: 0.02 s\n")


def large(truth: Point, cells: Cells, q: QMatrix, folder: Path) -> None:
    """Print how long 100,000 pupils take."""
    file = drawn(truth, cells, q, SIZES[1], folder)
    table, wall, cpu = timed(lambda: read_right_wrong(lambda: table_lines(file), q.problems), 3)
    print(f"{table.pupils:,} pupils x {len(q.problems)}, {len(table.rows):,} different rows")
    row("walk over the CSV file", wall, cpu, None)
    found, wall, cpu = timed(lambda: one_fit(table, q, SkillModel.DINA), 5)
    row(f"DINA, to {found.best.log_likelihood:.5f}", wall, cpu, None)
    _, wall, cpu = timed(lambda: fit_skills(table, q, SkillModel.DINA, climbs=1, seed=1), 3)
    row("DINA with errors, fit, accuracy, Q-check", wall, cpu, None)
    print("goal: 0.5 s\n")


def memory(truth: Point, cells: Cells, q: QMatrix, folder: Path, q_file: Path) -> None:
    """Print how much memory processes take that read and fit so many pupils, and print them all as JSON."""
    verb = "from onewhole.cli.main import main; raise SystemExit(main())"
    bare = process_megabytes([sys.executable, "-c", "import numpy.linalg"])
    print(f"{'memory of a process':42} {'MB':>8}")
    print(f"{'NumPy alone':42} {bare:8.0f}")
    for pupils in SIZES:
        file = drawn(truth, cells, q, pupils, folder)
        command = [sys.executable, "-c", verb, "skills", str(file), str(q_file), "--starts", "1", "--json"]
        print(f"{f'{pupils:,} pupils, with all JSON':42} {process_megabytes(command):8.0f}")


def one_fit(table: RightWrong, q: QMatrix, model: SkillModel) -> Summits:
    return best_summit(cells_of(q, model), row_arrays(table), 1, 1)


def em_alone(table: RightWrong, q: QMatrix) -> tuple[float, int]:
    cells, rows = cells_of(q, SkillModel.DINA), row_arrays(table)
    point, before = usual_start(cells), -np.inf
    for step in range(MOST):
        sums = walk(cells, rows, point)
        if sums.log_likelihood - before < GAINED:
            return sums.log_likelihood, step
        before, point = sums.log_likelihood, better(cells, rows, point, sums)
    return before, MOST


def invented(folder: Path) -> tuple[Path, Path]:
    """Write a Q-matrix of 20 problems with 8 skills, and 536 pupils who answer by DINA."""
    chance = np.random.default_rng(1)
    needs = tuple(
        int(one) for one in chance.integers(1, 256, 20) & chance.integers(1, 256, 20) | 1 << np.arange(20) % 8
    )
    q = QMatrix(
        tuple(f"skill{at}" for at in range(1, 9)), tuple(f"item{at:02}" for at in range(1, 21)), needs
    )
    cells = cells_of(q, SkillModel.DINA)
    chances = np.where(
        np.array(cells.seen) > 0, chance.uniform(0.7, 0.95, cells.count), chance.uniform(0, 0.3, cells.count)
    )
    truth = Point(chances, chance.dirichlet(np.full(len(cells.groups), 0.3)))
    lines = (
        f"{name},{','.join(str(need >> at & 1) for at in range(8))}"
        for name, need in zip(q.problems, needs, strict=True)
    )
    q_file = folder / "q.csv"
    q_file.write_text("\n".join([f"item,{','.join(q.skills)}", *lines, ""]))
    return drawn(truth, cells, q, 536, folder), q_file


def drawn(truth: Point, cells: Cells, q: QMatrix, pupils: int, folder: Path) -> Path:
    """Write the answers of so many pupils who answer by a model."""
    chance = np.random.default_rng(7)
    groups = chance.choice(len(cells.groups), pupils, p=truth.shares)
    right = chance.random((pupils, len(q.problems))) < truth.chances[cells.of_group[:, groups]].T
    file = folder / f"right{pupils}.csv"
    with file.open("w", encoding="utf-8") as lines:
        lines.write(f"pupil,{','.join(q.problems)}\n")
        lines.writelines(
            f"P{at},{','.join(map(str, row))}\n" for at, row in enumerate(right.astype(int).tolist())
        )
    return file


def timed(act: Callable[[], Found], turns: int) -> tuple[Found, float, float]:
    """Return what an act finds, and the medians of its seconds and of its processor's seconds."""
    walls, cpus = [], []
    for _ in range(turns):
        began, worked = perf_counter(), process_time()
        found = act()
        walls.append(perf_counter() - began)
        cpus.append(process_time() - worked)
    return found, median(walls), median(cpus)


def row(name: str, wall: float, cpu: float, usual: float | None) -> None:
    times = f"{wall / usual:7.1f}" if usual else ""
    print(f"{name:42} {wall:8.4f} {cpu:8.4f} {times}", flush=True)


if __name__ == "__main__":
    main()
