"""A working on a number line: points in exact places, and jumps drawn one by one."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise, starmap
from math import ceil

from onewhole.number.clock import clock, on_clock, shown
from onewhole.number.ladder import TEN, Ladder, Style, measure
from onewhole.number.quantity import Quantity, landmark, trimmed
from onewhole.pictures.between import between
from onewhole.pictures.description import (
    Compared,
    Description,
    JumpEnds,
    MarkAt,
    OneJump,
    Shown,
    StillThere,
)
from onewhole.pictures.half import HALF, half_marked
from onewhole.pictures.jumps import JumpPlan, jump_plan
from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.rows import rows
from onewhole.pictures.scene import Hop, Look, Piece, Scene, Stroke, Wedge, Words
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import Comparison, Ordering, Question, asked_quantities
from onewhole.working.reasons.jumping import CountedUp
from onewhole.working.reasons.regrouping import OneIsWorth
from onewhole.working.working import Working

WIDTH, MARGIN = Fraction(180), Fraction(10)
LONG = WIDTH - 2 * MARGIN
#: At most so many ticks with a number under them, and so many ticks at all.
MOST_NUMBERS, MOST_TICKS = 12, 100
#: Of numbers from here on fewer stand side by side.
LONG_NUMBER, MOST_LONG = 10_000, 6
#: So many digits stay within the least room.
SHORT = 4
#: The height of digits, the room of one row of numbers, and the least from number to number in a row.
DIGITS, ROW, APART = Fraction(4), 7, 17
#: The room across of one sign of a measure, and of the blank from one label to the next.
SIGN, BLANK = Fraction(3), 3
#: A jump is this high at least, and this much higher when it goes from end to end.
LOW, HIGHER = 6, 20
LONG_TICK, SHORT_TICK = Fraction(3), Fraction(3, 2)
#: A unit that is opened is at least so wide, and cut into so many parts at most.
LEAST_OPENED, MOST_CUTS = 12, 12


@dataclass(frozen=True, slots=True)
class Axis:
    """The stretch of line that is drawn, its numbered ticks and the ticks between, in smallest units."""

    ladder: Ladder
    start: int
    end: int
    step: int
    small: int | None

    def x(self, point: int | Fraction) -> Fraction:
        """Return where a point stands, in millimetres from the left: exactly in proportion."""
        return MARGIN + LONG * Fraction(point - self.start, self.end - self.start)


def axis(ladder: Ladder, points: Iterable[int], *, near: bool = False) -> Axis:
    """Return an axis that holds the points, from 0 where there is room, or from the whole before the first.

    >>> from onewhole.number.ladder import mixed
    >>> found = axis(mixed(6), (23, 44))
    >>> found.start, found.end, found.step, found.small
    (0, 48, 6, 1)
    """
    known = sorted(points)
    most = MOST_LONG if known[-1] >= LONG_NUMBER * _unit(ladder) else MOST_NUMBERS
    start, end, step = next(
        filter(None, (_stretch(known[0], known[-1], step, most, near=near) for step in _steps(ladder)))
    )
    between = sorted({1, *ladder.worths, *(_unit(ladder) * times for times in (1, TEN, TEN * TEN))})
    fitting = (s for s in between if s < step and not step % s and (end - start) // s <= MOST_TICKS)
    return Axis(ladder, start, end, step, next(fitting, None))


def _steps(ladder: Ladder) -> Iterator[int]:
    """Give the steps from numbered tick to numbered tick that may be tried: 1, 2, 5, 10, 20, 50 wholes."""
    step = _unit(ladder)
    while True:
        yield from (step, 2 * step, 5 * step)
        step *= TEN


def _stretch(low: int, high: int, step: int, most: int, *, near: bool) -> tuple[int, int, int] | None:
    """Return start, end and step of an axis that holds both, from 0 where there is room; None if crowded."""
    end = max(-(-high // step), 1) * step
    if end // step <= most and not near:
        return 0, end, step
    start = low // step * step
    return (start, max(end, start + step), step) if (end - start) // step <= most else None


def _unit(ladder: Ladder) -> int:
    """Return what a numbered tick counts at least: one whole, in smallest units."""
    match ladder.style:
        case Style.PLACES | Style.DECIMAL:
            return ladder.worths[-1 - ladder.after]
        case _:
            return ladder.ratios[-1] if ladder.ratios else 1


def number_line(working: Working) -> Picture:
    """Draw a sum, a difference, a comparison or a rounding on a number line, a scene for every line.

    Places are exactly in proportion to amounts. Raises NotDrawnError for any other working.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.count_up import COUNT_UP
    >>> from onewhole.working.work import work
    >>> picture = number_line(work(read_statement("7 2/6 - 3 5/6"), COUNT_UP))
    >>> [sum(isinstance(piece.shape, Hop) for piece in scene.pieces) for scene in picture.scenes]
    [0, 3, 3, 3]
    """
    if isinstance(working.statement, Rounding):
        return between(working.statement, working)
    plan = jump_plan(working)
    if plan is None:
        msg = "only sums, differences and comparisons go on a number line"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    opens = any(isinstance(line.because, OneIsWorth) for line in working.lines)
    board = _LineDrawing.of(plan, _written(working), half_marked(working), opens=opens)
    return Picture(PictureKind.LINE, tuple(board.scene(working, at) for at in range(len(working.lines))))


def _written(working: Working) -> tuple[Quantity, ...]:
    """Return the numbers of the problem as they are written there."""
    match working.statement:
        case Comparison(Quantity() as left, Quantity() as right):
            return left, right
        case Ordering(parts):
            return parts
        case Question():
            return tuple(quantity for quantity, _ in asked_quantities(working.statement) or ())
        case _:
            return ()


@dataclass(frozen=True, slots=True)
class _LineDrawing:
    """A plan of jumps laid out: its axis, how high the line stands, and the row of every number beside it."""

    plan: JumpPlan
    axis: Axis
    written: tuple[Quantity, ...]
    y: Fraction
    height: Fraction
    below: dict[int, int]
    above: tuple[int, ...]
    half: Fraction | None
    like: Quantity | None

    @classmethod
    def of(
        cls,
        plan: JumpPlan,
        written: tuple[Quantity, ...],
        half: Fraction | None = None,
        *,
        opens: bool = False,
    ) -> "_LineDrawing":
        points = sorted({*plan.given, *(end for jump in plan.jumps for end in (jump.start, jump.end))})
        like = next((one for one in written if one.ladder.clock), None)
        line = axis(plan.ladder, points, near=like is not None)
        named = [point for point in points if point % line.step]
        ends = [_point(plan.ladder, point, like) for point in named]
        lengths = [landmark(plan.ladder, abs(jump.end - jump.start)) for jump in plan.jumps]
        apart = max([Fraction(APART), *(_room(one) for one in (*ends, *lengths, *written))])
        below = dict(zip(named, rows([line.x(point) for point in named], apart), strict=True))
        middles = [(line.x(jump.start) + line.x(jump.end)) / 2 for jump in plan.jumps]
        above = rows(middles, apart)
        tops = [
            LOW + HIGHER * abs(line.x(jump.end) - line.x(jump.start)) / LONG + ROW * (row + 1)
            for jump, row in zip(plan.jumps, above, strict=True)
        ]
        y = Fraction(ceil(max([Fraction(2 * ROW), *tops])) + 1)
        height = y + (max(below.values(), default=0) + 3 + opens) * ROW
        return cls(plan, line, written, y, height, below, above, half, like)

    def scene(self, working: Working, at: int) -> Scene:
        drawn = self.plan.drawn[at]
        last = at == len(working.lines) - 1
        measured = self.plan.answer is not None or not _unmeasured(working, at)
        pieces = (
            *self._line(),
            *self._opened(working, at),
            *self._points(
                drawn, first=at == 0 or isinstance(working.statement, Comparison | Ordering), last=last
            ),
            *self._jumps(drawn if measured else 0, drawn),
            *(self._half() if last else ()),
        )
        return Scene(WIDTH, self.height, pieces, tuple(self._descriptions(working, drawn, last=last)))

    def _line(self) -> Iterator[Piece]:
        y, line = self.y, self.axis
        yield Piece("axis", Stroke(MARGIN / 2, y, WIDTH - MARGIN / 2, y))
        for point in range(line.start, line.end + 1, line.small or line.step):
            if point % line.step:
                yield Piece(
                    f"part/{point}", Stroke(line.x(point), y - SHORT_TICK, line.x(point), y + SHORT_TICK)
                )
        for point in range(line.start, line.end + 1, line.step):
            x = line.x(point)
            yield Piece(f"tick/{point}", Stroke(x, y - LONG_TICK, x, y + LONG_TICK))
            tick = self._tick(point)
            yield Piece(f"whole/{point}", Words(_inside(x, tick), y + ROW, tick, DIGITS))

    def _opened(self, working: Working, at: int) -> Iterator[Piece]:
        """Cut a larger unit of a measure that is opened into its smaller units, on the line itself.

        It is the last whole one before the first number; words say how many there are.
        """
        opened = [line.because for line in working.lines[: at + 1] if isinstance(line.because, OneIsWorth)]
        ladder, y = self.plan.ladder, self.y
        if ladder.style is not Style.MEASURE or not self.plan.given:
            return
        for reason in opened:
            worth = int(reason.large.size / ladder.finest)
            start = (self.plan.given[0] // worth - 1) * worth
            x, to_x = self.axis.x(max(start, self.axis.start)), self.axis.x(start + worth)
            if start < self.axis.start or to_x - x < LEAST_OPENED:
                continue
            for cut in range(1, parts := _cuts(reason.ratio)):
                tick = x + (to_x - x) * Fraction(cut, parts)
                yield Piece(f"opened/{worth}/{cut}", Stroke(tick, y, tick, y - LONG_TICK))
            words = Quantity(measure(reason.small.mark), (reason.ratio,))
            under = y + ROW * (max(self.below.values(), default=-1) + 3)
            line = under - ROW + Fraction(3, 2)
            yield Piece(f"opened/{worth}/span", Stroke(x, line, to_x, line))
            yield Piece(f"opened/{worth}/worth", Words((x + to_x) / 2, under, words, DIGITS))

    def _points(self, drawn: int, *, first: bool, last: bool) -> Iterator[Piece]:
        shown = {*self.plan.given}
        for jump in self.plan.jumps[:drawn]:
            shown |= {jump.start, jump.end}
        for point in sorted(shown):
            x = self.axis.x(point)
            spot = Wedge(x, self.y, Fraction(3, 2), Fraction(0), Fraction(1))
            yield Piece(f"point/{point}", spot, Look.FILLED)
            if point in self.below:
                y = self.y + ROW * (self.below[point] + 2)
                named = self._name(point, first=first)
                yield Piece(f"number/{point}", Words(_inside(x, named), y, named, DIGITS))
        if last and self.plan.answer is not None:
            ring = Wedge(self.axis.x(self.plan.answer), self.y, Fraction(3), Fraction(0), Fraction(1))
            yield Piece("answer", ring)

    def _tick(self, point: int) -> Quantity:
        """Write a numbered tick; a whole hour without a.m. and p.m., for which there is no room."""
        return _point(self.axis.ladder, point, None if self.like is None else clock(0))

    def _name(self, point: int, *, first: bool) -> Quantity:
        """Write a point: as the problem writes it in the first scene, in the smallest parts later.

        Numbers that are compared stay as they are written.
        """
        size = self.plan.ladder.finest * point
        known = [trimmed(number) for number in self.written if number.value == size]
        return known[0] if first and known else _point(self.plan.ladder, point, self.like)

    def _jumps(self, measured: int, drawn: int) -> Iterator[Piece]:
        for number, jump in enumerate(self.plan.jumps[:drawn], start=1):
            x, to_x = self.axis.x(jump.start), self.axis.x(jump.end)
            height = LOW + HIGHER * abs(to_x - x) / LONG
            yield Piece(f"jump/{number}", Hop(x, self.y, to_x, height))
            if number <= measured:
                y = self.y - height - ROW * (self.above[number - 1] + Fraction(1, 2))
                length = landmark(self.plan.ladder, abs(jump.end - jump.start))
                yield Piece(f"length/{number}", Words((x + to_x) / 2, y, length, DIGITS))

    def _half(self) -> Iterator[Piece]:
        """Mark one half, above the line, where the numbers are compared with it."""
        if self.half is None:
            return
        x = self.axis.x(self.half / self.plan.ladder.finest)
        yield Piece("half", Stroke(x, self.y - ROW, x, self.y + LONG_TICK))
        yield Piece("half/number", Words(x, self.y - ROW * Fraction(3, 2), HALF, DIGITS))

    def _descriptions(self, working: Working, drawn: int, *, last: bool) -> Iterator[Description]:
        ladder = self.plan.ladder
        for point in self.plan.given:
            yield Shown((_point(ladder, point, self.like),))
        for jump in self.plan.jumps[:drawn]:
            yield OneJump(landmark(ladder, abs(jump.end - jump.start)))
            yield JumpEnds(_point(ladder, jump.end, self.like))
        if not last:
            return
        if isinstance(working.statement, Ordering):
            yield from starmap(Compared, pairwise(working.statement.ordered.parts))
        elif isinstance(working.statement, Comparison):
            yield Compared(*self.written)
            if self.half is not None:
                yield MarkAt(HALF)
        elif isinstance(working.answer, Quantity) and _taken(working):
            yield StillThere((working.answer,))


def _point(ladder: Ladder, point: int, like: Quantity | None) -> Quantity:
    """Write a point on the line: a time of day where the problem has one."""
    found = landmark(ladder, point)
    return found if like is None else on_clock(found, like)


def _cuts(count: int) -> int:
    """Return into how many equal parts an opened unit is drawn: the most that can be seen."""
    return max(parts for parts in range(1, MOST_CUTS + 1) if count % parts == 0)


def _room(number: Quantity) -> Fraction:
    """Return the room that a number takes across; digits and fractions stay within the least."""
    mark = number.ladder.mark
    if number.ladder.clock:
        return Fraction(APART) + SIGN * len(shown(number)[2])
    if number.ladder.style is not Style.MEASURE:
        return Fraction(APART) + SIGN * (len(mark) + max(0, len(number.amounts) - SHORT))
    counts = zip(number.amounts, number.ladder.units, strict=True)
    return SIGN * (sum(len(str(count)) + len(unit.mark) + 2 for count, unit in counts) - 1) + BLANK


def _inside(x: Fraction, number: Quantity) -> Fraction:
    """Return where a long number beside the end of the line is written, so that it stays on the paper."""
    half = SIGN * (len(number.amounts) + SHORT) / 2 if len(number.amounts) > SHORT else Fraction(0)
    return min(max(x, half), WIDTH - half)


def _taken(working: Working) -> bool:
    """Say whether something is taken away."""
    statement = working.statement
    asked = asked_quantities(statement) if isinstance(statement, Question) else None
    return any(taken for _, taken in asked or ())


def _unmeasured(working: Working, at: int) -> bool:
    """Say whether jumps are drawn whose lengths are still to be found."""
    return isinstance(working.lines[at].because, CountedUp)
