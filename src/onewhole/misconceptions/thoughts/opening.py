"""Thoughts about a larger unit that is opened, or that is not."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class TurnedAround(Struct, frozen=True):
    """``need`` cannot be taken from ``have``, so ``have`` is taken from ``need``."""

    have: int
    need: int


class LooksUnused(Struct, frozen=True):
    """One of the large unit was opened, and it may look as if nothing was used."""

    large: Unit
    small: Unit


class CrossedThenTurned(Struct, frozen=True):
    """One of the large unit is crossed off out of habit, then ``have`` is taken from ``need``."""

    large: Unit
    have: int
    need: int


class AlwaysTenMore(Struct, frozen=True):
    """Regrouping one of the large unit gives ten more."""

    large: Unit


class HundredMore(Struct, frozen=True):
    """One of the large unit is a hundred of the small one, as with money."""

    large: Unit
    small: Unit


class OneMovesOver(Struct, frozen=True):
    """One moves over from the large unit to the small one."""

    large: Unit
    small: Unit


class InPlaceOf(Struct, frozen=True):
    """One of the large unit is ``ratio`` of the small one, written in place of the ``have`` there."""

    large: Unit
    small: Unit
    ratio: int
    have: int


class CrossedTwice(Struct, frozen=True):
    """One of the large unit is crossed off to get the small one, and once more when it is subtracted."""

    large: Unit
    small: Unit


class OneMustGo(Struct, frozen=True):
    """One of the large unit must go, from one number or the other."""

    large: Unit
    first: Quantity
    second: Quantity


class PiecesDone(Struct, frozen=True):
    """The hard part with the small unit is done."""

    small: Unit


class AlwaysCrosses(Struct, frozen=True):
    """One of the large unit is always crossed off first."""

    large: Unit


class AlwaysOpens(Struct, frozen=True):
    """One of the large unit is always opened first."""

    large: Unit


class AllGone(Struct, frozen=True):
    """``have`` are there and ``need`` must go, so nothing is left."""

    have: int
    need: int


class NothingAbove(Struct, frozen=True):
    """There is nothing above a part of the second number, so that comes down."""

    part: Quantity


class NothingAfterPoint(Struct, frozen=True):
    """The first number has nothing after the point, so what the second one has comes down."""

    first: Quantity
    second: Quantity


class CompletesOne(Struct, frozen=True):
    """``part`` and ``rest`` make one of the large unit, so ``rest`` is left."""

    part: Quantity
    rest: Quantity
    large: Unit


class WholesStay(Struct, frozen=True):
    """Only a fraction is taken, so the wholes may seem to stay."""

    second: Quantity
    first: Quantity


class OneUsed(Struct, frozen=True):
    """The small unit was got, and that one of the ones, or dollars, was used may be forgotten."""

    one: Unit
    small: Unit


#: Every thought about opening.
OpeningThought = (
    TurnedAround
    | LooksUnused
    | CrossedThenTurned
    | AlwaysTenMore
    | HundredMore
    | OneMovesOver
    | InPlaceOf
    | CrossedTwice
    | OneMustGo
    | PiecesDone
    | AlwaysCrosses
    | AlwaysOpens
    | AllGone
    | NothingAbove
    | NothingAfterPoint
    | CompletesOne
    | WholesStay
    | OneUsed
)
