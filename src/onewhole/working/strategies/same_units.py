"""Put every number on one ladder before the work begins, and say so where that renames anything."""

from collections.abc import Iterable
from functools import reduce

from onewhole.number.ladder import Ladder, Style, joined
from onewhole.number.quantity import Quantity, trimmed, usual, whole
from onewhole.statements.expression import Expression, Over, Sum, Term, Times, plus
from onewhole.working.line import Line
from onewhole.working.reasons.renaming import CutAgain, SamePlaces, SameSizePieces

#: Quantities with their signs: True where the quantity is taken away.
Signed = tuple[tuple[Quantity, bool], ...]

#: The quantities on one ladder, with the lines that rename them.
Counted = tuple[Signed, tuple[Line, ...]]


def common_ladder(signed: Signed) -> Ladder:
    """Return the ladder on which all the quantities can be counted."""
    return reduce(joined, (quantity.ladder for quantity, _ in signed))


def same_units(signed: Signed) -> Counted:
    """Count every number on the common ladder, with the lines that rename unlike ones.

    Source: 5.NF.A.1 (equal fractions with like denominators) and 4.NF.C.5 (tenths and hundredths), CCSSM
    (2010). That a grade 4 class cuts each piece again, and does not multiply by n/n, follows the
    Progressions for Fractions 3-5, p. 12 (second-hand).
    """
    ladder = common_ladder(signed)
    moved = tuple([(quantity.on(ladder), taken) for quantity, taken in signed])
    shown = tuple([(_written(quantity, ladder), taken) for quantity, taken in signed])
    if shown == signed:
        return moved, ()
    small = ladder.units[-1]
    if ladder.style is Style.DECIMAL:
        return moved, (Line(row(shown), SamePlaces(small)),)
    renamed = Line(row(shown), SameSizePieces(small))
    if any(quantity.ladder.style is Style.DECIMAL for quantity, _ in signed):
        return moved, (renamed,)
    cut = row((_cut(quantity, ladder.denominator), taken) for quantity, taken in signed)
    return moved, (Line(cut, CutAgain(small), aside=True), renamed)


def row(parts: Iterable[tuple[Expression, bool]]) -> Expression:
    """Write parts with their signs one after another."""
    terms = tuple(Term(part, taken) for part, taken in parts)
    return Sum(terms) if len(terms) > 1 else terms[0].part


def _written(quantity: Quantity, ladder: Ladder) -> Quantity:
    """Write a number for the common ladder; a number whose smallest unit stays is left as it was typed."""
    if ladder.style is Style.DECIMAL:
        return quantity if quantity.ladder.finest == ladder.finest else usual(ladder, quantity.value)
    if quantity.ladder.style is Style.PLACES or quantity.ladder.finest == ladder.finest:
        return quantity
    return quantity if ladder.style is Style.MEASURE else trimmed(quantity.on(ladder))


def _cut(quantity: Quantity, parts: int) -> Expression:
    """Write a mixed number with each piece cut again: 3 3/8 as 3 + (3 x 3)/(8 x 3)."""
    if quantity.ladder.style is not Style.MIXED or quantity.ladder.denominator == parts:
        return quantity
    wholes, pieces = quantity.amounts
    by = whole(parts // quantity.ladder.denominator)
    fraction = Over(Times(whole(pieces), by), Times(whole(quantity.ladder.denominator), by))
    return plus(whole(wholes), fraction) if wholes else fraction
