"""Thoughts about which is more, about the same amount in other pieces, and about the point."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class BiggerBottom(Struct, frozen=True):
    """Both need the same bottom, so the bigger one is taken."""

    bottom: int


class StartedWith(Struct, frozen=True):
    """The first number has these pieces, so the answer has them too."""

    small: Unit


class SameStep(Struct, frozen=True):
    """From ``start`` to ``end`` something is added or taken, so as much is done to the other part."""

    start: int
    end: int
    other: int
    becomes: int


class OneChanges(Struct, frozen=True):
    """The top becomes another number, and the bottom may stay."""

    top: int
    becomes: int
    bottom: int


class StillSoMany(Struct, frozen=True):
    """The pieces change into others, and there are still so many of them."""

    old: Unit
    new: Unit
    count: int


class EvensOut(Struct, frozen=True):
    """One part gets smaller and the other larger: it may seem to even out."""

    top: int
    new_top: int
    bottom: int
    new_bottom: int


class CrossesOut(Struct, frozen=True):
    """The same digit stands in both, so it is crossed out."""

    digit: int


class BiggerNumber(Struct, frozen=True):
    """The one number is more than the other."""

    more: int
    less: int


class MorePieces(Struct, frozen=True):
    """So many pieces are more than so many."""

    more: int
    less: int


class BiggerPiecesWin(Struct, frozen=True):
    """The one kind of piece is bigger, so it wins."""

    bigger: Unit
    smaller: Unit


class SameGap(Struct, frozen=True):
    """Each has as many pieces missing, so they may look the same."""

    first: Quantity
    second: Quantity


class FewerMissing(Struct, frozen=True):
    """One has fewer pieces missing, so it is more."""

    more: Quantity
    less: Quantity


class BiggerDigits(Struct, frozen=True):
    """The digits of the one look bigger than those of the other."""

    more: Quantity
    less: Quantity


class TwoSubtractions(Struct, frozen=True):
    """Before the point one subtraction, after it another."""

    first: int
    second: int
    after_first: int
    after_second: int


class TwoAdditions(Struct, frozen=True):
    """After the point two whole numbers are added."""

    first: int
    second: int


class MoreDigits(Struct, frozen=True):
    """A number with more digits after the point is more."""

    longer: Quantity
    shorter: Quantity


class SmallerPlaces(Struct, frozen=True):
    """The places of the longer number are smaller, so the number is."""

    small: Unit
    large: Unit
    longer: Quantity


class TopAfterPoint(Struct, frozen=True):
    """It is less than one, so the top number stands after the point."""

    top: int


class TurnedOver(Struct, frozen=True):
    """One fraction is turned over, ``fraction`` into ``turned``; then tops and bottoms are worked apart."""

    fraction: Quantity
    turned: Quantity


class BottomsCounted(Struct, frozen=True):
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
