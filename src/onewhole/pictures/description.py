"""What a scene shows, for those who cannot see it: a closed family, read with ``match``. No sentences."""

from typing import assert_never

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.pictures.bar_description import (
    BarDescription,
    BarNumber,
    EachPart,
    EqualInBar,
    Lacking,
    SidesAndArea,
    SomeParts,
    TimesAsLong,
)
from onewhole.pictures.caption import Caption, Count


class Shown(Struct, frozen=True):
    """What is there to be seen; nothing where no amount is given."""

    amounts: tuple[Caption, ...]


class StillThere(Struct, frozen=True):
    """What is left after something went."""

    amounts: tuple[Caption, ...]


class CrossedOut(Struct, frozen=True):
    """What is crossed out, because it is taken away."""

    amounts: tuple[Caption, ...]


class Gathered(Struct, frozen=True):
    """What is there after numbers or parts moved together."""

    amounts: tuple[Caption, ...]


class Makes(Struct, frozen=True):
    """Small ones, and what they make: 10 ones, 1 ten."""

    small: Caption
    made: Caption


class CutInto(Struct, frozen=True):
    """What is cut, and into how many parts: 1 whole, 6 sixths."""

    cut: Caption
    parts: Caption


class SplitInto(Struct, frozen=True):
    """A number, and the numbers that it is split into."""

    number: Quantity
    parts: tuple[Quantity, ...]


class OneJump(Struct, frozen=True):
    """How long a jump is."""

    length: Quantity


class EqualJumps(Struct, frozen=True):
    """So many jumps, all of one length, and where the last one ends."""

    count: int
    length: Quantity
    end: Quantity


class JumpEnds(Struct, frozen=True):
    """Where a jump ends."""

    place: Quantity


class OnRuler(Struct, frozen=True):
    """A ruler that is marked in so small parts of an inch, or in inches."""

    part: Unit


class Compared(Struct, frozen=True):
    """Two amounts, one beside the other."""

    first: Caption
    second: Caption


class MarkAt(Struct, frozen=True):
    """An amount that is marked, to see which numbers are less and which are more."""

    amount: Quantity


class LiesBetween(Struct, frozen=True):
    """A number, and the two neighbors that it lies between."""

    number: Quantity
    low: Quantity
    high: Quantity


class Halfway(Struct, frozen=True):
    """What is halfway between two neighbors."""

    middle: Quantity


class RoundedTo(Struct, frozen=True):
    """The neighbor that a number is rounded to."""

    neighbor: Quantity


class WholeAmount(Struct, frozen=True):
    """How much a whole is that has parts; None where that is the blank."""

    amount: Quantity | None


class PartAmount(Struct, frozen=True):
    """How much a part of a whole is; None where that is the blank."""

    amount: Quantity | None


class SidesOf(Struct, frozen=True):
    """A rectangle, and how long its sides are: at the side, and above."""

    left: Quantity
    right: Quantity


class PartProduct(Struct, frozen=True):
    """A part of a rectangle: its sides, and its area."""

    left: Quantity
    right: Quantity
    area: Quantity


class Shares(Struct, frozen=True):
    """Among how many shares something is given out."""

    count: int


class EachHas(Struct, frozen=True):
    """What each share has by now."""

    amounts: tuple[Caption, ...]


class UnderEachOther(Struct, frozen=True):
    """Numbers that stand in columns, to be added, or the second ``taken`` from the first."""

    numbers: tuple[Quantity, ...]
    taken: bool


class WrittenAbove(Struct, frozen=True):
    """What is written small above columns: in place of digits that are struck out, or to be added too."""

    counts: tuple[Count, ...]
    struck: bool


class WrittenBelow(Struct, frozen=True):
    """The digits written below the columns so far."""

    counts: tuple[Count, ...]


class TimesInColumns(Struct, frozen=True):
    """Two numbers that stand under each other to be multiplied, ``above`` and ``below``."""

    above: Quantity
    below: Quantity


class WrittenRows(Struct, frozen=True):
    """Numbers that stand in rows below those that are multiplied."""

    numbers: tuple[Quantity, ...]


class DividedInColumns(Struct, frozen=True):
    """A number behind a bracket, and before it the one that it is divided by."""

    number: Quantity
    by: Quantity


class WrittenOver(Struct, frozen=True):
    """The digits of a quotient, written over the number that is divided."""

    counts: tuple[Count, ...]


class DivisionRow(Struct, frozen=True):
    """What is taken away below a number that is divided, and what is left with the digit brought down."""

    taken: Count | None
    left: Count | None


class PlotFrom(Struct, frozen=True):
    """A line plot, and the two ends of its axis."""

    first: Quantity
    last: Quantity


class StackOf(Struct, frozen=True):
    """How many marks stand above a value."""

    value: Quantity
    count: int


class Framed(Struct, frozen=True):
    """The values whose marks are framed."""

    values: tuple[Quantity, ...]


Description = (
    Shown
    | StillThere
    | CrossedOut
    | Gathered
    | Makes
    | CutInto
    | SplitInto
    | OneJump
    | EqualJumps
    | JumpEnds
    | OnRuler
    | Compared
    | MarkAt
    | LiesBetween
    | Halfway
    | RoundedTo
    | WholeAmount
    | PartAmount
    | SidesOf
    | PartProduct
    | Shares
    | EachHas
    | UnderEachOther
    | WrittenAbove
    | WrittenBelow
    | TimesInColumns
    | WrittenRows
    | DividedInColumns
    | WrittenOver
    | DivisionRow
    | PlotFrom
    | StackOf
    | Framed
    | BarDescription
)


def amounts(described: Description) -> tuple[Caption, ...]:
    """Return every amount of a description, in order.

    >>> from onewhole.number.quantity import whole
    >>> len(amounts(SplitInto(whole(52), (whole(40), whole(12)))))
    3
    """
    match described:
        case Shown(told) | StillThere(told) | CrossedOut(told) | Gathered(told) | EachHas(told):
            return told
        case UnderEachOther(told) | WrittenAbove(told) | WrittenBelow(told) | WrittenOver(told):
            return told
        case WrittenRows(told):
            return told
        case DivisionRow(taken, left):
            return tuple([one for one in (taken, left) if one is not None])
        case Framed(values):
            return values
        case StackOf(one, _):
            return (one,)
        case PlotFrom(first, last):
            return first, last
        case SplitInto(number, parts):
            return (number, *parts)
        case OneJump(one) | JumpEnds(one) | MarkAt(one) | Halfway(one) | RoundedTo(one):
            return (one,)
        case EqualJumps(_, length, end):
            return length, end
        case LiesBetween(number, low, high) | PartProduct(number, low, high):
            return (number, low, high)
        case OnRuler() | Shares() | BarNumber() | EqualInBar():
            return ()
        case WholeAmount(known) | PartAmount(known) | EachPart(known) | SomeParts(_, known) | Lacking(known):
            return () if known is None else (known,)
        case TimesAsLong(known):
            return () if known is None else (known,)
        case SidesAndArea(side, other, area):
            return tuple([one for one in (side, other, area) if one is not None])
        case Makes(first, second) | CutInto(first, second) | Compared(first, second) | SidesOf(first, second):
            return (first, second)
        case TimesInColumns(first, second) | DividedInColumns(first, second):
            return (first, second)
        case _:
            assert_never(described)
