"""A ruler: an edge with marks of different lengths for inches, halves, fourths, eighths and sixteenths.

The longer the mark, the larger the part, as on a real ruler. Source: 3.MD.B.4 (halves and fourths of an inch)
and 4.MD.B.4 (eighths), *Common Core State Standards for Mathematics* (2010); sixteenths: common practice, no
source.
"""

from collections.abc import Iterator
from fractions import Fraction

from onewhole.number.ladder import Ladder, Style
from onewhole.number.quantity import whole
from onewhole.pictures.axis import MARGIN, MOST_NUMBERS, MOST_TICKS, WIDTH, Axis
from onewhole.pictures.labels import DIGITS
from onewhole.pictures.scene import Box, Piece, Stroke, Words

INCH = "in"
#: How far the marks of a part reach from the edge, by how many of it make an inch.
REACHES = {1: Fraction(10), 2: Fraction(8), 4: Fraction(6), 8: Fraction(4), 16: Fraction(5, 2)}
#: How far the ruler itself reaches from the edge, and beyond its first and last mark.
DEPTH, BEYOND = Fraction(17), Fraction(5)


def on_ruler(ladder: Ladder, most: int) -> bool:
    """Say whether inches and their parts, up to so many of the smallest, are all marked on a ruler.

    >>> from onewhole.number.ladder import mixed
    >>> on_ruler(mixed(8, "in"), 45), on_ruler(mixed(3, "in"), 7), on_ruler(mixed(8), 45)
    (True, False, False)
    """
    if ladder.style is not Style.MIXED or ladder.mark != INCH or ladder.denominator not in REACHES:
        return False
    return most <= min(MOST_TICKS, MOST_NUMBERS * ladder.denominator)


def ruler_axis(ladder: Ladder, most: int, width: Fraction = WIDTH) -> Axis:
    """Return the stretch of a ruler that holds so many of the smallest part: from 0 to a whole inch."""
    inch = ladder.denominator
    return Axis(ladder, 0, max(-(-most // inch), 1) * inch, inch, None, MARGIN, MARGIN, width)


def edge(line: Axis, y: Fraction) -> Iterator[Piece]:
    """Draw the ruler under its edge: its marks, the number of every inch, and nothing that says a length."""
    left, right = line.x(line.start) - BEYOND, line.x(line.end) + BEYOND
    yield Piece("axis", Box(left, y, right - left, DEPTH))
    for point in range(line.start, line.end + 1):
        part = Fraction(point, line.ladder.denominator)
        x = line.x(point)
        name = "tick" if part.denominator == 1 else "part"
        yield Piece(f"{name}/{point}", Stroke(x, y, x, y + REACHES[part.denominator]))
        if part.denominator == 1:
            number = Words(x, y + REACHES[1] + DIGITS, whole(part.numerator), DIGITS)
            yield Piece(f"whole/{point}", number)
