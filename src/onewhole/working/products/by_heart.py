"""By heart, with the zeros: 7 x 8, and 20 x 30 as 2 x 3 hundreds.

Sources: 3.OA.C.7 (products of one-digit numbers from memory) and 3.NBT.A.3 (by multiples of ten), CCSSM
(2010).
"""

from onewhole.number.ladder import TEN, Style, places
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.working.products.made import made
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.product_way import ProductStep, ProductWay
from onewhole.working.reasons.multiplying import KnownProduct, PlacesMultiplied
from onewhole.working.reasons.unsuited import NotByHeart, Unsuited


def known(state: ProductState) -> ProductState:
    """Write the product."""
    result = made(state.left, state.right)
    (left, one), (right, other) = _digit(state.left), _digit(state.right)
    ones = {one.size, other.size} == {1}
    zeros = len(state.left.counts) + len(state.right.counts) - 2
    unit = places(zeros + 1).units[0]
    reason = KnownProduct(left, right) if ones else PlacesMultiplied(left, one, right, other, unit)
    state = state.say(result, reason)
    return ProductState(state.left, state.right, state.lines, result)


def _digit(number: Quantity) -> tuple[int, Unit]:
    """Return the one digit that is not 0, and what it counts; of 0 and 1 the number itself."""
    at = next((rung for rung, count in enumerate(number.amounts) if count), len(number.counts) - 1)
    return number.amounts[at], number.ladder.units[at]


def _by_heart(number: Quantity) -> bool:
    plain = number.ladder.style is Style.PLACES
    return plain and max(number.amounts) < TEN and sum(count > 0 for count in number.amounts) <= 1


def _unsuited(state: ProductState) -> Unsuited | None:
    return None if _by_heart(state.left) and _by_heart(state.right) else NotByHeart()


def _offered(_: ProductState) -> bool:
    return True


BY_HEART = ProductWay(
    key="by_heart",
    name="By heart, with the zeros",
    steps=(ProductStep("known", known),),
    unsuited=_unsuited,
    offered=_offered,
)
