"""One unit of counting: ones, tens, sixths, feet, minutes."""

from enum import StrEnum
from fractions import Fraction

from msgspec import Struct

from onewhole.errors import OnewholeError


class KindError(OnewholeError, TypeError):
    """Two amounts that measure different things were put together, such as 5 ft + 2."""


class Kind(StrEnum):
    """What an amount measures. Only amounts of one kind add, subtract and compare.

    Feet and meters are two kinds here, and so are quarts and liters, pounds and kilograms: grades 3 to 5 stay
    within one system of measurement. Source: *Common Core State Standards for Mathematics* (2010), 4.MD.A.1.
    """

    NUMBER = "number"
    LENGTH = "length"
    WEIGHT = "weight"
    VOLUME = "liquid volume"
    TIME = "time"
    METRIC_LENGTH = "metric length"
    MASS = "mass"
    METRIC_VOLUME = "metric liquid volume"
    MONEY = "count of cents"


class Unit(Struct, frozen=True):
    """A unit of counting: ``size`` says how many reference units it is worth, exactly.

    The reference unit of a kind is one (number), inch (length), ounce (weight), fluid ounce (liquid volume),
    minute (time), millimeter, gram or milliliter. ``mark`` is the usual abbreviation of a measure. A number
    has one where a unit stands behind it (5 5/8 in) or a dollar sign before it ($3.25): its ones are inches
    then, or dollars; it is worked as the number that it is.

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
        if self.kind is not Kind.NUMBER and not self.mark:
            msg = "a measure has an abbreviation"
            raise ValueError(msg)


ONE = Unit(Fraction(1))
#: Stands before an amount of money in dollars; its smaller units are dimes and cents.
DOLLAR = "$"
#: Marks of a time of day on a clock (:mod:`~.clock`), without a.m. and p.m., and with them.
CLOCK, HALVES = "o'clock", "o'clock a.m. or p.m."
#: Stands close behind a count of cents.
CENT = "¢"
#: Dollars and cents have so many places after the point, or none.
CENT_PLACES = 2

#: The measures of the grade, largest first within a kind.
#: Source of the customary units: NIST Handbook 44, Appendix C, tables of United States customary units (from
#: memory; each value is also in the table of U.S. units of OpenStax Prealgebra 2e, read). The ton is the
#: short ton of 2,000 pounds. Source of the metric units: The International System of Units (SI Brochure, 9th
#: edition), table of prefixes, with the liter of 1,000 milliliters among the units used beside it (from
#: memory). Source of the units of time: the same, units used beside the SI; a week is 7 days.
MEASURES = (
    Unit(Fraction(63_360), Kind.LENGTH, "mi"),
    Unit(Fraction(36), Kind.LENGTH, "yd"),
    Unit(Fraction(12), Kind.LENGTH, "ft"),
    Unit(Fraction(1), Kind.LENGTH, "in"),
    Unit(Fraction(32_000), Kind.WEIGHT, "T"),
    Unit(Fraction(16), Kind.WEIGHT, "lb"),
    Unit(Fraction(1), Kind.WEIGHT, "oz"),
    Unit(Fraction(128), Kind.VOLUME, "gal"),
    Unit(Fraction(32), Kind.VOLUME, "qt"),
    Unit(Fraction(16), Kind.VOLUME, "pt"),
    Unit(Fraction(8), Kind.VOLUME, "c"),
    Unit(Fraction(1), Kind.VOLUME, "fl oz"),
    Unit(Fraction(10_080), Kind.TIME, "wk"),
    Unit(Fraction(1440), Kind.TIME, "d"),
    Unit(Fraction(60), Kind.TIME, "h"),
    Unit(Fraction(1), Kind.TIME, "min"),
    Unit(Fraction(1, 60), Kind.TIME, "s"),
    Unit(Fraction(1_000_000), Kind.METRIC_LENGTH, "km"),
    Unit(Fraction(1000), Kind.METRIC_LENGTH, "m"),
    Unit(Fraction(10), Kind.METRIC_LENGTH, "cm"),
    Unit(Fraction(1), Kind.METRIC_LENGTH, "mm"),
    Unit(Fraction(1000), Kind.MASS, "kg"),
    Unit(Fraction(1), Kind.MASS, "g"),
    Unit(Fraction(1000), Kind.METRIC_VOLUME, "L"),
    Unit(Fraction(1), Kind.METRIC_VOLUME, "mL"),
    Unit(Fraction(1), Kind.MONEY, CENT),
)


def unit_marked(mark: str) -> Unit:
    """Return the unit that stands behind a number by its abbreviation: one number itself for none.

    A dollar is a hundred cents.

    >>> unit_marked("ft").size, unit_marked("$").kind.name
    (Fraction(12, 1), 'MONEY')
    """
    if mark == DOLLAR:
        return Unit(Fraction(100), Kind.MONEY, DOLLAR)
    return next((unit for unit in MEASURES if unit.mark == mark), ONE)
