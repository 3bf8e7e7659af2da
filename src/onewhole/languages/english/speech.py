"""Spoken English: what is said aloud is what stands on the line, and can be read back from the words."""

from typing import assert_never

from onewhole.languages.english.wordings import wording
from onewhole.languages.english.words import (
    FORMS,
    article,
    count_words,
    measure_name,
    piece_name,
    place_written,
    unit_called,
)
from onewhole.number.clock import shown
from onewhole.number.digits import in_digits, named_places
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import TEN, Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.unit import DOLLAR
from onewhole.number.with_minus import WithMinus
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.row import Blanks, FlatPiece, Part, Sign, flat
from onewhole.statements.wording import (
    WordsBefore,
    WordsBehind,
)
from onewhole.statements.writable import Writable

SIGNS = {
    Sign.PLUS: "plus",
    Sign.MINUS: "minus",
    Sign.TIMES: "times",
    Sign.EQUALS: "equals",
    Sign.LESS: "is less than",
    Sign.GREATER: "is greater than",
    Sign.ABOUT: "is about",
    Sign.COMMA: ",",
    Sign.WHICH: "compared with",
    Sign.OPEN: "open bracket",
    Sign.CLOSE: "close bracket",
    Sign.OVER: "over",
    Sign.UNTIL: "to",
    Sign.DIVIDE: "divided by",
    Sign.REMAINDER: "remainder",
}

BLANK = "blank"

HUNDRED = 100
#: Cents in a dollar.
CENTS = 100
THOUSAND = 1000


def say(thing: Writable) -> str:
    """Say a number, an expression or a statement in words, without a capital or a full stop.

    "and" stands only between wholes and pieces, a decimal has a "point", a missing part is "blank". Pieces
    are named (sixths, twelfths, twenty-fourths) where the ear cannot mistake them, and said with "over"
    elsewhere: seven over one hundred three. What is said is read back as
    the same statement (`tests/laws/test_speech.py`).

    >>> from onewhole.statements.reading import read_statement
    >>> say(read_statement("7 2/6 - 3 5/6"))
    'seven and two sixths minus three and five sixths'
    """
    return " ".join(_said(piece) for piece in flat(thing)).replace(f" {SIGNS[Sign.COMMA]}", SIGNS[Sign.COMMA])


def say_before(thing: Writable, rest: str) -> tuple[str, int]:  # noqa: ARG001 - nothing agrees in English
    """Say a number as it stands before the rest of a typed text, and how many letters of it are said too.

    >>> from onewhole.statements.reading import read_quantity
    >>> say_before(read_quantity("2 1/6"), " strips")
    ('two and one sixth', 0)
    """
    return say(thing), 0


def _said(piece: FlatPiece) -> str:
    match piece:
        case Sign():
            return SIGNS[piece]
        case WordsBefore() | WordsBehind():
            return wording(piece)
        case Quantity():
            return _quantity(piece)
        case Gap(wholes, top, bottom):
            return _mixed(wholes, top, bottom)
        case Impossible(wholes, top):
            return _mixed(wholes, top, 0)
        case WithMinus():
            return _signed(piece)
        case Blanks(units):
            return " ".join(f"{BLANK} {measure_name(unit)}" for unit in units.units)
        case NumberForm():
            return FORMS[piece]
        case _:
            assert_never(piece)


def _signed(number: WithMinus) -> str:
    minus = SIGNS[Sign.MINUS]
    if number.below:
        top, bottom = number.fraction
        said = f"{count_words(top)} {SIGNS[Sign.OVER]} {minus} {count_words(bottom)}"
    else:
        said = _said(number.unsigned)
    return f"{minus} {said}" if number.front else said


def _quantity(quantity: Quantity) -> str:
    match quantity.ladder.style:
        case Style.MIXED:
            wholes, top = quantity.counts
            return _of_unit(_mixed(wholes, top, quantity.ladder.denominator), quantity)
        case Style.MEASURE if quantity.ladder.clock:
            return _clock(quantity)
        case Style.MEASURE:
            pairs = zip(quantity.amounts, quantity.ladder.units, strict=True)
            return " ".join(f"{count_words(count)} {measure_name(unit, count)}" for count, unit in pairs)
        case Style.PLACES | Style.DECIMAL:
            if not in_digits(quantity):
                return _places(quantity)
            if quantity.ladder.mark == DOLLAR:
                return _money(quantity)
            return _of_unit(_digits(quantity), quantity)
        case _:
            assert_never(quantity.ladder.style)


def _of_unit(said: str, quantity: Quantity) -> str:
    """Say the unit behind a number: five and five eighths inches, five eighths of an inch, one inch."""
    if not quantity.ladder.mark:
        return said
    if quantity.ladder.style is Style.MIXED and quantity.counts[0] is None:
        one = unit_called(quantity.ladder.mark, 1)
        return f"{said} of {article(one)} {one}"
    alone = quantity.ladder.style is Style.PLACES and quantity.parts == 1
    return f"{said} {unit_called(quantity.ladder.mark, 1 if alone else 2)}"


def _clock(time: Quantity) -> str:
    """Say a time of day: nine forty-five, nine oh five, ten o'clock, two fifteen p m, twelve noon."""
    hour, minutes, half = shown(time)
    if (hour, minutes) == (12, 0) and half:
        return "twelve noon" if half == "p.m." else "twelve midnight"
    said = "o'clock" if not minutes else f"{'oh ' if minutes < TEN else ''}{count_words(minutes)}"
    return f"{count_words(hour)} {said} {half.replace('.', ' ')}".strip()


def _money(quantity: Quantity) -> str:
    """Say an amount of money: three dollars and twenty-five cents."""
    dollars, cents = divmod(int(quantity.value * CENTS), CENTS)
    said = f"{count_words(dollars)} {unit_called(DOLLAR, dollars)}"
    if not quantity.ladder.after:
        return said
    return f"{said} and {count_words(cents)} {unit_called('¢', cents)}"


def _mixed(wholes: Part, top: Part, bottom: Part) -> str:
    if top is None:
        return _part(wholes)
    fraction = _fraction(top, bottom)
    return fraction if wholes is None else f"{_part(wholes)} and {fraction}"


def _fraction(top: Part, bottom: Part) -> str:
    if isinstance(bottom, int) and named(top, bottom):
        return f"{_part(top)} {piece_name(bottom, top if isinstance(top, int) else 2)}"
    return f"{_part(top)} over {_part(bottom)}"


def named(top: Part, bottom: int) -> bool:
    """Say whether pieces are said by their name: two sixths, and not two over six.

    The ear must not take the numerator and the denominator for one number, as it would with two-hundredths,
    nor 100 twenty-fourths for 120 fourths; so names of two words never come after full hundreds.
    (An open speech-rule engine says "17 tenths" but "89 over 10"; a class says tenths for both.)

    >>> named(7, 24), named(110, 44), named(7, 103), named(100, 24)
    (True, True, False, False)
    """
    if bottom in {HUNDRED, THOUSAND}:
        return True
    if bottom < 2 or bottom > HUNDRED:
        return False
    full = isinstance(top, int) and top >= HUNDRED and top % HUNDRED == 0
    return bottom <= 2 * TEN or bottom % TEN == 0 or not full


def _part(count: Part) -> str:
    return BLANK if count is HOLE else count_words(count or 0)


def _digits(quantity: Quantity) -> str:
    """Say a whole number as one, and a decimal with its point and digit by digit after it: five point two."""
    amounts, after = quantity.amounts, quantity.ladder.after
    before = amounts[: len(amounts) - after]
    if before[:1] == (0,):
        said = [count_words(digit) for digit in before]
    else:
        said = [count_words(int("".join(map(str, before)) or "0"))]
    if after:
        said += ["point", *(count_words(digit) for digit in amounts[-after:])]
    return " ".join(said)


def _places(quantity: Quantity) -> str:
    """Say every place: four tens twelve ones.

    The ones are always said before tenths, since twelve tenths alone is a fraction. After "one hundred" and
    "one thousand" stands a comma, a rest for the voice: one hundred, twelve tens is not 112 tens.
    """
    pairs = named_places(quantity)
    ones = quantity.ladder.units[-1 - quantity.ladder.after]
    if quantity.ladder.after and ones not in {unit for _, unit in pairs}:
        pairs = tuple(sorted((*pairs, (0, ones)), key=lambda pair: -pair[1].size))
    said = []
    for count, unit in pairs:
        rest = "," if count == 1 and unit.size >= HUNDRED else ""
        said.append(f"{count_words(count)} {place_written(unit, count).replace(' ', '-')}{rest}")
    return " ".join(said).rstrip(",")
