"""What a story asks: which number is unknown, and which are known."""

from collections.abc import Mapping
from enum import Enum
from fractions import Fraction
from types import MappingProxyType
from typing import assert_never

from msgspec import Struct

from onewhole.number.ladder import Ladder
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind, Unit, unit_marked
from onewhole.statements.gap import Gap
from onewhole.statements.line_plot import Bound


class Asks(Enum):
    """The unknown of a story; *a* is told before *b*."""

    DIFFERENCE = "a - b = ?"
    SUM = "a + b = ?"
    WHICH = "a ? b"
    CHANGE_TAKEN = "a - ? = b"
    CHANGE_ADDED = "a + ? = b"
    START_TAKEN = "? - a = b"
    START_ADDED = "? + a = b"
    RENAMED = "a = b pieces"
    ALL_THREE = "a + b + c = ?"
    MORE_THEN_LESS = "a + b - c = ?"
    ONE_OF_THREE = "a + b + ? = c"
    IN_ORDER = "a, b, c in order"
    ROUNDED = "a to the nearest"
    OTHER_FORM = "a in another form"
    OTHER_UNITS = "a in other units"
    TIMES = "a x b = ?"
    PART_OF = "a of b = ?"
    EACH = "a each, b of them"
    DIVIDED = "a / b = ?"
    DIVIDED_LEFT = "a / b = ? r ?"
    GROUPS_NEEDED = "groups of b that a need"
    GROUPS_FULL = "full groups of b in a"
    THINGS_LEFT = "left of a in groups of b"
    FACTORS = "factors of a"
    MULTIPLES = "multiples of a to b"
    LESS_LESS = "a - b - c"
    LESS_MORE = "a - b + c"
    LESS_BOTH = "a - (b + c)"
    LESS_PART = "a - (b - c)"
    MORE_TIMES = "a + k x b"
    LESS_TIMES = "a - k x b"
    TIMES_MORE = "k x a + b"
    TIMES_LESS = "k x a - b"
    TIMES_BOTH = "k x (a + b)"
    TIMES_LEFT = "k x (a - b)"
    BOTH_TIMES = "(a + b) x k"
    LEFT_TIMES = "(a - b) x k"
    MORE_SHARE = "a + b / n"
    LESS_SHARE = "a - b / n"
    SHARE_TIMES = "a / n x k"
    BOTH_SHARED = "(a + b) / n"
    LEFT_SHARED = "(a - b) / n"
    SHARE_AND_TIMES = "a / n + k x (b - c)"
    PLOT_COUNT = "how many on a plot"
    PLOT_SOME = "how many on a plot beside a"
    PLOT_TOTAL = "total of a plot"
    PLOT_PART = "total of a plot beside a"
    PLOT_SHARE = "total of a plot shared"
    PLOT_MOST = "most common on a plot"
    PLOT_SPREAD = "greatest less least on a plot"
    TIME_BETWEEN = "a to b"
    TIME_LATER = "b after a"
    TIME_EARLIER = "b before a"


#: Which numbers of a story say how many there are of something, by their place; all others are amounts.
COUNTS: Mapping[Asks, tuple[int, ...]] = MappingProxyType(
    {
        Asks.TIMES: (0,),
        Asks.PART_OF: (0,),
        Asks.EACH: (1,),
        Asks.MORE_TIMES: (1,),
        Asks.LESS_TIMES: (1,),
        Asks.TIMES_MORE: (0,),
        Asks.TIMES_LESS: (0,),
        Asks.TIMES_BOTH: (0,),
        Asks.TIMES_LEFT: (0,),
        Asks.BOTH_TIMES: (2,),
        Asks.LEFT_TIMES: (2,),
        Asks.MORE_SHARE: (2,),
        Asks.LESS_SHARE: (2,),
        Asks.SHARE_TIMES: (1, 2),
        Asks.BOTH_SHARED: (2,),
        Asks.LEFT_SHARED: (2,),
        Asks.SHARE_AND_TIMES: (1, 2),
    }
)

#: What is wanted of a number: pieces, a form, units, a place to round to.
WantedOfNumber = Gap | NumberForm | Ladder | Unit


class StoryQuestion(Struct, frozen=True):
    """A statement with its numbers in the order in which a story tells them.

    ``wanted`` is the number with the gap where an amount is asked for in other pieces (7 2/6 = 6 ?/6), the
    form or the units of another name, or the unit that is rounded to. ``falling`` says of numbers that are
    put in order that the greatest comes first. Of a line plot no more is told than the value beside which
    measurements are meant, with its ``bound``; without one, ``numbers`` has one of its values, to say what is
    measured, and the story does not tell it: it stands on the plot.
    """

    asks: Asks
    numbers: tuple[Quantity, ...]
    wanted: WantedOfNumber | None = None
    falling: bool = False
    bound: Bound | None = None

    @property
    def kind(self) -> Kind:
        """Return what the amounts measure, also where a unit or a dollar sign stands beside a number."""
        kinds = (number.kind for number in self.numbers if number.kind is not Kind.NUMBER)
        marked = (unit_marked(number.ladder.mark).kind for number in self.numbers)
        return next((kind for kind in (*kinds, *marked) if kind is not Kind.NUMBER), Kind.NUMBER)

    @property
    def counts(self) -> tuple[int, ...]:
        """Return which numbers say how many there are of something, by their place."""
        if self.asks in {Asks.DIVIDED, Asks.DIVIDED_LEFT}:
            return (1,) if self.numbers[1].plain else ()
        return COUNTS.get(self.asks, ())

    @property
    def is_cut(self) -> bool:
        """Say whether wholes are cut though every number is whole: 3 shared among 4."""
        return self.asks is Asks.DIVIDED and self.numbers[0].value % self.numbers[1].value != 0

    @property
    def under_one(self) -> bool:
        """Say whether the unknown is a part of one: one amount under one is known that it lies within."""
        match self.asks:
            case Asks.DIFFERENCE | Asks.CHANGE_TAKEN | Asks.OTHER_FORM | Asks.ROUNDED:
                return self.numbers[0].value < 1
            case Asks.CHANGE_ADDED | Asks.START_ADDED | Asks.ONE_OF_THREE:
                return self.numbers[-1].value < 1
            case Asks.PART_OF:
                return self.numbers[-1].value <= 1
            case Asks.MORE_THEN_LESS:
                return sum((number.value for number in self.numbers[:-1]), Fraction(0)) < 1
            case Asks.SUM | Asks.WHICH | Asks.START_TAKEN | Asks.RENAMED | Asks.ALL_THREE | Asks.IN_ORDER:
                return False
            case Asks.OTHER_UNITS | Asks.TIMES | Asks.EACH | Asks.FACTORS | Asks.MULTIPLES:
                return False
            case Asks.DIVIDED | Asks.DIVIDED_LEFT:
                return self.numbers[0].value < self.numbers[1].value
            case Asks.GROUPS_NEEDED | Asks.GROUPS_FULL | Asks.THINGS_LEFT:
                return False
            case Asks.LESS_LESS | Asks.LESS_BOTH | Asks.LESS_PART | Asks.LESS_TIMES:
                return self.numbers[0].value < 1
            case Asks.BOTH_SHARED:
                return self.numbers[0].value + self.numbers[1].value < self.numbers[2].value
            case Asks.LEFT_SHARED:
                return self.numbers[0].value < self.numbers[2].value
            case Asks.LESS_MORE | Asks.MORE_TIMES | Asks.TIMES_MORE | Asks.TIMES_LESS | Asks.TIMES_BOTH:
                return False
            case Asks.TIMES_LEFT | Asks.BOTH_TIMES | Asks.LEFT_TIMES | Asks.MORE_SHARE | Asks.LESS_SHARE:
                return False
            case Asks.SHARE_TIMES | Asks.SHARE_AND_TIMES:
                return False
            case Asks.TIME_BETWEEN | Asks.TIME_LATER | Asks.TIME_EARLIER:
                return False
            case Asks.PLOT_COUNT | Asks.PLOT_SOME | Asks.PLOT_TOTAL | Asks.PLOT_PART | Asks.PLOT_SHARE:
                return False
            case Asks.PLOT_MOST | Asks.PLOT_SPREAD:
                return False
            case _:
                assert_never(self.asks)
