"""Another number is given than the one that is asked of a division in groups."""

from collections.abc import Callable

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import WithRemainder
from onewhole.statements.statement import Statement
from onewhole.statements.whole_groups import GroupsAsk, WholeGroups
from onewhole.working.line import Line
from onewhole.working.quotients.remainder_shared import both_shared

#: The number that is given; None where a rule does not apply.
Given = Callable[[WholeGroups], Quantity | None]


def gives(asks: GroupsAsk, given: Given) -> Try:
    """Return the attempt at a division of which this is asked: its false line gives another number."""

    def attempt(statement: Statement) -> Attempt | None:
        if not isinstance(statement, WholeGroups) or statement.asks is not asks or not statement.left:
            return None
        number = given(statement)
        if number is None:
            return None
        return Attempt((Line(statement), Line(statement.answered(number))), number)

    return attempt


def full_groups(asked: WholeGroups) -> Quantity | None:
    """50 / 8 in groups is said to be 6, whatever is asked."""
    return whole(asked.full)


def one_more_group(asked: WholeGroups) -> Quantity | None:
    """50 / 8 is said to be 7 full groups."""
    return whole(asked.full + 1)


def remainder_written(statement: Statement) -> Attempt | None:
    """50 / 8 in groups is said to be 6 r 2."""
    if not isinstance(statement, WholeGroups) or not statement.left:
        return None
    wrote = _divided(statement)
    return Attempt((Line(statement), Line(wrote)), wrote)


def remainder_cut(statement: Statement) -> Attempt | None:
    """50 / 8 in groups is said to be 6 2/8, or 6.25."""
    if not isinstance(statement, WholeGroups) or not statement.left:
        return None
    wrote, *others = both_shared(_divided(statement))
    return Attempt((Line(statement), Line(wrote)), wrote, tuple(others))


def _divided(asked: WholeGroups) -> WithRemainder:
    return WithRemainder(whole(asked.full), whole(asked.left), asked.by)
