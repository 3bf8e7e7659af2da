"""Rounding to a place: 3.NBT.A.1, 4.NBT.A.3, 5.NBT.A.4 (CCSSM 2010)."""

from collections.abc import Iterator

from onewhole.sheets.spaces.amounts import decimals, mixed_numbers, numbers_of_length
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

USUAL_DIGITS = 4
#: The places of a whole number, the smallest first; the largest number has more digits than these.
PLACES = ("ten", "hundred", "thousand", "ten thousand")
#: The places to which a number with one, two or three places is rounded.
DECIMAL_PLACES = (("whole number",), ("whole number", "tenth"), ("tenth", "hundredth"))


def rounding(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield whole numbers to each place but the first, decimals, mixed numbers, measures and money."""
    yield from of_whole_numbers(wishes)
    yield ProblemForm("round {0} to the nearest tenth", (decimals(2, wishes.largest),))
    yield ProblemForm("round {0} to the nearest whole number", (decimals(1, wishes.largest),))
    for denominator in wishes.denominators:
        numbers = mixed_numbers(denominator, wishes.largest)
        yield ProblemForm("round {0} to the nearest whole number", (numbers,))
    counts = range(1, wishes.largest + 1)
    for large, small, ratio, called in (
        ("ft", "in", 12, "foot"),
        ("lb", "oz", 16, "pound"),
        ("h", "min", 60, "hour"),
    ):
        rest = range(1, ratio)
        yield ProblemForm(f"round {{0}} {large} {{1}} {small} to the nearest {called}", (counts, rest))
    cents = [f"{at:02}" for at in range(1, 100)]
    yield ProblemForm("round ${0}.{1} to the nearest dollar", (counts, cents))


def of_whole_numbers(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield whole numbers to each place but the first."""
    digits = wishes.digits or USUAL_DIGITS
    for place in PLACES[: digits - 1]:
        yield ProblemForm(f"round {{0}} to the nearest {place}", (numbers_of_length(digits),))


def of_decimals(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield tenths, hundredths and thousandths to each place before their last one: 5.NBT.A.4."""
    for places, asked in enumerate(DECIMAL_PLACES, start=1):
        for place in asked:
            yield ProblemForm(f"round {{0}} to the nearest {place}", (decimals(places, wishes.largest),))
