"""Questions about a number that is written another way."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class PiecesBefore(Struct, frozen=True):
    """What were the pieces called before, and did they change size?"""

    fraction: Quantity
    wrote: Quantity


class BackToPieces(Struct, frozen=True):
    """So many wholes are how many pieces, and how many were there?"""

    fraction: Quantity
    wholes: int
    large: Unit
    small: Unit


class StillGoesInto(Struct, frozen=True):
    """Is there a number that still goes into top and bottom?"""

    wrote: Quantity


class LastDigitCalled(Struct, frozen=True):
    """What is the last digit of a decimal called?"""

    number: Quantity


class PartOfLarger(Struct, frozen=True):
    """What part of one of the larger unit are so many of the smaller one?"""

    large: Unit
    small: Unit
    count: int


class MadeOf(Struct, frozen=True):
    """So many of the larger unit are made: of how many of the smaller one, and how many were there?"""

    number: Quantity
    wholes: int
    large: Unit
    small: Unit


class StillMore(Struct, frozen=True):
    """Which is more, what was written or one of the numbers?"""

    wrote: Quantity
    number: Quantity


#: Every question about another name of a number.
NamingAsk = PiecesBefore | BackToPieces | StillGoesInto | LastDigitCalled | PartOfLarger | MadeOf | StillMore
