"""How a scene is drawn in pencil: thicknesses, arrowheads, crosses and stacked numbers."""

from fractions import Fraction
from functools import cache
from math import isqrt
from typing import assert_never

from msgspec import Struct

from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import spoken_by
from onewhole.notations.text import grouped, printed
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import ONE, Unit
from onewhole.pictures.caption import Caption, Count, Groups
from onewhole.pictures.scene import Box, Hop, Look, Shape, Stroke, Wedge, Words
from onewhole.sentences.node import Thing
from onewhole.statements.gap import Hole, type_hole

#: Colours: dark pencil (14:1 on white), white paper, and squares that are there to look at and mean nothing.
INK, PAPER, GRID = "#2b2b33", "#ffffff", "#dbe6ee"

#: Millimetres: a pencil line, a bold one, a hatching line, the cross and the white under it, a square's line.
LINE, BOLD, HATCH, CROSS, UNDER, FAINT = (Fraction(n, 100) for n in (50, 80, 25, 80, 170, 15))

#: Millimetres: a square of the paper, hatching lines across or down, a dash and the gap after it.
SQUARE, APART, DASH, GAP = Fraction(5), Fraction(9, 5), Fraction(3, 2), Fraction(6, 5)

#: Millimetres of paper kept clear round what is written.
HALO = Fraction(1, 2)

#: Lexend's digits are 7/10 of its size high; a numerator or denominator is 3/4 of a whole's digit.
DIGIT, SMALL = Fraction(7, 10), Fraction(3, 4)

#: Widths of Lexend's digits from 0 to 9 in thousandths of its size. Source: the font's own table of widths.
_WIDTHS = (607, 500, 548, 529, 620, 568, 557, 542, 579, 551)
#: The same of a small letter of a unit, roughly, and of an m or a w.
_LETTER, _WIDE = 560, 900

Point = tuple[Fraction, Fraction]
Line = tuple[Fraction, Fraction, Fraction, Fraction]


class Letters(Struct, frozen=True):
    """Text centred on x, standing on the line y; ``size`` is the font's size. All in millimetres."""

    x: Fraction
    y: Fraction
    size: Fraction
    text: str


class Bar(Struct, frozen=True):
    """The bar of a fraction: from x to ``to_x`` at height y, in millimetres."""

    x: Fraction
    to_x: Fraction
    y: Fraction
    thickness: Fraction


def root(value: Fraction) -> Fraction:
    """Return the square root of an amount that is not below zero, cut to a whole number of millionths.

    >>> root(Fraction(9, 4)), root(Fraction(2))
    (Fraction(3, 2), Fraction(1414213, 1000000))
    """
    million = 10**6
    return Fraction(isqrt(value.numerator * million * million // value.denominator), million)


def thickness(look: Look) -> Fraction:
    """Return how thick a stroke or hop of a look is, in millimetres: filled is bold."""
    return BOLD if look is Look.FILLED else LINE


def arrowhead(hop: Hop) -> tuple[Point, Point, Point]:
    """Return the corners of a hop's arrowhead, the tip first; it points along the end of the parabola.

    >>> arrowhead(Hop(Fraction(0), Fraction(10), Fraction(40), Fraction(0)))[0]
    (Fraction(40, 1), Fraction(10, 1))
    """
    across, down = (hop.to_x - hop.x) / 2, 2 * hop.height
    length = root(across * across + down * down) or Fraction(1)
    long = min(Fraction(5, 2), abs(hop.to_x - hop.x) / 2)
    ahead_x, ahead_y = long * across / length, long * down / length
    back_x, back_y = hop.to_x - ahead_x, hop.y - ahead_y
    wing_x, wing_y = ahead_y * 2 / 5, -ahead_x * 2 / 5
    tip = (hop.to_x, hop.y)
    return tip, (back_x + wing_x, back_y + wing_y), (back_x - wing_x, back_y - wing_y)


def cross(shape: Shape) -> tuple[Line, ...]:
    """Return the lines that cross a shape out, in millimetres: two, and one through what is written.

    >>> cross(Box(Fraction(0), Fraction(0), Fraction(6), Fraction(6)))[0]
    (Fraction(6, 5), Fraction(6, 5), Fraction(24, 5), Fraction(24, 5))
    """
    match shape:
        case Box(x, y, width, height):
            near = min(width, height, Fraction(6)) / 5
            return _crossed(x + near, y + near, x + width - near, y + height - near)
        case Wedge(x, y, radius, start, sweep) if sweep < 1:
            sine, cosine = turned(start + sweep / 2)
            arm = radius * min(Fraction(1, 4), sweep * 5 / 4)
            return _crossed_at(x + sine * radius * 3 / 5, y - cosine * radius * 3 / 5, arm)
        case Wedge(x, y, radius):
            return _crossed_at(x, y, radius * 3 / 5)
        case Stroke(x, y, to_x, to_y):
            return _crossed_at((x + to_x) / 2, (y + to_y) / 2, Fraction(2))
        case Hop(x, y, to_x, height):
            return _crossed_at((x + to_x) / 2, y - height, Fraction(2))
        case Words(x, y, caption, size):
            letters = max(len(printed(caption)), 4) if isinstance(caption, Quantity) else 10
            reach = size * letters / 5
            return ((x - reach, y + size * 3 / 4, x + reach, y - size * 3 / 4),)


def _crossed(x: Fraction, y: Fraction, to_x: Fraction, to_y: Fraction) -> tuple[Line, Line]:
    return (x, y, to_x, to_y), (x, to_y, to_x, y)


def _crossed_at(x: Fraction, y: Fraction, arm: Fraction) -> tuple[Line, Line]:
    return _crossed(x - arm, y - arm, x + arm, y + arm)


@cache
def turned(turns: Fraction) -> Point:
    """Return sine and cosine of an angle in turns, each right to less than a millionth, and exact at corners.

    >>> turned(Fraction(1, 4)), turned(Fraction(1, 2))
    ((Fraction(1, 1), Fraction(0, 1)), (Fraction(0, 1), Fraction(-1, 1)))
    """
    quarters, rest = divmod(4 * turns, 1)
    sine, cosine = _first_quarter(rest)
    for _ in range(quarters % 4):
        sine, cosine = cosine, -sine
    return sine, cosine


def _first_quarter(share: Fraction) -> Point:
    """Sine and cosine of a share of a right angle, by their series, cut to billionths."""
    billion = 10**9
    angle = share * Fraction(157079632679, 10**11)  # half of pi
    term, sums = Fraction(1), [Fraction(0), Fraction(0)]
    for power in range(16):
        sums[power % 2] += term * (-1) ** (power // 2)
        term = term * angle / (power + 1)
    return Fraction(round(sums[1] * billion), billion), Fraction(round(sums[0] * billion), billion)


@cache
def lettered(written: Words, words: ClassWords) -> tuple[Letters | Bar, ...]:
    """Lay out what is written: a whole with a stacked fraction beside it, or one line of text.

    >>> from onewhole.number.unit import Unit
    >>> sixths = Count(6, Unit(Fraction(1, 6)))
    >>> lettered(Words(Fraction(9), Fraction(9), sixths, Fraction(7)), ClassWords())[0]
    Letters(x=Fraction(9, 1), y=Fraction(25, 2), size=Fraction(10, 1), text='6 sixths')
    """
    caption, x, y, size = written.caption, written.x, written.y, written.size / DIGIT
    if isinstance(caption, Quantity) and caption.ladder.style is Style.MIXED:
        wholes, top = caption.counts
        return _mixed(wholes, str(top), str(caption.ladder.denominator), written, caption.ladder.mark)
    return (Letters(x, y + written.size / 2, size, _line(caption, words)),)


def whole_of(words: ClassWords, unit: Unit) -> Unit | Thing:
    """Return a unit, or where it is one whole what the class calls that."""
    return Thing(words.whole, words.wholes, feminine=words.feminine) if unit == ONE else unit


def _line(caption: Caption | type_hole | Groups, words: ClassWords) -> str:
    match caption:
        case Groups(count):
            return f"{'?' if count is None else grouped(str(count))} \u00d7"
        case Count(count, unit):
            return f"{grouped(str(count))} {spoken_by(words).called(whole_of(words, unit), count)}"
        case Quantity():
            return printed(caption, spoken_by(words))
        case Hole():
            return "?"
        case _:
            assert_never(caption)


def _mixed(wholes: int | None, top: str, bottom: str, written: Words, mark: str) -> tuple[Letters | Bar, ...]:
    big, small = written.size / DIGIT, written.size * SMALL / DIGIT
    reach, gap = written.size / 8, written.size / 5
    bar = max(_width(top, small), _width(bottom, small)) + 2 * reach
    whole = Fraction(0) if wholes is None else _width(str(wholes), big) + gap
    unit = _letters(mark, big) + gap if mark else Fraction(0)
    left, y = written.x - (whole + bar + unit) / 2, written.y
    middle = left + whole + bar / 2
    fraction: tuple[Letters | Bar, ...] = (
        Letters(middle, y - gap, small, top),
        Bar(middle - bar / 2, middle + bar / 2, y, max(written.size / 12, Fraction(1, 5))),
        Letters(middle, y + gap + written.size * SMALL, small, bottom),
    )
    if mark:
        middle = left + whole + bar + (unit + gap) / 2
        fraction = (*fraction, Letters(middle, y + written.size / 2, big, mark))
    if wholes is None:
        return fraction
    return (Letters(left + (whole - gap) / 2, y + written.size / 2, big, str(wholes)), *fraction)


def _letters(mark: str, size: Fraction) -> Fraction:
    return sum(_WIDE if letter in "mw" else _LETTER for letter in mark) * size / 1000


def _width(digits: str, size: Fraction) -> Fraction:
    return sum(_WIDTHS[int(digit)] for digit in digits) * size / 1000
