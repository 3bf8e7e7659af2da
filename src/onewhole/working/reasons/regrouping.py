"""Opening a larger unit, and putting full groups together again."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.working.reasons.parting import Parting


class OpensOne(Struct, frozen=True):
    """There are ``have`` of the smaller unit and ``need`` are taken, so one larger unit is opened.

    ``parting`` is how the number is parted for it.
    """

    large: Unit
    small: Unit
    have: int
    need: int
    parting: Parting


class OpensToMatch(Struct, frozen=True):
    """So many larger units are opened to get more of the smaller one."""

    large: Unit
    small: Unit
    times: int
    parting: Parting


class OneIsWorth(Struct, frozen=True):
    """One larger unit is worth ``ratio`` smaller ones."""

    large: Unit
    small: Unit
    ratio: int


class AreWorth(Struct, frozen=True):
    """``times`` larger units are worth ``worth`` smaller ones."""

    large: Unit
    small: Unit
    times: int
    worth: int


class PutTogether(Struct, frozen=True):
    """The ``opened`` smaller units join the ``had`` that were there, and make ``now``."""

    small: Unit
    opened: int
    had: int
    now: int


class FullGroups(Struct, frozen=True):
    """``ratio`` smaller units make one larger unit, and there are ``times`` full groups."""

    large: Unit
    small: Unit
    ratio: int
    times: int
    parting: Parting


class MakesLarger(Struct, frozen=True):
    """``had`` smaller units make ``times`` larger ones."""

    large: Unit
    small: Unit
    times: int
    had: int


class WrittenTogether(Struct, frozen=True):
    """The same amount, written the usual way."""

    result: Quantity


#: Every reason that regroups.
Regrouping = (
    OpensOne | OpensToMatch | OneIsWorth | AreWorth | PutTogether | FullGroups | MakesLarger | WrittenTogether
)
