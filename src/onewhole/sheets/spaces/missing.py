"""Equations with a number missing, before or after the sign: whole numbers and mixed numbers.

Situations with each part unknown: CCSSM (2010), glossary, table 1.
"""

from collections.abc import Iterator, Sequence

from onewhole.sheets.spaces.amounts import decimals, mixed_numbers, numbers_of_length
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

USUAL_DIGITS = 3
ASKED = ("{0} + ? = {1}", "? + {0} = {1}", "{1} - ? = {0}", "? - {0} = {1}")


def missing(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield equations of every situation, in whole numbers, decimals, feet and inches, each denominator."""
    yield from _forms(numbers_of_length(wishes.digits or USUAL_DIGITS))
    yield from _forms(decimals(1, wishes.largest))
    lengths = [f"{feet} ft {inches} in" for feet in range(1, wishes.largest + 1) for inches in range(1, 12)]
    yield from _forms(lengths)
    for denominator in wishes.denominators:
        numbers = mixed_numbers(denominator, wishes.largest)
        yield from _forms(numbers)
        yield ProblemForm("{0} - ? = {1}", (range(2, wishes.largest + 1), numbers))


def _forms(numbers: Sequence[object]) -> Iterator[ProblemForm]:
    yield from (ProblemForm(asked, (numbers, numbers)) for asked in ASKED)
