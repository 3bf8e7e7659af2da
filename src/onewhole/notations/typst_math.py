"""Typst math: the formula as the page library sets it, in ``eval(..., mode: "math")``.

The page library (``look/formula.typ`` in the room of the writers) takes ``{"math": ..., "alt": ...}``, where
``alt`` are the words that a language says for it, and knows four names beyond Typst's own: ``hole`` is an
empty square for a missing number, ``ring`` an empty circle for a missing sign, ``fold`` a blank between words
at which a line may be broken, and ``changed`` something that is new beside the line before.
"""

from collections.abc import Collection
from itertools import chain, pairwise, zip_longest
from typing import assert_never

from onewhole.languages.english.tongue import ENGLISH
from onewhole.languages.language import Language
from onewhole.notations.folding import Bit, Row
from onewhole.notations.text import grouped, printed
from onewhole.number.digits import in_digits
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.with_minus import WithMinus
from onewhole.statements.expression import Over
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.row import Blanks, Number, Part, Sign, row
from onewhole.statements.wording import (
    FactorWords,
    OfPlot,
    Phrase,
    WordsBehind,
)
from onewhole.statements.writable import Writable

#: The gap between the two parts of a measure.
_WIDE = "\N{NO-BREAK SPACE}"
_SIGNS = {
    Sign.MINUS: "\N{MINUS SIGN}",
    Sign.TIMES: "\N{MULTIPLICATION SIGN}",
    Sign.WHICH: "ring",
    Sign.COMMA: '"," fold',
    Sign.DIVIDE: "\N{DIVISION SIGN}",
    Sign.REMAINDER: 'med "r" med',
}


def typst_math(thing: Writable, language: Language = ENGLISH) -> str:
    """Write a line in Typst math, as it stands between two dollar signs.

    Measures and places are set as words: "5 ft 2 in". The minus is U+2212.

    >>> from onewhole.statements.reading import read_statement
    >>> typst_math(read_statement("(44 - 23)/6"))
    'frac(44 \N{MINUS SIGN} 23, 6)'
    """
    return typst_row(row(thing), language)


def typst_row(bits: Row, language: Language = ENGLISH, fresh: Collection[int] = (), *, first: int = 0) -> str:
    """Write one row of a line that was folded, in Typst math; a sign that begins it keeps its distance.

    ``fresh`` are the numbers of bits that are marked as new; those of this row are counted from ``first``.

    >>> typst_row((Sign.PLUS, "3 hundreds"))
    '+ med "3 hundreds"'
    >>> typst_row(("6 tens", Sign.MINUS, "2 tens"), fresh={0})
    'changed("6 tens") \N{MINUS SIGN} "2 tens"'
    """
    pieces = [
        f"changed({_piece(bit, language)})" if at in fresh else _piece(bit, language)
        for at, bit in enumerate(bits, start=first)
    ]
    if bits[0] in {Sign.PLUS, Sign.MINUS}:
        pieces[0] += " med"
    close = (Sign.CLOSE, Sign.COMMA)
    blanks = ["" if one is Sign.OPEN or other in close else " " for one, other in pairwise(bits)]
    return "".join(chain.from_iterable(zip_longest(pieces, blanks, fillvalue="")))


def _piece(piece: Bit, language: Language) -> str:
    match piece:
        case Sign.UNTIL:
            return f'"{language.line.until}"'
        case Sign():
            return _SIGNS.get(piece, piece.value)
        case str():
            return f'"{piece}"'
        case NumberForm():
            return f'med "{language.line.forms[piece]}"'
        case Phrase():
            return f'"{language.line.wordings(piece).capitalize()}"'
        case OfPlot():
            first, *others = language.line.wording(piece)
            return " ".join((f'"{first.capitalize()}"', *(f'fold "{part}"' for part in others)))
        case WordsBehind():
            words = " ".join(f'fold "{part}"' for part in language.line.wording(piece))
            return f"{words} fold" if isinstance(piece, FactorWords) and piece.between else words
        case Over(above, below):
            return f"frac({typst_math(above, language)}, {typst_math(below, language)})"
        case _:
            return _number(piece, language)


def _number(number: Number, language: Language) -> str:
    match number:
        case Gap(wholes, top, bottom):
            return _mixed(wholes, top, bottom)
        case Impossible(wholes, top):
            return _mixed(wholes, top, 0)
        case WithMinus(unsigned, front, below):
            minus = _SIGNS[Sign.MINUS]
            if below:
                top, under = number.fraction
                inside = f"frac({_part(top)}, {minus}{_part(under)})"
            else:
                inside = _number(unsigned, language)
            return f"{minus}{inside}" if front else inside
        case Blanks(units):
            return f' "{_WIDE}" '.join(" ".join(("hole", "thin", f'"{unit.mark}"')) for unit in units.units)
        case Quantity(ladder, counts):
            if ladder.style is Style.MIXED:
                wholes, top = counts
                unit = f' thin "{ladder.mark}"' if ladder.mark else ""
                return _mixed(wholes, top, ladder.denominator) + unit
            if ladder.style is not Style.MEASURE and in_digits(number):
                return f'"{printed(number)}"' if ladder.mark else _digits(printed(number))
            return f'"{printed(number, language)}"'
        case _:
            assert_never(number)


def _mixed(wholes: Part, top: Part, bottom: Part) -> str:
    if top is None:
        return _part(wholes)
    fraction = f"frac({_part(top)}, {_part(bottom)})"
    return fraction if wholes is None else f"{_part(wholes)} {fraction}"


def _part(count: Part) -> str:
    return "hole" if count is HOLE else _digits(grouped(str(count)))


def _digits(number: str) -> str:
    """Set a number; a comma inside it would part two arguments in math, so such a number is set as words."""
    return f'"{number}"' if "," in number else number
