"""Units given out to shares: a row for each share, a column for each unit, and above what is still there.

Places and large measures are discs, all alike, under what one of them is worth; wholes, pieces and measures
of up to twelve to the next are strips in true proportion. Source: objects in each share are how 3.OA.A.2
(CCSSM 2010) tells a quotient; the chart of places is common practice, no source.
"""

from collections.abc import Iterator
from fractions import Fraction
from functools import reduce
from itertools import product

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.ladder import Style, joined, measure, mixed
from onewhole.number.quantity import Quantity, usual, whole
from onewhole.number.unit import DOLLAR, Kind, Unit
from onewhole.pictures.description import Description, EachHas, Shares, Shown, StillThere
from onewhole.pictures.labels import DIGITS, PART, across
from onewhole.pictures.limits import LEAST_PART, MOST_PARTS, PAGE, NotDrawnError, PicturePaper
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Wedge, Words
from onewhole.pictures.shares_state import (
    SharesState,
    as_ones,
    counted_by_unit,
    in_dollars,
    quotient_of,
    shares_states,
)
from onewhole.working.quotients.known_quotient import KNOWN_QUOTIENT
from onewhole.working.working import Working

#: More shares are not counted by looking.
MOST_SHARES = 12
#: How wide one disc or the largest strip may be, the widest first.
DISCS = tuple([Fraction(half, 2) for half in range(12, 3, -1)])
STRIPS = tuple([Fraction(wide) for wide in range(60, 11, -3)])
#: How many stand side by side: five and ten are seen at a glance, so fewer come last.
FIVE = 5
ABREAST, FEW_ABREAST = (2 * FIVE, FIVE), (3, 2, 1)
#: The height of a strip, the room round what is drawn, and the row of what each unit is worth.
STRIP, GAP, HEAD = Fraction(4), Fraction(2), Fraction(10)
#: What a row needs to have a number in it, and one with a fraction.
LOW, TALL = Fraction(6), Fraction(9)


def shares(working: Working, paper: PicturePaper = PAGE) -> Picture:
    """Draw what is given out to shares, a scene for every line: every unit that is there can be counted.

    Raises NotDrawnError for a working that gives nothing out, and for more than can be drawn.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.quotients.share_units import SHARE_UNITS
    >>> from onewhole.working.work import work
    >>> scene = shares(work(read_statement("87 / 4"), SHARE_UNITS)).scenes[-1]
    >>> sum(piece.name.startswith("10/") for piece in scene.pieces)
    8
    """
    states, asked = shares_states(working), quotient_of(working)
    if not states or asked is None or asked.shares is None or asked.shares > MOST_SHARES:
        msg = "nothing is given out here to as many shares as can be drawn"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    if working.strategy == KNOWN_QUOTIENT.key:
        states = as_ones(states)
    elif asked.left.ladder.mark == DOLLAR:
        states = in_dollars(states)
    drawing = _SharesDrawing.of(states, asked.shares, paper)
    scenes = tuple([drawing.scene(state, at) for at, state in enumerate(states)])
    return Picture(PictureKind.SHARES, scenes, still=drawing.alone(states[-1]).scene(states[-1], len(states)))


class _Column(Struct, frozen=True):
    """A unit: what one is worth in writing, how wide one is, how many stand side by side, where.

    ``round`` is how much of a disc is drawn: of a piece of a whole as much as it is.
    """

    unit: Unit
    worth: Quantity
    wide: Fraction
    abreast: int
    left: Fraction
    round: Fraction = Fraction(1)

    @property
    def across(self) -> Fraction:
        return max(self.wide * self.abreast, across(self.worth)) + GAP


class _ToLayOut(Struct, frozen=True):
    """What is to be laid out: shares, every unit there is, and every number as it is written.

    ``left`` and ``each`` are how many of each unit there are at most, still there and in each share, and
    ``label`` is the room that the longest number needs.
    """

    by: int
    units: tuple[Unit, ...]
    left: tuple[int, ...]
    each: tuple[int, ...]
    written: tuple[Quantity, ...]
    label: Fraction
    strips: bool

    @classmethod
    def of(cls, states: tuple[SharesState, ...], by: int) -> "_ToLayOut":
        left = [state.left for state in states if state.left is not None]
        written = (*left, *(part for state in states for part in state.has))
        found = {unit for state in states for unit in _units(state)} or {written[0].ladder.units[-1]}
        units = tuple(sorted(found, key=lambda unit: -unit.size))
        told = (*map(_told, left), *(_sum(state) for state in states if state.has))
        most_left, most_each = (
            tuple([max(count(state, unit) for state in states) for unit in units]) for count in (_left, _each)
        )
        label = max(map(across, told))
        return cls(by, units, most_left, most_each, written, label, _as_strips(units, written))


class _SharesDrawing(Struct, frozen=True):
    """The columns laid out, how tall one unit, the pile above and the row of a share are, in millimetres.

    ``numbered`` says that there is room in each row to write what the share has.
    """

    by: int
    columns: tuple[_Column, ...]
    tall: Fraction
    pile: Fraction
    row: Fraction
    width: Fraction
    strips: bool
    numbered: bool

    @classmethod
    def of(cls, states: tuple[SharesState, ...], by: int, paper: PicturePaper) -> "_SharesDrawing":
        """Lay out in the largest size that fits on the paper, with numbers in the rows where they fit."""
        given = _ToLayOut.of(states, by)
        sizes = STRIPS if given.strips else DISCS
        room = TALL if any(number.ladder.style is Style.MIXED for number in given.written) else LOW
        fits = (
            drawing
            for least in (room, Fraction(0))
            for wide, abreast in (*product(sizes, ABREAST), *product(sizes, FEW_ABREAST))
            if (drawing := cls._sized(given, wide, abreast, least))
            and drawing.width <= paper.width
            and drawing.height <= _most_high(paper, given.units)
        )
        found = next(fits, None)
        if found is None:
            msg = "so many units and shares do not fit on one picture"
            raise NotDrawnError(msg, remedy="Choose another picture, or none.")
        return found

    @classmethod
    def _sized(
        cls, given: "_ToLayOut", wide: Fraction, abreast: int, least: Fraction
    ) -> "_SharesDrawing | None":
        columns: list[_Column] = []
        left = GAP
        for unit, most in zip(given.units, map(max, given.left, given.each), strict=True):
            one = wide * unit.size / given.units[0].size if given.strips else wide
            if one < LEAST_PART:
                return None
            side_by_side = abreast if not given.strips or one < wide else max(1, abreast // FIVE)
            here = min(side_by_side, max(1, most))
            columns.append(_column(unit, given.written, one, here, left))
            left += columns[-1].across
        tall = STRIP if given.strips else wide
        piles, rows = (max(map(_lines, columns, counts)) for counts in (given.left, given.each))
        row = max(rows * tall + GAP / 2, least)
        pile = max(piles * tall, least or TALL)
        width = left + given.label + 2 * GAP
        return cls(given.by, tuple(columns), tall, pile, row, width, given.strips, bool(least))

    @property
    def height(self) -> Fraction:
        return HEAD + self.pile + 2 * GAP + self.by * (self.row + GAP / 2)

    def alone(self, state: SharesState) -> "_SharesDrawing":
        """Return it with no more room above than a state by itself needs, and none once all is given out."""
        lines = max(_lines(column, _left(state, column.unit)) for column in self.columns)
        return replace(self, pile=min(self.pile, max(lines * self.tall, TALL)) if lines else Fraction(0))

    def scene(self, state: SharesState, at: int) -> Scene:
        pieces = (*self._heads(), *self._above(state), *self._rows(state))
        return Scene(self.width, self.height, pieces, tuple(self._descriptions(state, at)))

    def _heads(self) -> Iterator[Piece]:
        foot = self.height
        for number, column in enumerate(self.columns):
            middle = column.left + (column.across - GAP) / 2
            yield Piece(f"worth/{number}", Words(middle, HEAD / 2, column.worth, DIGITS))
            if number:
                x = column.left - GAP / 2
                yield Piece(f"between/{number}", Stroke(x, Fraction(0), x, foot), Look.DOTTED)

    def _above(self, state: SharesState) -> Iterator[Piece]:
        """Draw what is still to be shared out, with its number."""
        for column in self.columns:
            given = _each(state, column.unit) * self.by
            yield from self._units(column, given, _left(state, column.unit), HEAD)
        if state.left is not None and state.left.parts:
            yield self._number("left", state.left, HEAD + self.pile / 2)

    def _rows(self, state: SharesState) -> Iterator[Piece]:
        counts = [(column, _each(state, column.unit)) for column in self.columns]
        for share in range(self.by):
            top = HEAD + self.pile + 2 * GAP + share * (self.row + GAP / 2)
            box = Box(GAP / 2, top, self.width - GAP, self.row)
            yield Piece(f"share/{share}", box)
            for column, each in counts:
                yield from self._units(column, share * each, each, top + GAP / 2)
            if state.each and self.numbered:
                yield self._number(f"has/{share}", _sum(state), top + self.row / 2)

    def _number(self, name: str, number: Quantity, y: Fraction) -> Piece:
        told = _told(number)
        return Piece(name, Words(self.width - GAP - across(told) / 2, y, told, DIGITS))

    def _units(self, column: _Column, first: int, count: int, top: Fraction) -> Iterator[Piece]:
        """Draw so many of a unit; each keeps its name when it is given to a share."""
        for at in range(count):
            line, place = divmod(at, column.abreast)
            x, y = column.left + place * column.wide, top + line * self.tall
            shape = (
                Box(x, y, column.wide, self.tall * Fraction(7, 8))
                if self.strips
                else Wedge(
                    x + column.wide / 2,
                    y + self.tall / 2,
                    column.wide * Fraction(2, 5),
                    Fraction(0),
                    column.round,
                )
            )
            yield Piece(f"{column.unit.mark}{column.unit.size}/{first + at}", shape, Look.FILLED)

    def _descriptions(self, state: SharesState, at: int) -> Iterator[Description]:
        if not at and state.left is not None:
            yield Shown((_told(state.left),))
            yield Shares(self.by)
            return
        if state.each:
            yield Shares(self.by)
            yield EachHas((_sum(state),))
        if state.left is not None and state.left.parts:
            yield StillThere((_told(state.left),))
        elif not state.each:
            yield EachHas(())


def _units(state: SharesState) -> tuple[Unit, ...]:
    return (*counted_by_unit(state.has), *(counted_by_unit((state.left,)) if state.left else ()))


def _each(state: SharesState, unit: Unit) -> int:
    return counted_by_unit(state.has).get(unit, 0)


def _left(state: SharesState, unit: Unit) -> int:
    return counted_by_unit((state.left,)).get(unit, 0) if state.left else 0


def _lines(column: _Column, count: int) -> int:
    return -(-count // column.abreast)


def _as_strips(units: tuple[Unit, ...], written: tuple[Quantity, ...]) -> bool:
    """Say whether wholes and pieces, or a measure of few to the next unit, are drawn as long as they are."""
    styles = {number.ladder.style for number in written}
    if units[0].size > 1 and units[0].kind is Kind.NUMBER:
        return False
    if Style.MEASURE in styles:
        return units[0].size / units[-1].size <= MOST_PARTS
    return Style.MIXED in styles


def _column(
    unit: Unit, written: tuple[Quantity, ...], wide: Fraction, abreast: int, left: Fraction
) -> _Column:
    """Return the column of a unit, with what one is worth as the numbers write it."""
    if unit.kind is not Kind.NUMBER:
        return _Column(unit, Quantity(measure(unit.mark), (1,)), wide, abreast, left)
    if unit.size >= 1:
        return _Column(unit, whole(int(unit.size), unit.mark), wide, abreast, left)
    ladder = next(number.ladder for number in written if unit in number.ladder.units)
    if ladder.style is Style.DECIMAL:
        return _Column(unit, usual(ladder, unit.size), wide, abreast, left)
    piece = Quantity(mixed(unit.size.denominator, unit.mark), (None, 1))
    return _Column(unit, piece, wide, abreast, left, unit.size)


def _told(number: Quantity) -> Quantity:
    """Write a number as it is usually written: 12 tenths as 1.2."""
    if number.ladder.style in {Style.PLACES, Style.DECIMAL}:
        return usual(number.ladder, number.value)
    return number


def _sum(state: SharesState) -> Quantity:
    """Write what each share has as one number."""
    ladder = reduce(joined, [part.ladder for part in state.has])
    return usual(ladder, state.each) if len(state.has) > 1 else _told(state.has[0])


def _most_high(paper: PicturePaper, units: tuple[Unit, ...]) -> Fraction:
    """Return how high the picture may be, so that its digits can be read."""
    least = DIGITS * PART if min(unit.size for unit in units) < 1 else DIGITS
    return min(paper.height, least / paper.least) if paper.least else paper.height
