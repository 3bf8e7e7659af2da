"""Measurements on a line plot, and what is asked of them: how many, how much in all, how far apart.

Source: 3.MD.B.4, 4.MD.B.4 and 5.MD.B.2 (data in halves, fourths and eighths of a unit), CCSSM (2010).
"""

from collections.abc import Iterable, Iterator, Sequence
from enum import Enum
from fractions import Fraction
from itertools import pairwise
from math import ceil, floor, lcm

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity, usual, whole, with_mark
from onewhole.number.unit import DOLLAR
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import Expression, Quotient, Sum, Term, Times, minus

#: Places from the least value to the greatest, marks above one of them, and marks in all, at most and at
#: least. Common practice, no source.
MOST_TICKS, HIGHEST, MOST_MARKS, FEWEST_MARKS = 17, 10, 40, 2
#: An axis goes on to whole numbers at both ends while it has no more places than three wholes in eighths.
MOST_ON_AXIS = 25

REMEDY = "Write for example: plot 1/4: 2, 1/2: 3, 5/8 in: 1; total."


class PlotError(InputError, ValueError):
    """No line plot can be drawn of such measurements, or what is asked of it has no one answer."""


class PlotAsk(Enum):
    """What is asked: how many, how much in all, how much each, the most common one, how far apart."""

    COUNT = "count"
    TOTAL = "total"
    SHARE = "share"
    MOST = "most"
    SPREAD = "spread"


class Bound(Enum):
    """Which measurements are meant, beside a value."""

    EXACTLY = "exactly"
    MORE = "more than"
    LESS = "less than"
    AT_LEAST = "at least"
    AT_MOST = "at most"


class Among(Struct, frozen=True):
    """Only the measurements of a value, or on one side of it."""

    bound: Bound
    value: Quantity

    def holds(self, value: Fraction) -> bool:
        """Say whether a value is meant.

        >>> Among(Bound.MORE, whole(2)).holds(Fraction(2)), Among(Bound.AT_LEAST, whole(2)).holds(Fraction(2))
        (False, True)
        """
        own = self.value.value
        match self.bound:
            case Bound.EXACTLY:
                return value == own
            case Bound.MORE:
                return value > own
            case Bound.LESS:
                return value < own
            case Bound.AT_LEAST:
                return value >= own
            case Bound.AT_MOST:
                return value <= own


class LinePlot(Struct, frozen=True):
    """Measurements with how often each was found, the least first: a mark for each.

    A value may have no mark. Raises PlotError for values that do not rise, that are no fractions or whole
    numbers of one unit, and for too many places or marks.

    >>> plot = LinePlot(((whole(3), 2), (whole(5), 1)))
    >>> plot.many, [int(tick.value) for tick in plot.ticks]
    (3, [3, 4, 5])
    """

    marks: tuple[tuple[Quantity, int], ...]

    def __post_init__(self) -> None:
        """Refuse what cannot be drawn or read."""
        values = [value for value, _ in self.marks]
        if any(value.ladder.style not in {Style.MIXED, Style.PLACES} for value in values):
            msg = "a line plot has whole numbers, fractions and mixed numbers of one unit"
            raise PlotError(msg, remedy=REMEDY)
        if len({value.ladder.mark for value in values}) > 1 or any(v.ladder.mark == DOLLAR for v in values):
            msg = "the measurements of a line plot are in one unit"
            raise PlotError(msg, remedy="Write the unit once, behind the last number: plot 1/4: 2, 1/2 in: 3")
        if any(one.value >= other.value for one, other in pairwise(values)):
            msg = "each value of a line plot stands once, the least first"
            raise PlotError(msg, remedy=REMEDY)
        if self.highest > HIGHEST:
            msg = f"more than {HIGHEST} marks stand above one value"
            raise PlotError(msg, remedy=f"Use at most {HIGHEST} marks for a value.")
        if not FEWEST_MARKS <= self.many <= MOST_MARKS:
            msg = f"a line plot with {self.many} {'mark' if self.many == 1 else 'marks'} is not drawn"
            raise PlotError(msg, remedy=f"Use {FEWEST_MARKS} to {MOST_MARKS} measurements.")
        if len(self.marks) > 1 and not self._places <= MOST_TICKS:
            msg = f"from the least value to the greatest there are {self._places} places on the line"
            raise PlotError(msg, remedy=f"Use values that lie closer together: at most {MOST_TICKS} places.")

    @property
    def many(self) -> int:
        """Return how many measurements there are."""
        return sum(count for _, count in self.marks)

    @property
    def highest(self) -> int:
        """Return how many marks the highest stack has; 0 where there is none."""
        return max((count for _, count in self.marks), default=0)

    @property
    def found(self) -> tuple[tuple[Quantity, int], ...]:
        """Return the values that were found, each with how often."""
        return tuple(pair for pair in self.marks if pair[1])

    @property
    def mark(self) -> str:
        """Return the unit of every value; nothing for bare numbers."""
        return self.marks[0][0].ladder.mark

    @property
    def pieces(self) -> int:
        """Return into how many pieces one unit is cut on the axis.

        >>> from onewhole.number.ladder import mixed
        >>> LinePlot(((Quantity(mixed(4), (None, 1)), 2), (Quantity(mixed(2), (None, 1)), 1))).pieces
        4
        """
        return lcm(*(value.value.denominator for value, _ in self.marks))

    @property
    def _places(self) -> int:
        first, last = self.marks[0][0], self.marks[-1][0]
        return int((last.value - first.value) * self.pieces) + 1

    @property
    def ticks(self) -> tuple[Quantity, ...]:
        """Return every place from the least value to the greatest, all equally far apart.

        Each is written as it was typed; a place between, in pieces of the one size that was typed, or else of
        the largest size.
        """
        return self._between(self.marks[0][0].value, self.marks[-1][0].value)

    @property
    def axis(self) -> tuple[Quantity, ...]:
        """Return every place on the axis, from the whole number below the least value to the next one above.

        Values that lie far apart leave no room for both, or for either: there it begins and ends with them.

        >>> from onewhole.number.ladder import mixed
        >>> plot = LinePlot(((Quantity(mixed(4), (1, 1)), 2), (Quantity(mixed(4), (1, 2)), 1)))
        >>> [str(tick.value) for tick in plot.axis]
        ['1', '5/4', '3/2', '7/4', '2']
        """
        least, greatest = self.marks[0][0].value, self.marks[-1][0].value
        first = Fraction(floor(least))
        if (greatest - first) * self.pieces >= MOST_ON_AXIS:
            first = least
        last = Fraction(ceil(greatest))
        if (last - first) * self.pieces >= MOST_ON_AXIS:
            last = greatest
        return self._between(first, last)

    def _between(self, first: Fraction, last: Fraction) -> tuple[Quantity, ...]:
        typed = {value.value: value for value, _ in self.marks}
        places = (first + Fraction(at, self.pieces) for at in range(int((last - first) * self.pieces) + 1))
        return tuple(typed.get(place) or self.named(place) for place in places)

    def named(self, place: Fraction) -> Quantity:
        """Write a place in pieces of the one size that was typed, or else of the largest size.

        >>> from onewhole.number.ladder import mixed
        >>> LinePlot(((Quantity(mixed(4), (None, 1)), 2), (whole(1), 1))).named(Fraction(1, 2)).counts
        (None, 2)
        """
        sizes = {value.ladder.denominator for value, _ in self.marks if value.ladder.style is Style.MIXED}
        bottom = min(sizes) if len(sizes) == 1 else place.denominator
        written = usual(mixed(bottom), place) if bottom > 1 else whole(int(place))
        return with_mark(written, self.mark)

    def count_at(self, value: Fraction) -> int:
        """Return how many marks stand above a value."""
        return next((count for known, count in self.marks if known.value == value), 0)


class PlotQuestion(AskedInWords, Struct, frozen=True):
    """What is asked of a line plot: of all its measurements, or only ``among`` some of them.

    Raises PlotError where nothing is there to be counted or added, and where no one value is most common.

    >>> asked = PlotQuestion(LinePlot(((whole(3), 2), (whole(5), 1))), PlotAsk.TOTAL)
    >>> len(asked.leads_to.terms)
    2
    """

    plot: LinePlot
    asks: PlotAsk
    among: Among | None = None

    def __post_init__(self) -> None:
        """Refuse a question that has no one answer."""
        if self.among is not None:
            self._check_among(self.among)
        if self.asks is PlotAsk.TOTAL and not self.meant:
            msg = "no measurement is meant, so there is no total"
            raise PlotError(msg, remedy="Name a value that has marks.")
        heights = sorted((count for _, count in self.plot.marks), reverse=True)
        if self.asks is PlotAsk.MOST and len(heights) > 1 and heights[0] == heights[1]:
            msg = "no one value is most common: two have as many marks"
            raise PlotError(msg, remedy="Give one value more marks than every other.")
        if self.asks is PlotAsk.SPREAD and len(self.plot.found) == 1:
            msg = "all measurements are the same, so none is greater"
            raise PlotError(msg, remedy="Give marks to two values or more.")

    def _check_among(self, among: Among) -> None:
        if self.asks not in {PlotAsk.COUNT, PlotAsk.TOTAL}:
            msg = "only how many and the total are asked of some of the measurements"
            raise PlotError(msg, remedy="Write: count above 1/2, or total at least 1/2.")
        if among.value.ladder.mark != self.plot.mark or among.value.ladder.style not in {
            Style.MIXED,
            Style.PLACES,
        }:
            msg = "what is compared with the measurements is in another unit"
            raise PlotError(msg, remedy="Write it in the unit of the measurements.")

    @property
    def numbers(self) -> tuple[Quantity, ...]:
        """Return the values on the line, and not the one that a question names once more."""
        return tuple(number for number, _ in self.plot.marks)

    @property
    def about(self) -> Expression:
        """Return what is worked out when the plot is read."""
        return self.leads_to

    def with_numbers(self, supply: Iterator[Quantity]) -> "PlotQuestion":
        """Return the same question of a plot with the next numbers of a supply as its values."""
        marks = tuple((next(supply), count) for _, count in self.plot.marks)
        return PlotQuestion(LinePlot(marks), self.asks, self.among)

    @property
    def meant(self) -> tuple[tuple[Quantity, int], ...]:
        """Return the values that the question is about and that were found, each with how often."""
        among = self.among
        return tuple(pair for pair in self.plot.found if among is None or among.holds(pair[0].value))

    @property
    def looked_at(self) -> tuple[tuple[Quantity, int], ...]:
        """Return the values whose marks the answer is read from."""
        match self.asks:
            case PlotAsk.COUNT | PlotAsk.TOTAL | PlotAsk.SHARE:
                return self.meant
            case PlotAsk.MOST:
                return (max(self.plot.found, key=lambda pair: pair[1]),)
            case PlotAsk.SPREAD:
                return self.plot.found[0], self.plot.found[-1]

    @property
    def leads_to(self) -> Expression:
        """Return what is worked out when the plot is read."""
        at = self.looked_at
        match self.asks:
            case PlotAsk.COUNT:
                return added([whole(count) for _, count in at])
            case PlotAsk.TOTAL:
                return in_all(at)
            case PlotAsk.SHARE:
                return Quotient(in_all(at), whole(self.plot.many))
            case PlotAsk.MOST:
                return at[0][0]
            case PlotAsk.SPREAD:
                return minus(at[1][0], at[0][0])


def in_all(stacks: Iterable[tuple[Quantity, int]]) -> Expression:
    """Return the sum of values, each taken as often as it was found; once, it stands alone."""
    return added([value if count == 1 else Times(whole(count), value) for value, count in stacks])


def added(parts: Sequence[Expression]) -> Expression:
    """Return the sum of some parts; one stands alone, and no parts are 0."""
    if len(parts) < 2:
        return parts[0] if parts else whole(0)
    return Sum(tuple(Term(part) for part in parts))
