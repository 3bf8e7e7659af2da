"""Taking and adding, unit by unit, and what is there in the end."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class TakenUnitByUnit:
    """Each of the units is taken from its like, the largest first."""

    units: tuple[Unit, ...]


@dataclass(frozen=True, slots=True)
class AddedUnitByUnit:
    """Each of the units is added to its like, the largest first."""

    units: tuple[Unit, ...]


@dataclass(frozen=True, slots=True)
class PiecesTaken:
    """``gone`` of a unit are taken from ``have``."""

    small: Unit
    have: int
    gone: int


@dataclass(frozen=True, slots=True)
class PiecesAdded:
    """``have`` and ``more`` of a unit are added."""

    small: Unit
    have: int
    more: int


@dataclass(frozen=True, slots=True)
class LargerUnitFirst:
    """The larger unit is taken first: ``count`` of it."""

    unit: Unit
    count: int


@dataclass(frozen=True, slots=True)
class UnitsTaken:
    """``gone`` of ``had`` units are taken."""

    unit: Unit
    had: int
    gone: int


@dataclass(frozen=True, slots=True)
class Left:
    """This is left when all is taken."""

    result: Quantity


@dataclass(frozen=True, slots=True)
class InAll:
    """This is there when all is added."""

    result: Quantity


@dataclass(frozen=True, slots=True)
class SoFar:
    """This is there when some is added, and a number is still to come."""

    result: Quantity


@dataclass(frozen=True, slots=True)
class SetAside:
    """The pieces are set aside, and all is taken from the wholes."""

    wholes: Quantity
    pieces: Quantity


@dataclass(frozen=True, slots=True)
class OpenedToTake:
    """The wholes are written as ``opened``, the same amount with enough of each unit."""

    wholes: Quantity
    opened: Quantity


@dataclass(frozen=True, slots=True)
class TakenFromWhole:
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
