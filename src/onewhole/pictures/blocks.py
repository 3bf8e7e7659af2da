"""Tens and ones as blocks: hundreds as squares of 10 x 10 cells, tens as rods of ten cells, ones as cells."""

from collections.abc import Iterator
from fractions import Fraction

from msgspec import Struct

from onewhole.number.ladder import TEN
from onewhole.number.quantity import Quantity
from onewhole.pictures.blocks_state import Block, BlocksState, blocks_of, blocks_states
from onewhole.pictures.caption import Count
from onewhole.pictures.description import CrossedOut, CutInto, Description, Makes, Shown, StillThere
from onewhole.pictures.limits import PAGE, NotDrawnError, PicturePaper
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Words
from onewhole.working.line import Line
from onewhole.working.working import Working

WIDTH, HEIGHT, MARGIN = Fraction(180), Fraction(104), Fraction(10)
#: Where captions stand and where blocks begin, the height of digits.
CAPTION, TOP, DIGITS = Fraction(6), Fraction(14), Fraction(4)
#: The height of digits over hundreds, tens and ones on a board.
WIDE_DIGITS = Fraction(5)
#: The side of a cell where there are squares and where there are none, and the room between blocks.
FINE, COARSE, GAP = Fraction(5, 2), Fraction(4), Fraction(3, 2)
#: Squares stand three in a row; rods and cells by tens.
SQUARES = 3
#: The room between the piles.
APART = Fraction(8)


class _Pile(Struct, frozen=True):
    """Where the blocks of one unit lie: ``long`` and ``wide`` count the cells of a block, down and across."""

    x: Fraction
    cell: Fraction
    wide: int
    long: int
    row: int

    @property
    def width(self) -> Fraction:
        return self.row * (self.wide * self.cell + GAP) - GAP

    def box(self, number: int) -> Box:
        """Return the place of a block: cells fill a column before the next, other blocks a row."""
        wide, long = self.wide * self.cell, self.long * self.cell
        down, across = divmod(number, self.row) if self.long > 1 else divmod(number, TEN)[::-1]
        return Box(self.x + across * (wide + GAP), TOP + down * (long + GAP), wide, long)


def blocks(working: Working, paper: PicturePaper = PAGE) -> Picture:
    """Draw a sum or difference of two whole numbers or decimals in blocks, a scene for every line.

    Blocks of one unit are equal exactly. Raises NotDrawnError for any other working, for one that changes
    the places otherwise than by opening and making tens, and from 1,000 of the smallest unit on.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> picture = blocks(work(read_statement("52 - 27"), REGROUP_FIRST))
    >>> [type(each).__name__ for each in picture.scenes[-1].descriptions]
    ['Shown', 'CrossedOut', 'StillThere']
    """
    counted = blocks_of(working)
    if counted is None:
        msg = "these numbers cannot be laid in tens and ones, or this way does not open or make tens"
        raise NotDrawnError(msg, remedy="Choose the number line, or no picture.")
    found = blocks_states(working, counted)
    places = _places(found)
    before = (found[0], *found)
    width, digits = (WIDTH, DIGITS) if paper is PAGE else _narrow(found[0], places)
    lines = zip(working.lines, found, before, strict=False)
    return Picture(
        PictureKind.BLOCKS,
        tuple(
            Scene(width, HEIGHT, tuple(_pieces(now, places, digits)), tuple(_descriptions(line, now, then)))
            for line, now, then in lines
        ),
    )


def _narrow(first: BlocksState, places: tuple[_Pile, ...]) -> tuple[Fraction, Fraction]:
    """Return the least width that holds the piles, and the height of digits that can be read beside it."""
    named = all(unit.size >= 1 for unit in first.units)
    used = max(place.x + place.width for place in places) + (MARGIN if named else 2 * MARGIN)
    return used, WIDE_DIGITS if named and len(places) > 2 else DIGITS


def _places(found: tuple[BlocksState, ...]) -> tuple[_Pile, ...]:
    """Lay the piles side by side, with the room that the fullest line needs."""
    units = len(found[0].units)
    most = [max(len(each.blocks[at]) for each in found) for at in range(units)]
    squares = units > 2 and most[-3] > 0
    cell = FINE if squares else COARSE
    x, places = MARGIN, []
    for at, count in enumerate(most):
        wide, long, row = _sizes(units - 1 - at)
        pile = _Pile(x, cell, wide, long, row)
        places.append(pile)
        if count:
            x += pile.width + APART
    return tuple(places)


def _sizes(power: int) -> tuple[int, int, int]:
    """Return cells across, cells down and blocks in a row for ones (0), tens (1) and hundreds (2)."""
    return ((1, 1, 2), (1, TEN, TEN), (TEN, TEN, SQUARES))[power]


def _pieces(now: BlocksState, places: tuple[_Pile, ...], digits: Fraction) -> Iterator[Piece]:
    left = now.count(struck=False)
    apart = any(block.look is Look.PLAIN for pile in now.blocks for block in pile)
    for at, (pile, place) in enumerate(zip(now.blocks, places, strict=True)):
        if not pile:
            continue
        if not apart:
            words = Words(place.x + place.width / 2, CAPTION, Count(left[at], now.units[at]), digits)
            yield Piece(f"count/{at}", words)
        for number, block in enumerate(pile):
            yield from _drawn(block, place.box(number), place.cell)


def _drawn(block: Block, box: Box, cell: Fraction) -> Iterator[Piece]:
    """Draw a block and the lines between its cells."""
    yield Piece(block.name, box, block.look)
    for down in range(1, (box.height / cell).numerator):
        y = box.y + down * cell
        yield Piece(f"{block.name}/row/{down}", Stroke(box.x, y, box.x + box.width, y))
    for across in range(1, (box.width / cell).numerator):
        x = box.x + across * cell
        yield Piece(f"{block.name}/column/{across}", Stroke(x, box.y, x, box.y + box.height))


def _counts(now: BlocksState, counts: tuple[int, ...]) -> tuple[Count, ...]:
    return tuple(Count(count, unit) for count, unit in zip(counts, now.units, strict=True) if count)


def _descriptions(line: Line, now: BlocksState, then: BlocksState) -> Iterator[Description]:
    """Say what lies there, what was opened or made on this line, what is struck and what is left."""
    left, gone = now.count(struck=False), now.count(struck=True)
    both = tuple(a + b for a, b in zip(left, gone, strict=True))
    yield Shown(_counts(now, both))
    for at in range(len(now.units) - 1):
        one, ten = Count(1, now.units[at]), Count(TEN, now.units[at + 1])
        more = [len(now.blocks[rung]) - len(then.blocks[rung]) for rung in (at, at + 1)]
        if more[0] < 0 < more[1]:
            yield CutInto(one, ten)
        if more[1] < 0 < more[0]:
            yield Makes(ten, one)
    if any(gone):
        yield CrossedOut(_counts(now, gone))
        if isinstance(line.says, Quantity):
            yield StillThere((line.says,))
