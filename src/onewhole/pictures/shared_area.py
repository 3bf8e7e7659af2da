"""The area model of a quotient: a rectangle whose height is the divisor, and whose width is asked.

Source: 4.NBT.B.6 and 5.NBT.B.6 (rectangular arrays, area models), CCSSM (2010).
"""

from collections.abc import Iterator
from fractions import Fraction
from itertools import accumulate, pairwise
from math import ceil

from msgspec import Struct

from onewhole.number.quantity import Quantity, usual, whole
from onewhole.pictures.description import Description, PartProduct, Shown, StillThere
from onewhole.pictures.labels import BLANK, across
from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Look, Piece, Scene, Words
from onewhole.pictures.shares_state import SharesState, quotient_of, shares_states
from onewhole.working.working import Working

#: The rectangle at most, the room beside and above it, and the height of digits, in millimetres.
WIDE, TALL, BESIDE, ABOVE, DIGITS = Fraction(92), Fraction(52), Fraction(16), Fraction(11), Fraction(5)
#: The room that digits take here, against those of a line.
LARGER = Fraction(5, 4)
#: Narrower parts and lower rectangles are not seen. Common practice, no source.
LEAST, LOWEST = Fraction(1), Fraction(5)


def shared_area(working: Working) -> Picture:
    """Draw a quotient of whole numbers as a rectangle in true proportion, a scene for every line.

    Raises NotDrawnError for anything else, and where a part is too narrow to be seen.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.quotients.partial_quotients import PARTIAL_QUOTIENTS
    >>> from onewhole.working.work import work
    >>> drawn = shared_area(work(read_statement("1655 / 27"), PARTIAL_QUOTIENTS)).scenes[-1]
    >>> parts = [piece.shape for piece in drawn.pieces if piece.name.startswith("part/")]
    >>> [part.width / part.height * 27 for part in parts]
    [Fraction(50, 1), Fraction(10, 1), Fraction(1, 1)]
    """
    asked, states = quotient_of(working), shares_states(working)
    if asked is None or not asked.wholes or not states or not asked.left.parts:
        msg = "only quotients of whole numbers are drawn as an area"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    drawing = _Rectangle.of(asked.left, asked.right)
    narrow = [part.value * drawing.one for state in states for part in state.has if part.value >= 1]
    if min(narrow, default=WIDE) < LEAST or drawing.height < LOWEST:
        msg = "one part is too small to be seen beside the others"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    return Picture(PictureKind.AREA, tuple([drawing.scene(state) for state in _kept(states)]))


def _kept(states: tuple[SharesState, ...]) -> Iterator[SharesState]:
    """Keep the parts apart at the line that only writes them as one number."""
    parts: tuple[Quantity, ...] = ()
    for state in states:
        joined = len(state.has) == 1 < len(parts) and state.each == sum(part.value for part in parts)
        parts = parts if joined else state.has
        yield SharesState(parts, state.left)


class _Rectangle(Struct, frozen=True):
    """A rectangle of the area ``number`` that is ``by`` high; a one is ``one`` millimetres long."""

    number: Quantity
    by: Quantity
    one: Fraction

    @classmethod
    def of(cls, number: Quantity, by: Quantity) -> "_Rectangle":
        wide = number.value / by.value
        return cls(number, by, min(WIDE / wide, TALL / by.value))

    @property
    def height(self) -> Fraction:
        return self.by.value * self.one

    def scene(self, state: SharesState) -> Scene:
        """Return the rectangle with a part for each part of the quotient; what is not shared is dotted."""
        whole_width = self.number.value / self.by.value * self.one
        pieces = [Piece("all", Box(BESIDE, ABOVE, whole_width, self.height), Look.DOTTED)]
        middle = ABOVE + self.height / 2
        pieces.append(Piece("beside", Words(BESIDE / 2, middle, self.by, DIGITS)))
        starts = list(accumulate([part.value * self.one for part in state.has], initial=BESIDE))
        pieces += self._parts(state.has, starts)
        rest = BESIDE + whole_width - starts[-1]
        left = state.left and usual(state.left.ladder, state.left.value)
        if left and left.parts and rest >= _room(left):
            pieces.append(Piece("left", Words(starts[-1] + rest / 2, middle, left, DIGITS)))
        width = BESIDE + whole_width + _room(self.by) + 4
        return Scene(Fraction(ceil(width)), ABOVE + self.height + 4, tuple(pieces), tuple(self._told(state)))

    def _parts(self, has: tuple[Quantity, ...], starts: list[Fraction]) -> Iterator[Piece]:
        free = Fraction(0)
        for at, (part, (start, end)) in enumerate(zip(has, pairwise(starts), strict=True)):
            yield Piece(f"part/{at}", Box(start, ABOVE, end - start, self.height), Look.FILLED)
            x = max((start + end) / 2, free + _room(part) / 2)
            free = x + _room(part) / 2
            yield Piece(f"above/{at}", Words(x, ABOVE / 2, part, DIGITS))
            area = self._area(part)
            if area is not None and end - start >= _room(area) and self.height >= DIGITS * LARGER:
                yield Piece(f"area/{at}", Words((start + end) / 2, ABOVE + self.height / 2, area, DIGITS))

    def _area(self, part: Quantity) -> Quantity | None:
        found = part.value * self.by.value
        return whole(int(found)) if found.denominator == 1 else None

    def _told(self, state: SharesState) -> Iterator[Description]:
        if not state.has:
            yield Shown((self.number,))
            return
        for part in state.has:
            if (area := self._area(part)) is not None:
                yield PartProduct(self.by, part, area)
        if state.left is not None and state.left.parts:
            yield StillThere((usual(state.left.ladder, state.left.value),))


def _room(number: Quantity) -> Fraction:
    return across(number) * LARGER + BLANK
