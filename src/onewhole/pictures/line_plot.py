"""A line plot: an axis with its places equally far apart, and a cross for each measurement."""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import pairwise

from msgspec import Struct

from onewhole.number.quantity import Quantity, with_mark
from onewhole.pictures.description import Description, Framed, PlotFrom, StackOf
from onewhole.pictures.labels import BLANK, DIGITS, across
from onewhole.pictures.limits import PAGE, NotDrawnError, PicturePaper
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Piece, Scene, Stroke, Words
from onewhole.statements.line_plot import LinePlot, PlotQuestion
from onewhole.working.working import Working

#: From one place to the next at most, the axis beyond its ends, the empty paper above, a cross and the gap
#: above it, a tick, what stands between axis and label, and below the label.
APART, BEYOND, ABOVE, CROSS, GAP, TICK, LABEL, BELOW = map(Fraction, (20, 4, 4, 4, 2, 2, 8, 6))
#: A cross takes so much of the way to the next place at most, and a frame round a stack so much more of it.
SHARE, FRAME = Fraction(7, 10), Fraction(9, 10)
#: Steps from label to label, counted in units, where not every unit can be named.
LONG_STEPS = (1, 2, 5, 10)


class _Laid(Struct, frozen=True):
    """A line plot laid out on paper, in exact millimetres."""

    plot: LinePlot
    ticks: tuple[Quantity, ...]
    left: Fraction
    apart: Fraction
    width: Fraction
    named: frozenset[int]

    @property
    def y(self) -> Fraction:
        """Return how far from the top the axis is."""
        return ABOVE + self.plot.highest * (self.cross + GAP) + GAP

    @property
    def cross(self) -> Fraction:
        """Return how wide and high a cross is."""
        return min(CROSS, self.apart * SHARE)

    def x(self, at: int) -> Fraction:
        """Return where a place stands: exactly in proportion."""
        return self.left + at * self.apart

    def top(self, count: int) -> Fraction:
        """Return where a stack of so many crosses ends."""
        return self.y - GAP - count * (self.cross + GAP)


def line_plot(working: Working, paper: PicturePaper = PAGE) -> Picture:
    """Draw the line plot of a question, a scene for every line: what is looked at is framed once it is read.

    Raises NotDrawnError for any other working, and where its numbers would touch.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> scenes = line_plot(work(read_statement("plot 1/4: 2, 1/2: 3; most"), REGROUP_FIRST)).scenes
    >>> [sum(piece.name.startswith("cross") for piece in scene.pieces) for scene in scenes]
    [10, 10]
    """
    asked = working.statement
    if not isinstance(asked, PlotQuestion):
        msg = "only what is asked of a line plot is drawn as one"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    first, read = plot_scene(asked.plot, paper), plot_scene(asked.plot, paper, asked.looked_at)
    return Picture(PictureKind.PLOT, (first, *(read for _ in working.lines[1:])))


def plot_scene(
    plot: LinePlot, paper: PicturePaper = PAGE, looked_at: Sequence[tuple[Quantity, int]] = ()
) -> Scene:
    """Draw a line plot, with a frame round each stack that is looked at.

    Raises NotDrawnError where its numbers would touch.
    """
    laid = _laid(plot, paper)
    framed = {value.value for value, count in looked_at if count}
    pieces = (*_frames(laid, framed), *_axis(laid), *_crosses(laid))
    ends = PlotFrom(laid.ticks[0], laid.ticks[-1])
    told: tuple[Description, ...] = (ends, *(StackOf(value, count) for value, count in plot.marks))
    of_these = tuple(value for value, _ in plot.marks if value.value in framed)
    return Scene(laid.width, laid.y + LABEL + BELOW, pieces, (*told, Framed(of_these)) if of_these else told)


def _laid(plot: LinePlot, paper: PicturePaper) -> _Laid:
    ticks = plot.axis
    widths = [across(_label(tick, last=at == len(ticks) - 1)) for at, tick in enumerate(ticks)]
    left, right = (max(2 * BEYOND, wide / 2 + 1) for wide in (widths[0], widths[-1]))
    apart = min(APART, (paper.width - left - right) / max(1, len(ticks) - 1))
    steps = [by for by in range(1, plot.pieces + 1) if not plot.pieces % by]
    steps += [plot.pieces * by for by in LONG_STEPS[1:]]
    for step in steps:
        named = _every(plot, ticks, step)
        if named and all(
            (widths[a] + widths[b]) / 2 + BLANK <= apart * (b - a) for a, b in pairwise(sorted(named))
        ):
            width = left + apart * (len(ticks) - 1) + right
            return _Laid(plot, ticks, left, apart, width, frozenset(named))
    msg = "the numbers of so long a line plot would touch"
    raise NotDrawnError(msg, remedy="Choose another picture, or none.")


def _every(plot: LinePlot, ticks: tuple[Quantity, ...], step: int) -> list[int]:
    """Return the places that are named: every one, or those that are so many pieces apart, counted from 0."""
    named = [at for at, tick in enumerate(ticks) if not int(tick.value * plot.pieces) % step]
    return named if step == 1 or len(named) > 1 else []


def _label(tick: Quantity, *, last: bool) -> Quantity:
    """Write a place without its unit; the last one has it."""
    return tick if last else with_mark(tick, "")


def _axis(laid: _Laid) -> Iterator[Piece]:
    y, end = laid.y, laid.x(len(laid.ticks) - 1)
    yield Piece("axis", Stroke(laid.left - BEYOND, y, end + BEYOND, y))
    last = max(laid.named)
    for at, tick in enumerate(laid.ticks):
        x = laid.x(at)
        long = TICK if at in laid.named else TICK / 2
        yield Piece(f"tick/{at}", Stroke(x, y, x, y + long))
        if at in laid.named:
            yield Piece(f"label/{at}", Words(x, y + LABEL, _label(tick, last=at == last), DIGITS))


def _crosses(laid: _Laid) -> Iterator[Piece]:
    half = laid.cross / 2
    for at, tick in enumerate(laid.ticks):
        for height in range(1, laid.plot.count_at(tick.value) + 1):
            x, y = laid.x(at), laid.top(height) + half
            name = f"cross/{at}/{height}"
            yield Piece(f"{name}/down", Stroke(x - half, y - half, x + half, y + half))
            yield Piece(f"{name}/up", Stroke(x - half, y + half, x + half, y - half))


def _frames(laid: _Laid, framed: set[Fraction]) -> Iterator[Piece]:
    wide = min(laid.cross + 2 * GAP, laid.apart * FRAME)
    for at, tick in enumerate(laid.ticks):
        if tick.value in framed:
            top = laid.top(laid.plot.count_at(tick.value)) - GAP / 2
            yield Piece(f"frame/{at}", Box(laid.x(at) - wide / 2, top, wide, laid.y - GAP / 2 - top))
