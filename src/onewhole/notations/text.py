"""Plain text as a person types it, and as it is printed: ASCII, and read back to the same thing."""

from collections.abc import Callable
from itertools import pairwise
from typing import assert_never

from onewhole.languages.english.tongue import ENGLISH
from onewhole.languages.language import Language
from onewhole.languages.line_words import LineWords
from onewhole.number.clock import shown
from onewhole.number.digits import in_digits, named_places
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity, with_mark
from onewhole.number.unit import CENT, DOLLAR
from onewhole.number.with_minus import WithMinus
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.line_plot import LinePlot, PlotQuestion
from onewhole.statements.row import Blanks, FlatPiece, Part, Sign, flat
from onewhole.statements.wording import (
    WordsBefore,
    WordsBehind,
)
from onewhole.statements.writable import Writable

_THREE = 3
#: How the digits of a whole number are written.
Spell = Callable[[str], str]

_CLOSE_UP = {Sign.OPEN: "(", Sign.CLOSE: ")", Sign.OVER: "/", Sign.COMMA: ", "}


def text(thing: Writable) -> str:
    """Write a number, an expression or a statement in plain text.

    ``read(text(x)) == x`` for every quantity, expression and statement that :mod:`onewhole.statements` reads,
    as long as the brackets nest no deeper than it reads them. Whole numbers and decimals stand in digits, or
    in place words where a place is overfull: 4 tens 12 ones.

    >>> from onewhole.statements.reading import read_statement
    >>> text(read_statement("7\N{VULGAR FRACTION TWO THIRDS} \N{MINUS SIGN} (3 and 5/6 - 1)"))
    '7 2/3 - (3 5/6 - 1)'
    """
    asked = _line(thing, _plain, ENGLISH.line)
    return f"plot {_plotted(thing.plot)}; {asked}" if isinstance(thing, PlotQuestion) else asked


def _plotted(plot: LinePlot) -> str:
    """Write each value of a line plot with how often it was found; the unit stands behind the last one."""
    *first, last = plot.marks
    marks = (*((with_mark(value, ""), count) for value, count in first), last)
    return ", ".join(f"{text(value)}: {count}" for value, count in marks)


def printed(thing: Writable, language: Language = ENGLISH) -> str:
    """Write it as it is printed in the United States: a comma before every three digits of a whole number.

    The words that stand on a line are those of the ``language``.

    >>> from onewhole.statements.reading import read_statement
    >>> printed(read_statement("4006 - 1278"))
    '4,006 - 1,278'
    """
    return _line(thing, grouped, language.line)


def clock_face(time: Quantity) -> str:
    """Write a time of day as a clock shows it: 9:45, 2:15 p.m.

    >>> from onewhole.number.clock import clock
    >>> clock_face(clock(14 * 60 + 5, halves=True))
    '2:05 p.m.'
    """
    hour, minutes, half = shown(time)
    return f"{hour}:{minutes:02} {half}".rstrip()


def digits_printed(quantity: Quantity) -> str:
    """Write the digits of a whole number or decimal as they are printed, without its unit.

    >>> from onewhole.number.ladder import decimal
    >>> digits_printed(Quantity(decimal(4, 1, "km"), (1, 2, 5, 0, 5)))
    '1,250.5'
    """
    return _digits(quantity, grouped)


def grouped(digits: str) -> str:
    """Put a comma before every three digits, from the right; fewer than four digits stay as they are.

    So do digits that begin with a zero.

    >>> grouped("1234567"), grouped("999"), grouped("0001"), grouped("?")
    ('1,234,567', '999', '0001', '?')
    """
    if digits[:1] == "0":
        return digits
    head = len(digits) % _THREE or _THREE
    return ",".join((digits[:head], *(digits[at : at + _THREE] for at in range(head, len(digits), _THREE))))


def _plain(digits: str) -> str:
    return digits


def _line(thing: Writable, spell: Spell, said: LineWords) -> str:
    pieces = flat(thing)
    spelt = [_spelt(piece, spell, said) for piece in pieces]
    for at, (one, other) in enumerate(pairwise(pieces)):
        if one is Sign.COMMA and isinstance(other, WordsBehind):
            spelt[at] = ","
    return "".join(spelt).strip()


def _spelt(piece: FlatPiece, spell: Spell, said: LineWords) -> str:
    match piece:
        case Sign.UNTIL:
            return f" {said.until} "
        case Sign():
            return _CLOSE_UP.get(piece, f" {piece.value} ")
        case WordsBefore() | WordsBehind():
            return f" {said.wordings(piece)} "
        case Quantity():
            return _quantity(piece, spell, said)
        case Gap(wholes, top, bottom):
            return _mixed(wholes, top, bottom, spell)
        case Impossible(wholes, top):
            return _mixed(wholes, top, 0, spell)
        case WithMinus():
            return _signed(piece, spell, said)
        case Blanks(units):
            return " ".join(f"? {unit.mark}" for unit in units.units)
        case NumberForm():
            return f" {said.forms[piece]}"
        case _:
            assert_never(piece)


def _signed(number: WithMinus, spell: Spell, said: LineWords) -> str:
    front = "-" if number.front else ""
    if number.below:
        top, bottom = number.fraction
        return f"{front}{spell(str(top))}/-{spell(str(bottom))}"
    return front + _spelt(number.unsigned, spell, said)


def _quantity(quantity: Quantity, spell: Spell, said: LineWords) -> str:
    match quantity.ladder.style:
        case Style.MIXED:
            wholes, top = quantity.counts
            return _with_mark(_mixed(wholes, top, quantity.ladder.denominator, spell), quantity)
        case Style.MEASURE | Style.PLACES | Style.DECIMAL:
            return " ".join(unit_by_unit(quantity, spell, said))
        case _:
            assert_never(quantity.ladder.style)


def unit_by_unit(
    quantity: Quantity, spell: Spell = _plain, said: LineWords = ENGLISH.line
) -> tuple[str, ...]:
    """Write a measure, a whole number or a decimal count by count; what stands in digits is one piece.

    >>> from onewhole.number.ladder import measure
    >>> unit_by_unit(Quantity(measure("ft", "in"), (5, 2)))
    ('5 ft', '2 in')
    """
    if quantity.ladder.clock:
        return (clock_face(quantity),)
    if quantity.ladder.style is Style.MEASURE:
        pairs = zip(quantity.amounts, quantity.ladder.units, strict=True)
        return tuple(
            f"{spell(str(count))}{'' if unit.mark == CENT else ' '}{unit.mark}" for count, unit in pairs
        )
    if in_digits(quantity):
        return (_with_mark(_digits(quantity, spell), quantity),)
    named = named_places(quantity)
    return tuple(f"{spell(str(count))} {said.place(unit, count)}" for count, unit in named)


def _with_mark(number: str, quantity: Quantity) -> str:
    """Write the unit of a number: behind it with a blank, and a dollar sign close before it."""
    mark = quantity.ladder.mark
    if not mark:
        return number
    return f"{mark}{number}" if mark == DOLLAR else f"{number}{'' if mark == CENT else ' '}{mark}"


def _digits(quantity: Quantity, spell: Spell) -> str:
    """Write a whole number or decimal in digits; money with both places after the point."""
    spelt = "".join(str(count) for count in quantity.amounts)
    after = quantity.ladder.after
    if after == 1 and quantity.ladder.mark == DOLLAR:
        spelt, after = f"{spelt}0", 2
    return f"{spell(spelt[:-after] or '0')}.{spelt[-after:]}" if after else spell(spelt)


def _mixed(wholes: Part, top: Part, bottom: Part, spell: Spell) -> str:
    fraction = "" if top is None else f"{spell(part(top))}/{spell(part(bottom))}"
    return fraction if wholes is None else f"{spell(part(wholes))} {fraction}".rstrip()


def part(count: Part) -> str:
    """Write one part of a number: its digits, or ? for the missing one."""
    return "?" if count is HOLE else str(count)
