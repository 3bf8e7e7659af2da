"""Numerator times numerator over denominator times denominator: 2 1/2 x 3 1/4, 1.2 x 0.4.

Sources: 5.NF.B.4.a and 5.NF.B.6 (fractions and mixed numbers), 5.NBT.B.7 (decimals), CCSSM (2010).
"""

from onewhole.number.ladder import TEN, Style, mixed
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import Over, Times
from onewhole.working.line import Line
from onewhole.working.products.made import made, product_ladder
from onewhole.working.products.moves import turned, usual_form
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.product_way import ProductStep, ProductWay
from onewhole.working.reasons.multiplying import OneFractionEach, TopsAndBottoms, UnitTimes
from onewhole.working.reasons.renaming import PointPlaces
from onewhole.working.reasons.unsuited import NoFractionToMultiply, Unsuited


def as_fractions(state: ProductState) -> ProductState:
    """Write each number as one fraction; a whole number that says how many times stays."""
    left, right = _one_fraction(state.left), _one_fraction(state.right)
    if (left, right) == (state.left, state.right):
        return state
    pairs = ((state.left, left), (state.right, right))
    changed = OneFractionEach(tuple([(old, new) for old, new in pairs if new != old]))
    said = state.say(Times(left, right), changed)
    return ProductState(left, right, said.lines)


def _one_fraction(number: Quantity) -> Quantity:
    if number.ladder.style is Style.PLACES:
        return number
    parts = (1 / number.ladder.finest).numerator
    return Quantity(mixed(parts, number.ladder.mark), (None, number.parts))


def multiply(state: ProductState) -> ProductState:
    """Multiply the numerators, and the denominators."""
    ladder = product_ladder(state.left, state.right)
    result = Quantity(ladder, (None, state.left.parts * state.right.parts))
    tops = Times(whole(state.left.parts), whole(state.right.parts))
    one, other = state.left.ladder.style, state.right.ladder.style
    if one is Style.MIXED is other:
        first, second = state.left.ladder.denominator, state.right.ladder.denominator
        bottoms = Times(whole(first), whole(second))
        state = state.say(Over(tops, bottoms), TopsAndBottoms(first, second), aside=True)
    else:
        times, counted = state.left.parts, state.right
        reason = UnitTimes(times, counted.parts, counted.ladder.units[-1])
        state = state.say(Over(tops, whole(ladder.denominator)), reason, aside=True)
    return usual_form(ProductState(state.left, state.right, state.lines, result))


def _with_point(first: ProductState) -> ProductState:
    """Multiply as fractions, and write a decimal again where both numbers were decimals."""
    state = multiply(as_fractions(turned(first)))
    styles = {first.left.ladder.style, first.right.ladder.style}
    if Style.DECIMAL not in styles or Style.MIXED in styles:
        return state
    answer = made(first.left, first.right)
    small = answer.ladder.units[-1]
    line = Line(answer, PointPlaces(small, answer.ladder.after))
    return ProductState(first.left, first.right, (*state.lines, line), answer)


def _unsuited(state: ProductState) -> Unsuited | None:
    styles = {state.left.ladder.style, state.right.ladder.style}
    if state.part_of_money or Style.MEASURE in styles or styles == {Style.PLACES}:
        return NoFractionToMultiply()
    return None


def _offered(state: ProductState) -> bool:
    """Say that a teacher multiplies so: no decimal by a whole number, and no pieces smaller than 1/10,000."""
    styles = {state.left.ladder.style, state.right.ladder.style}
    return (
        styles != {Style.PLACES, Style.DECIMAL}
        and product_ladder(state.left, state.right).finest.denominator <= TEN**4
    )


TOPS_AND_BOTTOMS = ProductWay(
    key="tops_and_bottoms",
    name="As fractions: tops and bottoms",
    steps=(ProductStep("multiply", _with_point),),
    unsuited=_unsuited,
    offered=_offered,
)
