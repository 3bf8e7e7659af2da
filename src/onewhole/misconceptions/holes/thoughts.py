"""Thoughts that a pattern has of more than one kind, and those of many holes."""

from onewhole.misconceptions.asks.amounts import CanBeLeft, MoreThanEach
from onewhole.misconceptions.asks.sizes import HowMuchMissing, WhichIsFurther
from onewhole.misconceptions.case import Case
from onewhole.misconceptions.holes.fractions import (
    after_renaming,
    before_renaming,
    called_less,
    called_more,
    left,
    right,
)
from onewhole.misconceptions.holes.parts import have, need, small, typed_pair, wrote
from onewhole.misconceptions.thoughts.pieces import PutTogetherInstead
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.thoughts.sizes import BottomsCounted, FewerMissing, SameGap, SameStep
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


def bottoms_counted(case: Case) -> BottomsCounted:
    """Return what two denominators were said to come to, the larger first where one is taken."""
    pair, found = typed_pair(case), wrote(case).ladder.denominator
    one, other = pair.first.ladder.denominator, pair.second.ladder.denominator
    if pair.taken:
        one, other = max(one, other), min(one, other)
    return BottomsCounted(one, other, found, taken=pair.taken)


def more_than_each_or_left(case: Case) -> MoreThanEach | CanBeLeft:
    """Ask whether the answer is more than each of two that are added, or can be left when one is taken."""
    return (CanBeLeft if typed_pair(case).taken else MoreThanEach)(left(case), right(case), wrote(case))


def gaps(case: Case) -> SameGap | FewerMissing:
    """Return that as many pieces are missing from both, or from one fewer."""
    if case.wrote is Relation.EQUAL:
        return SameGap(left(case), right(case))
    return FewerMissing(called_more(case), called_less(case))


def missing_or_further(case: Case) -> HowMuchMissing | WhichIsFurther:
    """Ask what is missing to one whole, or which is further along where one fraction is more than a whole."""
    two = left(case), right(case)
    if all(one.amounts[-1] <= one.ladder.denominator for one in two):
        return HowMuchMissing(*two)
    return WhichIsFurther(*two)
