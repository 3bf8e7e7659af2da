"""Stories that may be asked after a page: like those that stand on it, and told in other ways too."""

from collections.abc import Iterator, Sequence
from itertools import islice

from onewhole.misconceptions.telling import ToldAs
from onewhole.problems.needs import Needs, needs
from onewhole.problems.parallel import parallel
from onewhole.problems.problem import Problem
from onewhole.problems.story_asks import NoStoryError
from onewhole.sheets.header import Header
from onewhole.sheets.labelled import WAYS, told_like
from onewhole.sheets.stories import story
from onewhole.statements.statement import Statement

#: So many kinds of stories of a page are looked at.
KINDS = 4
#: The first parallels of a problem are asked in numbers alone, so that a story has other numbers.
IN_NUMBERS = 2
LABEL = "1"


def stories_to_ask(header: Header, problems: Sequence[Problem]) -> tuple[Problem, ...]:
    """Return a few stories in the class's words, parallel to the first told problem of each kind.

    Each kind is told in every way in which words may mislead, and in one in which they do not: who chooses by
    a word is told apart by both. A page without stories has none.

    >>> from onewhole.statements.reading import read_statement
    >>> page = [story(read_statement("52 - 27")).problem("1")]
    >>> [one.telling.suggests for one in stories_to_ask(Header(), page) if one.telling]
    [None, <Doing.ADDING: '+'>]
    """
    first: dict[Needs, Statement] = {}
    for one in problems:
        if one.story:
            first.setdefault(needs(one.statement), one.statement)
    return tuple([told for asked in islice(first.values(), KINDS) for told in _like(asked, header)])


def _like(asked: Statement, header: Header) -> Iterator[Problem]:
    others = islice(parallel(asked), IN_NUMBERS, None)
    for seed, (like, other) in enumerate(zip(_tellings(asked, header), others, strict=False)):
        try:
            yield told_like(other, header, like, seed).problem(LABEL)
        except NoStoryError:
            continue


def _tellings(asked: Statement, header: Header) -> tuple[ToldAs, ...]:
    """Return the ways in which the stories of a statement may mislead, and that in which they do not."""
    try:
        told = [
            story(asked, seed=seed, words=header.words, remainder=header.remainder).telling
            for seed in range(WAYS)
        ]
    except NoStoryError:
        return ()
    return tuple(dict.fromkeys(told))
