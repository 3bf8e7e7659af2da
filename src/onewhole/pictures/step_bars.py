"""Several steps as bars, one under another in the order in which they are worked, all in one proportion.

A sum lies end to end, a difference shows what is taken, a product so many equal parts, and a quotient the
whole cut into equal parts. Above a bar stands what is known, below it what is found.
"""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import accumulate, pairwise

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.pictures.description import Description, PartAmount, WholeAmount
from onewhole.pictures.labels import BLANK, across
from onewhole.pictures.labels import DIGITS as USUAL_DIGITS
from onewhole.pictures.limits import LEAST_PART, NotDrawnError
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Words
from onewhole.statements.expression import Expression, Quotient, Sum, Times, quantities, value
from onewhole.statements.gap import HOLE, type_hole
from onewhole.statements.statement import Question
from onewhole.working.reasons.stepping import BarDivides, OneStep, StepBegins, StepDone, TimesEachPart
from onewhole.working.steps.next_step import NextStep, next_step
from onewhole.working.steps.work_steps import has_steps
from onewhole.working.working import Working

#: The picture across, the paper beside a bar, a bar down, the digits, and what a row of numbers takes down.
WIDTH, MARGIN, TALL, DIGITS, ROW = map(Fraction, (120, 10, 8, 5, 12))
LONG = WIDTH - 2 * MARGIN
#: How far a bracket under a bar is from it, and how high its ends are; the paper between two steps.
OFF, TICK, BETWEEN = map(Fraction, (1, 1, 2))
#: So much higher than in the middle of their row stand the numbers above, and lower those below.
HIGHER, LOWER = Fraction(1, 2), Fraction(3, 2)
#: More steps do not stand on one picture, more equal parts are not counted. Common practice, no source.
MOST_STEPS, MOST_PARTS = 4, 12


class StepBar(Struct, frozen=True):
    """One step as a bar: its parts from the left, of which the first ``found`` are the result.

    ``above`` and ``below`` are numbers with the parts that they stand for, from the first of these to the one
    behind the last. ``taken`` parts at the right end are gone. The bar stands there from line ``begins`` on,
    and its result is known from line ``found_at`` on.
    """

    whole: Quantity
    parts: tuple[Fraction, ...]
    above: tuple[tuple[Quantity, int, int], ...]
    below: tuple[tuple[Quantity, int, int], ...]
    result: Quantity
    found: int
    taken: int
    begins: int
    found_at: int


def step_bars(working: Working) -> tuple[StepBar, ...]:
    """Return the steps of a working as bars; none where it has no steps, or one of them cannot be drawn.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> found = step_bars(work(read_statement("18 / 6 + 4 x (5 - 2)"), REGROUP_FIRST))
    >>> [(int(one.whole.value), int(one.result.value), len(one.parts)) for one in found]
    [(5, 3, 2), (18, 3, 6), (12, 12, 4), (15, 15, 2)]
    """
    asked = working.statement.asked if isinstance(working.statement, Question) else None
    if asked is None or not has_steps(asked):
        return ()
    found: list[StepBar] = []
    now: Expression = asked
    begins, at = 0, 1
    while at < len(working.lines):
        line = working.lines[at]
        if isinstance(line.because, BarDivides | TimesEachPart) and isinstance(line.says, Expression):
            now, at = line.says, at + 1
            continue
        step = next_step(now)
        last = _last_line(working, step, at) if step else None
        bar = _bar(step.part, last[1], begins, last[0]) if step and last else None
        if step is None or last is None or bar is None:
            return ()
        found.append(bar)
        now, at = step.put(last[1]), last[0] + 1
        begins = at
    return tuple(found) if len(found) <= MOST_STEPS and next_step(now) is None else ()


def _last_line(working: Working, step: NextStep, at: int) -> tuple[int, Quantity] | None:
    """Return the line on which the result of a step stands as it is worked on with, and the result."""
    worth, found = value(step.part), None
    for place in range(at, len(working.lines)):
        says = working.lines[place].says
        if not isinstance(says, Expression):
            break
        same = [one for one in quantities(says) if one.value == worth and step.put(one) == says]
        if found is not None and isinstance(working.lines[place].because, StepBegins | StepDone):
            break
        if same:
            found = place, same[0]
    return found


def _bar(part: OneStep, result: Quantity, begins: int, found_at: int) -> StepBar | None:
    """Return a step as a bar; None where it has no whole number of equal parts, or too many."""
    match part:
        case Sum(terms):
            return _of_sum(part, result, begins, found_at) if len(terms) > 1 else None
        case Times(Quantity() as left, Quantity() as right):
            each, times = (right, left) if _counts(left) else (left, right)
            if not _counts(times):
                return None
            many = times.parts
            above = ((each, 0, 1),)
            return StepBar(result, (each.value,) * many, above, (), result, many, 0, begins, found_at)
        case Quotient(Quantity() as left, Quantity() as right) if _counts(right):
            parts = (left.value / right.parts,) * right.parts
            whole = ((left, 0, right.parts),)
            return StepBar(left, parts, whole, (), result, 1, 0, begins, found_at)
        case _:
            return None


def _of_sum(part: Sum, result: Quantity, begins: int, found_at: int) -> StepBar | None:
    numbers = [(term.part, term.taken) for term in part.terms if isinstance(term.part, Quantity)]
    added, taken = ([one for one, gone in numbers if gone is wanted] for wanted in (False, True))
    if len(numbers) < len(part.terms) or (taken and len(added) > 1):
        return None
    if not taken:
        above = tuple((one, at, at + 1) for at, one in enumerate(added))
        parts = tuple(one.value for one in added)
        return StepBar(result, parts, above, (), result, len(added), 0, begins, found_at)
    parts = (result.value, *(one.value for one in taken))
    below = tuple((one, at, at + 1) for at, one in enumerate(taken, 1))
    whole = ((added[0], 0, len(parts)),)
    return StepBar(added[0], parts, whole, below, result, 1, len(taken), begins, found_at)


def _counts(number: Quantity) -> bool:
    """Say whether a number says how many equal parts there are, and they can be counted."""
    return number.plain and 2 <= number.parts <= MOST_PARTS


def drawn_steps(working: Working) -> Picture:
    """Draw the steps of a working, a scene for every line; a step stands there once it is begun.

    Raises NotDrawnError where there are none, or one has a part too small to be seen.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> drawn = drawn_steps(work(read_statement("2 x (3 ft 4 in + 2 ft 9 in)"), REGROUP_FIRST))
    >>> sum(piece.name.startswith("step/1/part") for piece in drawn.telling.pieces)
    2
    """
    steps = step_bars(working)
    if not steps:
        msg = "these are no steps that lie side by side in bars"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    rows = [_Row.of(step, at, _scale(step.whole.kind, steps)) for at, step in enumerate(steps)]
    high = sum(row.high for row in rows) + BETWEEN * (len(rows) - 1)
    scenes = tuple(_scene(rows, high, at) for at in range(len(working.lines)))
    return Picture(PictureKind.BAR, scenes, still=scenes[-1])


def _scale(kind: Kind, steps: Sequence[StepBar]) -> Fraction:
    """Return how many millimetres a one of a kind is long: the longest bar of it fills the picture."""
    most: Fraction = max(step.whole.value for step in steps if step.whole.kind is kind)
    if not most:
        msg = "nothing is drawn of nothing"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    return LONG / most


class _Row(Struct, frozen=True):
    """A step laid out: where its parts begin and end, from the left."""

    step: StepBar
    at: int
    ends: tuple[Fraction, ...]

    @classmethod
    def of(cls, step: StepBar, at: int, scale: Fraction) -> "_Row":
        widths = [scale * part for part in step.parts]
        if min(widths) < LEAST_PART:
            msg = "one part is too small to be seen beside the others"
            raise NotDrawnError(msg, remedy="Choose another picture, or none.")
        row = cls(step, at, tuple(accumulate(widths, initial=MARGIN)))
        row.numbers(row.step.above, Fraction(0))
        row.numbers(row.under, Fraction(0))
        return row

    @property
    def under(self) -> tuple[tuple[Quantity, int, int], ...]:
        """Return the numbers below the bar: the result, and what was taken."""
        return ((self.step.result, 0, self.step.found), *self.step.below)

    @property
    def high(self) -> Fraction:
        """Return how much the step takes down."""
        return 2 * ROW + TALL + LOWER

    def numbers(self, told: Sequence[tuple[Quantity, int, int]], y: Fraction) -> list[Words]:
        """Return numbers over the parts that they stand for, moved apart where they would touch."""
        rooms = [across(number) * DIGITS / USUAL_DIGITS + BLANK for number, *_ in told]
        places = [(self.ends[first] + self.ends[last]) / 2 for _, first, last in told]
        places = [max(x, room / 2) for x, room in zip(places, rooms, strict=True)]
        for at in range(1, len(places)):
            places[at] = max(places[at], places[at - 1] + (rooms[at - 1] + rooms[at]) / 2)
        over = places[-1] + rooms[-1] / 2 - WIDTH
        for at in range(len(places) - 1, -1, -1):
            if over <= 0:
                break
            places[at] -= over
            free = (places[at - 1] + (rooms[at - 1] + rooms[at]) / 2) if at else rooms[0] / 2
            over = free - places[at]
        if over > 0:
            msg = "the numbers of a step would touch"
            raise NotDrawnError(msg, remedy="Choose another picture, or none.")
        return [Words(x, y, number, DIGITS) for x, (number, *_) in zip(places, told, strict=True)]

    def pieces(self, top: Fraction, *, found: bool) -> Iterator[Piece]:
        """Draw the step; before it is ``found`` a question mark stands for the result."""
        name, step = f"step/{self.at}", self.step
        kept = len(step.parts) - step.taken
        for at, (start, end) in enumerate(pairwise(self.ends)):
            one_of_whole = step.found == 1 and at == 0
            look = Look.DOTTED if at >= kept else Look.FILLED if one_of_whole else Look.PLAIN
            yield Piece(f"{name}/part/{at}", Box(start, top + ROW, end - start, TALL), look)
        for at, words in enumerate(self.numbers(step.above, top + ROW / 2 - HIGHER)):
            yield Piece(f"{name}/above/{at}", words)
        bottom = top + ROW + TALL
        for at, words in enumerate(self.numbers(self.under, bottom + ROW / 2 + LOWER)):
            asked: Quantity | type_hole = step.result if found else HOLE
            shown = words if at else Words(words.x, words.y, asked, DIGITS)
            yield Piece(f"{name}/below/{at}", shown)
        if step.found > 1:
            yield from _bracket(name, self.ends[0], self.ends[step.found], bottom)

    def descriptions(self, *, found: bool) -> Iterator[Description]:
        """Say how much the whole and each part is, as far as it is found."""
        step, result = self.step, self.step.result if found else None
        joined = step.found == len(step.parts)
        yield WholeAmount(result if joined else step.whole)
        numbers = [number for number, *_ in (step.above if joined else step.below)]
        alike = len(set(step.parts)) == 1 and len(numbers) < len(step.parts) and not step.taken
        if alike:
            part = step.above[0][0] if joined else result
            for _ in step.parts:
                yield PartAmount(part)
            return
        for number in numbers if joined else (result, *numbers):
            yield PartAmount(number)


def _bracket(name: str, start: Fraction, end: Fraction, y: Fraction) -> Iterator[Piece]:
    """Draw a line under the parts that a result is the sum of, with its ends turned up."""
    low = y + OFF + TICK
    yield Piece(f"{name}/bracket", Stroke(start, low, end, low))
    yield Piece(f"{name}/bracket/left", Stroke(start, low, start, low - TICK))
    yield Piece(f"{name}/bracket/right", Stroke(end, low, end, low - TICK))


def _scene(rows: Sequence[_Row], high: Fraction, at: int) -> Scene:
    pieces: list[Piece] = []
    told: list[Description] = []
    top = Fraction(0)
    for row in rows:
        if row.step.begins <= at:
            found = row.step.found_at <= at
            pieces += row.pieces(top, found=found)
            told += row.descriptions(found=found)
        top += row.high + BETWEEN
    return Scene(WIDTH, high, tuple(pieces), tuple(told))
