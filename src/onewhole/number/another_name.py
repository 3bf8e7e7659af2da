"""Another name for a number that stands alone: what there is to write where only a number is given."""

from typing import assert_never

from onewhole.number.factors import simplest
from onewhole.number.ladder import TEN, Style, measure, mixed
from onewhole.number.quantity import Quantity, usual
from onewhole.number.unit import DOLLAR, MEASURES, Unit


def another_name(asked: Quantity) -> Quantity | None:
    """Return another name for a number that stands alone, or None where no one name is meant.

    What is overfull is written the usual way (11/4 is 2 3/4); else a fraction with fewer pieces (6/8 is 3/4),
    a mixed number as one fraction (1 1/2 is 3/2), a decimal as a fraction (0.75 is 75/100), and a measure in
    the next larger unit and what is over, or else in the next smaller unit (26 in is 2 ft 2 in, 2 ft is
    24 in). Common practice, no source; which name is meant for 3/4 or 52, nobody can say.

    >>> another_name(Quantity(mixed(8), (None, 6))).counts
    (None, 3)
    """
    plain = usual(asked.ladder, asked.value)
    if plain != asked:
        return plain
    match asked.ladder.style:
        case Style.MIXED:
            return _of_mixed(asked)
        case Style.DECIMAL if asked.ladder.mark == DOLLAR:
            return None
        case Style.DECIMAL:
            found = usual(mixed(TEN**asked.ladder.after, asked.ladder.mark), asked.value)
            return found if found.ladder.style is Style.MIXED else None
        case Style.MEASURE:
            return _of_measure(asked)
        case Style.PLACES:
            return None
        case _:
            assert_never(asked.ladder.style)


def _of_mixed(asked: Quantity) -> Quantity | None:
    pieces = asked.ladder.denominator
    _, fewest = simplest(asked.parts, pieces)
    if fewest != pieces:
        return usual(mixed(fewest, asked.ladder.mark), asked.value)
    return Quantity(asked.ladder, (None, asked.parts)) if asked.amounts[0] else None


def _of_measure(asked: Quantity) -> Quantity | None:
    units = asked.ladder.units
    if len(units) > 1:
        return Quantity(measure(units[-1].mark), (asked.parts,))
    (unit,) = units
    larger, smaller = _neighbors(unit)
    if larger and asked.value >= larger.size:
        return usual(measure(larger.mark, unit.mark), asked.value)
    if smaller and asked.parts:
        return Quantity(measure(smaller.mark), ((asked.value / smaller.size).numerator,))
    return None


def _neighbors(unit: Unit) -> tuple[Unit | None, Unit | None]:
    """Return the next larger and the next smaller unit of a measure."""
    alike = [one for one in MEASURES if one.kind is unit.kind]
    at = alike.index(unit)
    return (alike[at - 1] if at else None), (alike[at + 1] if at + 1 < len(alike) else None)
