"""A steady idea that no pattern describes: where it may act, and what is supposed of what it writes.

The catalogue is open: a child may hold to an idea that nobody listed. Of such an idea only this is supposed:
that it acts on all problems of some sort, and that what it writes there is wrong, in no way that we know.
"""

from collections.abc import Sequence
from enum import Enum

from onewhole.marking.reading.expected import Expected
from onewhole.problems.needs import Operation

#: An idea that can act on fewer problems of a page cannot be seen to be steady.
FEWEST = 2


class Where(Enum):
    """On which problems an unlisted idea acts. The value is the key that is kept from night to night."""

    EVERYWHERE = "unlisted-everywhere"
    OPENING = "unlisted-opening"
    TAKING = "unlisted-taking"
    MAKING = "unlisted-making"
    ADDING = "unlisted-adding"
    WHOLE_FIRST = "unlisted-whole-first"
    UNLIKE = "unlisted-unlike"


#: The sorts of problem on which a pattern's answers may be written, and not on the others that could show it.
PARTS = (Where.OPENING, Where.WHOLE_FIRST)


def where(asked: Expected) -> frozenset[Where]:
    """Return the sorts of problem that a problem belongs to.

    >>> from onewhole.marking.reading.expected import expect
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_statement
    >>> sorted(one.name for one in where(expect(Problem("1", read_statement("5 - 1 3/8"), "5 - 1 3/8"))))
    ['EVERYWHERE', 'OPENING', 'TAKING', 'WHOLE_FIRST']
    """
    needs = asked.needs
    taking, adding = Operation.SUBTRACT in needs.operations, Operation.ADD in needs.operations
    belongs = {
        Where.EVERYWHERE: True,
        Where.OPENING: taking and needs.regrouping,
        Where.TAKING: taking,
        Where.MAKING: adding and needs.regrouping,
        Where.ADDING: adding,
        Where.WHOLE_FIRST: needs.whole_first,
        Where.UNLIKE: needs.renaming,
    }
    return frozenset(one for one, held in belongs.items() if held)


def seen_on(asked: Sequence[Expected]) -> tuple[Where, ...]:
    """Return the sorts that a page can tell apart: two problems or more, and no two of the same problems."""
    found: dict[frozenset[int], Where] = {}
    for one in Where:
        places = frozenset(at for at, each in enumerate(asked) if one in where(each))
        if len(places) >= FEWEST:
            found.setdefault(places, one)
    return tuple(found.values())
