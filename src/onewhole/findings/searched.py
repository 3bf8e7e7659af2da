"""Where a problem was looked for: so many sums or differences of one sort of numbers."""

from enum import Enum, auto

from msgspec import Struct


class NumberSort(Enum):
    """What the numbers of a listed space of problems are."""

    WHOLE_NUMBERS = auto()
    DECIMALS = auto()
    LIKE_PARTS = auto()
    UNLIKE_PARTS = auto()
    MEASURES = auto()


class Searched(Struct, frozen=True):
    """So many problems were looked at, differences where ``taken``, else sums."""

    sort: NumberSort
    taken: bool
    count: int
