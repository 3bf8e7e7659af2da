"""Answers as a class gives them: right, as an error pattern writes them, a slip, anything."""

import json
import random
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Final

import numpy as np

from onewhole.errors import OnewholeError
from onewhole.marking.reading.expected import Expected, expect
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.presses.paper.ink_text import NOTHING
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_statement

KINDS: Final = ("right", "pattern", "slip", "random")
SHARES: Final = {"class": (55, 25, 12, 8), "quarters": (25, 25, 25, 25), "tuning": (25, 25, 25, 25)}
_PLAIN: Final = re.compile(r"(-?)(\d{1,3})? ?(?:(\d{1,3})/(\d{1,3}))?")


def problems(chance: random.Random, count: int) -> Iterator[tuple[str, Expected]]:
    """Draw problems of the grade: mixed numbers of one denominator, taken away or added."""
    while count:
        parts = chance.choice((3, 4, 5, 6, 8, 8, 10, 12))
        first, second = (f"{chance.randint(1, 12)} {chance.randint(1, parts - 1)}/{parts}" for _ in range(2))
        typed = f"{first} {chance.choice('-----+')} {second}"
        try:
            asked = expect(Problem("1", read_statement(typed), typed))
        except OnewholeError:
            continue
        if isinstance(asked.right, Quantity) and asked.right.value > 0:
            count -= 1
            yield typed, asked


def slots_of(written: str) -> tuple[list[int], int] | None:
    """Return the digit slots and the sign that a plain answer fills, None where it is no plain one."""
    found = _PLAIN.fullmatch(written)
    if found is None or not any(found.groups()[1:]):
        return None
    digits: list[int] = []
    for run, long in zip(found.groups()[1:], (4, 3, 3), strict=True):
        held = [int(digit) for digit in run or ""]
        digits += held + [NOTHING] * (long - len(held))
    return [*digits, *[NOTHING] * 3], int(found[1] == "-")


def answers(seed: int, cells: int, mix: str) -> list[dict[str, str]]:
    """Draw answers of the class to some problems, each with its problem and its kind."""
    chance = random.Random(seed)
    asked = list(problems(chance, 120))
    drawn: list[dict[str, str]] = []
    while len(drawn) < cells:
        typed, expected = chance.choice(asked)
        kind = chance.choices(KINDS, SHARES[mix])[0]
        right = text(expected.right)
        written = right
        if kind == "right" and isinstance(expected.right, Quantity) and chance.random() < 0.3:
            value = expected.right.value
            written = chance.choice((str(value), f"{value // 1} {value % 1}" if value % 1 else str(value)))
        elif kind == "pattern":
            wrong = sorted({text(slip.wrote) for slip in expected.ideas} - {right})
            if not wrong:
                continue
            written = chance.choice(wrong)
        elif kind == "slip":
            at = chance.choice([place for place, sign in enumerate(right) if sign.isdigit()])
            digit = (int(right[at]) + chance.choice((-1, 1, -1, 1, 2, 5))) % 10
            written = right[:at] + str(digit) + right[at + 1 :]
        elif kind == "random":
            below = chance.randint(2, 16)
            written = chance.choice(
                (
                    f"{chance.randint(1, 20)} {chance.randint(1, 15)}/{below}",
                    f"{chance.randint(1, 40)}/{below}",
                    str(chance.randint(0, 60)),
                )
            )
        if slots_of(written) is not None and not re.search(r"(^|[ /-])0\d", written):
            drawn.append({"problem": typed, "kind": kind, "written": written})
    return drawn


def keep(seed: int, cells: int, folder: Path) -> None:
    """Keep such answers in a folder, as text and as slots; each mix has problems of its own."""
    for at, mix in enumerate(SHARES):
        drawn = answers(seed + at, cells, mix)
        found = [filled for one in drawn if (filled := slots_of(one["written"])) is not None]
        (folder / f"{mix}.json").write_text(json.dumps(drawn))
        np.savez(
            folder / f"{mix}.npz",
            slots=np.array([slots for slots, _ in found], np.int64),
            sign=np.array([sign for _, sign in found], np.int64),
        )
