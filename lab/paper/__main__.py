"""Measure papers from the printer to the answer: `python -m lab.paper`, or with `--quick`."""

import sys
from argparse import ArgumentParser
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from random import Random
from time import perf_counter
from typing import Final

from lab.measures import Share
from lab.page import written
from lab.pages import in_columns, random_page, room12
from lab.paper.hands import DIGITS, FontHand, Hand, RealHand
from lab.paper.trial import Cell, Sheet, papers
from lab.table import Part, percent, plain
from onewhole.marking.paper.read_cell import ReadCell
from onewhole.marking.paper.sureness import Sureness
from onewhole.marking.paper.verdict import PaperVerdict
from tests.kit.photos import KINDS, Shot

DOCS: Final = Path(__file__).parents[2] / "docs" / "paper.md"
#: Pupils a sheet.
FULL, QUICK = 6, 1
#: How surely a reading stands: the usual setting.
LIMIT: Final = Sureness.USUAL.limit
_HEADS: Final = (
    "cells",
    "read alone",
    "wrong of these",
    "with what is expected",
    "wrong of these",
    "not found",
)

SHEETS: Final = (
    Sheet("the example's page", room12(), "corner marks: {}\npaper: a4\nfit: 1"),
    Sheet("differences of mixed numbers", random_page(10, 1), "corner marks: {}"),
    Sheet("columns", in_columns(8, 1), "corner marks: {}\nprint: large"),
)


@dataclass(frozen=True, slots=True)
class Writing:
    """A kind of writing: whose hands, and how tall a digit is in millimetres."""

    name: str
    hand: Callable[[Random], Hand]
    tall: float = 8.5


def measured(digits: Path, fonts: Path | None, pupils: int) -> tuple[Part, ...]:
    """Measure every part of the table."""
    real = Writing("real digits", lambda chance: RealHand(digits, chance))
    small = Writing("real digits, 0.6 of their size", real.hand, 5.1)
    writings = [real, small]
    if fonts is not None:
        found = sorted(fonts.iterdir())
        writings.append(Writing("handwriting fonts", lambda chance: FontHand(chance.choice(found), chance)))
    usual = KINDS["photo"]
    ways = (
        _row(f"{one.name}, {marks}", _cells(one, marks, usual, pupils))
        for one in writings
        for marks in ("lines", "windows")
    )
    photos = (_row(name, _cells(real, "lines", shot, pupils)) for name, shot in KINDS.items())
    meant = f"one wrong in {Sureness.USUAL.one_in} is meant"
    promised = f"A reading stands where its doubt is below {LIMIT / 10_000:g} % ({meant})."
    return (
        Part("By writing and by the place for the answer", promised, ("writing", *_HEADS), tuple(ways)),
        Part("By the picture: real digits over lines", "", ("picture", *_HEADS), tuple(photos)),
    )


def _cells(one: Writing, marks: str, shot: Shot, pupils: int) -> Iterator[Cell]:
    for at, sheet in enumerate(SHEETS):
        marked = Sheet(sheet.name, sheet.typed, sheet.head.format(marks))
        yield from papers(marked, one.hand, shot, pupils, f"paper {at}", tall=one.tall)


def _row(name: str, cells: Iterator[Cell]) -> tuple[str, ...]:
    """Count cells with an answer: how many are read, alone and with what is expected, and how many wrong."""
    every = [cell for cell in cells if cell.wrote]
    seen = [(cell.wrote, cell.judged(LIMIT)) for cell in every if cell.ink is not None]
    both = [(text, read) for text, read in seen if read.verdict is PaperVerdict.READ]
    alone = [(text, read) for text, read in both if read.alone < LIMIT]
    return (
        name,
        str(len(every)),
        *(cell for some in (alone, both) for cell in _read(some, len(every))),
        str(len(every) - len(seen)),
    )


def _read(some: Sequence[tuple[str, ReadCell]], of: int) -> tuple[str, str]:
    wrong = sum(text != read.text for text, read in some)
    return percent(len(some) / of if of else 0.0), percent(Share(wrong, len(some)))


def main(arguments: Sequence[str] | None = None) -> int:
    """Print the table; with ``--write`` put it into the page of the docs as well."""
    parser = ArgumentParser(
        prog="python -m lab.paper", description="Measure papers that come back as pictures."
    )
    parser.add_argument("digits", type=Path, help=f"folder with real digits: {' and '.join(DIGITS)}")
    parser.add_argument("--fonts", type=Path, help="folder with handwriting fonts that were not trained on")
    parser.add_argument("--quick", action="store_true", help="one pupil a sheet: shows that it runs")
    parser.add_argument("--write", action="store_true", help="write the table into docs/paper.md")
    asked = parser.parse_args(arguments)
    begun = perf_counter()
    parts = measured(asked.digits, asked.fonts, QUICK if asked.quick else FULL)
    print(plain(parts))
    print(f"\n{perf_counter() - begun:.0f} seconds")
    if asked.write and not asked.quick:
        DOCS.write_text(written(DOCS.read_text(encoding="utf-8"), parts), encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
