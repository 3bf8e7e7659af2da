"""A whole number times a fraction or mixed number, with the whole number used on the wrong parts."""

from collections.abc import Callable

from msgspec import Struct

from onewhole.misconceptions.attempt import Attempt, finished, wrongly
from onewhole.misconceptions.bend import Try
from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity, trimmed, whole
from onewhole.statements.expression import Expression, Over, Times, plus, value
from onewhole.statements.statement import Question, Statement
from onewhole.working.pair_state import PairState


class Product(Struct, frozen=True):
    """k times w n/d."""

    k: int
    w: int
    n: int
    d: int


#: Wholes, numerator and denominator of what a rule writes, still to be worked out; no wholes is None.
Made = tuple[Expression | None, Expression, Expression]
Make = Callable[[Product], Made | None]


def multiplies(make: Make) -> Try:
    """Return the attempt at a whole number (more than 1) times a fraction or mixed number."""

    def attempt(statement: Statement) -> Attempt | None:
        found = _product(statement)
        made = make(found[1]) if found else None
        if found is None or made is None:
            return None
        asked, _ = found
        wholes, top, bottom = made
        fraction = _over(top, bottom)
        says = fraction if wholes is None else plus(wholes, fraction)
        counts = 0 if wholes is None else value(wholes).numerator, value(top).numerator
        answer = trimmed(Quantity(mixed(value(bottom).numerator), counts))
        state = wrongly(PairState(answer, answer, taken=False, result=answer), says)
        return finished(asked, wrongly(state, answer))

    return attempt


def _product(statement: Statement) -> tuple[Expression, Product] | None:
    match statement:
        case Question(Times(Quantity() as one, Quantity() as other)):
            pass
        case _:
            return None
    times, number = (one, other) if one.ladder.style is Style.PLACES else (other, one)
    if times.ladder.style is not Style.PLACES or number.ladder.style is not Style.MIXED or times.parts < 2:
        return None
    wholes, top = number.amounts
    return statement.asked, Product(times.parts, wholes, top, number.ladder.denominator)


def both_parts(product: Product) -> Made | None:
    """Multiply numerator and denominator of a fraction."""
    return None if product.w else (None, _by(product, product.n), _by(product, product.d))


def bottom_only(product: Product) -> Made | None:
    """Multiply the denominator of a fraction."""
    return None if product.w else (None, whole(product.n), _by(product, product.d))


def added_to_top(product: Product) -> Made | None:
    """Add the whole number to the numerator of a fraction."""
    return None if product.w else (None, plus(whole(product.k), whole(product.n)), whole(product.d))


def wholes_only(product: Product) -> Made | None:
    """Multiply the wholes and keep the fraction."""
    if not product.w or not product.n:
        return None
    return _by(product, product.w), whole(product.n), whole(product.d)


def every_number(product: Product) -> Made | None:
    """Multiply wholes, numerator and denominator."""
    if not product.w:
        return None
    return _by(product, product.w), _by(product, product.n), _by(product, product.d)


def fraction_only(product: Product) -> Made | None:
    """Keep the wholes and multiply the fraction."""
    return (whole(product.w), _by(product, product.n), whole(product.d)) if product.w else None


def pieces_left(product: Product) -> Made | None:
    """Multiply rightly and leave the pieces as they are when they fill a whole."""
    if product.k * product.n < product.d:
        return None
    wholes = _by(product, product.w) if product.w else None
    return wholes, _by(product, product.n), whole(product.d)


def _over(top: Expression, bottom: Expression) -> Expression:
    """Write a fraction; one with nothing to work out stands as it is."""
    if isinstance(top, Quantity) and isinstance(bottom, Quantity):
        return Quantity(mixed(bottom.parts), (None, top.parts))
    return Over(top, bottom)


def _by(product: Product, number: int) -> Expression:
    return Times(whole(product.k), whole(number))
