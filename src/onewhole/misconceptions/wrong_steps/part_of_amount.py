"""A part of a measure or of a price, with one of the numbers that name it left unused."""

from collections.abc import Callable

from onewhole.misconceptions.attempt import Attempt, finished, wrongly
from onewhole.misconceptions.bend import Try
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, trimmed, usual, whole
from onewhole.statements.expression import Expression, Quotient, Times, value
from onewhole.statements.statement import Question, Statement
from onewhole.working.pair_state import PairState
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.share_then_times import SHARE_THEN_TIMES, fraction_first, part_first
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.work_quotient import quotient_found

#: From the fraction and the amount: what is worked out instead.
Instead = Callable[[Quantity, Quantity], Expression]


def part_of(statement: Statement) -> ProductState | None:
    """Return the fraction and the amount that it is taken of; None for mixed numbers and all else.

    >>> from onewhole.statements.reading import read_statement
    >>> part_of(read_statement("2 ft x 3/4")).left.counts
    (None, 3)
    """
    product = how_much_of(statement)
    if product is None or product.left.ladder.style is not Style.MIXED or product.left.amounts[0]:
        return None
    return fraction_first(product)


def how_much_of(statement: Statement) -> ProductState | None:
    """Return an amount and, before it, how much of it is taken, as it is written; None for anything else."""
    match statement:
        case Question(Times(Quantity() as one, Quantity() as other)):
            product = ProductState(one, other)
            return part_first(product) if SHARE_THEN_TIMES.unsuited(product) is None else None
        case _:
            return None


def takes(instead: Instead) -> Try:
    """Return the attempt at more than one part of an amount that works something else out."""

    def attempt(statement: Statement) -> Attempt | None:
        found = part_of(statement)
        if found is None or not isinstance(statement, Question) or found.left.parts == 1:
            return None
        says = instead(found.left, found.right)
        wrote = _worked(says, found.right)
        state = wrongly(PairState(wrote, wrote, taken=False, result=wrote), says)
        return finished(statement.asked, wrongly(state, wrote))

    return attempt


def wholes_only(statement: Statement) -> Attempt | None:
    """Take an amount as many whole times as a number of more than one says, and no part of it."""
    found = how_much_of(statement)
    if found is None or not isinstance(statement, Question):
        return None
    wholes = int(found.left.value)
    one_fraction = found.left.ladder.style is Style.MIXED and not found.left.amounts[0]
    if one_fraction or not wholes or found.left.value == wholes:
        return None
    says = Times(whole(wholes), found.right)
    wrote = _worked(says, found.right)
    state = wrongly(PairState(wrote, wrote, taken=False, result=wrote), says)
    return finished(statement.asked, wrongly(state, wrote))


def times_the_top(part: Quantity, amount: Quantity) -> Expression:
    """Take the amount as many times as the numerator says, and share nothing."""
    return Times(whole(part.parts), amount)


def one_share(part: Quantity, amount: Quantity) -> Expression:
    """Share the amount, and take one share."""
    return Quotient(amount, whole(part.ladder.denominator))


def _worked(says: Expression, amount: Quantity) -> Quantity:
    if isinstance(says, Quotient):
        found = quotient_found(QuotientState(amount, _shares(says)))
        assert isinstance(found, Quantity), "what leaves something over is no part that is taken here"
        return found
    if amount.ladder.style is Style.PLACES:
        return whole(value(says).numerator, amount.ladder.mark)
    return trimmed(usual(amount.ladder, value(says)))


def _shares(says: Quotient) -> Quantity:
    assert isinstance(says.right, Quantity)
    return says.right
