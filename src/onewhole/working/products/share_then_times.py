"""A part of a measure or of a price: shared into as many parts as a fraction names, some of them taken.

3/4 of 2 ft is 3 of the 4 equal parts of 2 ft: 3 x (2 ft / 4). A mixed number and a decimal are written as one
fraction first: 1 1/2 x 2 ft is 3/2 x 2 ft, and 0.5 x 2 ft is 1/2 x 2 ft.

Sources: 5.NF.B.4.a (a/b of q is a parts of a partition of q into b equal parts), 5.NF.B.6 (mixed numbers) and
5.NBT.B.7 (decimals), CCSSM (2010).
"""

from math import gcd

from onewhole.number.ladder import Style, joined, mixed
from onewhole.number.quantity import Quantity, trimmed, whole
from onewhole.number.unit import DOLLAR
from onewhole.statements.expression import Expression, Quotient, Times
from onewhole.working.equal_pieces import recut
from onewhole.working.line import Line
from onewhole.working.products.by_heart import BY_HEART, known
from onewhole.working.products.each_unit import part_by_part
from onewhole.working.products.moves import usual_form
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.product_way import ProductStep, ProductWay
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.share_units import SHARE_UNITS
from onewhole.working.reasons.multiplying import OneFractionEach, SharesTaken, TurnedRound
from onewhole.working.reasons.unsuited import NotSharedOut, Unsuited


def part_first(state: ProductState) -> ProductState:
    """Put what says which part is taken in front: 2 ft x 3/4 is 3/4 x 2 ft.

    Source: 3.OA.B.5 (commutative property of multiplication), CCSSM (2010).
    """
    if _says_how_much(state.left):
        return state
    turned = ProductState(state.right, state.left, state.lines)
    return turned.say(turned.asked, TurnedRound(state.left, state.right))


def one_fraction(state: ProductState) -> ProductState:
    """Write a mixed number or a decimal as one fraction; in fewest pieces where shares need it.

    >>> from onewhole.statements.reading import read_quantity
    >>> one_fraction(ProductState(read_quantity("2.5"), read_quantity("2 ft"))).left.counts
    (None, 5)
    """
    part = state.left
    parts = (1 / part.ladder.finest).numerator
    fraction = Quantity(mixed(parts), (None, part.parts))
    if part != fraction:
        state = ProductState(fraction, state.right, state.lines).say(
            Times(fraction, state.right), OneFractionEach(((part, fraction),))
        )
    shared = gcd(part.parts, parts)
    if shared == 1 or (part.ladder.style is Style.MIXED and _comes_out(state)):
        return state
    for line in recut(fraction, parts // shared):
        assert isinstance(line.says, Quantity), "pieces that are joined make a number"
        assert line.because is not None, "every line after the first has its reason"
        state = ProductState(line.says, state.right, state.lines).say(
            Times(line.says, state.right), line.because
        )
    return state


def fraction_first(state: ProductState) -> ProductState:
    """Return a product with the part that is taken in front, as one fraction.

    >>> from onewhole.statements.reading import read_quantity
    >>> fraction_first(ProductState(read_quantity("2 ft"), read_quantity("1 1/2"))).left.counts
    (None, 3)
    """
    return one_fraction(part_first(state))


def share(state: ProductState) -> ProductState:
    """Share the amount into equal parts, and take so many of them."""
    times, parts = state.left.parts, state.left.ladder.denominator
    if parts == 1:
        return part_by_part(ProductState(whole(times), state.right, state.lines))
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


def _says_how_much(number: Quantity) -> bool:
    """Say whether a number is a fraction, a mixed number or a decimal without a unit."""
    return number.ladder.style in {Style.MIXED, Style.DECIMAL} and not number.ladder.mark


def _shared(state: ProductState) -> QuotientState:
    """Return the amount shared into as many parts as the fraction names."""
    return SHARE_UNITS.run(QuotientState(state.right, whole(state.left.ladder.denominator)))


def _comes_out(state: ProductState) -> bool:
    """Say whether a share is a whole number of some unit."""
    return isinstance(_shared(state).found(), Quantity)


def _unsuited(state: ProductState) -> Unsuited | None:
    if not any(map(_says_how_much, (state.left, state.right))):
        return NotSharedOut()
    product = state if _says_how_much(state.left) else ProductState(state.right, state.left)
    ladder = product.right.ladder
    if ladder.style is Style.MIXED or not (ladder.style is Style.MEASURE or ladder.mark == DOLLAR):
        return NotSharedOut()
    if ladder.clock or not _comes_out(one_fraction(product)):
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
