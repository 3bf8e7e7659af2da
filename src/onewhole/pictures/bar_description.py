"""What the bars of a story show, for those who cannot see them: a closed family. No sentences."""

from msgspec import Struct

from onewhole.number.quantity import Quantity


class BarNumber(Struct, frozen=True):
    """Which of several bars is told of next, from 1."""

    number: int


class EqualInBar(Struct, frozen=True):
    """How many equal parts a bar has; None where that is asked for."""

    count: int | None


class EachPart(Struct, frozen=True):
    """How much each of several equal parts is; None where that is the blank."""

    amount: Quantity | None


class SomeParts(Struct, frozen=True):
    """How much so many of several equal parts are; None where that is the blank."""

    count: int
    amount: Quantity | None


class Lacking(Struct, frozen=True):
    """How much one bar lacks to be as long as another; None where that is the blank."""

    amount: Quantity | None


class TimesAsLong(Struct, frozen=True):
    """How many times as long one bar is as the next; None where that is the blank."""

    times: Quantity | None


class SidesAndArea(Struct, frozen=True):
    """A rectangle: its side, the other side, and its area; None where that is the blank."""

    side: Quantity | None
    other: Quantity | None
    area: Quantity | None


BarDescription = BarNumber | EqualInBar | EachPart | SomeParts | Lacking | TimesAsLong | SidesAndArea
