"""Opening a larger unit, and putting full groups together again."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.working.reasons.parting import Parting


@dataclass(frozen=True, slots=True)
class OpensOne:
    """There are ``have`` of the smaller unit and ``need`` are taken, so one larger unit is opened.

    ``parting`` is how the number is parted for it.
    """

    large: Unit
    small: Unit
    have: int
    need: int
    parting: Parting


@dataclass(frozen=True, slots=True)
class OpensToMatch:
    """So many larger units are opened to get more of the smaller one."""

    large: Unit
    small: Unit
    times: int
    parting: Parting


@dataclass(frozen=True, slots=True)
class OneIsWorth:
    """One larger unit is worth ``ratio`` smaller ones."""

    large: Unit
    small: Unit
    ratio: int


@dataclass(frozen=True, slots=True)
class AreWorth:
    """``times`` larger units are worth ``worth`` smaller ones."""

    large: Unit
    small: Unit
    times: int
    worth: int


@dataclass(frozen=True, slots=True)
class PutTogether:
    """The ``opened`` smaller units join the ``had`` that were there, and make ``now``."""

    small: Unit
    opened: int
    had: int
    now: int


@dataclass(frozen=True, slots=True)
class FullGroups:
    """``ratio`` smaller units make one larger unit, and there are ``times`` full groups."""

    large: Unit
    small: Unit
    ratio: int
    times: int
    parting: Parting


@dataclass(frozen=True, slots=True)
class MakesLarger:
    """``had`` smaller units make ``times`` larger ones."""

    large: Unit
    small: Unit
    times: int
    had: int


@dataclass(frozen=True, slots=True)
class WrittenTogether:
    """The same amount, written the usual way."""

    result: Quantity


#: Every reason that regroups.
Regrouping = (
    OpensOne | OpensToMatch | OneIsWorth | AreWorth | PutTogether | FullGroups | MakesLarger | WrittenTogether
)
