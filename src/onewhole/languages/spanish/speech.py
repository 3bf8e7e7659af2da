"""Spoken Spanish: what is said aloud is what stands on the line, and can be read back from the words.

A mixed number is said with its noun: treinta enteros y dos tercios. Without it, it would be another fraction.
"""

import re
from typing import assert_never

from onewhole.languages.spanish.wordings import wording_parts
from onewhole.languages.spanish.words import (
    FORMS,
    called,
    count_words,
    looks_feminine,
    measure_name,
    piece_name,
    place_written,
    unit_called,
)
from onewhole.number.clock import shown
from onewhole.number.digits import in_digits, named_places
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.unit import CENT, DOLLAR, unit_marked
from onewhole.number.with_minus import WithMinus
from onewhole.sentences.node import Thing
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.row import Blanks, FlatPiece, Part, Sign, flat
from onewhole.statements.wording import (
    WordsBefore,
    WordsBehind,
)
from onewhole.statements.writable import Writable

SIGNS = {
    Sign.PLUS: "más",
    Sign.MINUS: "menos",
    Sign.TIMES: "por",
    Sign.DIVIDE: "entre",
    Sign.REMAINDER: "residuo",
    Sign.EQUALS: "es igual a",
    Sign.LESS: "es menor que",
    Sign.GREATER: "es mayor que",
    Sign.ABOUT: "es cerca de",
    Sign.COMMA: ",",
    Sign.WHICH: "comparado con",
    Sign.OPEN: "abre paréntesis",
    Sign.CLOSE: "cierra paréntesis",
    Sign.OVER: "sobre",
    Sign.UNTIL: "a",
}

BLANK = "en blanco"
WHOLE = Thing("entero", "enteros")
#: What counts a numerator: its words agree as with any masculine noun.
_PIECE = Thing("sexto", "sextos")

_CENTS, _NAMED_TO, _EVENING = 100, 100, 7
#: What is counted stands right behind a number in a typed text, with what it is made of: tiras de papel.
_COUNTED = re.compile(r" ([a-záéíóúüñ]+(?: de [a-záéíóúüñ]+)*)")
#: Little words that name nothing that is counted.
_LITTLE = frozenset(
    [
        "a",
        "al",
        "con",
        "cuando",
        "de",
        "del",
        "desde",
        "el",
        "en",
        "entre",
        "es",
        "hasta",
        "la",
        "las",
        "los",
        "más",
        "menos",
        "no",
        "o",
        "para",
        "por",
        "que",
        "se",
        "si",
        "sin",
        "son",
        "u",
        "un",
        "una",
        "y",
    ]
)


def say(thing: Writable) -> str:
    """Say a number, an expression or a statement in words, without a capital or a full stop.

    >>> from onewhole.statements.reading import read_statement
    >>> say(read_statement("7 2/6 - 3 5/6"))
    'siete enteros y dos sextos menos tres enteros y cinco sextos'
    """
    return " ".join(_said(piece) for piece in flat(thing)).replace(" ,", ",")


def say_before(thing: Writable, rest: str) -> tuple[str, int]:
    """Say a number as it stands before the rest of a typed text, and how many letters of it are said too.

    The count agrees with what is counted, and the fraction stands behind it.

    >>> from onewhole.statements.reading import read_quantity
    >>> say_before(read_quantity("21 1/4"), " tiras de papel. Usa")
    ('veintiuna tiras de papel y un cuarto', 15)
    >>> say_before(read_quantity("1"), " caja y"), say_before(read_quantity("3"), ".")
    (('una', 0), ('tres', 0))
    """
    found = _COUNTED.match(rest)
    plain = isinstance(thing, Quantity) and not thing.ladder.mark
    if not found or not plain or found[1].partition(" ")[0] in _LITTLE:
        return say(thing), 0
    assert isinstance(thing, Quantity)
    noun = Thing(found[1], found[1], feminine=_counts_feminine(found[1]))
    if thing.ladder.style is Style.MIXED and thing.counts[0] is not None and thing.counts[1] is not None:
        wholes, top = thing.counts[0], thing.counts[1]
        fraction = _fraction(top, thing.ladder.denominator)
        return f"{count_words(wholes, noun)} {found[1]} y {fraction}", found.end()
    if thing.ladder.style is Style.PLACES and in_digits(thing):
        return count_words(thing.parts, noun), 0
    return say(thing), 0


def _counts_feminine(words: str) -> bool:
    """Guess the gender of what is counted by its first word, one or many of it."""
    head = words.partition(" ")[0]
    return (
        looks_feminine(head) or looks_feminine(head.removesuffix("s")) or head.endswith(("ciones", "dades"))
    )


def _said(piece: FlatPiece) -> str:
    match piece:
        case Sign():
            return SIGNS[piece]
        case WordsBefore() | WordsBehind():
            return " ".join(wording_parts(piece))
        case Quantity():
            return _quantity(piece)
        case Gap(wholes, top, bottom):
            return _mixed(wholes, top, bottom)
        case Impossible(wholes, top):
            return _mixed(wholes, top, 0)
        case WithMinus():
            return _signed(piece)
        case Blanks(units):
            return " y ".join(f"{BLANK} {measure_name(unit)}" for unit in units.units)
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
            return _mixed(wholes, top, quantity.ladder.denominator, quantity.ladder.mark)
        case Style.MEASURE if quantity.ladder.clock:
            return _clock(quantity)
        case Style.MEASURE:
            pairs = zip(quantity.amounts, quantity.ladder.units, strict=True)
            *most, last = (f"{count_words(count, unit)} {measure_name(unit, count)}" for count, unit in pairs)
            return f"{' '.join(most)} y {last}" if most else last
        case Style.PLACES | Style.DECIMAL:
            if not in_digits(quantity):
                return _places(quantity)
            if quantity.ladder.mark == DOLLAR:
                return _money(quantity)
            return _digits(quantity)
        case _:
            assert_never(quantity.ladder.style)


def _clock(time: Quantity) -> str:
    """Say a time of day: las nueve y cuarenta y cinco, la una y cinco, las dos y quince de la tarde."""
    hour, minutes, half = shown(time)
    if (hour, minutes) == (12, 0) and half:
        return "las doce del mediodía" if half == "p.m." else "las doce de la medianoche"
    said = f"{'la' if hour == 1 else 'las'} {count_words(hour, unit_marked('h'))}"
    said += f" y {count_words(minutes)}" if minutes else " en punto"
    if not half:
        return said
    part = "mañana" if half == "a.m." else "noche" if _EVENING <= hour < 12 else "tarde"
    return f"{said} de la {part}"


def _money(quantity: Quantity) -> str:
    """Say an amount of money: tres dólares con cincuenta centavos."""
    dollars, cents = divmod(int(quantity.value * _CENTS), _CENTS)
    said = f"{count_words(dollars, unit_marked(DOLLAR))} {unit_called(DOLLAR, dollars)}"
    if not quantity.ladder.after:
        return said
    return f"{said} con {count_words(cents, unit_marked(CENT))} {unit_called(CENT, cents)}"


def _mixed(wholes: Part, top: Part, bottom: Part, mark: str = "") -> str:
    """Say wholes with their noun and the pieces: siete enteros y dos sextos, siete pulgadas y dos octavos."""
    noun = unit_marked(mark) if mark else WHOLE
    if top is None:
        return (
            f"{_part(wholes, noun)} {called(noun, wholes or 0)}"
            if mark and wholes is not HOLE
            else _alone(wholes)
        )
    fraction = _fraction(top, bottom)
    if wholes is None:
        return f"{fraction} de {called(noun, 1)}" if mark else fraction
    many = 2 if wholes is HOLE else wholes
    return f"{_part(wholes, noun)} {called(noun, many)} y {fraction}"


def _alone(count: Part) -> str:
    return BLANK if count is HOLE else count_words(count or 0)


def _part(count: Part, of: object) -> str:
    if count is HOLE:
        return BLANK
    return count_words(count or 0, of if isinstance(of, Thing) else unit_marked(getattr(of, "mark", "")))


def _fraction(top: Part, bottom: Part) -> str:
    if isinstance(bottom, int) and (1 < bottom <= _NAMED_TO or bottom == 10 * _NAMED_TO):
        return f"{_part(top, _PIECE)} {piece_name(bottom, top if isinstance(top, int) else 2)}"
    return f"{_alone(top)} {SIGNS[Sign.OVER]} {_alone(bottom)}"


def _digits(quantity: Quantity) -> str:
    """Say a whole number as one, and a decimal with its point and then digit by digit: cinco punto dos."""
    amounts, after, mark = quantity.amounts, quantity.ladder.after, quantity.ladder.mark
    before = amounts[: len(amounts) - after]
    if not after and mark and before[:1] != (0,):
        count = int("".join(map(str, before)))
        return f"{count_words(count, unit_marked(mark))} {unit_called(mark, count)}"
    if before[:1] == (0,):
        said = [count_words(digit) for digit in before]
    else:
        said = [count_words(int("".join(map(str, before)) or "0"))]
    if after:
        said += ["punto", *(count_words(digit) for digit in amounts[-after:])]
    return " ".join([*said, unit_called(mark)] if mark else said)


def _places(quantity: Quantity) -> str:
    """Say every place: cuatro decenas doce unidades.

    The ones are always said before tenths, since twelve tenths alone is a fraction.
    """
    pairs = named_places(quantity)
    ones = quantity.ladder.units[-1 - quantity.ladder.after]
    if quantity.ladder.after and ones not in {unit for _, unit in pairs}:
        pairs = tuple(sorted((*pairs, (0, ones)), key=lambda pair: -pair[1].size))
    return " ".join(
        f"{count_words(count, Thing('', '', feminine=unit.size >= 1 and unit.mark != DOLLAR))} "
        f"{place_written(unit, count)}"
        for count, unit in pairs
    )
