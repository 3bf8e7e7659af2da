"""Part by part: each part of one number by each part of the other, then all products added: 24 x 36.

The parts are the sides of the rectangles of an area model. Sources: 4.NBT.B.5 (strategies based on place
value, rectangular arrays and area models), 3.OA.B.5 (7 x 8 as 5 x 8 and 2 x 8) and 5.NF.B.4.b (areas with
fractional sides), CCSSM (2010).
"""

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, usual_in_parts, whole
from onewhole.number.unit import DOLLAR
from onewhole.statements.expression import Times, plus
from onewhole.working.fact import hard_sum
from onewhole.working.line import Line
from onewhole.working.pair_state import PairState
from onewhole.working.products.made import made
from onewhole.working.products.moves import usual_form
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.product_way import ProductStep, ProductWay
from onewhole.working.reasons.multiplying import PartsMultiplied, SplitToMultiply
from onewhole.working.reasons.taking import InAll
from onewhole.working.reasons.unsuited import NoPartsToSplit, Unsuited
from onewhole.working.strategies.moves import total
from onewhole.working.strategies.same_units import same_units

#: The part of a number below ten that everybody can multiply by. Common practice, no source.
FIVE = 5
#: More rectangles than this are not drawn. Common practice, no source.
MOST_PRODUCTS = 12


def parts_of(number: Quantity) -> tuple[Quantity, ...]:
    """Return a number by its parts, the largest first: 36 as 30 and 6, $3.25 as $3 and $0.25.

    >>> [part.parts for part in parts_of(whole(304))]
    [300, 4]
    """
    runs: list[tuple[int, ...]] = [(rung,) for rung in range(len(number.amounts))]
    if number.ladder.mark == DOLLAR:
        point = len(number.amounts) - number.ladder.after
        runs = [tuple(range(point)), tuple(range(point, len(number.amounts)))]
    found = tuple([number.only(*run) for run in runs if any(number.amounts[rung] for rung in run)])
    return found or (number,)


def sides(state: ProductState) -> tuple[tuple[Quantity, ...], tuple[Quantity, ...]]:
    """Return the parts of both numbers; of two digits, the first above five is split into five and the rest.

    >>> [[part.parts for part in side] for side in sides(ProductState(whole(7), whole(8)))]
    [[5, 2], [8]]
    """
    left, right = parts_of(state.left), parts_of(state.right)
    plain = state.left.ladder.style is Style.PLACES is state.right.ladder.style
    if len(left) > 1 or len(right) > 1 or not plain:
        return left, right
    if _digit_above_five(state.left):
        return _at_five(state.left), right
    if _digit_above_five(state.right):
        return left, _at_five(state.right)
    return left, right


def _digit_above_five(number: Quantity) -> bool:
    return number.ladder.style is Style.PLACES and len(number.counts) == 1 and number.parts > FIVE


def _at_five(number: Quantity) -> tuple[Quantity, ...]:
    mark = number.ladder.mark
    return whole(FIVE, mark), whole(number.parts - FIVE, mark)


def split(state: ProductState) -> ProductState:
    """Split both numbers into parts, and write every product."""
    left, right = sides(state)
    products = [Times(one, other) for one in left for other in right]
    both = ((state.left, left), (state.right, right))
    splits = tuple([(number, parts) for number, parts in both if len(parts) > 1])
    other = next((number for number, parts in both if len(parts) == 1), None)
    return state.say(plus(*products), SplitToMultiply(splits, other), aside=True)


def multiply(state: ProductState) -> ProductState:
    """Multiply every pair of parts."""
    left, right = sides(state)
    products = tuple([(one, other, made(one, other)) for one in left for other in right])
    found = [product for _, _, product in products]
    return state.say(plus(*found), PartsMultiplied(products))


def add(state: ProductState) -> ProductState:
    """Add the products, in pieces of one size where there are pieces."""
    left, right = sides(state)
    found = tuple([(made(one, other), False) for one in left for other in right])
    counted, renamed = same_units(found)
    lines = (*state.lines, *renamed)
    numbers = [number for number, _ in counted]
    ladder = numbers[0].ladder
    if ladder.style in {Style.PLACES, Style.DECIMAL}:
        result = usual_in_parts(ladder, sum(number.parts for number in numbers))
        fact = hard_sum(*(number.parts for number in numbers)) if len(numbers) == len("ab") else None
        facts = (fact,) if fact and ladder.style is Style.PLACES else ()
        lines = (*lines, Line(result, InAll(result), facts=facts))
        return ProductState(state.left, state.right, lines, result)
    together = total(PairState(numbers[0], numbers[0], taken=False), *numbers).found()
    return usual_form(ProductState(state.left, state.right, lines, together))


def _unsuited(state: ProductState) -> Unsuited | None:
    left, right = sides(state)
    measured = Style.MEASURE in {state.left.ladder.style, state.right.ladder.style}
    if state.part_of_money or (measured and state.times is None):
        return NoPartsToSplit()
    return NoPartsToSplit() if len(left) * len(right) == 1 else None


def _offered(state: ProductState) -> bool:
    left, right = sides(state)
    styles = {state.left.ladder.style, state.right.ladder.style}
    return len(left) * len(right) <= MOST_PRODUCTS and Style.MEASURE not in styles


PARTIAL_PRODUCTS = ProductWay(
    key="partial_products",
    name="Part by part",
    steps=(
        ProductStep("split", split),
        ProductStep("multiply", multiply),
        ProductStep("add", add),
    ),
    unsuited=_unsuited,
    offered=_offered,
)
