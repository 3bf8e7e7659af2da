"""Numbers written under each other: columns that are added, taken away, multiplied and divided."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class ColumnOpened(Struct, frozen=True):
    """One of a column's unit is regrouped: ``left`` of it stay, and there are ``now`` of the next column's.

    It is done because the column of ``short`` has ``have`` and ``need`` are taken from it. Where ``small`` is
    another unit than ``short``, zeros stand between them. ``begins`` marks the first of a row of openings
    that one column needs.
    """

    large: Unit
    small: Unit
    short: Unit
    have: int
    need: int
    left: int
    now: int
    begins: bool


class ColumnTaken(Struct, frozen=True):
    """``gone`` of a column's unit are taken from ``have``; ``blank`` where no digit stands below."""

    unit: Unit
    have: int
    gone: int
    blank: bool


class ColumnAdded(Struct, frozen=True):
    """The digits of a column and what was ``carried`` to it are added.

    ``large`` is the unit of the next column. ``outermost`` says that no digit stands in it, so that what is
    carried is written beside.
    """

    unit: Unit
    large: Unit
    digits: tuple[int, ...]
    carried: int
    outermost: bool

    @property
    def total(self) -> int:
        """Return how many of the unit there are.

        >>> from fractions import Fraction
        >>> one, ten = Unit(Fraction(1)), Unit(Fraction(10))
        >>> ColumnAdded(one, ten, (4, 6, 7), 0, outermost=False).total
        17
        """
        return sum(self.digits) + self.carried


class DigitsLaid(Struct, frozen=True):
    """Two numbers stand under each other, last digit under last digit, as if they had no points."""

    above: Quantity
    below: Quantity


class DigitMultiplied(Struct, frozen=True):
    """``digit`` of the upper number is taken ``times`` times, and what was ``carried`` is added.

    ``square`` is the place of the digit that is written, counted from the right from 0; ``row`` counts the
    partial products from 0. The ``unit`` is what the product counts, and ``large`` the next larger one.
    ``outermost`` says that no digit stands to the left, so that what is carried is written beside.
    """

    times: int
    digit: int
    carried: int
    unit: Unit
    large: Unit
    square: int
    row: int
    outermost: bool

    @property
    def total(self) -> int:
        """Return how many of the unit there are.

        >>> from fractions import Fraction
        >>> one, ten = Unit(Fraction(1)), Unit(Fraction(10))
        >>> DigitMultiplied(6, 7, 2, one, ten, 0, 0, outermost=False).total
        44
        """
        return self.times * self.digit + self.carried


class ZerosWritten(Struct, frozen=True):
    """The next partial product, by ``digit`` of a unit, begins with a zero for each place to its right."""

    digit: int
    unit: Unit
    zeros: int
    row: int


class ProductPoint(Struct, frozen=True):
    """The product has as many places after its point as both numbers together: ``first`` and ``second``."""

    first: int
    second: int


class QuotientDigit(Struct, frozen=True):
    """``by`` goes ``digit`` times into ``have`` of a unit: ``digit`` is written above, its product below.

    ``begins`` says that it is the first digit.
    """

    unit: Unit
    have: int
    by: int
    digit: int
    begins: bool

    @property
    def product(self) -> int:
        """Return what is taken away."""
        return self.digit * self.by


class DigitBroughtDown(Struct, frozen=True):
    """What is taken away leaves ``left`` of ``have``, and ``down``, the next digit, is brought down.

    Now there are ``now`` of the next unit. ``taken`` is what was taken away, and None where nothing was.
    ``point`` says that the next digit stands behind the point.
    """

    unit: Unit
    have: int
    taken: int | None
    down: int
    now: int
    point: bool

    @property
    def left(self) -> int:
        """Return what is left before a digit is brought down."""
        return self.have - (self.taken or 0)


class DivisionEnds(Struct, frozen=True):
    """What is taken away leaves ``left`` of ``have``: nothing, or the remainder, less than ``by``."""

    have: int
    taken: int | None
    by: int

    @property
    def left(self) -> int:
        """Return what is left at the end."""
        return self.have - (self.taken or 0)


#: A step of a number that is multiplied in columns, and one of a long division.
Multiplied = DigitsLaid | DigitMultiplied | ZerosWritten | ProductPoint
Divided = QuotientDigit | DigitBroughtDown | DivisionEnds

#: Every reason of a column.
InColumns = ColumnOpened | ColumnTaken | ColumnAdded | Multiplied | Divided
