"""Thoughts that a pattern has of more than one kind, and those of many holes."""

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.holes.fractions import (
    after_renaming,
    before_renaming,
    called_less,
    called_more,
    left,
    right,
)
from onewhole.misconceptions.holes.parts import have, need, small
from onewhole.misconceptions.thoughts.pieces import PutTogetherInstead
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.thoughts.sizes import FewerMissing, SameGap, SameStep
from onewhole.statements.statement import Relation


def put_together_or_changed(case: Case) -> PutTogetherInstead | RuleThought:
    """Return that pieces cannot be taken, so they are put together; where they could be, a sign not seen."""
    if have(case) < need(case):
        return PutTogetherInstead(small(case), have(case), need(case))
    return RuleThought.SIGN_CHANGED


def same_step_renaming(case: Case) -> SameStep:
    """Return that what is added to the bottom of a fraction is added to its top too."""
    before, after = before_renaming(case), after_renaming(case)
    return SameStep(
        before.ladder.denominator, after.ladder.denominator, before.amounts[-1], after.amounts[-1]
    )


def gaps(case: Case) -> SameGap | FewerMissing:
    """Return that as many pieces are missing from both, or from one fewer."""
    if case.wrote is Relation.EQUAL:
        return SameGap(left(case), right(case))
    return FewerMissing(called_more(case), called_less(case))
