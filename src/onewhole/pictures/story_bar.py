"""The bar picture of a story: its bars to one scale under one another, or its rectangle, with one blank.

Source: bars for part and whole, for comparing and for equal groups, as tables 1 and 2 in the glossary of the
Common Core State Standards for Mathematics (2010) sort the situations (from memory); how they are drawn is
common practice, no source.
"""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import accumulate

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.pictures.bar import DIGITS, MARGIN, ROW, WIDTH
from onewhole.pictures.bar_description import BarNumber, EachPart, EqualInBar, Lacking, SomeParts, TimesAsLong
from onewhole.pictures.bar_rows import BarRow, Bars, StoryShape, Stretch, StretchRole, Written, room_across
from onewhole.pictures.caption import Groups
from onewhole.pictures.description import Description, PartAmount, WholeAmount
from onewhole.pictures.limits import LEAST_PART, PAGE, NotDrawnError
from onewhole.pictures.rows import rows
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Words
from onewhole.pictures.story_rectangle import rectangle

LONG = WIDTH - 2 * MARGIN
#: The height of a bar with a number in it, and of a bracket; the gap between two bars, and at the ends.
TALL, BRACKET, BETWEEN, END = Fraction(13), Fraction(3), Fraction(4), Fraction(2)
#: The dots that stand for parts that are not drawn apart.
DOT, DOTS = Fraction(1), 3
LOOKS = {
    StretchRole.PART: Look.PLAIN,
    StretchRole.ASKED: Look.FILLED,
    StretchRole.LACKING: Look.DOTTED,
    StretchRole.UNCUT: Look.PLAIN,
}


def story_scenes(blank: StoryShape, found: StoryShape) -> tuple[Scene, Scene]:
    """Draw the picture of a story twice, as large: with its blank, and with what was found in its place.

    Every stretch is as long as its amount, all to one scale; the blank is hatched, what a bar lacks beside
    another is dotted. Raises NotDrawnError for what is too small to be seen beside the others, and for more
    than fits on a page.

    >>> from onewhole.pictures.step_rows import step_rows
    >>> from onewhole.statements.reading import read_expression
    >>> bars = Bars(step_rows(read_expression("52 - 27"), None))
    >>> drawn = story_scenes(bars, bars)[0]
    >>> [(piece.shape.width, piece.look.value) for piece in drawn.pieces if isinstance(piece.shape, Box)]
    [(Fraction(54, 1), 'plain'), (Fraction(50, 1), 'filled')]
    """
    if not isinstance(blank, Bars):
        assert not isinstance(found, Bars)
        return rectangle(blank, found), rectangle(found, blank)
    assert isinstance(found, Bars)
    longest = max(row.amount for row in blank.rows)
    least = min(one.amount for row in blank.rows for one in row.stretches)
    if least * LONG < LEAST_PART * longest:
        msg = "one part is too small to be seen beside the others"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    laid = _laid(blank, found, LONG / longest)
    height = laid[-1].foot + END
    if height > PAGE.height:
        msg = "so many bars do not fit on one picture"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    return _scene(blank, laid, height), _scene(found, laid, height)


def _scene(bars: Bars, laid: Sequence["_LaidBar"], height: Fraction) -> Scene:
    pieces = [
        piece
        for at, (row, there) in enumerate(zip(bars.rows, laid, strict=True))
        for piece in there.pieces(f"story/{at}", row)
    ]
    return Scene(WIDTH, height, tuple(pieces), tuple(_described(bars)))


class _LaidBar(Struct, frozen=True):
    """Where one bar stands: the top of its bracket's number, of the bar, of what is under it, and its foot.

    ``boxes`` are its stretches; ``inside`` says which of their numbers stand in them, and ``places`` where
    each other number stands, in which row under the bar; None for one that is not written.
    """

    top: Fraction
    bar: Fraction
    under: Fraction
    foot: Fraction
    boxes: tuple[Box, ...]
    places: tuple[tuple[Fraction, int] | None, ...]
    inside: tuple[bool, ...]

    def pieces(self, name: str, row: BarRow) -> Iterator[Piece]:
        """Yield a bar with its brackets and numbers."""
        there = self.boxes[: len(row.there)]
        if row.bracketed:
            yield from _bracket(f"{name}/over", there, self.bar - BRACKET, self.bar - 1)
            if row.over is not None:
                yield _words(f"{name}/whole", there, self.top + ROW / 2, row.over)
        for at, (one, box) in enumerate(zip(row.stretches, self.boxes, strict=True)):
            yield Piece(f"{name}/part/{at}", box, LOOKS[one.role])
            if one.role is StretchRole.UNCUT:
                yield from _dots(f"{name}/more/{at}", box)
            yield from self._number(f"{name}/number/{at}", at, one)
        if row.under is not None:
            counted = self.boxes[: len(row.there) if row.counted is None else row.counted]
            yield from _bracket(f"{name}/under", counted, self.under + BRACKET, self.under + 1)
            yield _words(f"{name}/times", counted, self.under + BRACKET + ROW / 2, row.under)

    def _number(self, name: str, at: int, one: Stretch) -> Iterator[Piece]:
        """Write the number of a stretch in it, or under it with a line to it."""
        box, place = self.boxes[at], self.places[at]
        if one.written is None:
            return
        middle = box.x + box.width / 2
        if self.inside[at]:
            yield Piece(name, Words(middle, box.y + box.height / 2, one.written, DIGITS))
        elif place is not None:
            x, y = place[0], self.bar + TALL + ROW * place[1] + ROW / 2 + 1
            yield Piece(f"{name}/line", Stroke(middle, self.bar + TALL, x, y - ROW / 2 + 1))
            yield Piece(name, Words(x, y, one.written, DIGITS))


def _laid(blank: Bars, found: Bars, scale: Fraction) -> tuple[_LaidBar, ...]:
    top, laid = END, []
    for row, other in zip(blank.rows, found.rows, strict=True):
        laid.append(_row(row, other, scale, top))
        top = laid[-1].foot + BETWEEN
    return tuple(laid)


def _row(row: BarRow, found: BarRow, scale: Fraction, top: Fraction) -> _LaidBar:
    bar = top + (ROW if row.over is not None else 0) + (BRACKET if row.bracketed else 0)
    starts = tuple(accumulate((one.amount * scale for one in row.stretches[:-1]), initial=MARGIN))
    boxes = tuple(Box(x, bar, one.amount * scale, TALL) for x, one in zip(starts, row.stretches, strict=True))
    rooms = [
        max(room_across(one.written), room_across(other.written))
        for one, other in zip(row.stretches, found.stretches, strict=True)
    ]
    inside = tuple(room <= box.width for room, box in zip(rooms, boxes, strict=True))
    outside = [
        at
        for at, one in enumerate(row.stretches)
        if one.written is not None and not inside[at] and not (row.equal and at and at < _equal(row))
    ]
    xs = [min(max(boxes[at].x + boxes[at].width / 2, rooms[at] / 2), WIDTH - rooms[at] / 2) for at in outside]
    taken = rows(xs, [rooms[at] for at in outside])
    places = {at: (x, line) for at, x, line in zip(outside, xs, taken, strict=True)}
    under = bar + TALL + ROW * (max(taken) + 1 if taken else 0)
    foot = under + (BRACKET + ROW if row.under is not None else 0)
    return _LaidBar(top, bar, under, foot, boxes, tuple(places.get(at) for at in range(len(boxes))), inside)


def _equal(row: BarRow) -> int:
    """Return how many stretches are equal parts: those before one that is not as long as the first."""
    first = row.stretches[0].amount
    return next((at for at, one in enumerate(row.stretches) if one.amount != first), len(row.stretches))


def _bracket(name: str, boxes: Sequence[Box], line: Fraction, end: Fraction) -> Iterator[Piece]:
    """Draw a bracket from the first box to the last: a line, and its two ends that point at the bar."""
    left, right = boxes[0].x, boxes[-1].x + boxes[-1].width
    yield Piece(name, Stroke(left, line, right, line))
    yield Piece(f"{name}/left", Stroke(left, line, left, end))
    yield Piece(f"{name}/right", Stroke(right, line, right, end))


def _words(name: str, boxes: Sequence[Box], y: Fraction, written: Written) -> Piece:
    """Write something in the middle of a bracket."""
    assert written is not None
    middle, half = (boxes[0].x + boxes[-1].x + boxes[-1].width) / 2, room_across(written) / 2
    return Piece(name, Words(min(max(middle, half), WIDTH - half), y, written, DIGITS))


def _dots(name: str, box: Box) -> Iterator[Piece]:
    """Draw dots in the middle of a stretch: it goes on in the same way."""
    for at in range(DOTS):
        x = box.x + box.width / 2 + (at - DOTS // 2) * 3 * DOT - DOT / 2
        yield Piece(f"{name}/{at}", Box(x, box.y + (box.height - DOT) / 2, DOT, DOT), Look.FILLED)


def _described(bars: Bars) -> Iterator[Description]:
    for number, row in enumerate(bars.rows, 1):
        if len(bars.rows) > 1:
            yield BarNumber(number)
        if row.bracketed:
            yield WholeAmount(_known(row.over))
        yield from _parts(row)


def _parts(row: BarRow) -> Iterator[Description]:
    first, rest = row.stretches[0], row.stretches
    if row.equal:
        yield EqualInBar(row.equal.count)
        if first.written is not None:
            yield EachPart(_known(first.written))
        if row.counted and row.under is not None and not isinstance(row.under, Groups):
            yield SomeParts(row.counted, _known(row.under))
        rest = tuple(one for one in row.stretches[_equal(row) :] if one.role is not StretchRole.UNCUT)
    elif row.under is not None:
        yield TimesAsLong(_known(row.under))
        return
    for one in rest:
        if one.role is StretchRole.LACKING:
            yield Lacking(_known(one.written))
        else:
            yield PartAmount(_known(one.written)) if len(row.there) > 1 else WholeAmount(_known(one.written))


def _known(written: Written) -> Quantity | None:
    return written if isinstance(written, Quantity) else None
