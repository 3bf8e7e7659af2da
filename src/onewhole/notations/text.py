"""Plain text as a person types it: ASCII, and read back to the same thing."""

from typing import assert_never

from onewhole.languages.english.words import place_name
from onewhole.number.digits import in_digits, named_places
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.row import Number, Part, Sign, flat
from onewhole.statements.writable import Writable

_CLOSE_UP = {Sign.OPEN: "(", Sign.CLOSE: ")", Sign.OVER: "/"}


def text(thing: Writable) -> str:
    """Write a number, an expression or a statement in plain text.

    ``read(text(x)) == x`` for every quantity, expression and statement that :mod:`onewhole.statements` reads,
    as long as the brackets nest no deeper than it reads them. Whole numbers and decimals stand in digits, or
    in place words where a place is overfull: 4 tens 12 ones.

    >>> from onewhole.statements.reading import read_statement
    >>> text(read_statement("7\N{VULGAR FRACTION TWO THIRDS} \N{MINUS SIGN} (3 and 5/6 - 1)"))
    '7 2/3 - (3 5/6 - 1)'
    """
    return "".join(_spelt(piece) for piece in flat(thing)).strip()


def _spelt(piece: Number | Sign) -> str:
    match piece:
        case Sign():
            return _CLOSE_UP.get(piece, f" {piece.value} ")
        case Quantity():
            return _quantity(piece)
        case Gap(wholes, top, bottom):
            return _mixed(wholes, top, bottom)
        case Impossible(wholes, top):
            return _mixed(wholes, top, 0)
        case _:
            assert_never(piece)


def _quantity(quantity: Quantity) -> str:
    match quantity.ladder.style:
        case Style.MIXED:
            wholes, top = quantity.counts
            return _mixed(wholes, top, quantity.ladder.denominator)
        case Style.MEASURE | Style.PLACES | Style.DECIMAL:
            return " ".join(unit_by_unit(quantity))
        case _:
            assert_never(quantity.ladder.style)


def unit_by_unit(quantity: Quantity) -> tuple[str, ...]:
    """Write a measure, a whole number or a decimal count by count; what stands in digits is one piece.

    >>> from onewhole.number.ladder import measure
    >>> unit_by_unit(Quantity(measure("ft", "in"), (5, 2)))
    ('5 ft', '2 in')
    """
    if quantity.ladder.style is Style.MEASURE:
        pairs = zip(quantity.amounts, quantity.ladder.units, strict=True)
        return tuple(f"{count} {unit.mark}" for count, unit in pairs)
    if in_digits(quantity):
        return (digits(quantity),)
    return tuple(f"{count} {place_name(unit, count)}" for count, unit in named_places(quantity))


def digits(quantity: Quantity) -> str:
    """Write a whole number or decimal in digits.

    >>> from onewhole.number.ladder import decimal
    >>> digits(Quantity(decimal(1, 2), (5, 0, 2)))
    '5.02'
    """
    spelt = "".join(str(count) for count in quantity.amounts)
    after = quantity.ladder.after
    return f"{spelt[:-after] or '0'}.{spelt[-after:]}" if after else spelt


def _mixed(wholes: Part, top: Part, bottom: Part) -> str:
    fraction = "" if top is None else f"{part(top)}/{part(bottom)}"
    return fraction if wholes is None else f"{part(wholes)} {fraction}".rstrip()


def part(count: Part) -> str:
    """Write one part of a number: its digits, or ? for the missing one."""
    return "?" if count is HOLE else str(count)
