"""Numbers put in order: what is done to them first, and what then tells the order of all of them."""

from dataclasses import dataclass

from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class AllOfOneSize:
    """Every number is written with pieces of one size."""

    small: Unit


@dataclass(frozen=True, slots=True)
class AllInOneUnit:
    """Every measure is counted in the smallest unit."""

    small: Unit


@dataclass(frozen=True, slots=True)
class OnlyCounts:
    """All count the same unit, so the counts tell the order."""

    small: Unit


@dataclass(frozen=True, slots=True)
class WholesThenPieces:
    """The wholes tell the order, and where they are the same, the pieces of one size beside them."""

    whole: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class LargerPiecesMore:
    """All have ``count`` pieces, so the larger the pieces are, the more there is."""

    count: int


@dataclass(frozen=True, slots=True)
class WholesAllDiffer:
    """All have another number of wholes, and that tells the order."""

    whole: Unit


@dataclass(frozen=True, slots=True)
class NeighborsCompared:
    """Each number was compared with its neighbor, and so all stand in order."""

    falling: bool


#: Every reason that puts numbers in order.
InOrdering = (
    AllOfOneSize
    | AllInOneUnit
    | OnlyCounts
    | WholesThenPieces
    | LargerPiecesMore
    | WholesAllDiffer
    | NeighborsCompared
)
