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


#: Every question about another name of a number.
NamingAsk = PiecesBefore | BackToPieces | StillGoesInto | LastDigitCalled
