"""Jumps along a number line, shifts of both numbers, and making a whole."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity


@dataclass(frozen=True, slots=True)
class CountedUp:
    """The way from ``start`` up to ``end`` goes by ``stops``, both of them among the stops."""

    start: Quantity
    end: Quantity
    stops: tuple[Quantity, ...]


@dataclass(frozen=True, slots=True)
class JumpLengths:
    """Each of so many jumps has a length."""

    jumps: int


@dataclass(frozen=True, slots=True)
class JumpedWholes:
    """From ``start`` the larger units are jumped on first."""

    start: Quantity
    wholes: Quantity


@dataclass(frozen=True, slots=True)
class JumpedToWhole:
    """From ``start`` a jump ``by`` so much lands on the next larger unit."""

    start: Quantity
    by: Quantity


@dataclass(frozen=True, slots=True)
class JumpedTo:
    """A jump has landed on ``reached``."""

    reached: Quantity


@dataclass(frozen=True, slots=True)
class GivenToMakeOne:
    """``first`` lacks ``by`` to the next larger unit; the other number gives it."""

    first: Quantity
    by: Quantity


@dataclass(frozen=True, slots=True)
class WholeAndRest:
    """What was filled and what is left of the other number are added."""

    filled: Quantity
    rest: Quantity


@dataclass(frozen=True, slots=True)
class SameToBoth:
    """``by`` is added to both numbers; ``second`` is the one that is taken."""

    by: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class EasierToTake:
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
