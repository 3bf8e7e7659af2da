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


class ActsOn(Enum):
    """On which problems an unlisted idea acts. The value is part of the key that is kept."""

    EVERYWHERE = "everywhere"
    OPENING = "opening"
    TAKING = "taking"
    MAKING = "making"
    ADDING = "adding"
    WHOLE_FIRST = "whole-first"
    UNLIKE = "unlike"


def where(asked: Expected) -> frozenset[ActsOn]:
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
        ActsOn.EVERYWHERE: True,
        ActsOn.OPENING: taking and needs.regrouping,
        ActsOn.TAKING: taking,
        ActsOn.MAKING: adding and needs.regrouping,
        ActsOn.ADDING: adding,
        ActsOn.WHOLE_FIRST: needs.whole_first,
        ActsOn.UNLIKE: needs.renaming,
    }
    return frozenset(one for one, held in belongs.items() if held)


def seen_on(asked: Sequence[Expected]) -> tuple[ActsOn, ...]:
    """Return the sorts that a page can tell apart: two problems or more, and no two of the same problems."""
    found: dict[frozenset[int], ActsOn] = {}
    for one in ActsOn:
        places = frozenset(at for at, each in enumerate(asked) if one in where(each))
        if len(places) >= FEWEST:
            found.setdefault(places, one)
    return tuple(found.values())
