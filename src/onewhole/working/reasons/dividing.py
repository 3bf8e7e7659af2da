"""Sharing a number out unit by unit, measuring it out in groups, and what is left over."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.whole_groups import GroupsAsk


class SharedOut(Struct, frozen=True):
    """Of ``have`` units each of the ``by`` shares gets ``each``; ``left`` of the unit are not given out.

    ``named`` says that wholes go by the class's own word: they are things, and no places of a whole number.
    """

    unit: Unit
    have: int
    by: int
    each: int
    left: int
    named: bool


class LeftRegrouped(Struct, frozen=True):
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


class PiecesCut(Struct, frozen=True):
    """Each of ``count`` pieces is cut into ``into`` equal parts, so that all of them can be shared out.

    Source: 5.NF.B.7.a and 5.NF.B.3, CCSSM (2010).
    """

    unit: Unit
    finer: Unit
    count: int
    into: int


class LeftOver(Struct, frozen=True):
    """``left`` is too little to share among ``by``, or to make one more group of ``by``: the remainder."""

    left: Quantity
    by: Quantity


class LeftSharedToo(Struct, frozen=True):
    """The remainder is shared too: of ``left`` ones each of ``by`` shares gets as many parts of one.

    Source: 5.NF.B.3 (a fraction is the numerator divided by the denominator), CCSSM (2010).
    """

    left: int
    by: int


class GroupsTaken(Struct, frozen=True):
    """``groups`` groups of ``by`` are ``taken`` out, and ``left`` is still there."""

    groups: int
    by: int
    taken: int
    left: int


class KnownQuotient(Struct, frozen=True):
    """``by`` times ``quotient`` is the number, and that is known by heart.

    Source: 3.OA.B.6 (division as an unknown factor) and 3.OA.C.7, CCSSM (2010).
    """

    by: int
    quotient: int


class EachWholeCut(Struct, frozen=True):
    """Each of ``wholes`` wholes is cut into ``by`` parts, and each share gets one part of every whole.

    Source: 5.NF.B.3, CCSSM (2010).
    """

    wholes: int
    by: int


class InOneUnit(Struct, frozen=True):
    """Numbers are counted in one unit: pairs of a number and how many of it there are, with the unit."""

    counted: tuple[tuple[Quantity, int], ...]
    unit: Unit


class GroupsOfUnits(Struct, frozen=True):
    """``have`` of a unit in groups of ``group`` of it are as many groups as ``have`` divided by ``group``."""

    have: int
    group: int
    unit: Unit


class DividedIsFraction(Struct, frozen=True):
    """``number`` divided by ``by`` is a fraction with these two numbers. Source: 5.NF.B.3, CCSSM (2010)."""

    number: int
    by: int


class DigitsRunOn(Struct, frozen=True):
    """The digits after the point would go on without end, so the number is written with pieces."""

    number: Quantity
    written: Quantity


class GroupsOf(Struct, frozen=True):
    """How many groups of ``by`` there are in ``number`` is found by dividing (3.OA.A.2, CCSSM 2010)."""

    number: int
    by: int


class GroupsAnswered(Struct, frozen=True):
    """Of ``full`` full groups and ``left`` things beside them that number is taken that is asked for.

    Source: what a remainder means is to be read from the question (4.OA.A.3, CCSSM 2010).
    """

    asks: GroupsAsk
    full: int
    left: int


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
    | GroupsOf
    | GroupsAnswered
)
