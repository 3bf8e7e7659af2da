"""Numbers put in order: what is done to them first, and what then tells the order of all of them."""

from msgspec import Struct

from onewhole.number.unit import Unit


class AllOfOneSize(Struct, frozen=True):
    """Every number is written with pieces of one size."""

    small: Unit


class AllInOneUnit(Struct, frozen=True):
    """Every measure is counted in the smallest unit."""

    small: Unit


class OnlyCounts(Struct, frozen=True):
    """All count the same unit, so the counts tell the order."""

    small: Unit


class WholesThenPieces(Struct, frozen=True):
    """The wholes tell the order, and where they are the same, the pieces of one size beside them."""

    whole: Unit
    small: Unit


class LargerPiecesMore(Struct, frozen=True):
    """All have ``count`` pieces, so the larger the pieces are, the more there is."""

    count: int


class WholesAllDiffer(Struct, frozen=True):
    """All have another number of wholes, and that tells the order."""

    whole: Unit


class NeighborsCompared(Struct, frozen=True):
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
