"""How wide a line of the board is at most, before it is written."""

import math
from collections.abc import Iterable
from fractions import Fraction
from typing import assert_never

from onewhole.languages.table import LANGUAGES
from onewhole.notations.folding import Bit
from onewhole.notations.text import grouped, printed
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.with_minus import WithMinus
from onewhole.statements.expression import Over
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.row import Blanks, Part, Sign, row
from onewhole.statements.wording import (
    WordsBefore,
    WordsBehind,
)
from onewhole.statements.writable import Writable
from onewhole.walkthroughs.cue import Write

#: A place is so many times as high as the type of one line in it, which leaves room for a stacked fraction.
#: Source: a stacked fraction of the page library, measured.
ROW = Fraction(17, 10)
#: So many times the type's size for each of several lines of words.
NEXT_LINE = Fraction(27, 20)

# Advance widths in thousandths of the type's size; bounds from above, measured on the fonts of the pages.
_DIGIT = 640
_NARROW = frozenset("ijltfr.,:;'!|()[] ")
_WIDE = frozenset("mwMW@%")
_LETTER = {"narrow": 450, "small": 660, "capital": 800, "wide": 1050}
_SIGN = 1256  # 700, and the space before and after it
_BRACKET = 700  # one round a fraction is taller
_HOLE = 1000
_RING = 2000
_BAR = 450  # how far the line of a fraction reaches over, and the gaps round it
_GAP = 500  # after a label
_LABEL = Fraction(9, 10)  # a label's type beside its line's


def width(write: Write, size: Fraction) -> int:
    """Return how many units of the board a line takes at most when its type is ``size`` units.

    The label and the equals sign before it are counted. Exact, rounded up.

    >>> width(Write("a", "kite"), Fraction(60)) <= 4 * 60
    True
    """
    content = write.content
    said = word_width(content) if isinstance(content, str) else formula_width(content)
    return math.ceil((before(write) + said) * size / 1000)


def before(write: Write) -> Fraction:
    """Return the width of the label and equals sign before a line, in thousandths of its size."""
    label = word_width(f"{write.label}.") * _LABEL + _GAP if write.label else Fraction(0)
    return label + (_SIGN if write.leads else 0)


def word_width(words: str) -> int:
    """Return how wide plain words are at most, in thousandths of their size."""
    return sum(_letter(letter) for letter in words)


def _letter(letter: str) -> int:
    if letter.isdecimal():
        return _DIGIT
    if letter in _NARROW:
        return _LETTER["narrow"]
    if letter in _WIDE or not letter.isascii():
        return _LETTER["wide"]
    return _LETTER["capital" if letter.isupper() or not letter.isalpha() else "small"]


def formula_width(thing: Writable) -> int:
    """Return how wide a formula is at most, in thousandths of its size; a fraction is as its wider part.

    >>> from onewhole.statements.reading import read_expression
    >>> formula_width(read_expression("12/345")) == formula_width(read_expression("345/12"))
    True
    """
    return sum(bit_width(piece) for piece in row(thing))


def bit_width(piece: Bit) -> int:
    """Return how wide one bit of a formula is at most with the space round it, as `formula_width` does."""
    match piece:
        case Sign.OPEN | Sign.CLOSE:
            return _BRACKET
        case Sign.WHICH:
            return _RING
        case Sign():
            return _SIGN
        case str():
            return word_width(f" {piece}")
        case NumberForm():
            return _widest(one.line.forms[piece] for one in LANGUAGES.values())
        case Blanks(units):
            return sum(_HOLE + word_width(f"  {unit.mark}") for unit in units.units)
        case WordsBefore() | WordsBehind():
            return _widest(one.line.wordings(piece) for one in LANGUAGES.values())
        case Over(above, below):
            return max(formula_width(above), formula_width(below)) + _BAR
        case Gap(wholes, top, bottom):
            return _mixed(wholes, top, bottom)
        case Impossible(wholes, top):
            return _mixed(wholes, top, 0)
        case WithMinus(unsigned, front, below):
            return bit_width(unsigned) + _SIGN * (front + below)
        case Quantity(ladder, counts):
            if ladder.style is Style.MIXED:
                return _mixed(counts[0], counts[1], ladder.denominator) + word_width(
                    ladder.mark and f" {ladder.mark}"
                )
            return max(word_width(printed(piece, one)) for one in LANGUAGES.values())
        case _:
            assert_never(piece)


def _widest(said: Iterable[str]) -> int:
    """Return how wide words on a line are at most, in whichever language it is written."""
    return max(word_width(f" {words} ") for words in said)


def _mixed(wholes: Part, top: Part, bottom: Part) -> int:
    fraction = 0 if top is None else max(_part(top), _part(bottom)) + _BAR
    return _part(wholes) + fraction


def _part(count: Part) -> int:
    if count is None:
        return 0
    return _HOLE if count is HOLE else word_width(grouped(str(count)))
