"""A practice page: problems parallel to those that were missed, easiest first."""

from collections.abc import Hashable, Sequence
from dataclasses import replace

from onewhole.notations.text import text
from onewhole.problems.difficulty import difficulty
from onewhole.problems.parallel import parallel
from onewhole.problems.problem import Problem
from onewhole.problems.twins import twin_key
from onewhole.sheets.document import Instruction, Sheet
from onewhole.sheets.header import Header
from onewhole.statements.statement import Statement

#: How many problems a practice page holds; our own.
PRACTICE = 6


def practice_sheet(
    header: Header, models: Sequence[Problem], words: str, *, count: int = PRACTICE, skip: int = 0
) -> Sheet | None:
    """Return a page of problems with the structure of the given ones and new numbers, or None without any.

    ``models`` come in order of importance: each gives one problem in turn until there are ``count``. ``skip``
    passes over so many of each model's parallels, so that two groups that missed the same problems practise
    on different numbers. ``words`` is the instruction at the top. The page climbs from easy to hard.

    >>> from onewhole.sheets.reading import read_sheet
    >>> night = read_sheet("1. 9 5/8 - 4 6/8")
    >>> len(practice_sheet(night.header, night.problems, "Work these.", count=3).problems)
    3
    """
    chosen = _chosen([model.statement for model in models], count, skip)
    if not chosen:
        return None
    chosen.sort(key=lambda statement: (difficulty(statement, header.strategy).score, text(statement)))
    problems = [Problem(str(at), one, text(one)) for at, one in enumerate(chosen, start=1)]
    return Sheet((Instruction(words), *problems), replace(header, title="Practice", minutes=None))


def _chosen(models: Sequence[Statement], count: int, skip: int) -> list[Statement]:
    """Take parallels of the models in turn, but no model itself and no twin of one taken already."""
    streams = [parallel(model) for model in models]
    chosen: list[Statement] = []
    taken: set[Hashable] = set()
    for stream in streams:
        for _ in range(skip):
            next(stream, None)
    while streams and len(chosen) < count:
        for stream in tuple(streams):
            found = next((one for one in stream if one not in models and twin_key(one) not in taken), None)
            if found is None:
                streams.remove(stream)
            elif len(chosen) < count:
                taken.add(twin_key(found))
                chosen.append(found)
    return chosen
