"""Equations with a number missing, before, between or after the signs.

Situations with each part unknown: CCSSM (2010), glossary, table 1.
"""

from collections.abc import Iterator, Sequence
from itertools import product

from onewhole.sheets.spaces.amounts import (
    decimals,
    fractions,
    mixed_numbers,
    numbers_of_length,
    unlike_pairs,
)
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

USUAL_DIGITS = 3
ASKED = ("{0} + ? = {1}", "? + {0} = {1}", "{1} - ? = {0}", "? - {0} = {1}")


def missing(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield equations of every situation: whole numbers, decimals, lengths, like and unlike fractions."""
    digits = wishes.digits or USUAL_DIGITS
    yield from _forms(numbers_of_length(digits))
    short = numbers_of_length(digits - 1)
    yield ProblemForm("{0} + ? + {1} = {2}", (short, short, numbers_of_length(digits)))
    yield from _forms(decimals(1, wishes.largest))
    lengths = [f"{feet} ft {inches} in" for feet in range(1, wishes.largest + 1) for inches in range(1, 12)]
    yield from _forms(lengths)
    for denominator in wishes.denominators:
        numbers = mixed_numbers(denominator, wishes.largest)
        yield from _forms(numbers)
        yield ProblemForm("{0} - ? = {1}", (range(2, wishes.largest + 1), numbers))
    pairs = tuple(
        ((first,), (second,))
        for one, other in unlike_pairs(wishes.denominators)
        for first, second in product(fractions(one, simplest=True), fractions(other, simplest=True))
    )
    for asked in ASKED:
        yield ProblemForm("{0}", (tuple(ProblemForm(asked, pair).problem(0) for pair in pairs),))


def _forms(numbers: Sequence[object]) -> Iterator[ProblemForm]:
    yield from (ProblemForm(asked, (numbers, numbers)) for asked in ASKED)
