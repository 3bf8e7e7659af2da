"""Statements made into the problems of a page: labelled from 1, easiest first, some told as stories."""

from collections.abc import Mapping

from msgspec.structs import replace

from onewhole.languages.table import spoken_by
from onewhole.misconceptions.telling import PLAIN_STORY, ToldAs
from onewhole.notations.text import text
from onewhole.problems.difficulty import difficulty
from onewhole.problems.problem import Problem
from onewhole.problems.story_asks import NoStoryError
from onewhole.sheets.header import Header
from onewhole.sheets.stories import Story, story
from onewhole.statements.statement import Statement

#: So many ways to tell are looked at for one whose words mislead in the same way.
WAYS = 12


def labelled(
    header: Header, told: Mapping[Statement, ToldAs | None], *, seed: int = 0
) -> tuple[Header, tuple[Problem, ...]]:
    """Return problems in the order of their difficulty, and the header that they stand under.

    ``told`` says of each statement like which story it is wanted, None for numbers alone; one about which no
    story is told stays plain. With a story the header names what it counts. ``seed`` varies the words.

    >>> from onewhole.statements.reading import read_statement
    >>> header, problems = labelled(Header(), {read_statement("5 1/3 - 2 2/3"): None})
    >>> [(problem.label, problem.typed) for problem in problems]
    [('1', '5 1/3 - 2 2/3')]
    """
    order = sorted(told, key=lambda one: (difficulty(one, header.taught).score, text(one)))
    own = (
        replace(header, words=spoken_by(header.words).stories.whole(header.words))
        if any(one is not None for one in told.values())
        else header
    )
    return own, tuple(
        _problem(str(at), one, own, like=told[one], seed=seed + at) for at, one in enumerate(order, 1)
    )


def _problem(label: str, statement: Statement, header: Header, *, like: ToldAs | None, seed: int) -> Problem:
    """Return a problem, told as a story like another one where that is wanted and can be done."""
    if like is not None:
        try:
            return told_like(statement, header, like, seed).problem(label)
        except NoStoryError:
            pass
    return Problem(label, statement, text(statement))


def told_like(statement: Statement, header: Header, like: ToldAs, seed: int) -> Story:
    """Tell a statement; where the words of the other story may mislead, in such words if there are any."""

    def way(more: int) -> Story:
        return story(statement, seed=seed + more, words=header.words, remainder=header.remainder)

    first = way(0)
    if like == PLAIN_STORY:
        return first
    return next((one for one in map(way, range(WAYS)) if one.telling == like), first)
