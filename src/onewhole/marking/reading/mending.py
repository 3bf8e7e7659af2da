"""What would make a false equals sign true: the side after it, changed in as little as can be."""

from collections.abc import Iterator
from fractions import Fraction

from onewhole.errors import OnewholeError
from onewhole.marking.reading.writing import alike_line
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, usual
from onewhole.problems.answer import written_usually
from onewhole.statements.expression import (
    Expression,
    InBrackets,
    Over,
    Quotient,
    Sum,
    Term,
    Times,
    WithRemainder,
    kind,
    value,
)

TEN = 10


def mended(left: Expression, right: Expression) -> Expression | None:
    """Return what could stand after the equals sign instead of ``right``, or None when nothing can.

    One count is changed where that is enough (7 2/6 - 3 5/6 = 7 8/6 - 3 5/6 wants 6 8/6 - 3 5/6); otherwise
    the amount of ``left`` is written on the ladder of ``right``, or else the usual way. An amount below
    zero is not written.

    >>> from onewhole.notations.text import text
    >>> from onewhole.statements.reading import read_expression as read
    >>> text(mended(read("7 2/6 - 3 5/6"), read("7 8/6 - 3 5/6")))
    '6 8/6 - 3 5/6'
    """
    if value(left) < 0:
        return None
    for found in _offers(left, right):
        if alike_line(found) != alike_line(left):
            return found
    try:
        return written_usually(left)
    except OnewholeError:
        return None


def _offers(left: Expression, right: Expression) -> Iterator[Expression]:
    if kind(left) is not kind(right):
        return
    match right:
        case Quantity():
            yield from _numbers(right, value(left))
        case Sum():
            yield from _sums(left, right)
        case Times() | Over() | Quotient() | InBrackets() | WithRemainder():
            return


def _numbers(written: Quantity, amount: Fraction) -> Iterator[Quantity]:
    """Yield the amount on the ladder of a number: one count changed, then the usual way."""
    parts = amount / written.ladder.finest
    if parts.denominator != 1:
        return
    yield from _one_count(written, parts.numerator)
    yield usual(written.ladder, amount)


def _one_count(written: Quantity, parts: int) -> Iterator[Quantity]:
    """Yield the number with one written count changed; nothing is overfull that was not."""
    if written.ladder.style in {Style.PLACES, Style.DECIMAL} and max(written.amounts) < TEN:
        return
    for rung, (count, worth) in enumerate(zip(written.counts, written.ladder.worths, strict=True)):
        if count is None:
            continue
        changed, left_over = divmod(parts - written.parts + count * worth, worth)
        full = rung > 0 and changed >= written.ladder.ratios[rung - 1] and any(written.amounts[:rung])
        was_full = rung > 0 and count >= written.ladder.ratios[rung - 1]
        if not left_over and changed >= 0 and (was_full or not full):
            yield Quantity(written.ladder, (*written.counts[:rung], changed, *written.counts[rung + 1 :]))


def _sums(left: Expression, right: Sum) -> Iterator[Expression]:
    """Yield the sum with one number changed, those that differ from the side before first."""
    before = left.terms if isinstance(left, Sum) else ()
    order = sorted(range(len(right.terms)), key=lambda at: at < len(before) and before[at] == right.terms[at])
    for at in order:
        part, taken = right.terms[at].part, right.terms[at].taken
        if not isinstance(part, Quantity):
            continue
        missing = value(left) - value(right)
        wanted = value(part) + (-missing if taken else missing)
        if wanted >= 0:
            for found in _numbers(part, wanted):
                terms = (*right.terms[:at], Term(found, taken), *right.terms[at + 1 :])
                yield Sum(terms)
