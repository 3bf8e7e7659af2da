"""What a bar picture of a story has: rows of stretches, all to one scale, and the brackets round them."""

from enum import Enum
from fractions import Fraction
from typing import assert_never

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.pictures.bar import DIGITS
from onewhole.pictures.caption import Groups
from onewhole.pictures.labels import BLANK, SIGN, across
from onewhole.pictures.labels import DIGITS as USUAL
from onewhole.statements.gap import HOLE, type_hole

#: What may be written at a stretch or a bracket; None where nothing is.
Written = Quantity | Groups | type_hole | None


class StretchRole(Enum):
    """What a stretch is: known or found on the way, asked for, lacking, or parts not drawn apart."""

    PART = "part"
    ASKED = "asked"
    LACKING = "lacking"
    UNCUT = "uncut"


class Stretch(Struct, frozen=True):
    """A stretch of a bar: its length as an amount, what is written at it, and what it is."""

    amount: Fraction
    written: Written = None
    role: StretchRole = StretchRole.PART


class BarRow(Struct, frozen=True):
    """One bar: its stretches from left to right, and what the bracket over all of it says.

    ``bracketed`` draws a bracket over the bar, also where nothing is written at it. ``under`` stands at a
    bracket under its first ``counted`` stretches (all where that is None). ``equal`` says how many equal
    parts it has, where all are equal or all but what is left over.
    """

    stretches: tuple[Stretch, ...]
    over: Written = None
    bracketed: bool = False
    under: Written = None
    counted: int | None = None
    equal: Groups | None = None

    @property
    def amount(self) -> Fraction:
        """Return how long it is, with what it lacks."""
        return sum((one.amount for one in self.stretches), Fraction(0))

    @property
    def there(self) -> tuple[Stretch, ...]:
        """Return its stretches without what it lacks."""
        return tuple(one for one in self.stretches if one.role is not StretchRole.LACKING)


class Bars(Struct, frozen=True):
    """The bars of a story, one under another."""

    rows: tuple[BarRow, ...]


class Rectangle(Struct, frozen=True):
    """A rectangle with its two sides, as long as they are; what is written at each and inside.

    ``squares`` says of each side whether it is marked off in ones. A rectangle with sides under 1 is a
    part of a square whose sides are 1.
    """

    down: Fraction
    across: Fraction
    sides: tuple[Written, Written]
    inside: Written
    squares: tuple[bool, bool] = (False, False)


#: The picture of a story.
StoryShape = Bars | Rectangle


def blank_or(found: Quantity | None) -> Quantity | type_hole:
    """Return what was found, or a blank."""
    return HOLE if found is None else found


def room_across(written: Written) -> Fraction:
    """Return how many millimetres something takes across that is written on a bar, with a little beside it.

    >>> from onewhole.number.quantity import whole
    >>> room_across(whole(52)), room_across(HOLE), room_across(None)
    (Fraction(64, 5), Fraction(37, 5), Fraction(0, 1))
    """
    match written:
        case None:
            return Fraction(0)
        case Quantity():
            wide = across(written)
        case Groups(count):
            wide = SIGN * (len(str(count or 0)) + 2)
        case _:
            wide = SIGN
    return wide * DIGITS / USUAL + BLANK


def is_open(shape: StoryShape) -> bool:
    """Say whether a blank stands anywhere."""
    match shape:
        case Bars(rows):
            written = [one for row in rows for one in (row.over, row.under)]
            written += [stretch.written for row in rows for stretch in row.stretches]
        case Rectangle(sides=sides, inside=inside):
            written = [*sides, inside]
        case _:
            assert_never(shape)
    return HOLE in written or Groups(None) in written
