"""How much paper a line takes when a nine-year-old writes it.

Every size here is our own judgement: no source was found for the size of digits at this age. A line of
writing is 9 mm high; a stacked fraction takes two.
"""

from collections.abc import Iterable, Sequence
from fractions import Fraction
from typing import assert_never

from msgspec import Struct

from onewhole.languages.table import SPOKEN
from onewhole.notations.text import unit_by_unit
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.with_minus import WithMinus
from onewhole.statements.expression import Over
from onewhole.statements.gap import HOLE, Gap, type_hole
from onewhole.statements.row import Blanks, Piece, Sign, row
from onewhole.statements.wording import (
    WordsBefore,
    WordsBehind,
)
from onewhole.statements.writable import Writable

#: Height of one line of writing.
LINE_MM = 9
DIGIT_MM = 6
LETTER_MM = 5
POINT_MM = 3
BLANK_MM = 3
SIGN_MM = 6
BRACKET_MM = 4
#: The box that stands for a missing number.
HOLE_MM = 8
#: How far a fraction's line reaches beyond its digits, both ends together.
BAR_MM = 2

STACKED = 2


class Ink(Struct, frozen=True):
    """A piece of writing: millimetres wide, so many lines high, and whether a line may break before it."""

    width: int
    lines: int
    breaks: bool = False


class Handwriting(Struct, frozen=True):
    """The size of handwritten lines: the widest in millimetres, and how many lines they fill."""

    width: int
    lines: int


def written(says: Writable, *, leads: bool, width: Fraction | None = None) -> Handwriting:
    """Lay down one line of a working, broken wherever it would run over ``width`` (mm).

    It is broken before a sign, or between the units of a number in words (2 hundreds | 9 tens). ``leads``
    puts an equals sign in front. Without a width nothing is broken. What cannot be broken stays in one piece,
    so ``Written.width`` may still be more than ``width``.

    >>> from onewhole.statements.reading import read_expression
    >>> written(read_expression("6 8/6 - 3 5/6"), leads=True)
    Handwriting(width=58, lines=2)
    """
    pieces = [_sign(Sign.EQUALS)] if leads else []
    pieces += [ink for piece in row(says) for ink in _inks(piece)]
    laid: list[list[Ink]] = [[]]
    for run in _runs(pieces):
        if laid[-1] and width is not None and _wide([*laid[-1], *run]) > width:
            laid.append([])
        laid[-1].extend(run)
    return Handwriting(max(map(_wide, laid)), sum(max(piece.lines for piece in line) for line in laid))


def _runs(pieces: Sequence[Ink]) -> list[list[Ink]]:
    """Part a line where it may be broken: before a sign, unless the sign stands at the very front."""
    runs: list[list[Ink]] = [[]]
    for piece in pieces:
        if piece.breaks and runs[-1] and not (len(runs) == 1 and len(runs[0]) == 1 and runs[0][0].breaks):
            runs.append([])
        runs[-1].append(piece)
    return runs


def _wide(line: Sequence[Ink]) -> int:
    return sum(piece.width for piece in line)


def _inks(piece: Piece) -> Sequence[Ink]:
    match piece:
        case Sign():
            return (_sign(piece),)
        case WordsBefore() | WordsBehind():
            return [
                Ink(sum(map(_letter, f"{part} ")), 1, breaks=at > 0)
                for at, part in enumerate(SPOKEN.line.wording(piece))
            ]
        case Quantity():
            if piece.ladder.style is Style.MIXED:
                wholes, top = piece.counts
                fraction = _mixed(wholes, top, piece.ladder.denominator)
                unit = sum(map(_letter, piece.ladder.mark and f" {piece.ladder.mark}"))
                return (Ink(fraction.width + unit, fraction.lines),)
            return _counts(piece)
        case Gap(wholes, top, bottom):
            return (_mixed(wholes, top, bottom),)
        case Impossible(wholes, top):
            return (_mixed(wholes, top, 0),)
        case WithMinus(unsigned, front, under):
            signs = (front or under) * (SIGN_MM + BLANK_MM)
            first, *more = _inks(unsigned)
            return (Ink(first.width + signs, first.lines), *more)
        case Blanks(units):
            return _words(f"? {unit.mark}" for unit in units.units)
        case NumberForm():
            return _words([f" {SPOKEN.line.forms[piece]}"])
        case Over(top, bottom):
            above, below = written(top, leads=False), written(bottom, leads=False)
            return (Ink(max(above.width, below.width) + BAR_MM, above.lines + below.lines),)
        case _:
            assert_never(piece)


def _counts(number: Quantity) -> Sequence[Ink]:
    """Part 2 hundreds 9 tens before each later count; digits alone are one piece."""
    return _words(unit_by_unit(number))


def _words(parts: Iterable[str]) -> Sequence[Ink]:
    return [
        Ink(sum(map(_letter, f" {said}" if at else said)), 1, breaks=at > 0) for at, said in enumerate(parts)
    ]


def _sign(sign: Sign) -> Ink:
    if sign in {Sign.OPEN, Sign.CLOSE}:
        return Ink(BRACKET_MM, 1)
    if sign is Sign.COMMA:
        return Ink(2 * BLANK_MM, 1, breaks=True)
    return Ink(SIGN_MM + 2 * BLANK_MM, 1, breaks=True)


def _mixed(
    wholes: int | type_hole | None, top: int | type_hole | None, bottom: int | type_hole | None
) -> Ink:
    if top is None or bottom is None:
        return Ink(_part(wholes), 1)
    fraction = max(_part(top), _part(bottom)) + BAR_MM
    return Ink(fraction if wholes is None else _part(wholes) + BLANK_MM + fraction, STACKED)


def _part(count: int | type_hole | None) -> int:
    if count is None:
        return 0
    return HOLE_MM if count is HOLE else DIGIT_MM * len(str(count))


def _letter(sign: str) -> int:
    if sign.isdigit():
        return DIGIT_MM
    return {" ": BLANK_MM, ".": POINT_MM, "?": HOLE_MM}.get(sign, LETTER_MM)
