"""The habits of a good page, which a composed page keeps where the wishes leave room."""

from enum import Enum, auto


class Habit(Enum):
    """A soft constraint of a good page: each is kept where the wishes and those before it leave room.

    Patterns are told apart; the page adds and takes away; it begins easy; it varies; few whole numbers stand
    first; hardly a number comes again.
    """

    APART = auto()
    BOTH = auto()
    CLIMB = auto()
    VARIETY = auto()
    WHOLES = auto()
    NUMBERS = auto()
