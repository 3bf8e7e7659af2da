"""Thoughts about which is more, about the same amount in other pieces, and about the point."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class BiggerBottom:
    """Both need the same bottom, so the bigger one is taken."""

    bottom: int


@dataclass(frozen=True, slots=True)
class StartedWith:
    """The first number has these pieces, so the answer has them too."""

    small: Unit


@dataclass(frozen=True, slots=True)
class SameStep:
    """From ``start`` to ``end`` something is added or taken, so as much is done to the other part."""

    start: int
    end: int
    other: int
    becomes: int


@dataclass(frozen=True, slots=True)
class OneChanges:
    """The top becomes another number, and the bottom may stay."""

    top: int
    becomes: int
    bottom: int


@dataclass(frozen=True, slots=True)
class StillSoMany:
    """The pieces change into others, and there are still so many of them."""

    old: Unit
    new: Unit
    count: int


@dataclass(frozen=True, slots=True)
class EvensOut:
    """One part gets smaller and the other larger: it may seem to even out."""

    top: int
    new_top: int
    bottom: int
    new_bottom: int


@dataclass(frozen=True, slots=True)
class CrossesOut:
    """The same digit stands in both, so it is crossed out."""

    digit: int


@dataclass(frozen=True, slots=True)
class BiggerNumber:
    """The one number is more than the other."""

    more: int
    less: int


@dataclass(frozen=True, slots=True)
class MorePieces:
    """So many pieces are more than so many."""

    more: int
    less: int


@dataclass(frozen=True, slots=True)
class BiggerPiecesWin:
    """The one kind of piece is bigger, so it wins."""

    bigger: Unit
    smaller: Unit


@dataclass(frozen=True, slots=True)
class SameGap:
    """Each has as many pieces missing, so they may look the same."""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class FewerMissing:
    """One has fewer pieces missing, so it is more."""

    more: Quantity
    less: Quantity


@dataclass(frozen=True, slots=True)
class BiggerDigits:
    """The digits of the one look bigger than those of the other."""

    more: Quantity
    less: Quantity


@dataclass(frozen=True, slots=True)
class TwoSubtractions:
    """Before the point one subtraction, after it another."""

    first: int
    second: int
    after_first: int
    after_second: int


@dataclass(frozen=True, slots=True)
class TwoAdditions:
    """After the point two whole numbers are added."""

    first: int
    second: int


@dataclass(frozen=True, slots=True)
class MoreDigits:
    """A number with more digits after the point is more."""

    longer: Quantity
    shorter: Quantity


@dataclass(frozen=True, slots=True)
class SmallerPlaces:
    """The places of the longer number are smaller, so the number is."""

    small: Unit
    large: Unit
    longer: Quantity


@dataclass(frozen=True, slots=True)
class TopAfterPoint:
    """It is less than one, so the top number stands after the point."""

    top: int


@dataclass(frozen=True, slots=True)
class TurnedOver:
    """One fraction is turned over, ``fraction`` into ``turned``; then tops and bottoms are worked apart."""

    fraction: Quantity
    turned: Quantity


@dataclass(frozen=True, slots=True)
class BottomsCounted:
    """Tops and bottoms are worked apart, and two bottoms together (``taken``: from one another) give one."""

    one: int
    other: int
    found: int
    taken: bool


#: Every thought about sizes.
SizeThought = (
    BiggerBottom
    | StartedWith
    | SameStep
    | OneChanges
    | StillSoMany
    | EvensOut
    | CrossesOut
    | BiggerNumber
    | MorePieces
    | BiggerPiecesWin
    | SameGap
    | FewerMissing
    | BiggerDigits
    | TwoSubtractions
    | TwoAdditions
    | MoreDigits
    | SmallerPlaces
    | TopAfterPoint
    | TurnedOver
    | BottomsCounted
)
