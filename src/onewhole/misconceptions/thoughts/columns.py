"""Thoughts about subtraction in columns."""

from dataclasses import dataclass

from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class TenUnseen:
    """Ten more are simply there; that one of the larger place was used may not be seen."""

    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class DigitComesDown:
    """Only a zero stands above a digit, so the digit comes down."""

    digit: int


@dataclass(frozen=True, slots=True)
class SameDigits:
    """Both digits are the same, so that digit is written."""

    digit: int


@dataclass(frozen=True, slots=True)
class TopDigitStays:
    """``need`` cannot be taken from ``have``, so ``have`` stays."""

    have: int
    need: int


@dataclass(frozen=True, slots=True)
class StillTooFew:
    """One of the larger place was crossed off, and still ``need`` cannot be taken from ``have``."""

    large: Unit
    have: int
    need: int


@dataclass(frozen=True, slots=True)
class SmallOnesStay:
    """One of the larger place was crossed off; the smaller ones may look as if they stay."""

    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class JustEnough:
    """As many are taken from the larger place as the smaller one is short."""

    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class MakesItTen:
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
