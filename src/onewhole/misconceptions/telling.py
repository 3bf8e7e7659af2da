"""How a problem is told as a story, as far as its words may lead to another operation than the right one."""

from enum import Enum

from msgspec import Struct


class Doing(Enum):
    """What is done with the two numbers of a story."""

    ADDING = "+"
    TAKING = "-"
    MULTIPLYING = "x"
    DIVIDING = "/"

    @property
    def opposite(self) -> "Doing":
        """Return what undoes it.

        >>> Doing.TAKING.opposite is Doing.ADDING
        True
        """
        return _OPPOSITES[self]


_PAIRS = ((Doing.ADDING, Doing.TAKING), (Doing.MULTIPLYING, Doing.DIVIDING))
_OPPOSITES = {one: other for pair in _PAIRS for one, other in (pair, pair[::-1])}


class ToldAs(Struct, frozen=True):
    """A story: what a word in it suggests, None where that is not known, and whether it compares two amounts.

    Source: the tags of the second collection of error patterns, which says that they cannot be read off free
    text safely. So a story that a teacher typed is told without them.
    """

    suggests: Doing | None = None
    compares: bool = False


#: A story of which nothing but its equation is known.
PLAIN_STORY = ToldAs()
