"""How much a drawing can hold and still be counted by looking. Common practice, no source."""

from fractions import Fraction

from msgspec import Struct

from onewhole.errors import InputError

#: More equal parts to a whole cannot be told apart on a strip or in a disc.
MOST_PARTS = 12

#: A rectangle is cut both ways, so it holds more.
MOST_PARTS_RECTANGLE = 24

#: The parts of one square of a hundred grid: columns, small squares, or equal heaps of those.
GRID_PARTS = frozenset({1, 2, 4, 5, 10, 20, 25, 50, 100})

#: More wholes in one number are not counted but guessed.
MOST_WHOLES = 12

#: The least width of a part, in millimetres.
LEAST_PART = Fraction(2)


class PicturePaper(Struct, frozen=True):
    """What a picture is drawn on: its width and most height in millimetres.

    ``least`` is how high a digit is at least, as a share of the picture's longer side.
    """

    width: Fraction
    height: Fraction
    least: Fraction


#: A page, and the board of a film: so narrow that digits of the usual height are read on a phone.
PAGE = PicturePaper(Fraction(180), Fraction(150), Fraction(0))
BOARD = PicturePaper(Fraction(96), Fraction(106), Fraction(3, 97))


class NotDrawnError(InputError, ValueError):
    """A working cannot be drawn this way; another picture may do."""
