"""Several steps: what is worked first, and why, in Spanish."""

from collections.abc import Mapping
from types import MappingProxyType
from typing import assert_never

from onewhole.languages.spanish.making import told
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
        WhyFirst.BRACKETS: "primero los paréntesis",
        WhyFirst.MULTIPLIED: "multiplicamos antes de sumar o restar",
        WhyFirst.DIVIDED: "dividimos antes de sumar o restar",
        WhyFirst.FROM_THE_LEFT: "de izquierda a derecha",
        WhyFirst.ONLY_PART: "al final",
    }
)


def stepping(reason: Stepping) -> Sentences:
    """Say which part is worked first and why; the reasons of its own lines are said after it.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> from onewhole.statements.expression import Times
    >>> text_of(stepping(StepDone(WhyFirst.MULTIPLIED, Times(whole(3), whole(4)), whole(12))))
    'Multiplicamos antes de sumar o restar: 3 x 4 = 12.'
    """
    match reason:
        case StepDone(why, part, result):
            return told(_WHY[why], Seam(":"), Said(Comparison(part, result, Relation.EQUAL)))
        case StepBegins(why, part):
            return told(_WHY[why], Seam(":"), Said(part))
        case BarDivides(divided):
            return told("la raya de una fracción divide", Seam(":"), Said(divided))
        case TimesEachPart(times):
            return told("en vez de la suma", Seam(","), "multiplicamos cada parte por", Said(times))
        case _:
            assert_never(reason)
