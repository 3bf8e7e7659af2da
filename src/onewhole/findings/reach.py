"""Whether a pupil reached the pass mark."""

from enum import Enum


class Reach(Enum):
    """Whether a pupil reached the pass mark. ``LOOK``: that depends on answers that could not be read.

    The value is the key that is told to programs, and never shown.
    """

    REACHED = "reached"
    NOT_YET = "not yet"
    LOOK = "look at the paper"
    ABSENT = "nothing written"
