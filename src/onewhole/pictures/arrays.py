"""Rectangles of so many squares: every pair of factors of a number is the sides of one."""

from collections.abc import Iterator
from fractions import Fraction

from msgspec import Struct

from onewhole.number.quantity import Quantity, whole
from onewhole.pictures.description import Description, PartProduct, StillThere
from onewhole.pictures.limits import LEAST_PART, NotDrawnError
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Words
from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.listing import Listing, ListSort
from onewhole.working.reasons.listing import FactorTried, OtherFactor, PairFound
from onewhole.working.working import Working

#: The width of a picture and the height of its squares at most, the room for a number beside a rectangle and
#: above it, the gap below it, and the height of digits, in millimetres.
WIDTH, TALL, BESIDE, ABOVE, BELOW, DIGITS = map(Fraction, (118, 60, 18, 9, 3, 6))
#: A square at most, and a rectangle and its number at least.
LARGEST, LEAST_ROW = Fraction(7), Fraction(7)
#: Squares smaller than :data:`LEAST_PART` are not drawn one by one; a rectangle is so high at least.
LEAST_SIDE = Fraction(9, 10)


class _Array(Struct, frozen=True):
    """A rectangle of ``down`` rows of ``across`` squares, and ``left`` squares in a row begun below it."""

    down: int
    across: int
    left: int = 0

    @property
    def rows(self) -> int:
        """Return how many rows there are, the last one too that is only begun."""
        return self.down + (self.left > 0)


def arrays(working: Working) -> Picture:
    """Draw a rectangle for each pair of factors, a scene for every line; each appears when it is found.

    Where a factor is tried, what is left over begins a row more: only a rectangle without it is a pair. A
    prime keeps the rectangle of one row. Raises NotDrawnError for all but factors, multiples or not, and
    primes, and where one square would be too small to be seen.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.listing import work_listing
    >>> scene = arrays(work_listing(read_statement("factors of 12"))).scenes[-1]
    >>> [piece.shape.width / piece.shape.height for piece in scene.pieces if isinstance(piece.shape, Box)]
    [Fraction(12, 1), Fraction(3, 1), Fraction(4, 3)]
    """
    shown = tuple(_each_line(working))
    every = [array for found in shown for array in found]
    if not every:
        msg = "only factors, and what may be one, are drawn as rectangles"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    rows = max(sum(array.rows for array in found) for found in shown)
    widest = max(array.across for array in every)
    one = min((WIDTH - BESIDE - BELOW) / widest, TALL / rows, LARGEST)
    if one < LEAST_SIDE:
        msg = "one square is too small to be seen"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    high = max(_tops(found, one)[-1] for found in shown)
    scenes = []
    for found in shown:
        drawn = zip(found, _tops(found, one), strict=False)
        pieces = tuple(piece for array, top in drawn for piece in _drawn(array, top, one))
        scenes.append(
            Scene(WIDTH, high - ABOVE, pieces, tuple(told for array in found for told in _told(array)))
        )
    return Picture(PictureKind.AREA, tuple(scenes))


def _each_line(working: Working) -> Iterator[tuple[_Array, ...]]:
    """Yield the rectangles that are there at each line."""
    match working.statement:
        case Listing(sort=ListSort.FACTORS) as asked:
            found = 0
            for line in working.lines:
                found += isinstance(line.because, PairFound)
                yield tuple(_Array(*pair) for pair in asked.pairs[:found])
        case FactorQuestion(number, None) as asked:
            row = _Array(1, number.parts)
            tried: tuple[_Array, ...] = ()
            for line in working.lines:
                match line.because:
                    case FactorTried(by=by) as one:
                        tried = (_Array(by, one.times, one.left),)
                    case OtherFactor():
                        pass
                    case _:
                        tried = ()
                yield (row, *tried)
        case FactorQuestion(number, Quantity() as step) if number.parts >= step.parts:
            yield ()
            times, left = divmod(number.parts, step.parts)
            yield from ((_Array(times, step.parts, left),) for _ in working.lines[1:])
        case _:
            return


def _tops(found: tuple[_Array, ...], one: Fraction) -> list[Fraction]:
    """Return where each rectangle begins from above, and where another one would."""
    tops = [ABOVE]
    for array in found:
        tops.append(tops[-1] + max(one * array.rows, LEAST_ROW) + ABOVE + BELOW)
    return tops


def _drawn(array: _Array, top: Fraction, one: Fraction) -> Iterator[Piece]:
    """Draw the rectangle with its squares, and its sides in numbers; what is left over is hatched below."""
    name = f"{array.down}x{array.across}"
    box = Box(BESIDE, top, one * array.across, one * array.down)
    yield Piece(f"array/{name}", box, Look.PLAIN)
    foot, end = box.y + box.height, box.x + box.width
    for at in range(1, array.across if one >= LEAST_PART else 1):
        yield Piece(f"column/{name}/{at}", Stroke(box.x + one * at, box.y, box.x + one * at, foot))
    for at in range(1, array.down if one >= LEAST_PART else 1):
        yield Piece(f"row/{name}/{at}", Stroke(box.x, box.y + one * at, end, box.y + one * at))
    for at in range(array.left):
        yield Piece(f"left/{name}/{at}", Box(box.x + one * at, foot, one, one), Look.FILLED)
    middle = max(box.x + box.width / 2, BESIDE + DIGITS / 2)
    yield Piece(f"above/{name}", Words(middle, top - ABOVE / 2, whole(array.across), DIGITS))
    beside = top + one * array.down / 2
    yield Piece(f"beside/{name}", Words(BESIDE / 2, beside, whole(array.down), DIGITS))


def _told(array: _Array) -> Iterator[Description]:
    first, second = whole(array.down), whole(array.across)
    yield PartProduct(first, second, whole(array.down * array.across))
    if array.left:
        yield StillThere((whole(array.left),))
