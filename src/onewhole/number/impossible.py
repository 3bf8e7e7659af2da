"""What can be written down but is no number: 3 3/0."""

from msgspec import Struct


class Impossible(Struct, frozen=True):
    """A fraction with no parts in a whole, as a child may write it after taking denominators away too.

    ``wholes`` is ``None`` when none is written. It has no value: nothing is cut into 0 equal parts.

    >>> Impossible(3, 3).wholes
    3
    """

    wholes: int | None
    top: int
