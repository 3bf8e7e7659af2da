"""Figures about the network, made of what it said of cells: the tables of `docs/reading-model.md`."""

import json
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

import numpy as np

from onewhole.marking.paper.foreseen import Foreseen
from onewhole.marking.paper.ink_reading import SURE, InkReading
from onewhole.marking.paper.judging import STRUCK_FROM, judged
from onewhole.marking.paper.sureness import Sureness
from onewhole.marking.paper.verdict import PaperVerdict
from onewhole.marking.reading.expected import Expected, expect
from onewhole.presses.paper.ink import looked_at_again, of_both, reading_of
from onewhole.presses.paper.ink_text import NOTHING, SLOTS, UNITS, Slots
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_statement
from tools.ink.material import PARTS

#: The settings that a teacher may choose; each reads what is less doubtful than its limit.
SETTINGS: Final = tuple(one for one in Sureness if one.limit)
_DIGITS: Final = SLOTS * (NOTHING + 1)
_ENDS: Final = (_DIGITS, _DIGITS + 2, _DIGITS + 2 + len(UNITS), _DIGITS + 5 + len(UNITS))


@dataclass(frozen=True, slots=True)
class Cell:
    """A cell read: what was said, and what is written ("" where there is no answer)."""

    said: InkReading
    text: str

    @property
    def doubt(self) -> int:
        """Return how doubtful the picture alone is; all of it where a digit may be struck inside."""
        return SURE if self.said.struck >= STRUCK_FROM else SURE - self.said.likelihood


def kept(folder: Path) -> dict[str, Any]:
    """Return what `collect` kept in a folder."""
    files = [np.load(folder / f"told_{part}.npz") for part in range(PARTS)]
    return {name: file[name] for file in files for name in file}


def cells(held: dict[str, Any], name: str, heats: Sequence[float], most: int) -> list[Cell]:
    """Return the first cells of a variant, each as two looks read it where it is looked at again."""
    rows = tempered(held[f"{name}|told"].astype(np.float32), heats)
    looked = np.flatnonzero(held[f"{name}|near"])
    again = tempered(held[f"{name}|told again"].astype(np.float32), heats)
    for place, row in zip(looked, again, strict=True):
        if looked_at_again(rows[place]):
            rows[place] = of_both(rows[place], row)
    rows = rows[:most]
    found = []
    for at, row in enumerate(rows):
        answer = int(held[f"{name}|kind"][at]) == 1
        digits = tuple(map(int, held[f"{name}|slots"][at]))
        slots = Slots(bool(held[f"{name}|sign"][at]), digits, UNITS[int(held[f"{name}|unit"][at])])
        found.append(Cell(reading_of(row), slots.text if answer else ""))
    return found


def tempered(said: Any, heats: Sequence[float]) -> Any:  # noqa: ANN401 - arrays of any width
    """Return rows whose likelihoods are evened out by temperatures: digits, minus, unit, kind."""
    parts = np.split(said, _ENDS, axis=1)
    parts[0] = parts[0].reshape(-1, SLOTS, NOTHING + 1)
    for at, heat in enumerate(heats[:4]):
        warm = parts[at] / heat
        warm = warm - warm.max(-1, keepdims=True)
        parts[at] = warm - np.log(np.exp(warm).sum(-1, keepdims=True))
    parts[0] = parts[0].reshape(-1, _DIGITS)
    return np.concatenate(parts, axis=1)


def limit_of(some: Sequence[Cell], promise: int) -> int:
    """Return the largest doubt under which no more of the cells that are read are wrong than promised."""
    ordered = sorted(some, key=lambda cell: cell.doubt)
    wrong, limit = 0, 0
    for count, cell in enumerate(ordered, 1):
        wrong += cell.said.text != cell.text
        if wrong * SURE <= promise * count and cell.doubt < SURE:
            limit = cell.doubt
    return limit


def told(some: Sequence[Cell], read: Sequence[bool]) -> str:
    """Return what a table shows: how many of all are read, and how many of these are wrong, in per cent."""
    taken = [cell for cell, is_read in zip(some, read, strict=True) if is_read]
    wrong = sum(cell.said.text != cell.text for cell in taken)
    return f"{100 * len(taken) / len(some):.1f} / {100 * wrong / max(len(taken), 1):.2f}"


def rows(folder: Path, answers: Path, heats: Sequence[float], most: int) -> Iterator[str]:
    """Yield the rows of the tables, and the limits that they rest on."""
    held = kept(folder)
    tune = cells(held, "tune", heats, 10**9)
    held_up_to = [limit_of(tune, one.promise) for one in SETTINGS]
    yield f"on the cells that tune, what is promised holds up to {held_up_to}"
    limits = [one.limit for one in SETTINGS]
    yield f"limits of doubt, parts per million: {limits}"
    for name in sorted({name.split("|")[0] for name in held}):
        some = cells(held, name, heats, most)
        forced = sum(cell.said.text == cell.text for cell in some) / len(some)
        alone = [told(some, [cell.doubt <= limit for cell in some]) for limit in limits]
        yield f"| {name} | {len(some)} | {100 * forced:.1f} | {' | '.join(alone)} |"
        if name.startswith("class, "):
            foreseen = [Foreseen(asked) for asked in _asked(answers, len(some))]
            sure = [
                told(
                    some,
                    [
                        judged(cell.said, asked, limit).verdict is PaperVerdict.READ
                        for cell, asked in zip(some, foreseen, strict=True)
                    ],
                )
                for limit in limits
            ]
            yield f"| {name}, confirmed | {len(some)} | | {' | '.join(sure)} |"


def _asked(answers: Path, count: int) -> list[Expected]:
    known: dict[str, Expected] = {}
    for one in (drawn := json.loads((answers / "class.json").read_text())[:count]):
        typed = one["problem"]
        if typed not in known:
            known[typed] = expect(Problem("1", read_statement(typed), typed))
    return [known[one["problem"]] for one in drawn]
