"""The page layout of wholes and parts: rows of equal places as large as fit, with labels beneath."""

from collections.abc import Callable, Iterator
from fractions import Fraction
from itertools import accumulate

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.unit import Unit
from onewhole.pictures.describing import counts, descriptions
from onewhole.pictures.description import MarkAt
from onewhole.pictures.half import HALF, half_marked
from onewhole.pictures.limits import LEAST_PART, MOST_WHOLES, PAGE, NotDrawnError, PicturePaper
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.quantity_state import Heap, QuantityState, quantity_states, whole_unit
from onewhole.pictures.scene import Box, Look, Piece, Scene, Shape, Stroke, Words
from onewhole.pictures.table import Bit, Row, Table, laid, then
from onewhole.working.working import Working

MARGIN = Fraction(4)
GAP = Fraction(4)
WORDS = Fraction(9)
DIGITS = Fraction(5)
#: The same where the paper is narrow, so that "12 wholes" and "11 hundredths" stand side by side.
NARROW_DIGITS = Fraction(4)
#: A mark at one half: the room above the first strip, how far it stands over, and the height of its digits.
ABOVE, OVER, SMALL = Fraction(13), Fraction(2), Fraction(4)


class Form(Struct, frozen=True):
    """How one kind of picture draws a whole and a part inside its place.

    ``tall`` is the height of a place for a width of 1, or its height in millimetres where ``flat``. ``part``
    takes the place, the number of the part, parts to a whole and columns. ``narrow`` says how wide the
    narrowest part of a place is, for so many parts, columns and a width. ``ruled`` draws the lines of a
    place; without it every place for a missing part is dotted.
    """

    kind: PictureKind
    most_parts: int
    widest: Fraction
    tall: Fraction
    flat: bool
    whole: Callable[[Box], Shape]
    part: Callable[[Box, int, int, int], Shape]
    narrow: Callable[[int, int, Fraction], Fraction]
    parts: frozenset[int] | None = None
    ruled: Callable[[str, Box, int], tuple[Piece, ...]] | None = None


class _Grid(Struct, frozen=True):
    """Places in ``columns`` columns; the rows of each number start under those of the one before."""

    columns: int
    left: Fraction
    width: Fraction
    height: Fraction
    tops: tuple[Fraction, ...]
    full: Fraction

    def seated(self, seats: tuple[int, ...]) -> "_Grid":
        """Return the grid on which each number stands in its seat from the top."""
        return replace(self, tops=tuple(self.tops[seat] for seat in seats)) if seats else self

    def place(self, number: int, slot: int) -> Box:
        """Return the place of a whole."""
        down, over = divmod(slot, self.columns)
        x = self.left + over * (self.width + GAP)
        return Box(x, self.tops[number] + down * (self.height + GAP), self.width, self.height)


def drawn(working: Working, form: Form, paper: PicturePaper = PAGE) -> Picture:
    """Draw every line of a working, all scenes of one size. Raises NotDrawnError where there is no room."""
    shown = quantity_states(working)
    whole = whole_unit(working)
    for state in shown:
        for heap in state.heaps:
            _check(heap, form)
    tables = [laid(shown[0])]
    for state in shown[1:]:
        tables.append(then(tables[-1], state))
    half = half_marked(working) if form.kind is PictureKind.STRIPS else None
    even = any(state.seats for state in shown)
    grid = _grid(tables, form, paper, MARGIN if half is None else MARGIN + ABOVE, even=even)
    scenes = []
    for at, (table, state) in enumerate(zip(tables, shown, strict=True)):
        seated = grid.seated(state.seats)
        pieces = (*_pieces(table, seated, form), *_words(state, table, seated, whole, paper))
        told = descriptions(shown[at - 1] if at else None, state, whole)
        if half is not None and state.compared:
            pieces, told = (*pieces, *_half(half, len(table), grid)), (*told, MarkAt(HALF))
        scenes.append(Scene(paper.width, grid.full, pieces, told))
    return Picture(form.kind, tuple(scenes))


def _half(half: Fraction, numbers: int, grid: _Grid) -> Iterator[Piece]:
    """Mark one half on the strip of every number, and write it above the first."""
    for number in range(numbers):
        place = grid.place(number, int(half))
        x = place.x + place.width / 2
        yield Piece(f"half-{number}", Stroke(x, place.y - OVER, x, place.y + place.height + OVER))
        if not number:
            yield Piece("half", Words(x, place.y - ABOVE / 2, HALF, SMALL))


def _check(heap: Heap, form: Form) -> None:
    name = form.kind.value
    if heap.per > form.most_parts or (form.parts and heap.per not in form.parts):
        msg = f"{heap.per} equal parts to a whole cannot be drawn as {name} that can be counted"
        raise NotDrawnError(msg, remedy="Choose another picture, such as a number line.")
    if heap.amount >= MOST_WHOLES + 1:
        msg = f"more than {MOST_WHOLES} wholes are too many to count on a picture of {name}"
        raise NotDrawnError(msg, remedy="Choose another picture, such as a number line.")


def _grid(tables: list[Table], form: Form, paper: PicturePaper, top: Fraction, *, even: bool) -> _Grid:
    """Return the largest places for which all tables fit on the paper and no part is too narrow.

    Where it is ``even``, every number has as much room, so that one can stand in another's place.
    """
    rows = max(len(table) for table in tables)
    cut = {(row.per, row.across) for table in tables for row in table}
    most = max(row.slots for table in tables for row in table)
    slots = [
        most if even else max(table[at].slots for table in tables if len(table) > at + 1)
        for at in range(rows - 1)
    ]
    least = min((paper.width - 2 * MARGIN + GAP) // (form.widest + GAP), most)
    for columns in range(max(least, 1), MOST_WHOLES + 1):
        width = min(form.widest, (paper.width - 2 * MARGIN - (columns - 1) * GAP) / columns)
        height = form.tall if form.flat else width * form.tall
        blocks = [-(-count // columns) * (height + GAP) + WORDS for count in slots]
        tops = tuple(accumulate(blocks, initial=top))
        full = max(
            tops[len(table) - 1] + -(-(most if even else table[-1].slots) // columns) * (height + GAP) + WORDS
            for table in tables
        )
        if full <= paper.height:
            if any(form.narrow(per, across, width) < LEAST_PART for per, across in cut):
                break
            used = min(columns, most)
            left = (paper.width - used * (width + GAP) + GAP) / 2
            return _Grid(columns, left, width, height, tops, full)
    msg = f"so many wholes and parts do not fit on one picture of {form.kind.value}"
    raise NotDrawnError(msg, remedy="Choose another picture, such as a number line.")


def _pieces(table: Table, grid: _Grid, form: Form) -> Iterator[Piece]:
    for number, row in enumerate(table):
        if form.ruled is None:
            yield from _rooms(number, row, grid, form)
        else:
            for slot in range(row.slots):
                yield from form.ruled(f"place-{number}-{slot}", grid.place(number, slot), row.per)
        for bit in (*row.gone, *row.bits):
            yield Piece(bit.name, _shape(bit, number, row, grid, form), bit.look)


def _shape(bit: Bit, number: int, row: Row, grid: _Grid, form: Form) -> Shape:
    place = grid.place(number, bit.slot)
    return form.whole(place) if bit.cell is None else form.part(place, bit.cell, row.per, row.across)


def _rooms(number: int, row: Row, grid: _Grid, form: Form) -> Iterator[Piece]:
    """Outline each missing part of a cut whole with dots."""
    seats = {(bit.slot, bit.cell) for bit in (*row.bits, *row.gone)}
    for slot in sorted({bit.slot for bit in row.parts}):
        for cell in range(row.per):
            if (slot, cell) not in seats:
                shape = form.part(grid.place(number, slot), cell, row.per, row.across)
                yield Piece(f"room-{number}-{slot}-{cell}", shape, Look.DOTTED)


def _words(
    state: QuantityState, table: Table, grid: _Grid, whole: Unit, paper: PicturePaper
) -> Iterator[Piece]:
    """Write beneath each number how many wholes and how many parts it shows."""
    for number, (heap, row) in enumerate(zip(state.heaps, table, strict=True)):
        written = counts(heap, whole)
        across = min(max(row.slots, 1), grid.columns)
        wide = max(across * (grid.width + GAP) - GAP, paper.width / 2 - MARGIN)
        down = -(-row.slots // grid.columns)
        y = grid.tops[number] + down * (grid.height + GAP) + WORDS / 2 - GAP / 2
        for at, caption in enumerate(written):
            x = min(grid.left, paper.width / 2) + wide * (2 * at + 1) / (2 * len(written))
            name = "wholes" if caption.unit == whole else "parts"
            yield Piece(
                f"words-{number}-{name}", Words(x, y, caption, DIGITS if paper is PAGE else NARROW_DIGITS)
            )


def cut_box(place: Box, cell: int, per: int, across: int) -> Box:
    """Return a part of a rectangle that is cut in columns, and each column in equal parts from the top.

    >>> cut_box(Box(Fraction(0), Fraction(0), Fraction(6), Fraction(2)), 3, 4, 2).x
    Fraction(3, 1)
    """
    down = per // across
    over, under = divmod(cell, down)
    width, height = place.width / across, place.height / down
    return Box(place.x + over * width, place.y + under * height, width, height)
