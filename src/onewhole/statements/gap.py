"""A number with one part missing, to be found: 6 ?/6, ?/12, 9/?, or ? alone."""

from enum import Enum
from fractions import Fraction
from typing import Final, Literal

from msgspec import Struct

from onewhole.errors import OnewholeError


class NoSuchNumberError(OnewholeError, ValueError):
    """No whole number in the gap makes the statement true."""


class Hole(Enum):
    """The missing part itself."""

    HERE = "?"


HOLE: Final = Hole.HERE
type_hole = Literal[Hole.HERE]


class Gap(Struct, frozen=True):
    """A mixed number, fraction or whole number in which exactly one part is a hole.

    >>> Gap(6, HOLE, 6).filling(Fraction(22, 3))
    8
    """

    wholes: int | type_hole | None
    top: int | type_hole | None = None
    bottom: int | type_hole | None = None

    def __post_init__(self) -> None:
        """Refuse anything but one hole, and half a fraction."""
        if [self.wholes, self.top, self.bottom].count(HOLE) != 1:
            msg = "exactly one part is missing"
            raise ValueError(msg)
        if (self.top is None) != (self.bottom is None):
            msg = "a fraction has a numerator and a denominator"
            raise ValueError(msg)

    @property
    def alone(self) -> bool:
        """Say whether the whole number is missing and no fraction stands beside it: any amount fits."""
        return self.wholes is HOLE and self.top is None

    def filling(self, amount: Fraction) -> Fraction | int:
        """Return what must stand in the hole so that this number is worth ``amount``.

        A part of a fraction must be a whole number; ``?`` alone may be any amount that is not negative.
        Raises NoSuchNumberError when nothing fits.
        """
        found = self._solve(amount)
        if found is None or found < 0 or (not self.alone and found.denominator != 1):
            msg = "no whole number in the place of ? makes this true"
            raise NoSuchNumberError(msg, remedy="Change one of the other numbers.")
        return found if self.alone else found.numerator

    def _solve(self, amount: Fraction) -> Fraction | None:
        if self.alone:
            return amount
        if self.wholes is HOLE:
            return amount - Fraction(_known(self.top), _known(self.bottom))
        rest = amount - (self.wholes or 0)
        if self.top is HOLE:
            return rest * _known(self.bottom)
        return _known(self.top) / rest if rest > 0 and self.top else None


def _known(part: int | type_hole | None) -> int:
    """Return a part that is not the hole."""
    if isinstance(part, int):
        return part
    msg = "the missing part has no number yet"
    raise TypeError(msg)
