"""Sharing a number out unit by unit, measuring it out in groups, and what is left over."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class SharedOut:
    """Of ``have`` units each of the ``by`` shares gets ``each``; ``left`` of the unit are not given out.

    ``named`` says that wholes go by the class's own word: they are things, and no places of a whole number.
    """

    unit: Unit
    have: int
    by: int
    each: int
    left: int
    named: bool


@dataclass(frozen=True, slots=True)
class LeftRegrouped:
    """``count`` of a unit that are left are ``made`` of the next smaller one, ``now`` with those there.

    ``few`` is the number of shares where the unit was not shared out at all: there are too few for it.
    ``named`` as in :class:`SharedOut`.
    """

    large: Unit
    small: Unit
    count: int
    made: int
    now: int
    few: int | None
    named: bool


@dataclass(frozen=True, slots=True)
class PiecesCut:
    """Each of ``count`` pieces is cut into ``into`` equal parts, so that all of them can be shared out.

    Source: 5.NF.B.7.a and 5.NF.B.3, CCSSM (2010).
    """

    unit: Unit
    finer: Unit
    count: int
    into: int


@dataclass(frozen=True, slots=True)
class LeftOver:
    """``left`` is too little to share among ``by``, or to make one more group of ``by``: the remainder."""

    left: Quantity
    by: Quantity


@dataclass(frozen=True, slots=True)
class LeftSharedToo:
    """The remainder is shared too: of ``left`` ones each of ``by`` shares gets as many parts of one.

    Source: 5.NF.B.3 (a fraction is the numerator divided by the denominator), CCSSM (2010).
    """

    left: int
    by: int


@dataclass(frozen=True, slots=True)
class GroupsTaken:
    """``groups`` groups of ``by`` are ``taken`` out, and ``left`` is still there."""

    groups: int
    by: int
    taken: int
    left: int


@dataclass(frozen=True, slots=True)
class KnownQuotient:
    """``by`` times ``quotient`` is the number, and that is known by heart.

    Source: 3.OA.B.6 (division as an unknown factor) and 3.OA.C.7, CCSSM (2010).
    """

    by: int
    quotient: int


@dataclass(frozen=True, slots=True)
class EachWholeCut:
    """Each of ``wholes`` wholes is cut into ``by`` parts, and each share gets one part of every whole.

    Source: 5.NF.B.3, CCSSM (2010).
    """

    wholes: int
    by: int


@dataclass(frozen=True, slots=True)
class InOneUnit:
    """Numbers are counted in one unit: pairs of a number and how many of it there are, with the unit."""

    counted: tuple[tuple[Quantity, int], ...]
    unit: Unit


@dataclass(frozen=True, slots=True)
class GroupsOfUnits:
    """``have`` of a unit in groups of ``group`` of it are as many groups as ``have`` divided by ``group``."""

    have: int
    group: int
    unit: Unit


@dataclass(frozen=True, slots=True)
class DividedIsFraction:
    """``number`` divided by ``by`` is a fraction with these two numbers. Source: 5.NF.B.3, CCSSM (2010)."""

    number: int
    by: int


@dataclass(frozen=True, slots=True)
class DigitsRunOn:
    """The digits after the point would go on without end, so the number is written with pieces."""

    number: Quantity
    written: Quantity


#: Every reason that divides.
Dividing = (
    SharedOut
    | LeftRegrouped
    | PiecesCut
    | LeftOver
    | LeftSharedToo
    | GroupsTaken
    | KnownQuotient
    | EachWholeCut
    | InOneUnit
    | GroupsOfUnits
    | DividedIsFraction
    | DigitsRunOn
)
