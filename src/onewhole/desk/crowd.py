"""Say what is likeliest of very many pupils: answers from a file, odds into a file."""

import csv
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import partial
from io import StringIO
from pathlib import Path

from onewhole.desk.page.sheets import sheet_in
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.presses.crowd import Likeliest, crowd, likeliest, ready
from onewhole.presses.crowd_rows import crowd_rows
from onewhole.presses.files import write_parts

__all__ = ["CAUTION", "Told", "crowd_file"]

#: The caution stands in the head of what patterns are told: a table is read without the program beside it.
HEAD = ("pupil", "no steady pattern", f"answers may fit ({CAUTION})", "odds", "alike", "odds together")
NONE = "none"


@dataclass(frozen=True, slots=True)
class Told:
    """How many pupils were read, and of how many each set of patterns is likeliest (none: ``()``)."""

    pupils: int
    likeliest: tuple[tuple[tuple[str, ...], int], ...]


def crowd_file(sheet: Path, answers: Path, to: Path, *, workers: int = 1) -> Told:
    """Diagnose the pupils of a file as one class and write one line a pupil.

    A line has the odds of no steady pattern, the likeliest set of patterns with its odds, the sets that this
    page cannot tell from it, and the odds of all of those. It is a hint for a talk, never a label
    (:data:`CAUTION`). Answers and odds pass in blocks: memory does not grow with the number of pupils. Raises
    SheetError, AnswersError and InputError for what cannot be read, FileRefused for what cannot be written;
    the old file then stays as it was.
    """
    problems = sheet_in(sheet).problems
    page = ready(problems)
    counts: Counter[tuple[str, ...]] = Counter()

    def lines() -> Iterator[bytes]:
        yield _line(HEAD)
        for block in crowd(page, partial(crowd_rows, answers, problems), workers=workers):
            found = tuple(likeliest(page, block))
            counts.update(one.patterns for one in found)
            yield b"".join(map(_told, found))

    write_parts(to, lines())
    return Told(counts.total(), tuple(sorted(counts.items(), key=lambda row: (-row[1], row[0]))))


def _told(one: Likeliest) -> bytes:
    alike = "; ".join(map(_named, one.alike))
    return _line(
        (
            one.pupil,
            f"{one.none:.6f}",
            _named(one.patterns),
            f"{one.probability:.6f}",
            alike,
            f"{one.together:.6f}",
        )
    )


def _named(patterns: tuple[str, ...]) -> str:
    return " ".join(patterns) or NONE


def _line(cells: tuple[str, ...]) -> bytes:
    made = StringIO()
    csv.writer(made, lineterminator="\n").writerow(cells)
    return made.getvalue().encode()
