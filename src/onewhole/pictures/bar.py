"""The part-whole bar: the whole above, its parts below it in true proportion, and the missing one hatched."""

from collections.abc import Iterator
from fractions import Fraction
from itertools import accumulate

from msgspec import Struct

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.pictures.description import Description, PartAmount, WholeAmount
from onewhole.pictures.limits import LEAST_PART, NotDrawnError
from onewhole.pictures.parts import PartWhole, Share, part_whole
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.rows import rows
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Words
from onewhole.statements.gap import HOLE, type_hole
from onewhole.statements.statement import MissingNumber
from onewhole.working.line import Line
from onewhole.working.working import Working

#: Narrower than other pictures, so that its numbers can be read where it stands beside a working.
WIDTH, MARGIN = Fraction(120), Fraction(8)
LONG = WIDTH - 2 * MARGIN
#: A smaller share of the whole is too narrow to be seen.
LEAST_SHARE = LEAST_PART / LONG
#: The height of a bar, the gap between the two, the height of digits, and of a row of numbers.
TALL, BETWEEN, DIGITS, ROW = Fraction(10), Fraction(3, 2), Fraction(6), Fraction(14)
TOP = ROW + 1
#: The room that a digit takes across, and a unit of a measure with its number.
ROOM_DIGIT, ROOM_UNIT = 5, 23


def bar(working: Working, width: Fraction = WIDTH) -> Picture:
    """Draw a whole and its parts, a scene for every line; the blank is a question mark until it is found.

    The blank is hatched in every scene, to distinguish it from the known parts without colour. The whole
    picture is ``width`` millimetres wide. Raises
    NotDrawnError for a problem that does not say what the whole and its parts are, and for a part that is too
    small to be seen beside the others.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.work import work
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> drawn = bar(work(read_statement("9 - ? = 3 1/2"), REGROUP_FIRST)).scenes[0]
    >>> [(piece.shape.width, piece.look.value) for piece in drawn.pieces if isinstance(piece.shape, Box)]
    [(Fraction(104, 1), 'plain'), (Fraction(572, 9), 'filled'), (Fraction(364, 9), 'plain')]
    """
    found = part_whole(working.statement)
    if found is None:
        msg = "this problem does not tell a whole and its parts"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    if found.smallest < LEAST_SHARE:
        msg = "one part is too small to be seen beside the others"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    drawing = _BarDrawing.of(found, working.answer, width)
    return Picture(PictureKind.BAR, tuple(drawing.scene(_found(line)) for line in working.lines))


def _found(line: Line) -> Quantity | type_hole:
    """Return the number for the blank where a line tells it: the blank is alone, and so is a number."""
    match line.says:
        case MissingNumber(rest=Quantity() as rest, beside=(), gap_taken=False):
            return rest
        case Quantity() as found:
            return found
        case _:
            return HOLE


class _BarDrawing(Struct, frozen=True):
    """A whole and its parts laid out: where each part begins, and the place and row of each number below."""

    told: PartWhole
    width: Fraction
    starts: tuple[Fraction, ...]
    places: tuple[Fraction, ...]
    rows: tuple[int, ...]

    @classmethod
    def of(cls, told: PartWhole, answer: object, width: Fraction) -> "_BarDrawing":
        long = width - 2 * MARGIN
        widths = [long * part.amount / told.whole.amount for part in told.parts]
        starts = tuple(accumulate(widths[:-1], initial=MARGIN))
        rooms = [_room(answer if part.written is HOLE else part.written) for part in told.parts]
        middles = [start + width / 2 for start, width in zip(starts, widths, strict=True)]
        places = tuple(
            min(max(middle, room / 2), width - room / 2) for middle, room in zip(middles, rooms, strict=True)
        )
        beside = [
            int(abs(x - middle) > part / 2) for x, middle, part in zip(places, middles, widths, strict=True)
        ]
        return cls(told, width, starts, places, rows(places, rooms, beside))

    @property
    def long(self) -> Fraction:
        """Return how long the bar of the whole is."""
        return self.width - 2 * MARGIN

    def scene(self, found: Quantity | type_hole) -> Scene:
        """Return the bars with what is found for the blank."""
        lower = TOP + TALL + BETWEEN
        height = lower + TALL + ROW * (max(self.rows) + 1) + 1
        pieces = [
            Piece("whole", Box(MARGIN, TOP, self.long, TALL), _look(self.told.whole)),
            Piece(
                "number/whole", Words(self.width / 2, TOP - ROW / 2, _written(self.told.whole, found), DIGITS)
            ),
        ]
        for at, part in enumerate(self.told.parts):
            pieces.extend(self._part(at, part, lower, found))
        return Scene(self.width, height, tuple(pieces), tuple(self._descriptions(found)))

    def _part(self, at: int, part: Share, top: Fraction, found: Quantity | type_hole) -> Iterator[Piece]:
        """Draw a part and its number under it, with a line to it where it does not stand close by."""
        box = Box(self.starts[at], top, self.long * part.amount / self.told.whole.amount, TALL)
        yield Piece(f"part/{at}", box, _look(part))
        for share in range(1, part.shares):
            cut = box.x + box.width * share / part.shares
            yield Piece(f"share/{at}/{share}", Stroke(cut, box.y, cut, box.y + box.height))
        x, y = self.places[at], top + TALL + ROW * self.rows[at] + ROW / 2
        middle = box.x + box.width / 2
        if self.rows[at]:
            yield Piece(f"line/{at}", Stroke(middle, top + TALL, x, y - ROW / 2 + 1))
        yield Piece(f"number/{at}", Words(x, y, _written(part, found), DIGITS))

    def _descriptions(self, found: Quantity | type_hole) -> Iterator[Description]:
        yield WholeAmount(_known(self.told.whole, found))
        for part in self.told.parts:
            yield PartAmount(_known(part, found))


def _room(written: object) -> Fraction:
    """Return how much room a number takes across, with a digit's room on each side."""
    if not isinstance(written, Quantity):
        return Fraction(3 * ROOM_DIGIT)
    if written.ladder.style is Style.MEASURE:
        return Fraction(ROOM_UNIT * len(written.counts))
    if written.ladder.style is not Style.MIXED:
        return Fraction(ROOM_DIGIT * (len(written.counts) + 3))
    wholes, bottom = (len(str(one)) if one else 0 for one in (written.counts[0], written.ladder.denominator))
    return Fraction(ROOM_DIGIT * (wholes + bottom + 2))


def _look(share: Share) -> Look:
    return Look.FILLED if share.written is HOLE else Look.PLAIN


def _known(share: Share, found: Quantity | type_hole) -> Quantity | None:
    written = _written(share, found)
    return None if written is HOLE else written


def _written(share: Share, found: Quantity | type_hole) -> Quantity | type_hole:
    return found if share.written is HOLE else share.written
