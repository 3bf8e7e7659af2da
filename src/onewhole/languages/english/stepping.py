"""Several steps: what is worked first, and why."""

from collections.abc import Mapping
from types import MappingProxyType
from typing import assert_never

from onewhole.languages.english.making import told
from onewhole.sentences.node import Said, Seam
from onewhole.sentences.sentence import Sentences
from onewhole.statements.statement import Comparison, Relation
from onewhole.working.reasons.stepping import (
    BarDivides,
    StepBegins,
    StepDone,
    Stepping,
    TimesEachPart,
    WhyFirst,
)

_WHY: Mapping[WhyFirst, str] = MappingProxyType(
    {
        WhyFirst.BRACKETS: "brackets first",
        WhyFirst.MULTIPLIED: "multiply before you add or take away",
        WhyFirst.DIVIDED: "divide before you add or take away",
        WhyFirst.FROM_THE_LEFT: "from left to right",
        WhyFirst.ONLY_PART: "last of all",
    }
)


def stepping(reason: Stepping) -> Sentences:
    """Say which part is worked first and why; the reasons of its own lines are said after it.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> from onewhole.statements.expression import Times
    >>> text_of(stepping(StepDone(WhyFirst.MULTIPLIED, Times(whole(3), whole(4)), whole(12))))
    'Multiply before you add or take away: 3 x 4 = 12.'
    """
    match reason:
        case StepDone(why, part, result):
            return told(_WHY[why], Seam(":"), Said(Comparison(part, result, Relation.EQUAL)))
        case StepBegins(why, part):
            return told(_WHY[why], Seam(":"), Said(part))
        case BarDivides(divided):
            return told("the bar of a fraction divides", Seam(":"), Said(divided))
        case TimesEachPart(times):
            return told("instead of the sum", Seam(","), "multiply each part by", Said(times))
        case _:
            assert_never(reason)
