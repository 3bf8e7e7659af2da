"""Rectangles of so many squares: every pair of factors of a number is the sides of one."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from onewhole.number.quantity import whole
from onewhole.pictures.description import PartProduct
from onewhole.pictures.limits import LEAST_PART, NotDrawnError
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Words
from onewhole.statements.listing import Listing, ListSort
from onewhole.working.reasons.listing import PairFound
from onewhole.working.working import Working

#: The width of a picture and the height of its squares at most, the room for a number beside a rectangle and
#: above it, the gap below it, and the height of digits, in millimetres.
WIDTH, TALL, BESIDE, ABOVE, BELOW, DIGITS = map(Fraction, (118, 60, 18, 9, 3, 6))
#: A square at most, and a rectangle and its number at least.
LARGEST, LEAST_ROW = Fraction(7), Fraction(7)
#: Squares smaller than :data:`LEAST_PART` are not drawn one by one; a rectangle is so high at least.
LEAST_SIDE = Fraction(9, 10)


@dataclass(frozen=True, slots=True)
class _Array:
    """A rectangle of ``down`` rows of ``across`` squares, and where it begins from above."""

    down: int
    across: int
    top: Fraction


def arrays(working: Working) -> Picture:
    """Draw a rectangle for each pair of factors, a scene for every line; each appears when it is found.

    Raises NotDrawnError for all but factors, and where one square would be too small to be seen.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.listing import work_listing
    >>> scene = arrays(work_listing(read_statement("factors of 12"))).scenes[-1]
    >>> [piece.shape.width / piece.shape.height for piece in scene.pieces if isinstance(piece.shape, Box)]
    [Fraction(12, 1), Fraction(3, 1), Fraction(4, 3)]
    """
    asked = working.statement
    if not isinstance(asked, Listing) or asked.sort is not ListSort.FACTORS:
        msg = "only factors are drawn as rectangles"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    pairs = asked.pairs
    rows = sum(first for first, _ in pairs)
    one = min((WIDTH - BESIDE - BELOW) / asked.number.parts, TALL / rows, LARGEST)
    if one < LEAST_SIDE:
        msg = "one square is too small to be seen"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    placed, top = [], ABOVE
    for first, second in pairs:
        placed.append(_Array(first, second, top))
        top += max(one * first, LEAST_ROW) + ABOVE + BELOW
    found, scenes = 0, []
    for line in working.lines:
        found += isinstance(line.because, PairFound)
        pieces = tuple(piece for array in placed[:found] for piece in _drawn(array, one))
        told = tuple(_told(array) for array in placed[:found])
        scenes.append(Scene(WIDTH, top - ABOVE, pieces, told))
    return Picture(PictureKind.AREA, tuple(scenes))


def _drawn(array: _Array, one: Fraction) -> Iterator[Piece]:
    """Draw the rectangle with its squares, and its sides in numbers."""
    name = f"{array.down}x{array.across}"
    box = Box(BESIDE, array.top, one * array.across, one * array.down)
    yield Piece(f"array/{name}", box, Look.PLAIN)
    foot, end = box.y + box.height, box.x + box.width
    for at in range(1, array.across if one >= LEAST_PART else 1):
        yield Piece(f"column/{name}/{at}", Stroke(box.x + one * at, box.y, box.x + one * at, foot))
    for at in range(1, array.down if one >= LEAST_PART else 1):
        yield Piece(f"row/{name}/{at}", Stroke(box.x, box.y + one * at, end, box.y + one * at))
    middle = max(box.x + box.width / 2, BESIDE + DIGITS / 2)
    yield Piece(f"above/{name}", Words(middle, array.top - ABOVE / 2, whole(array.across), DIGITS))
    beside = array.top + one * array.down / 2
    yield Piece(f"beside/{name}", Words(BESIDE / 2, beside, whole(array.down), DIGITS))


def _told(array: _Array) -> PartProduct:
    first, second = whole(array.down), whole(array.across)
    return PartProduct(first, second, whole(array.down * array.across))
