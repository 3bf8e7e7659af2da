"""A fraction of a measure or of a price: shared into as many parts as the fraction names, some of them taken.

3/4 of 2 ft is 3 of the 4 equal parts of 2 ft: 3 x (2 ft / 4).

Source: 5.NF.B.4.a (a/b of q is a parts of a partition of q into b equal parts), CCSSM (2010).
"""

from onewhole.number.ladder import Style, joined
from onewhole.number.quantity import Quantity, trimmed, whole
from onewhole.number.unit import DOLLAR
from onewhole.statements.expression import Expression, Quotient, Times
from onewhole.working.line import Line
from onewhole.working.products.by_heart import BY_HEART, known
from onewhole.working.products.each_unit import part_by_part
from onewhole.working.products.moves import usual_form
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.product_way import ProductStep, ProductWay
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.share_units import SHARE_UNITS
from onewhole.working.reasons.multiplying import SharesTaken, TurnedRound
from onewhole.working.reasons.unsuited import NotSharedOut, Unsuited


def fraction_first(state: ProductState) -> ProductState:
    """Put the fraction in front, so that it says which part is taken: 2 ft x 3/4 is 3/4 x 2 ft.

    Source: 3.OA.B.5 (commutative property of multiplication), CCSSM (2010).
    """
    if _names_parts(state.left):
        return state
    turned = ProductState(state.right, state.left, state.lines)
    return turned.say(turned.asked, TurnedRound(state.left, state.right))


def share(state: ProductState) -> ProductState:
    """Share the amount into equal parts, and take so many of them."""
    times, parts = state.left.parts, state.left.ladder.denominator
    shared = _shared(state)
    one = shared.found()
    assert isinstance(one, Quantity), "what leaves something over does not suit this way"
    first = Line(Quotient(state.right, whole(parts)), SharesTaken(state.left.ladder.units[-1], times))
    lines = tuple([_taken(line, times) for line in (first, *shared.lines)])
    each = one.on(joined(state.right.ladder, one.ladder))
    if times == 1:
        return ProductState(state.left, state.right, (*state.lines, *lines), each)
    lines = (*state.lines, *lines)
    heart = ProductState(whole(times), trimmed(each), lines)
    last = (
        known(heart)
        if BY_HEART.unsuited(heart) is None
        else part_by_part(ProductState(heart.left, each, lines))
    )
    return ProductState(state.left, state.right, last.lines, last.result)


def _taken(line: Line, times: int) -> Line:
    """Write how many times what is shared stands on a line; once, it stands alone."""
    if times == 1 or not isinstance(line.says, Expression):
        return line
    return Line(Times(whole(times), line.says), line.because, line.aside, line.facts)


def _names_parts(number: Quantity) -> bool:
    return number.ladder.style is Style.MIXED and not number.ladder.mark and not number.amounts[0]


def _shared(state: ProductState) -> QuotientState:
    """Return the amount shared into as many parts as the fraction names."""
    return SHARE_UNITS.run(QuotientState(state.right, whole(state.left.ladder.denominator)))


def _unsuited(state: ProductState) -> Unsuited | None:
    if not any(map(_names_parts, (state.left, state.right))):
        return NotSharedOut()
    product = state if _names_parts(state.left) else ProductState(state.right, state.left)
    ladder = product.right.ladder
    if ladder.style is Style.MIXED or not (ladder.style is Style.MEASURE or ladder.mark == DOLLAR):
        return NotSharedOut()
    if ladder.clock or not isinstance(_shared(product).found(), Quantity):
        return NotSharedOut()
    return None


def _offered(_: ProductState) -> bool:
    return True


SHARE_THEN_TIMES = ProductWay(
    key="share_then_times",
    name="Share into equal parts, take some of them",
    steps=(
        ProductStep("fraction_first", fraction_first),
        ProductStep("share", share),
        ProductStep("usual_form", usual_form),
    ),
    unsuited=_unsuited,
    offered=_offered,
)
