"""What two numbers make when they are multiplied, written the usual way."""

from onewhole.number.ladder import Ladder, Style, decimal, mixed
from onewhole.number.quantity import Quantity, usual
from onewhole.number.unit import CENT_PLACES, DOLLAR
from onewhole.statements.expression import Times, value


def made(left: Quantity, right: Quantity) -> Quantity:
    """Write the product of two numbers the usual way; of two fractions in pieces of the pieces.

    The product of two decimals has as many places after the point as both together.

    >>> from onewhole.number.quantity import whole
    >>> made(whole(24), whole(36)).parts
    864
    >>> made(Quantity(mixed(2), (None, 1)), Quantity(mixed(4), (None, 3))).counts
    (None, 3)
    """
    found = usual(product_ladder(left, right), value(Times(left, right)))
    one_fraction = found.ladder.style is Style.MIXED and found.amounts[0] == 0
    return Quantity(found.ladder, (None, found.amounts[1])) if one_fraction else found


def product_ladder(left: Quantity, right: Quantity) -> Ladder:
    """Return the ladder on which a product is counted: sixths of halves are twelfths, a price has cents.

    >>> from onewhole.number.quantity import whole
    >>> product_ladder(whole(3), Quantity(mixed(5), (1, 2))).denominator
    5
    """
    one, other = left.ladder, right.ladder
    if Style.PLACES in {one.style, other.style}:
        plain, counted = (one, other) if one.style is Style.PLACES else (other, one)
        return counted if counted.style is not Style.PLACES or counted.mark else plain
    mark = one.mark or other.mark
    if mark == DOLLAR:
        return decimal(1, CENT_PLACES, mark)
    if one.style is Style.DECIMAL is other.style:
        return decimal(1, one.after + other.after, mark)
    parts = (1 / (one.finest * other.finest)).numerator
    return mixed(parts, mark)
