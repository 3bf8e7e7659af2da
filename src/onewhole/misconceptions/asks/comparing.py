"""Questions about which of two numbers is more: mixed numbers, decimals, whole numbers."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class SameWholes(Struct, frozen=True):
    """Both numbers have as many wholes: what more is in each?"""

    first: Quantity
    second: Quantity
    wholes: int
    large: Unit


class BetweenWholes(Struct, frozen=True):
    """Between which two whole numbers does each number lie?"""

    first: Quantity
    second: Quantity


class WholesFrom(Struct, frozen=True):
    """How many pieces make one whole, and how many wholes can be made of a fraction?"""

    fraction: Quantity
    small: Unit
    large: Unit


class HowManyIn(Struct, frozen=True):
    """How many of a place are there in each number, none of it traded?"""

    first: Quantity
    second: Quantity
    place: Unit


class AllInOnePlace(Struct, frozen=True):
    """Each number said as a count of one place: how many is it?"""

    first: Quantity
    second: Quantity
    place: Unit


class AnythingAfter(Struct, frozen=True):
    """Is there anything after a place in one of both numbers?"""

    first: Quantity
    second: Quantity
    place: Unit


class SignReadAloud(Struct, frozen=True):
    """A comparison read aloud with the sign that was written: which is said to be more?"""

    first: Quantity
    second: Quantity


#: Every question about which is more, beside those of :mod:`~.sizes`.
ComparingAsk = (
    SameWholes | BetweenWholes | WholesFrom | HowManyIn | AllInOnePlace | AnythingAfter | SignReadAloud
)
