"""Cells judged as they come from pictures, and which of a pupil's answers alone decide a group."""

from collections.abc import Collection, Iterable, Mapping, Sequence

from onewhole.desk.marking.verdicts import expected
from onewhole.desk.paper.seen_papers import SeenCell
from onewhole.marking.diagnosis.decisive import decisive
from onewhole.marking.paper.foreseen import Foreseen
from onewhole.marking.paper.judging import judged
from onewhole.marking.paper.read_cell import ReadCell, to_be_shown
from onewhole.marking.paper.verdict import PaperWhy
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.mark import mark
from onewhole.problems.problem import Problem
from onewhole.working.form import FormWanted

Key = tuple[str, str]
"""A cell: the pupil's code and the problem's label."""


def judged_cell(seen: SeenCell, problem: Problem, limit: int) -> ReadCell:
    """Judge one cell, with the right answer of its problem and what error patterns would write there."""
    return judged(seen.ink, Foreseen(expected(problem)), limit)


def of_two(first: ReadCell, second: ReadCell) -> ReadCell:
    """Return what two pictures of one cell say together: where they do not agree, it is to be looked at."""
    if (first.text, first.verdict) == (second.text, second.verdict):
        return second
    return to_be_shown(second, PaperWhy.TWICE)


def deciding_cells(
    problems: Sequence[Problem],
    wanted: FormWanted,
    texts: Mapping[Key, str],
    codes: Iterable[str],
    recent: Mapping[str, Mapping[str, int]],
) -> Collection[Key]:
    """Return the cells without which a pattern would not be likely; ``texts`` has what each one says.

    They do not depend on the threshold: a cell whose picture is not sure enough counts as it seems.
    """
    asks = [expected(one) for one in problems]
    found: set[Key] = set()
    for code in codes:
        marks = [
            mark(ask, read_written(texts.get((code, one.label), ""), one), wanted)
            for ask, one in zip(asks, problems, strict=True)
        ]
        found |= {(code, label) for label in decisive(asks, marks, recent.get(code, {}))}
    return found
