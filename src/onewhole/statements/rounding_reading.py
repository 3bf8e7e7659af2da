"""Reading what is to be rounded: round 4,567 to the nearest hundred, round 3.46 to tenths."""

import re
from fractions import Fraction

from onewhole.number.ladder import TEN, Style, decimal
from onewhole.number.quantity import Quantity, usual
from onewhole.number.unit import CENT, CENT_PLACES, DOLLAR, MEASURES, ONE, Kind, Unit
from onewhole.statements.cursor import Cursor
from onewhole.statements.numerals import numeral
from onewhole.statements.rounding import Rounding, units_to_round_to
from onewhole.statements.tokens import ReadingError, Token, TokenKind
from onewhole.statements.unit_words import MARKS

_ROUND = re.compile(r"\s*round\b", re.IGNORECASE)
_REMEDY = "Write for example: round 4,567 to the nearest hundred."
_PLACES = {
    "one": ONE,
    "whole": ONE,
    "ten": Unit(Fraction(TEN)),
    "hundred": Unit(Fraction(TEN**2)),
    "thousand": Unit(Fraction(TEN**3)),
    "million": Unit(Fraction(TEN**6)),
    "tenth": Unit(Fraction(1, TEN)),
    "hundredth": Unit(Fraction(1, TEN**2)),
    "thousandth": Unit(Fraction(1, TEN**3)),
}
#: What is counted in dollars, and what of it.
_COINS = {
    word + end: size
    for word, size in (("dollar", Fraction(1)), ("dime", Fraction(1, TEN)), ("cent", Fraction(1, TEN**2)))
    for end in ("", "s")
}
_NAMES = {word + end: unit for word, unit in _PLACES.items() for end in ("", "s")}
_SIZES = {Fraction(TEN) ** power for power in range(-3, 7)}
_THOUSANDS = frozenset({"thousand", "thousands"})
_TIMES = frozenset({"ten", "hundred"})
#: Words that may follow the name of a place: whole number, hundreds place.
_AFTER = frozenset({"number", "numbers", "place", "places"})


def without_stop(text: str) -> str:
    """Leave the full stop out that ends a sentence about rounding.

    >>> without_stop("Round 45 to the nearest 10."), without_stop("45 - 1.")
    ('Round 45 to the nearest 10', '45 - 1.')
    """
    return text.rstrip().removesuffix(".") if _ROUND.match(text) else text


def rounding(cursor: Cursor) -> Rounding | None:
    """Read a number to be rounded, and to what; None where the line does not begin with "round".

    Cents are read as dollars where they are rounded to those: 75¢ is $0.75.

    >>> from onewhole.statements.tokens import tokens
    >>> rounding(Cursor(tokens("Round 4,567 to hundreds"))).rounded
    Fraction(4600, 1)
    """
    if not cursor.word_ahead(0, frozenset({"round"})):
        return None
    cursor.take()
    number = numeral(cursor)
    if not isinstance(number, Quantity):
        cursor.refuse("a number that is rounded has no missing part", _REMEDY)
    if not _took(cursor, "to"):
        cursor.refuse("what to round to is missing", _REMEDY)
    for word in ("the", "nearest"):
        _took(cursor, word)
    here = cursor.here
    if here.text in _COINS:
        number = _in_dollars(number)
    unit = _unit(cursor, number.ladder.mark if number.kind is Kind.NUMBER else "")
    while cursor.word_ahead(0, _AFTER):
        cursor.take()
    if unit not in units_to_round_to(number):
        raise _unsuited(number, unit, here)
    return Rounding(number, unit)


def _took(cursor: Cursor, word: str) -> bool:
    """Step over a word, and say whether it stood there."""
    found = cursor.word_ahead(0, frozenset({word}))
    if found:
        cursor.take()
    return found


def _in_dollars(number: Quantity) -> Quantity:
    """Return cents as dollars, for they are rounded to dollars and dimes: $0.75 for 75¢."""
    if number.ladder.mark != CENT:
        return number
    return usual(decimal(1, CENT_PLACES, DOLLAR), number.value / TEN**CENT_PLACES)


def _unit(cursor: Cursor, own: str) -> Unit:
    """Read the name of a place or a unit, or the digits of a place: 100, 0.1.

    ``own`` is the unit behind a number: that unit is one of it, and a dollar has dimes and cents.
    """
    here = cursor.here
    size = _COINS.get(here.text) if own == DOLLAR else Fraction(1) if MARKS.get(here.text) == own else None
    if size is not None:
        cursor.take()
        return Unit(size, Kind.NUMBER, own)
    place = _place(cursor)
    if place is not None:
        return Unit(place, Kind.NUMBER, own)
    mark = MARKS.get(here.text)
    if mark is None:
        cursor.refuse("what to round to is no place and no unit", _REMEDY)
    cursor.take()
    return next(unit for unit in MEASURES if unit.mark == mark)


def _place(cursor: Cursor) -> Fraction | None:
    """Read the size of a place, by its name or in digits; None where none stands."""
    here = cursor.here
    if here.sort in {TokenKind.NUMBER, TokenKind.POINTED}:
        size = Fraction(here.text)
        if size in _SIZES:
            cursor.take()
            return size
    if cursor.word_ahead(0, _TIMES):
        dash = cursor.ahead(1).sort is TokenKind.MINUS
        if cursor.word_ahead(1 + dash, _THOUSANDS):
            size = _NAMES[here.text].size
            for _ in range(2 + dash):
                cursor.take()
            return size * TEN**3
    return _NAMES[cursor.take().text].size if here.text in _NAMES else None


def _unsuited(number: Quantity, unit: Unit, at: Token) -> ReadingError:
    """Say why the number cannot be rounded to this unit."""
    if unit.kind is not number.kind:
        msg = "the number and what it is rounded to measure different things"
        remedy = "Round a number to a place, feet and inches to feet, hours and minutes to hours."
    elif number.ladder.style is Style.MIXED:
        msg = "a number with a fraction is rounded to whole numbers or to a larger place"
        remedy = "Write for example: round 2 5/8 to the nearest whole number."
    else:
        msg = "there is nothing smaller than this in the number to round off"
        remedy = "Round to a larger place or unit, up to a million."
    return ReadingError(msg, line=at.line, column=at.column, remedy=remedy)
