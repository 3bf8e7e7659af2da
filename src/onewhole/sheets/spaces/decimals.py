"""Decimals to hundredths, of equal and of unequal length: 5.NBT.B.7 (CCSSM 2010)."""

from collections.abc import Iterator

from onewhole.sheets.spaces.amounts import decimals
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes


def taken(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield differences, one a make-up of places."""
    yield from _forms("-", wishes)


def added(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield sums, one a make-up of places."""
    yield from _forms("+", wishes)


def _forms(sign: str, wishes: Wishes) -> Iterator[ProblemForm]:
    tenths, hundredths = decimals(1, wishes.largest), decimals(2, wishes.largest)
    wholes = range(2, wishes.largest + 2)
    for first, second in (
        (tenths, tenths),
        (hundredths, hundredths),
        (hundredths, tenths),
        (tenths, hundredths),
        (wholes, tenths),
        (wholes, hundredths),
    ):
        yield ProblemForm(f"{{0}} {sign} {{1}}", (first, second))
