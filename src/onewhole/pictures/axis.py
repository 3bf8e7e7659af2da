"""The stretch of a number line that is drawn: where it begins and ends, which ticks are numbered."""

from collections.abc import Callable, Iterator, Sequence
from fractions import Fraction
from itertools import pairwise

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.ladder import TEN, Ladder, Style
from onewhole.number.quantity import Quantity
from onewhole.pictures.labels import BLANK, across

WIDTH, MARGIN = Fraction(180), Fraction(10)
#: At most so many stretches from numbered tick to numbered tick, and so many ticks at all.
MOST_NUMBERS, MOST_TICKS = 12, 100
#: Numbers that are put in order stand so far apart at least, where a shorter stretch of the line allows it.
APART = 17
#: A unit that is cut into smaller ones is cut into so many parts at most.
MOST_CUTS = 12
#: Hours from numbered tick to numbered tick of a line on which the hours are too close.
HOURS = (1, 2, 3, 6, 12)
HALF = Fraction(1, 2)

Label = Callable[[int, int], Quantity]


class Axis(Struct, frozen=True):
    """A stretch of line with its numbered ticks and the ticks between, in smallest units.

    ``left`` and ``right`` are the room beside it, in millimetres: what is written under its ends stays whole.
    ``width`` is that of the paper.
    """

    ladder: Ladder
    start: int
    end: int
    step: int
    small: int | None
    left: Fraction = MARGIN
    right: Fraction = MARGIN
    width: Fraction = WIDTH

    def x(self, point: int | Fraction) -> Fraction:
        """Return where a point stands, in millimetres from the left: exactly in proportion."""
        return self.left + (self.width - self.left - self.right) * self.share(point)

    def share(self, point: int | Fraction) -> Fraction:
        """Return how far along the line a point stands, from 0 to 1."""
        return Fraction(point - self.start, self.end - self.start)


def axis(
    ladder: Ladder,
    points: Sequence[int],
    label: Label,
    *,
    clock: bool = False,
    apart: bool = False,
    width: Fraction = WIDTH,
) -> Axis:
    """Return an axis that holds the points, from 0 where there is room, or from the tick before the first.

    ``label`` writes a tick, on an axis of so many smallest units from tick to tick. Only as many ticks are
    numbered as stand clear of each other. ``apart`` says that the points are compared: a shorter stretch
    round them is taken where they would stand too close. So it is where all points lie close together, far
    from 0, and always on a ``clock``.

    >>> from onewhole.number.ladder import mixed
    >>> from onewhole.number.quantity import landmark
    >>> found = axis(mixed(6), (23, 44), lambda point, _: landmark(mixed(6), point))
    >>> found.start, found.end, found.step, found.small
    (0, 48, 6, 1)
    """
    known, unit = sorted(points), _unit(ladder)
    spread = known[-1] - known[0]
    gaps = [b - a for a, b in pairwise(known) if a < b]
    far = 2 * known[0] > known[-1]
    crowded = apart and far and any((width - 2 * MARGIN) * gap < APART * known[-1] for gap in gaps)
    near = clock or crowded or (0 < spread <= unit <= known[0])
    fine = ladder.style is Style.DECIMAL and (spread if near else known[-1]) <= unit
    found = (
        stretch
        for step in _steps(ladder, fine=fine, clock=clock)
        for stretch in _stretches(known[0], known[-1], step, near=near, far=far)
        if _clear(stretch, label, width)
    )
    start, end, step = next(found)
    small = _between(ladder, start, end, step, MOST_TICKS * width // WIDTH)
    return Axis(ladder, start, end, step, small, width=width)


def with_room(line: Axis, labels: Sequence[tuple[int, Fraction]]) -> Axis:
    """Leave as much room beside a line that labels of such widths stay on the paper, each at its place.

    >>> from onewhole.number.ladder import places
    >>> line = with_room(Axis(places(1), 0, 8, 1, None), [(0, Fraction(4)), (8, Fraction(30))])
    >>> line.left, line.right
    (Fraction(10, 1), Fraction(15, 1))
    """
    left = [_room(line.share(point), wide, line.width) for point, wide in labels]
    right = [_room(1 - line.share(point), wide, line.width) for point, wide in labels]
    return replace(line, left=max([MARGIN, *left]), right=max([MARGIN, *right]))


def cuts(count: int) -> int:
    """Return into how many equal parts a unit of so many smaller ones is drawn: the most that can be seen.

    >>> cuts(60), cuts(1000), cuts(16)
    (12, 10, 8)
    """
    return max(parts for parts in range(1, MOST_CUTS + 1) if count % parts == 0)


def _room(share: Fraction, wide: Fraction, width: Fraction) -> Fraction:
    """Return the room that a label needs beyond the nearer end, wherever the other end stands.

    The line itself is half the paper at least.
    """
    if share > HALF:
        return Fraction(0)
    return (wide / 2 - share * width / 2) / (1 - share)


def _steps(ladder: Ladder, *, fine: bool, clock: bool) -> Iterator[int]:
    """Give the steps from numbered tick to numbered tick that may be tried, the shortest first.

    They are 1, 2, 5, 10, 20, 50 wholes, before them places after the point where it must be ``fine``; the
    units of a measure; and hours that divide the day.
    """
    unit = _unit(ladder)
    if fine:
        yield from (step for worth in reversed(ladder.worths) if worth < unit for step in (worth, 5 * worth))
    if clock:
        yield from (unit * hours for hours in HOURS)
        unit *= 2 * HOURS[-1]
    elif ladder.style is Style.MEASURE:
        yield from (worth for worth in reversed(ladder.worths[1:]) if worth >= unit)
        unit = ladder.worths[0]
    while True:
        yield from (unit, 2 * unit, 5 * unit)
        unit *= TEN


def _stretches(low: int, high: int, step: int, *, near: bool, far: bool) -> Iterator[tuple[int, int, int]]:
    """Give start, end and step of an axis from 0, and of one from the tick before a first point far away."""
    end = max(-(-high // step), 1) * step
    if not near:
        yield 0, end, step
    start = low // step * step
    if near or far:
        yield start, max(end, start + step), step


def _clear(stretch: tuple[int, int, int], label: Label, width: Fraction) -> bool:
    """Say whether the numbered ticks are few enough, and none touches the next."""
    start, end, step = stretch
    count = (end - start) // step
    if count > MOST_NUMBERS:
        return False
    widths = [across(label(point, step)) for point in range(start, end + 1, step)]
    room = width - max(MARGIN, widths[0] / 2) - max(MARGIN, widths[-1] / 2)
    return all((a + b) / 2 + BLANK <= room / count for a, b in pairwise(widths))


def _between(ladder: Ladder, start: int, end: int, step: int, most: Fraction | int) -> int | None:
    """Return the shortest step of the ticks between that can be seen; None where there are none."""
    unit = _unit(ladder)
    known = {*ladder.worths, *(unit * times for times in (1, TEN, TEN * TEN))}
    known.add(unit // cuts(unit) if ladder.style is Style.MEASURE else 1)
    fitting = (s for s in sorted(known) if s < step and not step % s and (end - start) // s <= most)
    return next(fitting, None)


def _unit(ladder: Ladder) -> int:
    """Return what a numbered tick counts at least: one whole, in smallest units."""
    match ladder.style:
        case Style.PLACES | Style.DECIMAL:
            return ladder.worths[-1 - ladder.after]
        case _:
            return ladder.ratios[-1] if ladder.ratios else 1
