"""Thoughts about subtraction in columns."""

from msgspec import Struct

from onewhole.number.unit import Unit


class TenUnseen(Struct, frozen=True):
    """Ten more are simply there; that one of the larger place was used may not be seen."""

    large: Unit
    small: Unit


class DigitComesDown(Struct, frozen=True):
    """Only a zero stands above a digit, so the digit comes down."""

    digit: int


class SameDigits(Struct, frozen=True):
    """Both digits are the same, so that digit is written."""

    digit: int


class TopDigitStays(Struct, frozen=True):
    """``need`` cannot be taken from ``have``, so ``have`` stays."""

    have: int
    need: int


class StillTooFew(Struct, frozen=True):
    """One of the larger place was crossed off, and still ``need`` cannot be taken from ``have``."""

    large: Unit
    have: int
    need: int


class SmallOnesStay(Struct, frozen=True):
    """One of the larger place was crossed off; the smaller ones may look as if they stay."""

    large: Unit
    small: Unit


class JustEnough(Struct, frozen=True):
    """As many are taken from the larger place as the smaller one is short."""

    large: Unit
    small: Unit


class MakesItTen(Struct, frozen=True):
    """``need`` cannot be taken from zero, so the zero is made ten."""

    need: int


#: Every thought about columns.
ColumnThought = (
    TenUnseen
    | DigitComesDown
    | SameDigits
    | TopDigitStays
    | StillTooFew
    | SmallOnesStay
    | JustEnough
    | MakesItTen
)
