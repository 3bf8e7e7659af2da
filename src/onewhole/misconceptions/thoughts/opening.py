"""Thoughts about a larger unit that is opened, or that is not."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class TurnedAround:
    """``need`` cannot be taken from ``have``, so ``have`` is taken from ``need``."""

    have: int
    need: int


@dataclass(frozen=True, slots=True)
class LooksUnused:
    """One of the large unit was opened, and it may look as if nothing was used."""

    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class CrossedThenTurned:
    """One of the large unit is crossed off out of habit, then ``have`` is taken from ``need``."""

    large: Unit
    have: int
    need: int


@dataclass(frozen=True, slots=True)
class AlwaysTenMore:
    """Regrouping one of the large unit gives ten more."""

    large: Unit


@dataclass(frozen=True, slots=True)
class HundredMore:
    """One of the large unit is a hundred of the small one, as with money."""

    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class OneMovesOver:
    """One moves over from the large unit to the small one."""

    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class InPlaceOf:
    """One of the large unit is ``ratio`` of the small one, written in place of the ``have`` there."""

    large: Unit
    small: Unit
    ratio: int
    have: int


@dataclass(frozen=True, slots=True)
class CrossedTwice:
    """One of the large unit is crossed off to get the small one, and once more when it is subtracted."""

    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class OneMustGo:
    """One of the large unit must go, from one number or the other."""

    large: Unit
    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class PiecesDone:
    """The hard part with the small unit is done."""

    small: Unit


@dataclass(frozen=True, slots=True)
class AlwaysCrosses:
    """One of the large unit is always crossed off first."""

    large: Unit


@dataclass(frozen=True, slots=True)
class AlwaysOpens:
    """One of the large unit is always opened first."""

    large: Unit


@dataclass(frozen=True, slots=True)
class AllGone:
    """``have`` are there and ``need`` must go, so nothing is left."""

    have: int
    need: int


@dataclass(frozen=True, slots=True)
class NothingAbove:
    """There is nothing above a part of the second number, so that comes down."""

    part: Quantity


@dataclass(frozen=True, slots=True)
class NothingAfterPoint:
    """The first number has nothing after the point, so what the second one has comes down."""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class CompletesOne:
    """``part`` and ``rest`` make one of the large unit, so ``rest`` is left."""

    part: Quantity
    rest: Quantity
    large: Unit


@dataclass(frozen=True, slots=True)
class WholesStay:
    """Only a fraction is taken, so the wholes may seem to stay."""

    second: Quantity
    first: Quantity


@dataclass(frozen=True, slots=True)
class OneUsed:
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
