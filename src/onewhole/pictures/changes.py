"""Where a scene differs from the one before it: what is marked on a board while it is told."""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from typing import assert_never

from onewhole.number.digits import in_digits, named_places
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.pictures.caption import Caption, Count, Groups
from onewhole.pictures.labels import DIGITS, across
from onewhole.pictures.scene import Box, Hop, Look, Piece, Scene, Shape, Stroke, Wedge, Words
from onewhole.statements.gap import Hole, type_hole

#: A mark stands so far outside what it marks; what lies closer together than that has one mark.
ROUND, NEAR = Fraction(3, 2), Fraction(4)
#: The boxes round a mark and a number may overlap so far.
CLEAR = Fraction(1, 2)
#: An arm of a mark's corner.
ARM = Fraction(4)
#: Half the width of a count with its unit, in heights of its digits, roughly.
COUNTED = Fraction(4)
#: The width of a place with its count, such as 11 tenths, in heights of its digits, roughly.
WORD = Fraction(13, 2)
#: More marks than this say nothing: then one stands round all of them.
MOST = 3


def changes(before: Scene, after: Scene) -> tuple[Box, ...]:
    """Return where a scene differs from the one before: what came, went, moved or looks otherwise.

    What is written counts only where nothing else differs, for it tells what is drawn; but no mark cuts
    through it. What went counts where nothing came in its place, and not where nothing is left there. Nothing
    where the scene before it was another picture, with no piece of this one.

    >>> from msgspec.structs import replace
    >>> one = Piece("one", Box(Fraction(10), Fraction(10), Fraction(20), Fraction(8)), Look.FILLED)
    >>> bare, struck = (
    ...     Scene(Fraction(60), Fraction(40), (replace(one, look=look),))
    ...     for look in (Look.FILLED, Look.STRUCK)
    ... )
    >>> changes(bare, struck)[0].width
    Fraction(23, 1)
    """
    old, new = ({piece.name: piece for piece in scene.pieces} for scene in (before, after))
    if old and new and old.keys().isdisjoint(new):
        return ()
    differs = [
        piece
        for known, other in ((old, new), (new, old))
        for name, piece in known.items()
        if other.get(name) != piece
    ]
    drawn = [piece for piece in differs if not isinstance(piece.shape, Words)]
    told = drawn if any(not isinstance(piece.shape, Stroke) for piece in drawn) else differs
    came = [_round(piece.shape) for piece in told if piece.name in new]
    seen = [piece for piece in told if piece.name in new or _is_missed(_round(piece.shape), came, after)]
    written = [_round(piece.shape) for piece in after.pieces if isinstance(piece.shape, Words)]
    places = _joined([_clear(_inside(_round(piece.shape), after), written, after) for piece in seen])
    if len(places) > MOST:
        whole = places[0]
        for place in places[1:]:
            whole = _both(whole, place)
        return (whole,)
    return tuple(places)


def marks(places: tuple[Box, ...]) -> tuple[Piece, ...]:
    """Draw the corners of a frame round each place, in bold pencil."""
    return tuple(piece for at, place in enumerate(places) for piece in _corners(f"mark/{at}", place))


def _corners(name: str, place: Box) -> Iterator[Piece]:
    across, down = min(ARM, place.width / 3), min(ARM, place.height / 3)
    for x, inwards in ((place.x, across), (place.x + place.width, -across)):
        for y, below in ((place.y, down), (place.y + place.height, -down)):
            corner = f"{name}/{x > place.x:d}{y > place.y:d}"
            yield Piece(f"{corner}/across", Stroke(x, y, x + inwards, y), Look.FILLED)
            yield Piece(f"{corner}/down", Stroke(x, y, x, y + below), Look.FILLED)


def _round(shape: Shape) -> Box:
    """Return a box round a shape, a little larger than it."""
    match shape:
        case Box(x, y, width, height):
            return _wider(x, y, x + width, y + height)
        case Wedge(x, y, radius):
            return _wider(x - radius, y - radius, x + radius, y + radius)
        case Stroke(x, y, to_x, to_y):
            return _wider(min(x, to_x), min(y, to_y), max(x, to_x), max(y, to_y))
        case Hop(x, y, to_x, height):
            return _wider(min(x, to_x), y - height, max(x, to_x), y)
        case Words(x, y, caption, size):
            half = _half(caption) * size
            return _wider(x - half, y - size / 2, x + half, y + size / 2)


def _half(caption: Caption | type_hole | Groups) -> Fraction:
    """Return about half the width of what is written, in heights of its digits."""
    match caption:
        case Quantity() if caption.ladder.style in {Style.PLACES, Style.DECIMAL} and not in_digits(caption):
            return WORD * len(named_places(caption)) / 2
        case Quantity():
            return across(caption) / DIGITS / 2
        case Count():
            return COUNTED
        case Groups(count):
            return Fraction(len(str(count or 0)) + 2, 2)
        case Hole():
            return Fraction(1, 2)
        case _:
            assert_never(caption)


def _wider(left: Fraction, top: Fraction, right: Fraction, bottom: Fraction) -> Box:
    return Box(left - ROUND, top - ROUND, right - left + 2 * ROUND, bottom - top + 2 * ROUND)


def _inside(box: Box, scene: Scene) -> Box:
    """Cut a box down to the paper, a little inside its edge."""
    left, top = max(box.x, Fraction(1, 2)), max(box.y, Fraction(1, 2))
    right = min(box.x + box.width, scene.width - Fraction(1, 2))
    bottom = min(box.y + box.height, scene.height - Fraction(1, 2))
    return Box(left, top, max(right - left, ROUND), max(bottom - top, ROUND))


def _is_missed(went: Box, came: Sequence[Box], after: Scene) -> bool:
    """Say whether the place of what went tells something: whence it came, or that something is empty now."""
    if came:
        return not _over(went, came)
    return _over(went, [_round(piece.shape) for piece in after.pieces if not isinstance(piece.shape, Words)])


def _over(one: Box, others: Iterable[Box], least: Fraction = 2 * ROUND) -> bool:
    """Say whether a box lies over one of the others, by more than the room round both or ``least``."""
    return any(
        one.x + least < other.x + other.width
        and other.x + least < one.x + one.width
        and one.y + least < other.y + other.height
        and other.y + least < one.y + one.height
        for other in others
    )


def _clear(box: Box, written: Iterable[Box], scene: Scene) -> Box:
    """Return a box so wide that no corner of it cuts through what is written on its edge."""
    found = box
    for words in written:
        if _over(box, (words,), CLEAR):
            found = _both(found, _inside(words, scene))
    return found


def _joined(boxes: list[Box]) -> list[Box]:
    """Join boxes that lie close together, until none do."""
    found: list[Box] = []
    for box in boxes:
        joined = box
        while near := next((one for one in found if _close(one, joined)), None):
            found.remove(near)
            joined = _both(near, joined)
        found.append(joined)
    return found


def _close(one: Box, other: Box) -> bool:
    return (
        one.x - NEAR < other.x + other.width
        and other.x - NEAR < one.x + one.width
        and one.y - NEAR < other.y + other.height
        and other.y - NEAR < one.y + one.height
    )


def _both(one: Box, other: Box) -> Box:
    left, top = min(one.x, other.x), min(one.y, other.y)
    right = max(one.x + one.width, other.x + other.width)
    bottom = max(one.y + one.height, other.y + other.height)
    return Box(left, top, right - left, bottom - top)
