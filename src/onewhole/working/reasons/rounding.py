"""A number between its two neighbors on a rung, and which of them is nearer."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class BetweenNeighbors(Struct, frozen=True):
    """Counting by a unit, a number comes after ``low`` and before ``high``."""

    unit: Unit
    number: Quantity
    low: Quantity
    high: Quantity


class PastHalfway(Struct, frozen=True):
    """``middle`` is halfway between the neighbors, and the number is past it, or not that far (``past``)."""

    middle: Quantity
    number: Quantity
    past: bool


class NearerNeighbor(Struct, frozen=True):
    """The number is ``near`` from one neighbor and ``far`` from the other, so it is rounded to the first."""

    near: Quantity
    nearer: Quantity
    far: Quantity
    other: Quantity


class ExactlyHalfway(Struct, frozen=True):
    """The number is as far from one neighbor as from the other; by agreement it is rounded up.

    The standards have no rule for it, and a state that publishes how it scores takes either (Ohio, grades 3
    to 5); rounding half up is common practice, no source.
    """

    low: Quantity
    high: Quantity
    far: Quantity


class NothingOver(Struct, frozen=True):
    """The number is exactly ``count`` of the unit, so it stays."""

    number: Quantity
    unit: Unit
    count: int


#: Every reason that rounds.
InRounding = BetweenNeighbors | PastHalfway | NearerNeighbor | ExactlyHalfway | NothingOver
