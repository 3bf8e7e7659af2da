"""Numbers under each other on squared paper: a digit a square, with what is struck, above and below."""

from collections.abc import Iterator
from fractions import Fraction

from onewhole.number.quantity import trimmed, whole
from onewhole.pictures.caption import Count
from onewhole.pictures.columns_state import ColumnsState, DigitColumn, columns_states
from onewhole.pictures.description import Description, UnderEachOther, WrittenAbove, WrittenBelow
from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Wedge, Words
from onewhole.working.working import Working

#: A square for a digit, and the lower row of the small numbers above, in millimetres.
SQUARE, SMALL_ROW = Fraction(10), Fraction(5)
#: The height of digits, of small ones, of half a sign, and the radius of the point.
DIGITS, SMALL, SIGN, POINT = Fraction(6), Fraction(7, 2), Fraction(5, 2), Fraction(3, 10)
MARGIN = Fraction(5)
#: How far the place for a digit stands from the lines of its square.
OPEN = Fraction(1)
#: So many squares stand side by side at least, so that squares are of one size from problem to problem: a
#: sign and the places up to 1,000,000 with one more.
FEWEST = 9


def columns(working: Working) -> Picture:
    """Draw a working in columns, a scene for every line: columns keep their places to the millimetre.

    Raises NotDrawnError for a working that does not go column by column.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.columns import COLUMNS
    >>> from onewhole.working.work import work
    >>> picture = columns(work(read_statement("304 - 128"), COLUMNS))
    >>> [sum(piece.name.endswith("/struck") for piece in scene.pieces) for scene in picture.scenes]
    [0, 2, 4, 4, 4, 4]
    """
    states = columns_states(working)
    if not states:
        msg = "this way does not go column by column"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    wide = max(FEWEST, *(len(state.columns) + 1 for state in states))
    above = max(len(column.above) for state in states for column in state.columns)
    high = max(len(state.numbers) for state in states)
    return Picture(PictureKind.COLUMNS, tuple(_scene(state, wide, above, high) for state in states))


def stills(working: Working) -> tuple[Scene, ...]:
    """Return what stands in the columns at the end, as narrow as it is; a scene each time they begin anew.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.columns import COLUMNS
    >>> from onewhole.working.work import work
    >>> [scene.width for scene in stills(work(read_statement("52 + 27 - 38"), COLUMNS))]
    [Fraction(40, 1), Fraction(40, 1)]
    """
    ends = {state.block: state for state in columns_states(working)}
    return tuple(
        _scene(
            state, len(state.columns) + 1, max(len(one.above) for one in state.columns), len(state.numbers)
        )
        for state in ends.values()
    )


def begun(working: Working) -> Scene | None:
    """Draw the columns with the first one done and a dotted place for every other digit of the answer.

    None for a working that goes not column by column, and where no column is left to do.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.columns import COLUMNS
    >>> from onewhole.working.work import work
    >>> scene = begun(work(read_statement("304 - 128"), COLUMNS))
    >>> [piece.name for piece in scene.pieces if piece.name.endswith(("/below", "/open"))]
    ['0/1:1/below', '0/100:1/open', '0/10:1/open']
    """
    states = columns_states(working)
    first = next((one for one in states if any(column.below is not None for column in one.columns)), None)
    if first is None:
        return None
    last = [one for one in states if one.block == first.block][-1]
    missing = [
        (at, column.unit)
        for at, (column, end) in enumerate(zip(first.columns, last.columns, strict=True), start=1)
        if column.below is None and end.below is not None
    ]
    if not missing:
        return None
    above = max(len(column.above) for column in last.columns)
    scene = _scene(first, len(first.columns) + 1, above, len(first.numbers))
    y = MARGIN + above * SMALL_ROW + len(first.numbers) * SQUARE + OPEN
    side = SQUARE - 2 * OPEN
    places = (
        Piece(
            f"{first.block}/{unit.size.numerator}:{unit.size.denominator}/open",
            Box(MARGIN + at * SQUARE + OPEN, y, side, side),
            Look.DOTTED,
        )
        for at, unit in missing
    )
    return Scene(scene.width, scene.height, (*scene.pieces, *places), scene.descriptions)


def _scene(state: ColumnsState, wide: int, above: int, high: int) -> Scene:
    """Draw columns on so many squares across, with so many small rows above and so many numbers."""
    top = MARGIN + above * SMALL_ROW
    width, height = 2 * MARGIN + wide * SQUARE, MARGIN + top + (high + 1) * SQUARE
    return Scene(width, height, tuple(_pieces(state, wide, top)), tuple(_descriptions(state)))


def _pieces(state: ColumnsState, wide: int, top: Fraction) -> Iterator[Piece]:
    name = f"{state.block}"
    empty = (wide - len(state.columns) - 1) // 2
    left = MARGIN + empty * SQUARE
    right = left + (len(state.columns) + 1) * SQUARE
    rows = len(state.numbers)
    sign = left + SQUARE / 2
    yield from sign_of(name, sign, top + (rows - Fraction(1, 2)) * SQUARE, taken=state.taken)
    rule = top + rows * SQUARE
    yield Piece(f"{name}/rule", Stroke(left, rule, right, rule), Look.FILLED)
    for at, column in enumerate(state.columns, start=1):
        x = left + (at + Fraction(1, 2)) * SQUARE
        size = column.unit.size
        place = f"{name}/{size.numerator}:{size.denominator}"
        yield from _column(place, column, x, top, taken=state.taken)
        if column.unit.size == 1 and at < len(state.columns):
            yield from _points(name, state, x + SQUARE / 2, top)


def sign_of(name: str, x: Fraction, y: Fraction, *, taken: bool) -> Iterator[Piece]:
    """Draw a plus sign, or a minus sign where something is taken away."""
    yield Piece(f"{name}/sign", Stroke(x - SIGN, y, x + SIGN, y), Look.FILLED)
    if not taken:
        yield Piece(f"{name}/sign/down", Stroke(x, y - SIGN, x, y + SIGN), Look.FILLED)


def _points(name: str, state: ColumnsState, x: Fraction, top: Fraction) -> Iterator[Piece]:
    """Set the points of the numbers and of the answer under each other, on the line between two squares."""
    rows = len(state.numbers) + any(column.below is not None for column in state.columns)
    for row in range(rows):
        y = top + row * SQUARE + (SQUARE + DIGITS) / 2
        yield Piece(f"{name}/point/{row}", Wedge(x, y, POINT, Fraction(0), Fraction(1)), Look.FILLED)


def _column(name: str, column: DigitColumn, x: Fraction, top: Fraction, *, taken: bool) -> Iterator[Piece]:
    for row, digit in enumerate(column.digits):
        if digit is not None:
            y = top + (row + Fraction(1, 2)) * SQUARE
            yield Piece(f"{name}/{row}", Words(x, y, whole(digit), DIGITS))
            if taken and not row and column.above:
                yield struck(f"{name}/{row}", x, y, DIGITS)
    for row, count in enumerate(column.above):
        y = top - (row + Fraction(1, 2)) * SMALL_ROW
        yield Piece(f"{name}/above/{row}", Words(x, y, whole(count), SMALL))
        if row + 1 < len(column.above):
            yield struck(f"{name}/above/{row}", x, y, SMALL)
    if column.below is not None:
        y = top + (len(column.digits) + Fraction(1, 2)) * SQUARE
        yield Piece(f"{name}/below", Words(x, y, whole(column.below), DIGITS))


def struck(name: str, x: Fraction, y: Fraction, size: Fraction) -> Piece:
    """Strike a number out with one stroke that leaves it readable, inside its own square.

    >>> struck("above/1", Fraction(5), Fraction(5), SMALL).name
    'above/1/struck'
    """
    wide, high = size / 2, size * 3 / 5
    return Piece(f"{name}/struck", Stroke(x - wide, y + high, x + wide, y - high))


def _descriptions(state: ColumnsState) -> Iterator[Description]:
    """Say which numbers stand there, what is written above now, and what is written below."""
    yield UnderEachOther(tuple(map(trimmed, state.numbers)), state.taken)
    above = tuple(Count(column.above[-1], column.unit) for column in state.columns if column.above)
    if above:
        yield WrittenAbove(above, state.taken)
    below = tuple(Count(column.below, column.unit) for column in state.columns if column.below is not None)
    if below:
        yield WrittenBelow(below)
