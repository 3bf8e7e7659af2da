"""Right and wrong of invented pupils, answered by a skill model from known numbers, and the two tables on
disk.
"""

from collections import Counter
from csv import DictReader, reader
from pathlib import Path

import numpy as np

from onewhole.mastery.q_matrix import QMatrix
from onewhole.mastery.right_wrong import MISSING, RightWrong
from onewhole.mastery.skill_model import SkillModel
from onewhole.presses.skills.cells import Cells, cells_of
from onewhole.presses.skills.likelihood import Point

#: Three skills on ten problems: each skill alone, each pair, all.
THREE = QMatrix(
    ("open a whole", "same pieces", "take away"),
    tuple("ABCDEFGHIJ"),
    (0b001, 0b010, 0b100, 0b011, 0b101, 0b110, 0b111, 0b001, 0b010, 0b100),
)


def point_by_lot(cells: Cells, chance: np.random.Generator) -> Point:
    """Chances anywhere, and shares anywhere."""
    return Point(chance.uniform(0.05, 0.95, cells.count), chance.dirichlet(np.ones(len(cells.groups))))


def answered_by(
    q: QMatrix, model: SkillModel, pupils: int, *, seed: int, missing: float = 0.0
) -> tuple[RightWrong, Point]:
    """Let pupils answer by a model in which skills help; return the table and the true numbers."""
    chance = np.random.default_rng(seed)
    cells = cells_of(q, model)
    most = np.maximum.reduceat([seen.bit_count() for seen in cells.seen], cells.starts[:-1])[cells.problem]
    part = np.array([seen.bit_count() for seen in cells.seen]) / most
    truth = Point(
        0.1 + 0.75 * part + chance.uniform(-0.05, 0.05, cells.count),
        chance.dirichlet(np.full(len(cells.groups), 4)),
    )
    groups = chance.choice(len(cells.groups), pupils, p=truth.shares)
    right = chance.random((pupils, len(q.problems))) < truth.chances[cells.of_group[:, groups]].T
    away = chance.random(right.shape) < missing
    return counted(q, ["".join(map(_sign, *pair)) for pair in zip(right, away, strict=True)]), truth


def counted(q: QMatrix, rows: list[str]) -> RightWrong:
    """Count equal rows."""
    counts = Counter(rows)
    return RightWrong(q.problems, tuple(counts), tuple(counts.values()))


def q_csv(q: QMatrix) -> str:
    """Write a Q-matrix as a file."""
    rows = (
        f"{name},{','.join(str(needs >> at & 1) for at in range(len(q.skills)))}"
        for name, needs in zip(q.problems, q.needs, strict=True)
    )
    return "\n".join([f"item,{','.join(q.skills)}", *rows, ""])


def responses_csv(table: RightWrong) -> str:
    """Write a table as a file: a pupil a line, coded K1, K2 and so on."""
    rows = [row for row, times in zip(table.rows, table.times, strict=True) for _ in range(times)]
    lines = (f"K{at},{','.join(row.replace(MISSING, ' '))}" for at, row in enumerate(rows, start=1))
    return "\n".join([f"pupil,{','.join(table.problems)}", *lines, ""])


def published(folder: Path, responses: str, q_matrix: str) -> tuple[RightWrong, QMatrix]:
    """Read a published table and its Q-matrix."""
    with (folder / q_matrix).open(encoding="utf-8") as file:
        items = list(DictReader(file))
    skills = tuple(name for name in items[0] if name != "item")
    needs = tuple(sum(int(item[name]) << at for at, name in enumerate(skills)) for item in items)
    q = QMatrix(skills, tuple(item["item"] for item in items), needs)
    with (folder / responses).open(encoding="utf-8") as file:
        rows = ["".join(cells[1:]) for cells in reader(file)][1:]
    return counted(q, rows), q


def _sign(right: np.bool_, away: np.bool_) -> str:
    return MISSING if away else str(int(right))
