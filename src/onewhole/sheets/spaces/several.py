"""Three numbers, added and taken away from left to right."""

from collections.abc import Iterator, Sequence

from onewhole.sheets.spaces.amounts import decimals, mixed_numbers, numbers_of_length
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

USUAL_DIGITS = 3
ASKED = ("{0} + {1} + {2}", "{0} + {1} - {2}", "{0} - {1} - {2}")


def three_numbers(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield three whole numbers, decimals, and mixed numbers for each denominator."""
    yield from _forms(numbers_of_length(wishes.digits or USUAL_DIGITS))
    yield from _forms(decimals(1, wishes.largest))
    for denominator in wishes.denominators:
        yield from _forms(mixed_numbers(denominator, wishes.largest))


def _forms(numbers: Sequence[object]) -> Iterator[ProblemForm]:
    yield from (ProblemForm(asked, (numbers, numbers, numbers)) for asked in ASKED)
