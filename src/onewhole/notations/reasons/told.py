"""Units and amounts in the sentences of reasons, in the class's own words."""

from onewhole.notations.text import text
from onewhole.notations.words import ClassWords, unit_name
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


def some(count: int, unit: Unit, words: ClassWords | None = None) -> str:
    """Count a unit: 5 sixths, 1 ten; with the class's words also 3 wholes.

    >>> from onewhole.number.unit import ONE
    >>> some(3, ONE, ClassWords("strip", "strips")), some(1, ONE)
    ('3 strips', '1 one')
    """
    return f"{count} {unit_name(unit, count, words)}"


def amount(quantity: Quantity, words: ClassWords) -> str:
    """Name an amount: 3 wholes and 3 sixths, 2 feet and 7 inches; whole numbers and decimals in plain text.

    >>> from onewhole.number.ladder import mixed
    >>> amount(Quantity(mixed(6), (3, 1)), ClassWords("strip", "strips"))
    '3 strips and 1 sixth'
    """
    if quantity.ladder.style in {Style.PLACES, Style.DECIMAL}:
        return text(quantity)
    pairs = zip(quantity.counts, quantity.ladder.units, strict=True)
    named = [some(count, unit, words) for count, unit in pairs if count is not None]
    return " and ".join(filter(None, (", ".join(named[:-1]), named[-1])))


def single(quantity: Quantity) -> bool:
    """Say whether an amount takes "is" and not "are": one thing, or a bare number.

    >>> from onewhole.number.ladder import mixed
    >>> single(Quantity(mixed(6), (None, 1))), single(Quantity(mixed(6), (1, 1)))
    (True, False)
    """
    if quantity.ladder.style in {Style.PLACES, Style.DECIMAL}:
        return True
    return [count for count in quantity.counts if count is not None] == [1]
