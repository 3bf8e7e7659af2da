"""Partial quotients: easy numbers of groups are taken out: of 87 / 4 first 20 groups, then 1 group.

Sources: 4.NBT.B.6 and 5.NBT.B.6 (the relationship between multiplication and division), CCSSM (2010). That
the easy numbers are 1, 2 and 5 of a place is common practice, no source.
"""

from msgspec.structs import replace

from onewhole.number.ladder import TEN
from onewhole.number.quantity import whole
from onewhole.statements.expression import WithRemainder
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.quotient_way import QuotientStep, QuotientWay
from onewhole.working.reasons.dividing import GroupsTaken, LeftOver
from onewhole.working.reasons.taking import InAll
from onewhole.working.reasons.unsuited import NotByWholes, TooFewToShare, Unsuited

#: Easy numbers of groups, in ones of a place.
EASY = (5, 2, 1)


def easy_groups(number: int, by: int) -> int:
    """Return the largest easy number of groups that a number holds.

    >>> easy_groups(87, 4), easy_groups(7, 4)
    (20, 1)
    """
    place = 1
    while place * TEN * by <= number:
        place *= TEN
    return next(place * easy for easy in EASY if place * easy * by <= number)


def take_groups(state: QuotientState) -> QuotientState:
    """Take groups out until less than one group is left."""
    by = state.right.parts
    while (number := state.left.parts) >= by:
        groups = easy_groups(number, by)
        rest = number - groups * by
        state = replace(state, left=whole(rest))
        says, reason = state.standing(whole(groups)), GroupsTaken(groups, by, groups * by, rest)
        state = replace(state.say(says, reason), done=(*state.done, whole(groups)))
    return state


def put_together(state: QuotientState) -> QuotientState:
    """Write all groups as one number, with the remainder."""
    groups = whole(sum(part.parts for part in state.done))
    if not state.left.parts:
        return state.say(groups, InAll(groups)).ends(groups)
    result = WithRemainder(groups, state.left, state.right)
    return state.say(result, LeftOver(state.left, state.right)).ends(result)


def _unsuited(state: QuotientState) -> Unsuited | None:
    if not state.wholes:
        return NotByWholes()
    return TooFewToShare(state.left, state.right) if state.left.parts < state.right.parts else None


def _offered(state: QuotientState) -> bool:
    return state.left.parts >= TEN * state.right.parts


PARTIAL_QUOTIENTS = QuotientWay(
    key="partial_quotients",
    name="Partial quotients: take out easy groups",
    steps=(QuotientStep("take_groups", take_groups), QuotientStep("put_together", put_together)),
    unsuited=_unsuited,
    offered=_offered,
)
