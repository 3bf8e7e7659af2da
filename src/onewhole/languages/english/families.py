"""What the families of error patterns are called."""

from collections.abc import Sequence
from typing import assert_never

from onewhole.languages.english.words import names_listed
from onewhole.misconceptions.pattern import Family


def family_name(family: Family) -> str:
    """Name the kind of idea that goes wrong.

    >>> family_name(Family.WHOLES)
    'whole-number part'
    """
    match family:
        case Family.REGROUPING:
            return "regrouping"
        case Family.NUMERATOR:
            return "numerator"
        case Family.DENOMINATOR:
            return "denominator"
        case Family.WHOLES:
            return "whole-number part"
        case Family.OPERATION:
            return "operation"
        case Family.CONVERSION:
            return "conversion"
        case Family.FORM:
            return "form of answer"
        case Family.FACT:
            return "fact slip"
        case Family.EQUIVALENCE:
            return "equivalence"
        case Family.COMPARISON:
            return "comparison"
        case Family.PLACE_VALUE:
            return "place value"
        case _:
            assert_never(family)


def families_listed(families: Sequence[Family]) -> str:
    """List families by name: regrouping, numerator and place value.

    >>> families_listed((Family.REGROUPING, Family.FORM))
    'regrouping and form of answer'
    """
    return names_listed(map(family_name, families))
