"""Taking and adding, unit by unit, and what is there in the end."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class TakenUnitByUnit(Struct, frozen=True):
    """Each of the units is taken from its like, the largest first."""

    units: tuple[Unit, ...]


class AddedUnitByUnit(Struct, frozen=True):
    """Each of the units is added to its like, the largest first."""

    units: tuple[Unit, ...]


class PiecesTaken(Struct, frozen=True):
    """``gone`` of a unit are taken from ``have``."""

    small: Unit
    have: int
    gone: int


class PiecesAdded(Struct, frozen=True):
    """``have`` and ``more`` of a unit are added."""

    small: Unit
    have: int
    more: int


class LargerUnitFirst(Struct, frozen=True):
    """The larger unit is taken first: ``count`` of it."""

    unit: Unit
    count: int


class UnitsTaken(Struct, frozen=True):
    """``gone`` of ``had`` units are taken."""

    unit: Unit
    had: int
    gone: int


class Left(Struct, frozen=True):
    """This is left when all is taken."""

    result: Quantity


class InAll(Struct, frozen=True):
    """This is there when all is added."""

    result: Quantity


class SoFar(Struct, frozen=True):
    """This is there when some is added, and a number is still to come."""

    result: Quantity


class SetAside(Struct, frozen=True):
    """The pieces are set aside, and all is taken from the wholes."""

    wholes: Quantity
    pieces: Quantity


class OpenedToTake(Struct, frozen=True):
    """The wholes are written as ``opened``, the same amount with enough of each unit."""

    wholes: Quantity
    opened: Quantity


class TakenFromWhole(Struct, frozen=True):
    """``left`` is left of the wholes; what was set aside comes back."""

    wholes: Quantity
    left: Quantity


#: Every reason that takes, adds or states the result.
Taking = (
    TakenUnitByUnit
    | AddedUnitByUnit
    | PiecesTaken
    | PiecesAdded
    | LargerUnitFirst
    | UnitsTaken
    | Left
    | InAll
    | SoFar
    | SetAside
    | OpenedToTake
    | TakenFromWhole
)
