"""Jumps along a number line, shifts of both numbers, and making a whole."""

from msgspec import Struct

from onewhole.number.quantity import Quantity


class CountedUp(Struct, frozen=True):
    """The way from ``start`` up to ``end`` goes by ``stops``, both of them among the stops."""

    start: Quantity
    end: Quantity
    stops: tuple[Quantity, ...]


class JumpLengths(Struct, frozen=True):
    """Each of so many jumps has a length."""

    jumps: int


class JumpedWholes(Struct, frozen=True):
    """From ``start`` the larger units are jumped on first."""

    start: Quantity
    wholes: Quantity


class JumpedToWhole(Struct, frozen=True):
    """From ``start`` a jump ``by`` so much lands on the next larger unit."""

    start: Quantity
    by: Quantity


class JumpedTo(Struct, frozen=True):
    """A jump has landed on ``reached``."""

    reached: Quantity


class GivenToMakeOne(Struct, frozen=True):
    """``first`` lacks ``by`` to the next larger unit; the other number gives it."""

    first: Quantity
    by: Quantity


class WholeAndRest(Struct, frozen=True):
    """What was filled and what is left of the other number are added."""

    filled: Quantity
    rest: Quantity


class SameToBoth(Struct, frozen=True):
    """``by`` is added to both numbers; ``second`` is the one that is taken."""

    by: Quantity
    second: Quantity


class EasierToTake(Struct, frozen=True):
    """``second`` is now easier to take away."""

    second: Quantity


#: Every reason of a jump, a shift or a filled whole.
Jumping = (
    CountedUp
    | JumpLengths
    | JumpedWholes
    | JumpedToWhole
    | JumpedTo
    | GivenToMakeOne
    | WholeAndRest
    | SameToBoth
    | EasierToTake
)
