"""Rounding to a place: 3.NBT.A.1, 4.NBT.A.3, 5.NBT.A.4 (CCSSM 2010)."""

from collections.abc import Iterator

from onewhole.sheets.spaces.amounts import decimals, mixed_numbers, numbers_of_length
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

USUAL_DIGITS = 4
#: The places of a whole number, the smallest first; the largest number has more digits than these.
PLACES = ("ten", "hundred", "thousand", "ten thousand")


def rounding(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield whole numbers to each place but the first, decimals to tenths, mixed numbers to wholes."""
    digits = wishes.digits or USUAL_DIGITS
    for place in PLACES[: digits - 1]:
        yield ProblemForm(f"round {{0}} to the nearest {place}", (numbers_of_length(digits),))
    yield ProblemForm("round {0} to the nearest tenth", (decimals(2, wishes.largest),))
    yield ProblemForm("round {0} to the nearest whole number", (decimals(1, wishes.largest),))
    for denominator in wishes.denominators:
        numbers = mixed_numbers(denominator, wishes.largest)
        yield ProblemForm("round {0} to the nearest whole number", (numbers,))
