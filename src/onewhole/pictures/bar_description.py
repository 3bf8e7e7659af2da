"""What the bars of a story show, for those who cannot see them: a closed family. No sentences."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity


@dataclass(frozen=True, slots=True)
class BarNumber:
    """Which of several bars is told of next, from 1."""

    number: int


@dataclass(frozen=True, slots=True)
class EqualInBar:
    """How many equal parts a bar has; None where that is asked for."""

    count: int | None


@dataclass(frozen=True, slots=True)
class EachPart:
    """How much each of several equal parts is; None where that is the blank."""

    amount: Quantity | None


@dataclass(frozen=True, slots=True)
class SomeParts:
    """How much so many of several equal parts are; None where that is the blank."""

    count: int
    amount: Quantity | None


@dataclass(frozen=True, slots=True)
class Lacking:
    """How much one bar lacks to be as long as another; None where that is the blank."""

    amount: Quantity | None


@dataclass(frozen=True, slots=True)
class TimesAsLong:
    """How many times as long one bar is as the next; None where that is the blank."""

    times: Quantity | None


@dataclass(frozen=True, slots=True)
class SidesAndArea:
    """A rectangle: its side, the other side, and its area; None where that is the blank."""

    side: Quantity | None
    other: Quantity | None
    area: Quantity | None


BarDescription = BarNumber | EqualInBar | EachPart | SomeParts | Lacking | TimesAsLong | SidesAndArea
