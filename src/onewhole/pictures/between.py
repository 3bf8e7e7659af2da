"""A number between its two neighbors on a number line: the stretch between them, and what is halfway."""

from collections.abc import Iterator
from fractions import Fraction

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.pictures.description import Description, Halfway, LiesBetween, RoundedTo, Shown
from onewhole.pictures.labels import BLANK, DIGITS, across
from onewhole.pictures.limits import PAGE, PicturePaper
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Look, Piece, Scene, Stroke, Wedge, Words
from onewhole.statements.rounding import Rounding, halfway, renamed
from onewhole.working.reasons.rounding import (
    BetweenNeighbors,
    ExactlyHalfway,
    NearerNeighbor,
    NothingOver,
    PastHalfway,
)
from onewhole.working.working import Working

#: The most that it takes across, and the most room for half of a number at each end.
WIDTH, MARGIN = Fraction(128), Fraction(24)
LINE, HEIGHT = Fraction(20), Fraction(36)
#: How far the numbers stand over and under the line, and how far ticks reach from it.
OVER, UNDER = Fraction(9), Fraction(9)
END_TICK, HALF_TICK, TICK = Fraction(4), Fraction(5), Fraction(3, 2)
#: At most so many parts are marked between the neighbors.
MOST_PARTS = 12


class _Stretch(Struct, frozen=True):
    """What is asked, on a line from the lower neighbor to the higher: its width and its free ends."""

    asked: Rounding
    width: Fraction
    margin: Fraction

    @classmethod
    def on(cls, asked: Rounding, paper: PicturePaper) -> "_Stretch":
        """Return the stretch on a paper: on a narrow one the ends are as wide as the numbers need."""
        if paper.width >= WIDTH:
            return cls(asked, WIDTH, MARGIN)
        wide = max(across(number) for number in (asked.low, asked.high, renamed(asked)))
        return cls(asked, paper.width, min(MARGIN, (wide + BLANK) / 2))

    @property
    def long(self) -> Fraction:
        """Return how long the stretch is, in millimetres."""
        return self.width - 2 * self.margin

    def x(self, amount: Fraction) -> Fraction:
        """Return where an amount stands, in millimetres from the left: exactly in proportion."""
        return self.margin + self.long * (amount - self.asked.low.value) / self.asked.to.size


class _Stage(Struct, frozen=True):
    """What is drawn so far: the neighbors, the number halfway, and the answer."""

    ends: bool
    middle: bool
    answer: bool


def between(asked: Rounding, working: Working, paper: PicturePaper = PAGE) -> Picture:
    """Draw a number to be rounded on the line from one neighbor to the other, a scene for every line.

    First the number stands there alone; then its neighbors, then the number halfway, then a ring round the
    neighbor that it is rounded to. Places are exactly in proportion to amounts.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.rounding import work_rounding
    >>> asked = read_statement("round 4,567 to the nearest hundred")
    >>> drawn = between(asked, work_rounding(asked))
    >>> [any(piece.name == "halfway" for piece in scene.pieces) for scene in drawn.scenes]
    [False, False, True, True]
    """
    scenes: list[Scene] = []
    stretch = _Stretch.on(asked, paper)
    stage = _Stage(ends=False, middle=False, answer=False)
    for line in working.lines:
        why = line.because
        stage = _Stage(
            stage.ends or isinstance(why, BetweenNeighbors | NothingOver),
            stage.middle or isinstance(why, PastHalfway | ExactlyHalfway),
            stage.answer or isinstance(why, NearerNeighbor | ExactlyHalfway | NothingOver),
        )
        pieces = (*_line(stretch), *_numbers(stretch, stage), *_ring(working, stretch, stage))
        scenes.append(Scene(stretch.width, HEIGHT, pieces, tuple(_told(asked, working, stage))))
    return Picture(PictureKind.LINE, tuple(scenes))


def _parts(asked: Rounding) -> int:
    """Return into how many parts the stretch is marked: those of the next smaller unit where they are few."""
    smaller = [unit.size for unit in renamed(asked).ladder.units if unit.size < asked.to.size]
    parts = int(asked.to.size / max(smaller)) if smaller else 1
    return max(count for count in range(1, MOST_PARTS + 1) if not parts % count)


def _line(stretch: _Stretch) -> Iterator[Piece]:
    yield Piece("axis", Stroke(stretch.margin / 2, LINE, stretch.width - stretch.margin / 2, LINE))
    parts = _parts(stretch.asked)
    for at in range(parts + 1):
        x = stretch.margin + stretch.long * Fraction(at, parts)
        reach = END_TICK if at in {0, parts} else TICK
        yield Piece(f"tick/{at}", Stroke(x, LINE - reach, x, LINE + reach))


def _numbers(stretch: _Stretch, stage: _Stage) -> Iterator[Piece]:
    asked = stretch.asked
    if stage.ends:
        for name, end in (("low", asked.low), ("high", asked.high)):
            yield Piece(name, Words(stretch.x(end.value), LINE + UNDER, end, DIGITS))
    if stage.middle:
        middle = halfway(asked)
        x = stretch.x(middle.value)
        yield Piece("half", Stroke(x, LINE - HALF_TICK, x, LINE + HALF_TICK), Look.DOTTED)
        yield Piece("halfway", Words(x, LINE + UNDER, middle, DIGITS))
    number = renamed(asked)
    x = stretch.x(number.value)
    yield Piece("point", Wedge(x, LINE, Fraction(3, 2), Fraction(0), Fraction(1)), Look.FILLED)
    yield Piece("number", Words(x, LINE - OVER, number, DIGITS))


def _ring(working: Working, stretch: _Stretch, stage: _Stage) -> Iterator[Piece]:
    if stage.answer and isinstance(working.answer, Quantity):
        x = stretch.x(working.answer.value)
        yield Piece("answer", Wedge(x, LINE, Fraction(3), Fraction(0), Fraction(1)), Look.DOTTED)


def _told(asked: Rounding, working: Working, stage: _Stage) -> Iterator[Description]:
    number = renamed(asked)
    yield LiesBetween(number, asked.low, asked.high) if stage.ends and not asked.there else Shown((number,))
    if stage.middle:
        yield Halfway(halfway(asked))
    if stage.answer and isinstance(working.answer, Quantity):
        yield RoundedTo(working.answer)
