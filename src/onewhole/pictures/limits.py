"""How much a drawing can hold and still be counted by looking. Common practice, no source."""

from fractions import Fraction

from onewhole.errors import InputError

#: More equal parts to a whole cannot be told apart on a strip or in a disc.
MOST_PARTS = 12

#: A rectangle is cut both ways, so it holds more.
MOST_PARTS_RECTANGLE = 24

#: The parts of one square of a hundred grid: columns, small squares, or equal heaps of those.
GRID_PARTS = frozenset({1, 2, 4, 5, 10, 20, 25, 50, 100})

#: More wholes in one number are not counted but guessed.
MOST_WHOLES = 12

#: The paper, and the least width of a part, in millimetres.
WIDTH = Fraction(180)
MOST_HEIGHT = Fraction(150)
LEAST_PART = Fraction(2)


class NotDrawnError(InputError, ValueError):
    """A working cannot be drawn this way; another picture may do."""
