"""Statements made into the problems of a page: labelled from 1, easiest first, some told as stories."""

from collections.abc import Mapping
from dataclasses import replace

from onewhole.languages.table import spoken_by
from onewhole.notations.text import text
from onewhole.problems.difficulty import difficulty
from onewhole.problems.problem import Problem
from onewhole.problems.story_asks import NoStoryError
from onewhole.sheets.header import Header
from onewhole.sheets.stories import story
from onewhole.statements.statement import Statement


def labelled(
    header: Header, told: Mapping[Statement, bool], *, seed: int = 0
) -> tuple[Header, tuple[Problem, ...]]:
    """Return problems in the order of their difficulty, and the header that they stand under.

    ``told`` says of each statement whether it is wanted as a story; one about which no story is told stays
    plain. With a story the header names what it counts. ``seed`` varies the words.

    >>> from onewhole.statements.reading import read_statement
    >>> header, problems = labelled(Header(), {read_statement("5 1/3 - 2 2/3"): False})
    >>> [(problem.label, problem.typed) for problem in problems]
    [('1', '5 1/3 - 2 2/3')]
    """
    order = sorted(told, key=lambda one: (difficulty(one, header.taught).score, text(one)))
    own = (
        replace(header, words=spoken_by(header.words).stories.whole(header.words))
        if any(told.values())
        else header
    )
    return own, tuple(
        _problem(str(at), one, own, seed=seed + at if told[one] else None) for at, one in enumerate(order, 1)
    )


def _problem(label: str, statement: Statement, header: Header, *, seed: int | None) -> Problem:
    """Return a problem, told as a story where there is a seed for it and it can be done."""
    if seed is not None:
        try:
            return story(statement, seed=seed, words=header.words, remainder=header.remainder).problem(label)
        except NoStoryError:
            pass
    return Problem(label, statement, text(statement))
