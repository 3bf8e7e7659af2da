"""A number is missing in an equation, and the numbers that are there are worked without it."""

from collections.abc import Callable

from msgspec import Struct

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.number.ladder import joined
from onewhole.number.quantity import Quantity, usual
from onewhole.statements.expression import Expression, Sum, minus, plus, value
from onewhole.statements.statement import MissingNumber, Statement
from onewhole.working.line import Line


class KnownNumbers(Struct, frozen=True):
    """The numbers of an equation with one number missing: ``rest`` side, and those beside the gap.

    ``beside`` is the first of those, ``more`` the others.
    """

    rest: tuple[Quantity, ...]
    beside: Quantity
    more: tuple[Quantity, ...] = ()


#: What is worked in the place of the missing number.
Instead = Callable[[KnownNumbers], Expression]


def known_of(statement: Statement) -> tuple[KnownNumbers, MissingNumber] | None:
    """Return the numbers of an equation whose gap is a whole number by itself beside one other, or None."""
    match statement:
        case MissingNumber(rest, gap, beside=((Quantity() as other, _), *others)) if gap.alone:
            pass
        case _:
            return None
    more = tuple(part for part, _ in others if isinstance(part, Quantity))
    if len(more) != len(others):
        return None
    parts = rest.terms if isinstance(rest, Sum) else ()
    numbers = tuple(one.part for one in parts if not one.taken) if parts else (rest,)
    found = tuple(one for one in numbers if isinstance(one, Quantity))
    if len(found) != len(parts or (rest,)):
        return None
    return KnownNumbers(found, other, more), statement


def _on(
    instead: Instead, when: Callable[[MissingNumber], bool], known: int, *, several: bool | None = False
) -> Try:
    """Return the attempt at an equation with so many numbers on the side without the gap.

    ``several`` says whether more than one number stands beside the gap; None where that is free.
    """

    def attempt(statement: Statement) -> Attempt | None:
        found = known_of(statement)
        if found is None or len(found[0].rest) != known or not when(found[1]):
            return None
        if several is not None and bool(found[0].more) != several:
            return None
        says = instead(found[0])
        wrote = _written(found[0], says)
        lines = (Line(says),) if says != wrote else ()
        return Attempt((Line(found[1]), *lines, Line(wrote)), wrote)

    return attempt


def on_missing_addend(instead: Instead) -> Try:
    """Return the attempt at a sum with one addend missing: 2 + ? = 5."""
    return _on(instead, _only_adds, 1, several=None)


def on_one_of_several_addends(instead: Instead) -> Try:
    """Return the attempt at a sum with one of three addends or more missing: 2 + ? + 3 = 9."""
    return _on(instead, _only_adds, 1, several=True)


def _only_adds(asked: MissingNumber) -> bool:
    return not asked.gap_taken and not any(taken for _, taken in asked.beside)


def on_missing_start(instead: Instead) -> Try:
    """Return the attempt at a difference with its first number missing: ? - 2 = 3."""
    return _on(instead, lambda asked: not asked.gap_taken and asked.beside[0][1], 1)


def on_missing_change(instead: Instead) -> Try:
    """Return the attempt at a difference with its second number missing: 9 - ? = 3."""
    return _on(instead, lambda asked: asked.gap_taken and not asked.beside[0][1], 1)


def on_two_sides(instead: Instead) -> Try:
    """Return the attempt at two equal sums, the first number of the second missing: 8 + 4 = ? + 5."""

    def gap_comes_next(asked: MissingNumber) -> bool:
        signs = asked.gap_taken or asked.beside[0][1] or asked.gap_left
        return not signs and asked.before == 0

    return _on(instead, gap_comes_next, 2)


def added(known: KnownNumbers) -> Expression:
    """Add the numbers beside the gap and that of the other side."""
    return plus(known.beside, *known.more, known.rest[0])


def first_taken_only(known: KnownNumbers) -> Expression:
    """Take only the first of the numbers beside the gap from that of the other side."""
    return minus(known.rest[0], known.beside)


def taken_away(known: KnownNumbers) -> Expression:
    """Take the smaller of two numbers from the larger."""
    smaller, larger = sorted((known.beside, known.rest[0]), key=lambda number: number.value)
    return minus(larger, smaller)


def worked_side(known: KnownNumbers) -> Expression:
    """Work the side without the gap."""
    return plus(*known.rest)


def all_added(known: KnownNumbers) -> Expression:
    """Add every number that is there."""
    return plus(*known.rest, known.beside)


def first_copied(known: KnownNumbers) -> Expression:
    """Copy the first number."""
    return known.rest[0]


def _written(known: KnownNumbers, says: Expression) -> Quantity:
    """Write what comes of it in the units of the numbers, or as it stands where it is one of them."""
    if isinstance(says, Quantity):
        return says
    ladder = known.beside.ladder
    for number in (*known.rest, *known.more):
        ladder = joined(ladder, number.ladder)
    return usual(ladder, value(says))
