"""A working on a number line: points in exact places, and jumps drawn one by one."""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from functools import partial
from itertools import pairwise, starmap
from math import ceil

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.clock import clock, on_clock
from onewhole.number.ladder import TEN, Ladder, Style, decimal, measure
from onewhole.number.quantity import Quantity, landmark, trimmed
from onewhole.number.unit import DOLLAR
from onewhole.pictures.axis import Axis, axis, cuts, with_room
from onewhole.pictures.between import between
from onewhole.pictures.description import (
    Compared,
    Description,
    EqualJumps,
    JumpEnds,
    MarkAt,
    OneJump,
    OnRuler,
    Shown,
    StillThere,
)
from onewhole.pictures.half import HALF, half_marked
from onewhole.pictures.jump import Jump, JumpPlan
from onewhole.pictures.jumps import jump_plan
from onewhole.pictures.labels import BLANK, DIGITS, across
from onewhole.pictures.limits import PAGE, NotDrawnError, PicturePaper
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.rows import over_hops, rows
from onewhole.pictures.ruler import DEPTH, edge, on_ruler, ruler_axis
from onewhole.pictures.scene import Hop, Look, Piece, Scene, Stroke, Wedge, Words
from onewhole.statements.expression import WithRemainder
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import Comparison, Ordering, Question, asked_quantities
from onewhole.working.reasons.jumping import CountedUp
from onewhole.working.reasons.regrouping import OneIsWorth
from onewhole.working.working import Working

#: The room of one row of numbers, of one with fractions, and of the line under them that spans an opened
#: unit.
ROW, TALL_ROW, SPAN = 7, 9, 4
#: So far the line goes on beyond its first and its last tick.
BEYOND = 5
#: A jump is this high at least, and this much higher when it goes from end to end.
LOW, HIGHER = 6, 20
LONG_TICK, SHORT_TICK = Fraction(3), Fraction(3, 2)
#: A unit that is opened is at least so wide.
LEAST_OPENED = 12


def number_line(working: Working, paper: PicturePaper = PAGE) -> Picture:
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
        return between(working.statement, working, paper)
    plan = jump_plan(working)
    if plan is None:
        msg = "only sums, differences and comparisons go on a number line"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    opens = sum(isinstance(line.because, OneIsWorth) for line in working.lines)
    board = _LineDrawing.of(plan, _written(working), half_marked(working), paper.width, opens=opens)
    return Picture(PictureKind.LINE, tuple(board.scene(working, at) for at in range(len(working.lines))))


def ruler(working: Working, paper: PicturePaper = PAGE) -> Picture:
    """Draw inches and parts of an inch on a ruler, with the same jumps as on a number line.

    Raises NotDrawnError where what is worked is not marked on a ruler.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> scene = ruler(work(read_statement("5 5/8 in - 2 7/8 in"), REGROUP_FIRST)).scenes[-1]
    >>> marks = {p.name: p.shape.to_y - p.shape.y for p in scene.pieces if isinstance(p.shape, Stroke)}
    >>> [int(marks[name]) for name in ("tick/8", "part/4", "part/2", "part/1")]
    [10, 8, 6, 4]
    """
    plan = jump_plan(working)
    if plan is None or not on_ruler(plan.ladder, plan.furthest):
        msg = "only sums, differences and comparisons of inches go on a ruler"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    board = _LineDrawing.of(plan, _written(working), half_marked(working), paper.width, rules=True)
    return Picture(PictureKind.RULER, tuple(board.scene(working, at) for at in range(len(working.lines))))


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


class _LineDrawing(Struct, frozen=True):
    """A plan of jumps laid out: its axis, how high the line stands, and the row of every number beside it."""

    plan: JumpPlan
    axis: Axis
    written: tuple[Quantity, ...]
    y: Fraction
    height: Fraction
    row: int
    rules: bool
    below: dict[int, int]
    hops: tuple[Hop, ...]
    above: tuple[Fraction, ...]
    half: Fraction | None
    like: Quantity | None

    @classmethod
    def of(
        cls,
        plan: JumpPlan,
        written: tuple[Quantity, ...],
        half: Fraction | None,
        width: Fraction,
        *,
        opens: int = 0,
        rules: bool = False,
    ) -> "_LineDrawing":
        points = sorted({*plan.given, *(end for jump in plan.jumps for end in (jump.start, jump.end))})
        like = next((one for one in written if one.ladder.clock), None)
        tick = partial(_tick, plan.ladder, like)
        line = (
            ruler_axis(plan.ladder, plan.furthest, width)
            if rules
            else axis(plan.ladder, points, tick, clock=like is not None, apart=not plan.jumps, width=width)
        )
        every = plan.landings or plan.measured is None
        seen = points if every else sorted({*plan.given, plan.jumps[-1].end})
        named = [point for point in seen if rules or point % line.step]
        if plan.landings and named:  # a row that leaves none out
            named = [point for point in seen if point not in plan.given]
        names = {point: _names(plan.ladder, point, written, like) for point in named}
        wide = {point: max(across(name) for name in names[point]) for point in named}
        ticks = range(line.start, line.end + 1, line.step)
        line = with_room(line, [*wide.items(), *((at, across(tick(at, line.step))) for at in ticks)])
        rooms = [wide[point] + BLANK for point in named]
        below = dict(zip(named, rows([line.x(point) for point in named], rooms), strict=True))
        row = TALL_ROW if plan.ladder.style is Style.MIXED else ROW
        hops = tuple(_hop(line, jump) for jump in plan.jumps)
        lengths = [landmark(plan.ladder, abs(jump.end - jump.start)) for jump in plan.jumps[: plan.measured]]
        above = over_hops(hops[: plan.measured], [across(length) + BLANK for length in lengths], row)
        tops = [place + Fraction(row, 2) for place in above]
        y = Fraction(ceil(max([Fraction(2 * ROW), *tops])) + 1)
        lowest = max(below.values(), default=-1)
        under = DEPTH if rules else ROW
        height = y + max(3 * ROW, under + ROW + (lowest + 1) * row + opens * (SPAN + ROW))
        return cls(plan, line, written, y, height, row, rules, below, hops, above, half, like)

    def scene(self, working: Working, at: int) -> Scene:
        drawn = self.plan.drawn[at]
        last = at == len(working.lines) - 1
        measured = self.plan.answer is not None or not _unmeasured(working, at)
        pieces = (
            *(edge(self.axis, self.y) if self.rules else self._line()),
            *self._opened(working, at),
            *self._points(
                drawn, first=at == 0 or isinstance(working.statement, Comparison | Ordering), last=last
            ),
            *self._jumps(min(drawn, self.measured) if measured else 0, drawn),
            *(self._half() if last else ()),
        )
        return Scene(
            self.axis.width, self.height, pieces, tuple(self._descriptions(working, drawn, last=last))
        )

    @property
    def measured(self) -> int:
        """Return how many jumps have their length written on them."""
        return len(self.plan.jumps) if self.plan.measured is None else self.plan.measured

    def _line(self) -> Iterator[Piece]:
        y, line = self.y, self.axis
        yield Piece("axis", Stroke(line.left - BEYOND, y, line.width - line.right + BEYOND, y))
        for point in range(line.start, line.end + 1, line.small or line.step):
            if point % line.step:
                yield Piece(
                    f"part/{point}", Stroke(line.x(point), y - SHORT_TICK, line.x(point), y + SHORT_TICK)
                )
        for point in range(line.start, line.end + 1, line.step):
            x = line.x(point)
            yield Piece(f"tick/{point}", Stroke(x, y - LONG_TICK, x, y + LONG_TICK))
            tick = _tick(line.ladder, self.like, point, line.step)
            yield Piece(f"whole/{point}", Words(x, y + ROW, tick, DIGITS))

    def _opened(self, working: Working, at: int) -> Iterator[Piece]:
        """Cut a larger unit of a measure that is opened into its smaller units, on the line itself.

        It is the last whole one before the first number; words say how many there are.
        """
        opened = [line.because for line in working.lines[: at + 1] if isinstance(line.because, OneIsWorth)]
        ladder, y = self.plan.ladder, self.y
        if ladder.style is not Style.MEASURE or not self.plan.given:
            return
        line = y + ROW + self.row * (max(self.below.values(), default=-1) + 1) + SPAN
        for number, reason in enumerate(opened):
            worth = int(reason.large.size / ladder.finest)
            start = (self.plan.given[0] // worth - 1) * worth
            x, to_x = self.axis.x(max(start, self.axis.start)), self.axis.x(start + worth)
            if start < self.axis.start or to_x - x < LEAST_OPENED:
                continue
            for cut in range(1, parts := cuts(reason.ratio)):
                tick = x + (to_x - x) * Fraction(cut, parts)
                yield Piece(f"opened/{worth}/{cut}", Stroke(tick, y, tick, y - LONG_TICK))
            words = Quantity(measure(reason.small.mark), (reason.ratio,))
            under = line + number * (SPAN + ROW)
            yield Piece(f"opened/{worth}/span", Stroke(x, under, to_x, under))
            yield Piece(f"opened/{worth}/worth", Words((x + to_x) / 2, under + SPAN, words, DIGITS))

    def _points(self, drawn: int, *, first: bool, last: bool) -> Iterator[Piece]:
        shown = {*self.plan.given}
        for jump in self.plan.jumps[:drawn]:
            shown |= {jump.start, jump.end}
        for point in sorted(shown):
            x = self.axis.x(point)
            spot = Wedge(x, self.y, Fraction(3, 2), Fraction(0), Fraction(1))
            yield Piece(f"point/{point}", spot, Look.FILLED)
            if point in self.below:
                y = self.y + (DEPTH if self.rules else ROW) + self.row * (self.below[point] + 1)
                named = self._name(point, first=first)
                yield Piece(f"number/{point}", Words(x, y, named, DIGITS))
        if last and self.plan.answer is not None:
            ring = Wedge(self.axis.x(self.plan.answer), self.y, Fraction(3), Fraction(0), Fraction(1))
            yield Piece("answer", ring)

    def _name(self, point: int, *, first: bool) -> Quantity:
        """Write a point: as the problem writes it in the first scene, in the smallest parts later.

        Numbers that are compared stay as they are written.
        """
        names = _names(self.plan.ladder, point, self.written, self.like)
        return names[0] if first else names[-1]

    def _jumps(self, measured: int, drawn: int) -> Iterator[Piece]:
        for number, (jump, hop) in enumerate(
            zip(self.plan.jumps[:drawn], self.hops[:drawn], strict=True), start=1
        ):
            yield Piece(f"jump/{number}", replace(hop, y=self.y))
            if number <= measured:
                length = landmark(self.plan.ladder, abs(jump.end - jump.start))
                y = self.y - self.above[number - 1]
                yield Piece(f"length/{number}", Words((hop.x + hop.to_x) / 2, y, length, DIGITS))

    def _half(self) -> Iterator[Piece]:
        """Mark one half, above the line, where the numbers are compared with it."""
        if self.half is None:
            return
        x = self.axis.x(self.half / self.plan.ladder.finest)
        yield Piece("half", Stroke(x, self.y - ROW, x, self.y + LONG_TICK))
        yield Piece("half/number", Words(x, self.y - ROW * Fraction(3, 2), HALF, DIGITS))

    def _descriptions(self, working: Working, drawn: int, *, last: bool) -> Iterator[Description]:
        ladder = self.plan.ladder
        if self.rules:
            yield OnRuler(ladder.units[-1])
        for point in self.plan.given:
            yield Shown((_point(ladder, point, self.like),))
        if drawn and self.plan.measured == 1:
            first, last_one = self.plan.jumps[0], self.plan.jumps[drawn - 1]
            length = landmark(ladder, first.end - first.start)
            yield EqualJumps(drawn, length, landmark(ladder, last_one.end))
        for jump in self.plan.jumps[:drawn] if self.plan.measured != 1 else ():
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
        elif isinstance(working.answer, WithRemainder):
            yield StillThere((working.answer.left,))
        elif isinstance(working.answer, Quantity) and _taken(working):
            yield StillThere((working.answer,))


def _hop(line: Axis, jump: Jump) -> Hop:
    """Return a jump over the line at height 0: the longer, the higher."""
    height = LOW + HIGHER * abs(line.share(jump.end) - line.share(jump.start))
    return Hop(line.x(jump.start), Fraction(0), line.x(jump.end), height)


def _point(ladder: Ladder, point: int, like: Quantity | None) -> Quantity:
    """Write a point on the line: a time of day where the problem has one."""
    found = landmark(ladder, point)
    return found if like is None else on_clock(found, like)


def _names(
    ladder: Ladder, point: int, written: Sequence[Quantity], like: Quantity | None
) -> tuple[Quantity, ...]:
    """Write a point as the problem writes it, where it does, and in the smallest parts."""
    known = [trimmed(number) for number in written if number.value == ladder.finest * point]
    return (*known[:1], _point(ladder, point, like))


def _tick(ladder: Ladder, like: Quantity | None, point: int, step: int) -> Quantity:
    """Write a numbered tick with no more places than the ticks need; a whole hour without a.m. and p.m."""
    if like is not None:
        return _point(ladder, point, clock(0))
    if ladder.style is not Style.DECIMAL or ladder.mark == DOLLAR:
        return landmark(ladder, point)
    spare = sum(step % TEN**places == 0 for places in range(1, ladder.after + 1))
    return landmark(decimal(1, ladder.after - spare, ladder.mark), point // TEN**spare)


def _taken(working: Working) -> bool:
    """Say whether something is taken away."""
    statement = working.statement
    asked = asked_quantities(statement) if isinstance(statement, Question) else None
    return any(taken for _, taken in asked or ())


def _unmeasured(working: Working, at: int) -> bool:
    """Say whether jumps are drawn whose lengths are still to be found."""
    return isinstance(working.lines[at].because, CountedUp)
