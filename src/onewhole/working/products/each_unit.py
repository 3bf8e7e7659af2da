"""Every unit so many times, then full groups are put together: 3 x 1 2/5, 3 x 2 ft 7 in, 4 x 0.25.

Sources: 4.NF.B.4.b (3 x 2/5 is 6 fifths), 4.NF.B.3.c with 5.NF.B.6 (properties of operations) and 5.NBT.B.7
(decimals, by strategies based on place value), CCSSM (2010).
"""

from onewhole.number.ladder import TEN, Style
from onewhole.number.quantity import Quantity, trimmed, whole
from onewhole.number.unit import Unit
from onewhole.statements.expression import Over, Times, plus
from onewhole.working.products.moves import turned, usual_form
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.product_way import ProductStep, ProductWay
from onewhole.working.reasons.multiplying import EachUnitTimes, UnitsTimes, UnitTimes
from onewhole.working.reasons.unsuited import NotSoManyTimes, Unsuited


def part_by_part(state: ProductState) -> ProductState:
    """Take each unit so many times."""
    number, times = state.right, _times(state)
    parts = [(number.only(rung), count, unit) for rung, (count, unit) in enumerate(_counted(number)) if count]
    if len(parts) > 1:
        units = tuple([unit for _, _, unit in parts])
        says = plus(*[Times(state.left, part) for part, _, _ in parts])
        state = state.say(says, EachUnitTimes(times, units), aside=True)
    result = Quantity(number.ladder, tuple([times * count for count in number.amounts]))
    if len(parts) == 1 and number.ladder.style is Style.MIXED and number.amounts[-1]:
        ((_, count, unit),) = parts
        top = Times(state.left, whole(count))
        says = Over(top, whole(number.ladder.denominator))
        state = state.say(says, UnitTimes(times, count, unit), aside=True)
    else:
        counts = tuple([(count, unit) for _, count, unit in parts])
        state = state.say(trimmed(result), UnitsTimes(times, counts))
    return ProductState(state.left, state.right, state.lines, result)


def _counted(number: Quantity) -> tuple[tuple[int, Unit], ...]:
    return tuple(zip(number.amounts, number.ladder.units, strict=True))


def _times(state: ProductState) -> int:
    if state.times is None:
        msg = "the left number does not say how many times"
        raise ValueError(msg)
    return state.times


def _unsuited(state: ProductState) -> Unsuited | None:
    return None if turned(state).times is not None else NotSoManyTimes()


def _offered(state: ProductState) -> bool:
    """Say that a teacher multiplies so: pieces and measures; a decimal by one digit, or of one unit."""
    product = turned(state)
    times, number = product.times or 0, product.right
    short = times < TEN or sum(count > 0 for count in number.amounts) <= 1
    style = number.ladder.style
    return style in {Style.MIXED, Style.MEASURE} or (style is Style.DECIMAL and short)


EACH_UNIT = ProductWay(
    key="each_unit",
    name="Each unit so many times, then regroup",
    steps=(
        ProductStep("turned", turned),
        ProductStep("part_by_part", part_by_part),
        ProductStep("usual_form", usual_form),
    ),
    unsuited=_unsuited,
    offered=_offered,
)
