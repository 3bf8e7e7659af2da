"""Three numbers, added and taken away from left to right."""

from collections.abc import Iterator, Sequence

from onewhole.sheets.spaces.amounts import (
    MOST_COMMON,
    decimals,
    fractions,
    mixed_numbers,
    numbers_of_length,
)
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

USUAL_DIGITS = 3
ASKED = ("{0} + {1} + {2}", "{0} + {1} - {2}", "{0} - {1} - {2}")


def three_numbers(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield three whole numbers, decimals, mixed numbers for each denominator, unlike fractions, measures."""
    yield from _forms(numbers_of_length(wishes.digits or USUAL_DIGITS))
    yield from _forms(decimals(1, wishes.largest))
    for denominator in wishes.denominators:
        yield from _forms(mixed_numbers(denominator, wishes.largest))
    fine = [one for one in wishes.denominators if MOST_COMMON % one == 0]
    parts = tuple(part for one in fine for part in fractions(one, simplest=True))
    yield from _forms(parts)
    for large, small, smaller in (
        ("ft", "in", range(1, 12)),
        ("lb", "oz", range(1, 16)),
        ("h", "min", range(5, 60, 5)),
    ):
        yield from _forms(
            tuple(
                f"{count} {large} {rest} {small}"
                for count in range(1, wishes.largest + 1)
                for rest in smaller
            )
        )


def _forms(numbers: Sequence[object]) -> Iterator[ProblemForm]:
    yield from (ProblemForm(asked, (numbers, numbers, numbers)) for asked in ASKED)
