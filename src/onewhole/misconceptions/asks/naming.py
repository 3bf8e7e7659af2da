"""Questions about a number that is written another way."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class PiecesBefore:
    """What were the pieces called before, and did they change size?"""

    fraction: Quantity
    wrote: Quantity


@dataclass(frozen=True, slots=True)
class BackToPieces:
    """So many wholes are how many pieces, and how many were there?"""

    fraction: Quantity
    wholes: int
    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class StillGoesInto:
    """Is there a number that still goes into top and bottom?"""

    wrote: Quantity


@dataclass(frozen=True, slots=True)
class LastDigitCalled:
    """What is the last digit of a decimal called?"""

    number: Quantity


@dataclass(frozen=True, slots=True)
class PartOfLarger:
    """What part of one of the larger unit are so many of the smaller one?"""

    large: Unit
    small: Unit
    count: int


@dataclass(frozen=True, slots=True)
class MadeOf:
    """So many of the larger unit are made: of how many of the smaller one, and how many were there?"""

    number: Quantity
    wholes: int
    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class StillMore:
    """Which is more, what was written or one of the numbers?"""

    wrote: Quantity
    number: Quantity


#: Every question about another name of a number.
NamingAsk = PiecesBefore | BackToPieces | StillGoesInto | LastDigitCalled | PartOfLarger | MadeOf | StillMore
