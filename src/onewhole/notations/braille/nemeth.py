"""One line of mathematics in Nemeth Code, made from its tree.

Source of the signs and rules: *The Nemeth Braille Code for Mathematics and Science Notation*, 1972 revision,
by its sections (from memory), with what BANA and APH teach of it where that was read: time of day and the
punctuation indicator (APH, Nemeth tutorial, lesson 1.2), abbreviations parted from signs of operation
(CTEBVI, Nemeth abbreviations, of sections 49 to 54), the general omission symbol for a blank (section 57).
Tried against speech-rule-engine, which writes Nemeth from MathML (tests/agreement/test_nemeth_writer.py).
"""

from collections.abc import Iterator
from typing import assert_never

from msgspec import Struct

from onewhole.languages.english.tongue import ENGLISH
from onewhole.languages.language import Language
from onewhole.notations.braille.cells import BLANK
from onewhole.notations.braille.chunks import Chunk, one_line
from onewhole.notations.braille.literary import literary
from onewhole.notations.text import digits_printed, grouped
from onewhole.number.clock import shown
from onewhole.number.digits import in_digits, named_places
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.unit import CENT, DOLLAR
from onewhole.number.with_minus import WithMinus
from onewhole.statements.expression import Over
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.row import Blanks, Number, Part, Piece, Sign, row
from onewhole.statements.wording import (
    WordsBefore,
    WordsBehind,
)
from onewhole.statements.writable import Writable

#: Before a number at the beginning of a line, after a blank, and after a minus sign there (section 9).
NUMERIC = "⠼"
#: Before a mark of punctuation behind a number: the colon of a time of day (section 38).
_PUNCTUATION = "⠸"
#: Before one letter that stands for a word (section 26).
_LETTER = "⠰"
#: What is missing, spaced as what it stands for (section 57).
OMISSION = "⠿"
#: A line to write on (section 57): where print has a dash.
LONG_DASH = "⠤⠤⠤⠤"
#: Says that the next word is no mathematics (BANA, Nemeth Code within UEB Contexts).
ONE_WORD = "⠠⠄"
#: Digits stand low in the cell; the point and the comma inside a number are the code's own (sections 7, 8).
DIGITS = str.maketrans("1234567890.,", "⠂⠆⠒⠲⠢⠖⠶⠦⠔⠴⠨⠠")
#: Simple and mixed fractions (section 62, 63), and one with a fraction inside (section 64).
_SIMPLE, _MIXED, _COMPLEX = ("⠹", "⠌", "⠼"), ("⠸⠹", "⠌", "⠸⠼"), ("⠠⠹", "⠠⠌", "⠠⠼")
#: Stand close to the numbers beside them (section 177), and signs of comparison with blanks (section 144).
SIGNS = {Sign.PLUS: "⠬", Sign.MINUS: "⠤", Sign.TIMES: "⠈⠡", Sign.DIVIDE: "⠨⠌"}
_COMPARING = {
    Sign.EQUALS: "⠨⠅",
    Sign.LESS: "⠐⠅",
    Sign.GREATER: "⠨⠂",
    Sign.ABOUT: "⠈⠱⠈⠱",
    Sign.WHICH: OMISSION,
}
_MONEY = {DOLLAR: "⠈⠎", CENT: "⠈⠉"}


class _Numeral(Struct, frozen=True):
    """A number in cells: whether it begins with a digit, and whether it ends with an abbreviation."""

    cells: str
    digit: bool = False
    named: bool = False

    def indicated(self, after: str = "") -> str:
        """Return the cells as they stand after a blank, or after a minus sign that comes after one."""
        return f"{after}{NUMERIC if self.digit else ''}{self.cells}"


def nemeth(thing: Writable, language: Language = ENGLISH) -> str:
    """Write a line in Nemeth braille, in Unicode cells.

    The words that stand on a line are those of the ``language``. Raises ValueError for a line with words
    that are not part of its mathematics; see :func:`nemeth_parts`.

    >>> from onewhole.statements.reading import read_statement
    >>> nemeth(read_statement("7 2/6 - 3"))
    '⠼⠶⠸⠹⠆⠌⠖⠸⠼⠤⠒'
    """
    return one_line(nemeth_chunks(row(thing), language))


def nemeth_parts(thing: Writable, language: Language = ENGLISH) -> tuple[str | tuple[Chunk, ...], ...]:
    """Return a line in turn as words, which are literary braille, and as chunks of mathematics.

    >>> from onewhole.statements.reading import read_statement
    >>> words = nemeth_parts(read_statement("Round 4567 to the nearest hundred"))
    >>> words[0], one_line(words[1]), words[2]
    ('Round', '⠼⠲⠠⠢⠖⠶', 'to the nearest hundred')
    """
    found: list[str | tuple[Chunk, ...]] = []
    held: list[Piece] = []
    for piece in row(thing):
        match piece:
            case WordsBefore():
                words = language.line.wordings(piece).capitalize()
            case WordsBehind():
                words = language.line.wordings(piece)
            case NumberForm():
                words = language.line.forms[piece]
            case _:
                held.append(piece)
                continue
        if held:
            found.append(nemeth_chunks(tuple(held), language))
            held = []
        found.append(words)
    return (*found, nemeth_chunks(tuple(held), language)) if held else tuple(found)


def nemeth_chunks(pieces: tuple[Piece, ...], language: Language = ENGLISH) -> tuple[Chunk, ...]:
    """Return the pieces of a line as cells that stay together: a line may be broken before each sign.

    Source: section 191 (runovers: before a sign of comparison or of operation), from memory.
    """
    found: list[Chunk] = []
    sign, opened, spaced = "", "", True  # a sign of operation, brackets, whether a blank comes next
    for piece in pieces:
        match piece:
            case Sign.PLUS | Sign.MINUS | Sign.TIMES | Sign.DIVIDE:
                sign = SIGNS[piece]
            case Sign.EQUALS | Sign.LESS | Sign.GREATER | Sign.ABOUT | Sign.WHICH:
                sign, spaced = f"{_COMPARING[piece]}{BLANK}", True
            case Sign.COMMA:
                found[-1], spaced = found[-1].between("", "⠠"), True
            case Sign.UNTIL:
                sign, spaced = f"{ONE_WORD}{literary(language.line.until)}{BLANK}", True
            case Sign.REMAINDER:
                sign, spaced = f"{ONE_WORD}{literary(piece.value)}{BLANK}", True
            case Sign.OPEN:
                opened += "⠷"
            case Sign.CLOSE:
                found[-1], spaced = found[-1].between("", "⠾"), False
            case WordsBefore() | WordsBehind() | NumberForm() | Sign.OVER:
                msg = "words on a line are no part of its mathematics"
                raise ValueError(msg)
            case _:
                written = _over(piece, language) if isinstance(piece, Over) else _number(piece, language)
                found.append(_placed(sign, opened, written, spaced=spaced))
                sign, opened, spaced = "", "", written.named
    return (*found, Chunk(sign.rstrip(BLANK))) if sign else tuple(found)


def _placed(sign: str, opened: str, written: _Numeral, *, spaced: bool) -> Chunk:
    """Place a number behind the sign before it, with its numeric indicator where it has one."""
    minus = sign == SIGNS[Sign.MINUS]
    if opened:
        return Chunk(f"{sign}{opened}{written.cells}", spaced)
    if not sign or sign.endswith(BLANK):
        return Chunk(written.indicated(sign), spaced)
    plain, begins = f"{sign}{written.cells}", written.indicated(sign) if minus else ""
    return Chunk(begins or plain, spaced) if spaced else Chunk(plain, spaced, begins)


def _number(number: Number, language: Language) -> _Numeral:
    match number:
        case Gap(wholes, top, bottom):
            return _mixed(wholes, top, bottom)
        case Impossible(wholes, top):
            return _mixed(wholes, top, 0)
        case WithMinus():
            return _signed(number, language)
        case Blanks(units):
            cells = (f"{OMISSION}{BLANK}{_abbreviation(unit.mark)}" for unit in units.units)
            return _Numeral(BLANK.join(cells), named=True)
        case Quantity():
            return _quantity(number, language)
        case _:
            assert_never(number)


def _signed(number: WithMinus, language: Language) -> _Numeral:
    minus = SIGNS[Sign.MINUS]
    if number.below:
        top, bottom = number.fraction
        inside = _Numeral(_fraction(_SIMPLE, _digits(top), f"{minus}{_digits(bottom)}"))
    else:
        inside = _number(number.unsigned, language)
    return _Numeral(inside.indicated(minus), named=inside.named) if number.front else inside


def _quantity(quantity: Quantity, language: Language) -> _Numeral:
    ladder = quantity.ladder
    match ladder.style:
        case Style.MIXED:
            wholes, top = quantity.counts
            return _with_mark(_mixed(wholes, top, ladder.denominator), ladder.mark)
        case Style.MEASURE if ladder.clock:
            return _time(quantity)
        case Style.MEASURE:
            pairs = zip(quantity.amounts, ladder.units, strict=True)
            return _names((count, _abbreviation(unit.mark), unit.mark) for count, unit in pairs)
        case Style.PLACES | Style.DECIMAL:
            if in_digits(quantity):
                return _with_mark(
                    _Numeral(digits_printed(quantity).translate(DIGITS), digit=True), ladder.mark
                )
            places = named_places(quantity)
            return _names((count, literary(language.line.place(unit, count)), "") for count, unit in places)
        case _:
            assert_never(ladder.style)


def _names(pairs: Iterator[tuple[int, str, str]]) -> _Numeral:
    """Write counts with what they count: 5 ft 2 in; a cent sign stands close behind (section 43)."""
    written = [f"{_digits(count)}{'' if mark == CENT else BLANK}{name}" for count, name, mark in pairs]
    return _Numeral(
        f"{BLANK}{NUMERIC}".join(written), digit=True, named=not written[-1].endswith(_MONEY[CENT])
    )


def _with_mark(number: _Numeral, mark: str) -> _Numeral:
    """Write the unit of a number: behind it with a blank, and a dollar sign close before it (section 43)."""
    if not mark:
        return number
    if mark == DOLLAR:
        return _Numeral(_MONEY[DOLLAR] + number.cells)
    return _Numeral(f"{number.cells}{BLANK}{_abbreviation(mark)}", digit=number.digit, named=True)


def dollars(mark: str) -> str | None:
    """Return the dollar sign for its mark and nothing for none; None for any other unit."""
    return _MONEY[DOLLAR] if mark == DOLLAR else None if mark else ""


def _abbreviation(mark: str) -> str:
    """Write an abbreviation of a measure, with the letter indicator where it is one letter (section 51)."""
    if mark in _MONEY:
        return _MONEY[mark]
    return (_LETTER if len(mark) == 1 else "") + literary(mark)


def _time(time: Quantity) -> _Numeral:
    """Write a time of day: hour, colon and minutes, a numeric indicator before each number."""
    hour, minutes, half = shown(time)
    face = f"{_digits(hour)}{_PUNCTUATION}{literary(':')}{NUMERIC}{f'{minutes:02}'.translate(DIGITS)}"
    return _Numeral(f"{face}{BLANK}{literary(half)}" if half else face, digit=True, named=bool(half))


def _mixed(wholes: Part, top: Part, bottom: Part) -> _Numeral:
    if top is None:
        return _Numeral(_part(wholes), digit=wholes is not HOLE)
    if wholes is None:
        return _Numeral(_fraction(_SIMPLE, _part(top), _part(bottom)))
    fraction = _fraction(_MIXED, _part(top), _part(bottom))
    return _Numeral(f"{_part(wholes)}{fraction}", digit=wholes is not HOLE)


def _over(over: Over, language: Language) -> _Numeral:
    """Write a fraction of which a part is still being worked; inside it no number has an indicator."""
    above, below = (_inside(part, language) for part in (over.top, over.bottom))
    nested = _SIMPLE[0] in above + below
    return _Numeral(_fraction(_COMPLEX if nested else _SIMPLE, above, below))


def _inside(part: Writable, language: Language) -> str:
    minus = SIGNS[Sign.MINUS]
    cells = nemeth(part, language).removeprefix(NUMERIC)
    return cells.replace(f"{BLANK}{NUMERIC}", BLANK).replace(f"{minus}{NUMERIC}", minus)


def _fraction(signs: tuple[str, str, str], top: str, bottom: str) -> str:
    opened, line, closed = signs
    return f"{opened}{top}{line}{bottom}{closed}"


def _part(count: Part) -> str:
    return OMISSION if count is HOLE else _digits(count or 0)


def _digits(count: int) -> str:
    return grouped(str(count)).translate(DIGITS)
