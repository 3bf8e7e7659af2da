"""Taking a number so many times, part by part, and multiplying fractions."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class TurnedRound(Struct, frozen=True):
    """``left`` times ``right`` is as much as ``right`` times ``left``."""

    left: Quantity
    right: Quantity


class EachUnitTimes(Struct, frozen=True):
    """Each of the units of a number is taken ``times`` times, the largest first."""

    times: int
    units: tuple[Unit, ...]


class UnitTimes(Struct, frozen=True):
    """``times`` times ``count`` of a unit."""

    times: int
    count: int
    unit: Unit


class UnitsTimes(Struct, frozen=True):
    """``times`` times so many of each unit: the counts and their units, the largest first."""

    times: int
    counts: tuple[tuple[int, Unit], ...]


class EqualParts(Struct, frozen=True):
    """``times`` times a number is the number added so many times."""

    times: int
    number: Quantity


class SplitToMultiply(Struct, frozen=True):
    """Numbers are split into parts, and each part of one is multiplied by each part of the other.

    ``splits`` are the numbers that are split, each with its parts, the largest first; ``other`` is the number
    that is not split, or None where both are.
    """

    splits: tuple[tuple[Quantity, tuple[Quantity, ...]], ...]
    other: Quantity | None


class PartsMultiplied(Struct, frozen=True):
    """Each product of two parts: the parts, and what they make."""

    products: tuple[tuple[Quantity, Quantity, Quantity], ...]


class KnownProduct(Struct, frozen=True):
    """A product that is known by heart. Source: 3.OA.C.7, CCSSM (2010)."""

    left: int
    right: int


class PlacesMultiplied(Struct, frozen=True):
    """``left`` of one unit times ``right`` of another: 2 tens times 3 tens are 6 hundreds."""

    left: int
    one: Unit
    right: int
    other: Unit
    made: Unit


class OneFractionEach(Struct, frozen=True):
    """Numbers are written as one fraction each: pairs of a number and its fraction."""

    written: tuple[tuple[Quantity, Quantity], ...]


class TopsAndBottoms(Struct, frozen=True):
    """Numerators are multiplied, and denominators: a whole cut into ``first`` parts, each into ``second``.

    Source: 5.NF.B.4.a, CCSSM (2010).
    """

    first: int
    second: int


class SharesTaken(Struct, frozen=True):
    """A part of a whole, ``part``, is one of as many equal shares; ``times`` of them are taken.

    Source: 5.NF.B.4.a, CCSSM (2010).
    """

    part: Unit
    times: int

    @property
    def shares(self) -> int:
        """Return how many shares there are."""
        return int(1 / self.part.size)


#: Every reason that multiplies.
Multiplying = (
    TurnedRound
    | EachUnitTimes
    | UnitTimes
    | UnitsTimes
    | EqualParts
    | SplitToMultiply
    | PartsMultiplied
    | KnownProduct
    | PlacesMultiplied
    | OneFractionEach
    | TopsAndBottoms
    | SharesTaken
)
