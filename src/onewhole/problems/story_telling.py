"""What a word of a story suggests, and whether it compares: by what it asks and how it is built."""

from collections.abc import Mapping
from types import MappingProxyType

from onewhole.misconceptions.telling import PLAIN_STORY, Doing, ToldAs
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Stories of which every way to tell has a word that suggests something: "3 more than" where it is taken
#: away, "uses" or "gets" where what was there at first is asked, "times as much" where the smaller amount is.
#: Where the ways to tell differ, nothing is said. That such words mislead: Lewis & Mayer (1987), as told by
#: De Corte et al. (1990).
_SUGGESTS: Mapping[tuple[Asks, Structure], Doing] = MappingProxyType(
    {
        (Asks.SUM, Structure.TURNED): Doing.TAKING,
        (Asks.SUM, Structure.TAKE_FROM): Doing.TAKING,
        (Asks.DIFFERENCE, Structure.TURNED): Doing.ADDING,
        (Asks.CHANGE_ADDED, Structure.ADD_TO): Doing.ADDING,
        (Asks.START_ADDED, Structure.ADD_TO): Doing.ADDING,
        (Asks.START_ADDED, Structure.PART_UNKNOWN): Doing.ADDING,
        (Asks.START_TAKEN, Structure.TAKE_FROM): Doing.TAKING,
        (Asks.DIVIDED, Structure.TIMES_AS_MUCH): Doing.MULTIPLYING,
        (Asks.DIVIDED, Structure.HOW_MANY_TIMES): Doing.MULTIPLYING,
    }
)
#: Stories that compare two amounts of which one is unknown.
_COMPARES = frozenset(
    {
        (Asks.SUM, Structure.COMPARE),
        (Asks.SUM, Structure.TURNED),
        (Asks.DIFFERENCE, Structure.SMALLER_UNKNOWN),
        (Asks.DIFFERENCE, Structure.TURNED),
        (Asks.TIMES, Structure.TIMES_AS_MUCH),
        (Asks.DIVIDED, Structure.TIMES_AS_MUCH),
    }
)


def telling(asks: Asks, structure: Structure) -> ToldAs:
    """Return what a story may mislead with.

    >>> telling(Asks.DIFFERENCE, Structure.TURNED)
    ToldAs(suggests=<Doing.ADDING: '+'>, compares=True)
    """
    key = asks, structure
    found = ToldAs(_SUGGESTS.get(key), key in _COMPARES)
    return PLAIN_STORY if found == PLAIN_STORY else found
