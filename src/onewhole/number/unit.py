"""One unit of counting: ones, tens, sixths, feet, minutes."""

from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction

from onewhole.errors import OnewholeError


class KindError(OnewholeError, TypeError):
    """Two amounts that measure different things were put together, such as 5 ft + 2."""


class Kind(StrEnum):
    """What an amount measures. Only amounts of one kind add, subtract and compare."""

    NUMBER = "number"
    LENGTH = "length"
    WEIGHT = "weight"
    TIME = "time"


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit of counting: ``size`` says how many reference units it is worth, exactly.

    The reference unit of a kind is one (number), inch (length), ounce (weight) or minute (time). ``mark`` is
    the usual abbreviation of a measure, and empty for numbers.

    >>> Unit(Fraction(1, 6)).size
    Fraction(1, 6)
    """

    size: Fraction
    kind: Kind = Kind.NUMBER
    mark: str = ""

    def __post_init__(self) -> None:
        """Refuse a unit worth nothing, and a measure without its abbreviation."""
        if self.size <= 0:
            msg = f"a unit must be worth more than nothing, not {self.size}"
            raise ValueError(msg)
        if (self.kind is Kind.NUMBER) == bool(self.mark):
            msg = "a measure has an abbreviation and a number has none"
            raise ValueError(msg)


ONE = Unit(Fraction(1))

#: The measures of grade 4 that come in two units, largest first within a kind.
#: Source of the ratios 12, 16 and 60: Common Core State Standards for Mathematics (2010), 4.MD.A.1.
MEASURES = (
    Unit(Fraction(36), Kind.LENGTH, "yd"),
    Unit(Fraction(12), Kind.LENGTH, "ft"),
    Unit(Fraction(1), Kind.LENGTH, "in"),
    Unit(Fraction(16), Kind.WEIGHT, "lb"),
    Unit(Fraction(1), Kind.WEIGHT, "oz"),
    Unit(Fraction(60), Kind.TIME, "h"),
    Unit(Fraction(1), Kind.TIME, "min"),
)
