"""So many times is the number added so many times: 4 x 2/3 is 2/3 + 2/3 + 2/3 + 2/3.

Sources: 3.OA.A.1 (so many groups of so many) and 4.NF.B.4.b (a multiple of a fraction), CCSSM (2010).
"""

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression, Times, plus
from onewhole.working.products.made import made
from onewhole.working.products.moves import turned, usual_form
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.product_way import ProductStep, ProductWay
from onewhole.working.reasons.multiplying import EqualParts
from onewhole.working.reasons.taking import InAll
from onewhole.working.reasons.unsuited import NotSoManyTimes, TooManyTimes, Unsuited

#: As many numbers fit on a line, and jumps are still told apart. Common practice, no source.
MOST = 6
FEWEST = 2


def so_many(asked: Expression) -> tuple[Quantity, ...]:
    """Return a number as often as a product takes it; nothing where that is no whole number or too often.

    >>> from onewhole.number.quantity import whole
    >>> so_many(Times(whole(3), whole(5))) == (whole(5),) * 3
    True
    """
    match asked:
        case Times(Quantity() as left, Quantity() as right):
            product = turned(ProductState(left, right))
            times = product.times or 0
            return (product.right,) * times if times <= MOST else ()
        case _:
            return ()


def added(state: ProductState) -> ProductState:
    """Write the number so many times, and add."""
    times, number = state.left.parts, state.right
    state = state.say(plus(*(number,) * times), EqualParts(times, number))
    if number.ladder.style in {Style.PLACES, Style.DECIMAL}:
        result = made(state.left, number)
        return ProductState(state.left, number, state.lines, result).say(result, InAll(result))
    result = Quantity(number.ladder, tuple([times * count for count in number.amounts]))
    return usual_form(ProductState(state.left, number, state.lines, result))


def _unsuited(state: ProductState) -> Unsuited | None:
    times = turned(state).times
    if times is None or times < FEWEST:
        return NotSoManyTimes()
    return TooManyTimes(times, MOST) if times > MOST else None


def _offered(state: ProductState) -> bool:
    return len(turned(state).right.counts) <= FEWEST


EQUAL_JUMPS = ProductWay(
    key="equal_jumps",
    name="Equal jumps",
    steps=(
        ProductStep("turned", turned),
        ProductStep("added", added),
    ),
    unsuited=_unsuited,
    offered=_offered,
)
