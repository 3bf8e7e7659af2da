"""Pieces of a number cut finer or joined into larger ones, with the wholes beside them left alone."""

from math import gcd

from onewhole.number.factors import factors
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import Over, Times, plus
from onewhole.working.line import Line
from onewhole.working.reasons.renaming import CutAgain, FewestPieces, PiecesJoined, RenamedSameAmount


def recut(number: Quantity, bottom: int, *, in_steps: bool = False) -> tuple[Line, ...]:
    """Write the fraction of a number with another denominator: joined, cut again, or joined and then cut.

    ``in_steps`` joins by one prime factor after another, the smallest first. Every line is worth the number
    (4.NF.A.1, CCSSM 2010: multiplying both by the same number, and the other way round). Raises ValueError
    where the pieces cannot be counted so.

    >>> from onewhole.notations.text import text
    >>> from onewhole.statements.reading import read_quantity
    >>> [text(line.says) for line in recut(read_quantity("6/8"), 12)]
    ['3/4', '(3 x 3)/(4 x 3)', '9/12']
    >>> [text(line.says) for line in recut(read_quantity("12/18"), 3, in_steps=True)]
    ['6/9', '2/3']
    """
    before, pieces = number.ladder.denominator, number.amounts[1]
    if before == bottom:
        return ()
    if before % bottom == 0:
        return _joined(number, before // bottom, in_steps=in_steps)
    if bottom % before == 0:
        return _cut(number, bottom // before)
    shared = gcd(pieces, before)
    if bottom % (before // shared):
        msg = f"{pieces}/{before} cannot be counted in pieces of 1/{bottom}"
        raise ValueError(msg)
    lines = _joined(number, shared, in_steps=in_steps)
    fewest = lines[-1].says
    assert isinstance(fewest, Quantity)
    return (*lines, *recut(fewest, bottom))


def _joined(number: Quantity, times: int, *, in_steps: bool) -> tuple[Line, ...]:
    lines: list[Line] = []
    now = number
    for by in factors(times) if in_steps else (times,):
        top, bottom = now.amounts[1], now.ladder.denominator
        ladder = mixed(bottom // by, number.ladder.mark)
        after = Quantity(ladder, (now.counts[0], top // by))
        small, large = now.ladder.units[-1], ladder.units[-1]
        fewest = gcd(*after.amounts[1:], ladder.denominator) == 1
        joined = FewestPieces if fewest else PiecesJoined
        why = joined(small, large, by, top, bottom)
        lines.append(Line(after, why))
        now = after
    return tuple(lines)


def _cut(number: Quantity, times: int) -> tuple[Line, ...]:
    wholes, pieces = number.amounts
    before, by = number.ladder.denominator, whole(times)
    ladder = mixed(before * times, number.ladder.mark)
    fraction = Over(Times(whole(pieces), by), Times(whole(before), by))
    says = plus(whole(wholes), fraction) if wholes else fraction
    after = Quantity(ladder, (number.counts[0], pieces * times))
    return (
        Line(says, CutAgain(ladder.units[-1]), aside=True),
        Line(after, RenamedSameAmount(ladder.units[-1])),
    )
