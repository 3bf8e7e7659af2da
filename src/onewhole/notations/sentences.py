"""Reasons and facts as short sentences that a nine-year-old follows, in the class's own words."""

from typing import assert_never

from onewhole.notations.reasons.comparing import comparing
from onewhole.notations.reasons.jumping import jumping
from onewhole.notations.reasons.regrouping import regrouping
from onewhole.notations.reasons.renaming import renaming
from onewhole.notations.reasons.taking import taking
from onewhole.notations.text import text
from onewhole.notations.words import ClassWords
from onewhole.statements.statement import Comparison, Relation
from onewhole.working.fact import Fact, Way
from onewhole.working.reason import Reason
from onewhole.working.reasons.comparing import Comparing
from onewhole.working.reasons.jumping import Jumping
from onewhole.working.reasons.regrouping import Regrouping
from onewhole.working.reasons.renaming import Renaming
from onewhole.working.reasons.taking import Taking

_WAYS = {Way.MAKE_TEN: "go by way of the ten", Way.THINK_ADDITION: "think of adding"}


def sentence(reason: Reason, words: ClassWords) -> str:
    """Say why a line follows, with capital and full stop. Numbers stand in digits, as on the line.

    >>> from onewhole.number.ladder import mixed
    >>> from onewhole.working.reasons.regrouping import OneIsWorth
    >>> wholes, sixths = mixed(6).units
    >>> sentence(OneIsWorth(wholes, sixths, 6), ClassWords("strip", "strips"))
    'One strip is 6 sixths.'
    """
    if isinstance(reason, Regrouping):
        return regrouping(reason, words)
    if isinstance(reason, Taking):
        return taking(reason, words)
    if isinstance(reason, Jumping):
        return jumping(reason, words)
    if isinstance(reason, Renaming):
        return renaming(reason, words)
    if isinstance(reason, Comparing):
        return comparing(reason, words)
    assert_never(reason)


def fact_sentence(fact: Fact) -> str:
    """Say how a hard fact is found.

    >>> from onewhole.working.fact import hard_difference
    >>> fact_sentence(hard_difference(16, 9))
    'For 16 - 9, go by way of the ten: 16 - 6 = 10, then 10 - 3 = 7.'
    """
    steps = [text(Comparison(left, right, Relation.EQUAL)) for left, right in fact.steps]
    return f"For {text(fact.asked)}, {_WAYS[fact.way]}: {', then '.join(steps)}."
