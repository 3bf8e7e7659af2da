"""The bars of what is added, taken away, taken so many times and shared: a bar for each step."""

from collections.abc import Sequence
from fractions import Fraction

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.pictures.bar_rows import BarRow, Stretch, StretchRole, Written, blank_or
from onewhole.pictures.caption import Groups
from onewhole.statements.expression import Expression, Quotient, Sum, Term, Times, without_brackets

#: More equal parts of a bar are not drawn apart. Common practice, no source.
MOST_EQUAL = 12


class _StoryStep(Struct, frozen=True):
    """What a part of an expression comes to: its amount, how it is written, and the bars it took."""

    amount: Fraction
    written: Written
    rows: tuple[BarRow, ...] = ()


def step_rows(asked: Expression, found: Quantity | None) -> tuple[BarRow, ...]:
    """Return a bar for each step of an expression; its result is a blank, or what was ``found``.

    What is found on the way has no number. Nothing for an expression that is no sum, product or quotient of
    such, and for one in which something is taken so many times that is no whole number.

    >>> from onewhole.statements.reading import read_expression
    >>> [len(step_rows(read_expression(one), None)) for one in ("52 - 27", "9 - 2 x 3/4", "2 x 3 x 4")]
    [1, 2, 2]
    """
    step = _worked(without_brackets(asked), blank_or(found))
    return step.rows if step else ()


def equal_row(count: int, part: Stretch, over: Written) -> BarRow:
    """Return a bar of equal parts; of very many the first, and the others not drawn apart.

    >>> from onewhole.number.quantity import whole
    >>> [len(equal_row(count, Stretch(Fraction(1)), whole(count)).stretches) for count in (4, 33)]
    [4, 2]
    """
    if count > MOST_EQUAL:
        rest = Stretch((count - 1) * part.amount, None, StretchRole.UNCUT)
        return BarRow((part, rest), over, bracketed=True, under=Groups(count), equal=Groups(count))
    return BarRow((part,) * count, over, bracketed=True, equal=Groups(count))


def _worked(asked: Expression, result: Written) -> _StoryStep | None:
    """Work an expression; ``result`` is what is written at what it comes to (None on the way)."""
    match asked:
        case Quantity():
            return _StoryStep(asked.value, asked)
        case Sum(terms):
            return _sum(terms, result)
        case Times(first, second):
            return _times(without_brackets(first), without_brackets(second), result)
        case Quotient(whole, Quantity() as by) if _counts(by):
            return _shared(_worked(without_brackets(whole), None), int(by.value), result)
        case _:
            return None


def _sum(terms: Sequence[Term], result: Written) -> _StoryStep | None:
    """Put a sum on one bar where all is added, or all is taken from its first number; else in two steps."""
    gone = [term.taken for term in terms]
    if any(gone) and not all(gone[1:]):
        before = _sum(terms[:-1], None)
        last = _worked(without_brackets(terms[-1].part), None)
        return _joined(before, [last], taken=gone[-1], result=result)
    if gone[0]:
        return None
    first, *rest = (_worked(without_brackets(term.part), None) for term in terms)
    return _joined(first, rest, taken=any(gone), result=result)


def _joined(
    first: _StoryStep | None, rest: Sequence[_StoryStep | None], *, taken: bool, result: Written
) -> _StoryStep | None:
    others = [one for one in rest if one]
    if first is None or len(others) < len(rest):
        return None
    rows = (*first.rows, *(row for one in others for row in one.rows))
    sum_of = sum((one.amount for one in others), Fraction(0))
    if not taken:
        amount = first.amount + sum_of
        stretches = tuple(Stretch(one.amount, one.written) for one in (first, *others) if one.amount)
        return _StoryStep(amount, result, (*rows, BarRow(stretches, result, bracketed=True)))
    left = first.amount - sum_of
    if left < 0:
        return None
    parts = [Stretch(one.amount, one.written) for one in others if one.amount]
    if left:
        parts.append(Stretch(left, result, _role(result)))
    return _StoryStep(left, result, (*rows, BarRow(tuple(parts), first.written, bracketed=True)))


def _times(first: Expression, second: Expression, result: Written) -> _StoryStep | None:
    """Take something so many times: the first factor says how many, or else the second."""
    count, part = (first, second) if _counts(first) else (second, first)
    if not isinstance(count, Quantity) or not _counts(count):
        return None
    each, times = _worked(part, None), int(count.value)
    if each is None or not each.amount:
        return None
    row = equal_row(times, Stretch(each.amount, each.written), result)
    return _StoryStep(times * each.amount, result, (*each.rows, row))


def _shared(whole: _StoryStep | None, by: int, result: Written) -> _StoryStep | None:
    if whole is None or not whole.amount:
        return None
    part = whole.amount / by
    row = equal_row(by, Stretch(part, result, _role(result)), whole.written)
    return _StoryStep(part, result, (*whole.rows, row))


def _role(result: Written) -> StretchRole:
    return StretchRole.PART if result is None else StretchRole.ASKED


def _counts(number: Expression) -> bool:
    """Say whether a number says how many times: a whole number above 0, without a unit."""
    return isinstance(number, Quantity) and number.plain and number.value >= 1
