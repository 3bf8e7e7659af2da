"""Measures in two units: 4.MD.A.2 (CCSSM 2010)."""

from collections.abc import Iterator

from onewhole.number.ladder import measure
from onewhole.sheets.spaces.form import Form
from onewhole.sheets.wishes import Wishes

#: Pairs of units that are worked in together, the larger first.
PAIRS = (("ft", "in"), ("lb", "oz"), ("h", "min"), ("yd", "ft"))


def taken(wishes: Wishes) -> Iterator[Form]:
    """Yield differences, a form a pair of units, and some from larger units only."""
    yield from _forms("-", wishes)
    for large, small in PAIRS:
        yield Form(
            f"{{0}} {large} - {{1}} {large} {{2}} {small}",
            (_counts(wishes), _counts(wishes), _smaller(large, small)),
        )


def added(wishes: Wishes) -> Iterator[Form]:
    """Yield sums, a form a pair of units."""
    yield from _forms("+", wishes)


def _forms(sign: str, wishes: Wishes) -> Iterator[Form]:
    for large, small in PAIRS:
        counts, smaller = _counts(wishes), _smaller(large, small)
        yield Form(
            f"{{0}} {large} {{1}} {small} {sign} {{2}} {large} {{3}} {small}",
            (counts, smaller, counts, smaller),
        )


def _counts(wishes: Wishes) -> range:
    return range(1, wishes.largest + 1)


def _smaller(large: str, small: str) -> range:
    """Return the counts of the smaller unit that fill no larger one; times go in steps of five minutes."""
    (ratio,) = measure(large, small).ratios
    return range(5, ratio, 5) if ratio > 16 else range(1, ratio)
