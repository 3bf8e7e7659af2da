"""The rectangle of a story: rows of squares and areas, with sides as long as they are and one blank."""

from collections.abc import Iterator
from fractions import Fraction

from onewhole.number.quantity import Quantity
from onewhole.pictures.bar import DIGITS, MARGIN, ROW, WIDTH
from onewhole.pictures.bar_description import SidesAndArea
from onewhole.pictures.bar_rows import Rectangle, Written, room_across
from onewhole.pictures.limits import LEAST_PART, NotDrawnError
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Words

#: The room that a rectangle has across and down, and the least that holds a number.
WIDE, HIGH, LEAST = Fraction(80), Fraction(64), Fraction(8)
#: A square of which a part is shown, and how far in the ones of a side are marked off.
SQUARE, MARK = Fraction(64), Fraction(4)


def rectangle(drawn: Rectangle, other: Rectangle) -> Scene:
    """Draw a rectangle; ``other`` is the same one with what it has beside the blank, for the room.

    Both sides have one scale. Raises NotDrawnError where one is too short beside the other.

    >>> from onewhole.number.quantity import whole
    >>> from onewhole.statements.gap import HOLE
    >>> one = Rectangle(Fraction(4), Fraction(6), (whole(4), whole(6)), HOLE)
    >>> box = rectangle(one, one).pieces[0].shape
    >>> box.height / box.width
    Fraction(2, 3)
    """
    part = drawn.down <= 1 and drawn.across <= 1
    scale = SQUARE if part else min(WIDE / drawn.across, HIGH / drawn.down)
    across, down = drawn.across * scale, drawn.down * scale
    need = max(room_across(drawn.inside), room_across(other.inside))
    if across < need or down < LEAST:
        msg = "one side is too short to be seen beside the other"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    side = max(room_across(drawn.sides[0]), room_across(other.sides[0]))
    left, top = side + 2, ROW + 1
    box = Box(left, top, across, down)
    pieces = [Piece("story/area", box, Look.FILLED if part else Look.PLAIN)]
    if part:
        pieces.insert(0, Piece("story/square", Box(left, top, SQUARE, SQUARE), Look.DOTTED))
    pieces += _marked(drawn, box, scale)
    pieces.append(_words("story/down", left - side / 2, top + down / 2, drawn.sides[0]))
    pieces.append(_words("story/across", left + across / 2, top - ROW / 2, drawn.sides[1]))
    pieces.append(_words("story/inside", left + across / 2, top + down / 2, drawn.inside))
    height = top + max(down, SQUARE if part else down) + MARGIN / 2
    told = SidesAndArea(*map(_known, (*drawn.sides, drawn.inside)))
    return Scene(WIDTH, height, tuple(pieces), (told,))


def _marked(drawn: Rectangle, box: Box, scale: Fraction) -> Iterator[Piece]:
    """Mark off the ones along the left side and along the upper side, where they can be seen."""
    if scale < LEAST_PART:
        return
    if drawn.squares[0]:
        for at in range(1, int(drawn.down)):
            y = box.y + at * scale
            yield Piece(f"story/row/{at}", Stroke(box.x, y, box.x + min(MARK, scale), y))
    if drawn.squares[1]:
        for at in range(1, int(drawn.across)):
            x = box.x + at * scale
            yield Piece(f"story/column/{at}", Stroke(x, box.y, x, box.y + min(MARK, scale)))


def _words(name: str, x: Fraction, y: Fraction, written: Written) -> Piece:
    assert written is not None
    return Piece(name, Words(x, y, written, DIGITS))


def _known(written: Written) -> Quantity | None:
    return written if isinstance(written, Quantity) else None
