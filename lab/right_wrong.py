"""A diagnosis that sees right and wrong only, for comparison: what the raw answer adds.

Each steady idea is weighed by a pupil's row of right and wrong answers. An idea that can show on a problem
makes a wrong answer likely there; elsewhere only a slip does. Both rates are our assumption.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from lab.pupils import Pupil
from lab.steps import page_of
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import Expected, expect
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.misconceptions.catalogue import by_id
from onewhole.problems.problem import Problem

WRONG_IF_SHOWN = 0.92
WRONG_BY_SLIP = 0.07


@dataclass(frozen=True, slots=True)
class Weighed:
    """The ideas that fit a row of right and wrong best, all equally well."""

    best: tuple[str, ...]

    def credit(self, truth: str) -> float:
        """Return how often naming one of the best is right: 1 in k where k of them fit equally well."""
        return 1 / len(self.best) if truth in self.best else 0.0


def weigh(shows: Mapping[str, Sequence[bool]], wrong: Sequence[bool | None]) -> Weighed:
    """Return the ideas under which this row of right and wrong is likeliest; None is an empty cell.

    >>> weigh({"A01": (True, False), "A10": (False, True)}, (True, False)).best
    ('A01',)
    """
    likely = {key: _likely(row, wrong) for key, row in shows.items()}
    most = max(likely.values())
    return Weighed(tuple(key for key, how in likely.items() if how == most))


def _likely(row: Sequence[bool], wrong: Sequence[bool | None]) -> float:
    product = 1.0
    for shown, was in zip(row, wrong, strict=True):
        if was is not None:
            rate = WRONG_IF_SHOWN if shown else WRONG_BY_SLIP
            product *= rate if was else 1 - rate
    return product


def shown_on(ideas: Sequence[str], page: Sequence[Expected]) -> dict[str, tuple[bool, ...]]:
    """Return on which problems of a page each idea can show; ideas that can show on none are left out."""
    rows = {key: tuple(key in asked.shows for asked in page) for key in ideas}
    return {key: row for key, row in rows.items() if any(row)}


def right_and_wrong(one: Pupil, page: Sequence[Expected], seed: str) -> tuple[bool | None, ...]:
    """Return a pupil's row: is each answer wrong? None where nothing was written."""
    cells = page_of(one, [asked.problem for asked in page], seed)
    verdicts = [mark(asked, read_written(text)).verdict for asked, text in zip(page, cells, strict=True)]
    return tuple(None if verdict is Verdict.BLANK else verdict is Verdict.WRONG for verdict in verdicts)


def diagnosed(pupils: Sequence[Pupil], page: Sequence[Problem], ideas: Sequence[str], seed: str) -> float:
    """Return the share of steady pupils whose one idea is named from right and wrong alone."""
    expected = [expect(problem) for problem in page]
    shows = shown_on(ideas, expected)
    told = [one for one in pupils if one.ideas[0] in shows]
    found = [weigh(shows, right_and_wrong(one, expected, seed)).credit(one.ideas[0]) for one in told]
    return sum(found) / len(found)


def ceiling(page: Sequence[Problem], ideas: Sequence[str]) -> float:
    """Return how many ideas in a hundred right and wrong alone can name at most, when nobody slips.

    Ideas that are wrong on just the same problems have one row between them, and 1 of k of them is named; an
    idea that is wrong nowhere cannot be seen.
    """
    rows = {key: tuple(bool(by_id(key).slip(one.statement)) for one in page) for key in ideas}
    seen = {key: row for key, row in rows.items() if any(row)}
    return len(set(seen.values())) / len(seen) if seen else 0.0
