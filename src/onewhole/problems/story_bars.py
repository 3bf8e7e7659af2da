"""Which bar picture a story has: by what it asks, and by how it is built."""

from fractions import Fraction

from msgspec.structs import replace

from onewhole.number.quantity import Quantity
from onewhole.pictures.bar_rows import (
    BarRow,
    Bars,
    Rectangle,
    StoryShape,
    Stretch,
    StretchRole,
    Written,
    blank_or,
    is_open,
)
from onewhole.pictures.caption import Groups
from onewhole.pictures.step_rows import MOST_EQUAL, equal_row, step_rows
from onewhole.problems.story_asks import NoStoryError, asked
from onewhole.problems.story_question import Asks, StoryQuestion
from onewhole.problems.story_structure import Structure
from onewhole.statements.expression import Quotient, Sum, Times, WithRemainder
from onewhole.statements.statement import MissingNumber, Question, RightAnswer, Statement

#: Two amounts beside each other, what one lacks marked.
COMPARED = frozenset({Structure.COMPARE, Structure.SMALLER_UNKNOWN, Structure.TURNED})

#: What is told in words and has no bars: what is put in order or named anew, and times of day.
NO_BARS = frozenset(
    {
        *(Asks.WHICH, Asks.IN_ORDER, Asks.ROUNDED, Asks.RENAMED, Asks.OTHER_FORM, Asks.OTHER_UNITS),
        *(Asks.PLOT_COUNT, Asks.PLOT_SOME, Asks.PLOT_TOTAL, Asks.PLOT_PART, Asks.PLOT_SHARE),
        *(Asks.PLOT_MOST, Asks.PLOT_SPREAD),
        *(Asks.FACTORS, Asks.MULTIPLES, Asks.TIME_BETWEEN, Asks.TIME_LATER, Asks.TIME_EARLIER),
    }
)


def story_shape(
    statement: Statement,
    structure: Structure | None,
    found: RightAnswer | None = None,
    *,
    shared_out: bool = False,
) -> StoryShape | None:
    """Return the bars (or the rectangle) of a story, with a blank for what it asks, or with what was found.

    ``structure`` is how the story is built; None where its words are the class's own: what holds for every
    story of the equation is drawn then, and nothing where that is not known (7 / 2 may be shared or measured
    out). None too for what has no such picture: times of day, orders, other
    names, and where nothing is left (5 - 5), which could not be drawn.

    >>> from onewhole.statements.reading import read_statement
    >>> [
    ...     len(story_shape(read_statement("52 - 27"), structure).rows)
    ...     for structure in (Structure.TAKE_FROM, Structure.COMPARE, None)
    ... ]
    [1, 2, 1]
    """
    try:
        parts = asked(statement, shared_out=shared_out)
    except NoStoryError:
        return None
    blank = _shape(statement, parts, structure, None)
    if blank is None or not is_open(blank):
        return None
    return blank if found is None else _shape(statement, parts, structure, found)


def _shape(
    statement: Statement, parts: StoryQuestion, structure: Structure | None, found: RightAnswer | None
) -> StoryShape | None:
    number = found if isinstance(found, Quantity) else None
    match parts.asks:
        case Asks.DIFFERENCE | Asks.SUM if structure in COMPARED:
            return Bars(_compared(parts, structure, number))
        case Asks.TIMES | Asks.PART_OF | Asks.EACH:
            return _product(statement, parts, structure, number)
        case Asks.DIVIDED | Asks.DIVIDED_LEFT:
            return _divided(parts, structure, found)
        case Asks.GROUPS_NEEDED | Asks.GROUPS_FULL | Asks.THINGS_LEFT:
            return _in_groups(parts, number)
        case Asks.CHANGE_TAKEN | Asks.CHANGE_ADDED | Asks.START_TAKEN | Asks.START_ADDED | Asks.ONE_OF_THREE:
            return Bars((_missing(statement, parts, blank_or(number)),))
        case asks if asks in NO_BARS:
            return None
        case _:
            return _stepped(statement, number)


def _stepped(statement: Statement, number: Quantity | None) -> Bars | None:
    """Return a bar for each step of what is worked out."""
    match statement:
        case Question(expression) | MissingNumber(Sum() | Times() | Quotient() as expression):
            rows = step_rows(expression, number)
            return Bars(rows) if rows else None
        case _:
            return None


def _compared(
    parts: StoryQuestion, structure: Structure | None, number: Quantity | None
) -> tuple[BarRow, ...]:
    """Return two bars beside each other; what the shorter one lacks is known, or asked for."""
    first, second = parts.numbers
    asked_for = blank_or(number)
    if parts.asks is Asks.SUM:
        told = (Stretch(first.value, first), Stretch(second.value, second, StretchRole.LACKING))
        return BarRow(told), BarRow((Stretch(first.value + second.value, asked_for, StretchRole.ASKED),))
    left = first.value - second.value
    if structure is Structure.COMPARE:
        lacks = (Stretch(left, asked_for, StretchRole.LACKING),) if left else ()
        return BarRow((Stretch(first.value, first),)), BarRow((Stretch(second.value, second), *lacks))
    smaller = (Stretch(left, asked_for, StretchRole.ASKED),) if left else ()
    told = (*smaller, Stretch(second.value, second, StretchRole.LACKING))
    return BarRow((Stretch(first.value, first),)), BarRow(told)


def _missing(statement: Statement, parts: StoryQuestion, blank: Written) -> BarRow:
    """Return a whole and its parts, one of them the blank."""
    *some, last = parts.numbers
    if parts.asks is Asks.START_TAKEN:
        return BarRow(tuple(Stretch(one.value, one) for one in parts.numbers), blank, bracketed=True)
    whole, known = (some[0], [last]) if parts.asks is Asks.CHANGE_TAKEN else (last, some)
    stretches = [Stretch(one.value, one) for one in known]
    left = whole.value - sum((one.value for one in known), Fraction(0))
    if left:
        before = statement.before if isinstance(statement, MissingNumber) else 0
        at = 0 if parts.asks is Asks.CHANGE_TAKEN else before
        stretches.insert(at, Stretch(left, blank, StretchRole.ASKED))
    return BarRow(tuple(stretches), whole, bracketed=True)


def _product(
    statement: Statement, parts: StoryQuestion, structure: Structure | None, number: Quantity | None
) -> StoryShape | None:
    """Return equal groups, one bar so many times as long as another, a part of one, or a rectangle."""
    first, second = parts.numbers
    blank = blank_or(number)
    if structure is Structure.AREA:
        squares = (first.plain, second.plain)
        return Rectangle(first.value, second.value, (first, second), blank, squares)
    if parts.asks is Asks.EACH or (structure is not Structure.TIMES_AS_MUCH and first.plain):
        return _stepped(statement, number)
    top, bottom = first.value.numerator, first.value.denominator
    if structure is Structure.TIMES_AS_MUCH:
        return _times_as_much(top, bottom, second, blank)
    if top > bottom or bottom > MOST_EQUAL:
        return None
    piece = second.value / bottom
    shown = (Stretch(piece, None, StretchRole.ASKED),) * top + (Stretch(piece),) * (bottom - top)
    return Bars((BarRow(shown, second, bracketed=True, under=blank, counted=top, equal=Groups(bottom)),))


def _times_as_much(top: int, bottom: int, amount: Quantity, blank: Written) -> Bars | None:
    """Return the amount, cut where a part of it is taken too, and under it the one so many times as long."""
    piece = amount.value / bottom
    if bottom == 1:
        return Bars((BarRow((Stretch(piece, amount),)), equal_row(top, Stretch(piece), blank)))
    if max(top, bottom) > MOST_EQUAL:
        return None
    return Bars((equal_row(bottom, Stretch(piece), amount), equal_row(top, Stretch(piece), blank)))


def _divided(
    parts: StoryQuestion, structure: Structure | None, found: RightAnswer | None
) -> StoryShape | None:
    """Return what is shared, measured out, or so many times as long; or a rectangle with a side unknown."""
    first, second = parts.numbers
    number = found if isinstance(found, Quantity) else None
    quotient, left = number, None
    if isinstance(found, WithRemainder):
        quotient, left = found.quotient, found.left
    match structure or _sure(second):
        case Structure.SHARING:
            return Bars((_shared(parts, quotient, left),))
        case Structure.MEASURING_OUT:
            return Bars((_measured(parts, quotient, left),))
        case Structure.HOW_MANY_TIMES:
            times = Groups(None) if quotient is None else quotient
            large = BarRow((Stretch(first.value),), first, bracketed=True, under=times)
            return Bars((large, BarRow((Stretch(second.value, second),))))
        case Structure.TIMES_AS_MUCH if second.plain:
            piece, by = first.value / second.value, int(second.value)
            small = BarRow((Stretch(piece, blank_or(quotient), StretchRole.ASKED),))
            return Bars((equal_row(by, Stretch(piece), first), small))
        case Structure.AREA:
            sides = second, blank_or(quotient)
            return Rectangle(second.value, first.value / second.value, sides, first, (True, False))
        case _:
            return None


def _sure(by: Quantity) -> Structure | None:
    """Return how a division is told where its numbers settle that: a measure measures out."""
    return None if by.plain else Structure.MEASURING_OUT


def _shared(parts: StoryQuestion, quotient: Quantity | None, left: Quantity | None) -> BarRow:
    """Return a whole in equal shares, and what is left over where that is asked for."""
    first, second = parts.numbers
    by = int(second.value)
    rest = _left_over(parts, first, second)
    each = (first.value - rest) / by
    shares = equal_row(by, Stretch(each, blank_or(quotient), StretchRole.ASKED), first)
    if not rest:
        return shares
    over = Stretch(rest, blank_or(left), StretchRole.ASKED)
    return replace(shares, stretches=(*shares.stretches, over), counted=len(shares.stretches))


def _measured(parts: StoryQuestion, quotient: Quantity | None, left: Quantity | None) -> BarRow:
    """Return a whole with its first group, the others not drawn apart, and what is left over.

    How many groups there are is not to be counted on the picture: it is what is asked for.
    """
    first, second = parts.numbers
    rest = _left_over(parts, first, second)
    groups = Groups(None if quotient is None else int(quotient.value))
    more = first.value - rest - second.value
    stretches = [Stretch(second.value, second)]
    if more > 0:
        stretches.append(Stretch(more, None, StretchRole.UNCUT))
    counted = len(stretches)
    if rest:
        stretches.append(Stretch(rest, blank_or(left), StretchRole.ASKED))
    return BarRow(tuple(stretches), first, bracketed=True, under=groups, counted=counted, equal=groups)


def _in_groups(parts: StoryQuestion, number: Quantity | None) -> Bars | None:
    """Return things with their first group, the others not drawn apart, and the last ones.

    Where groups for all are asked for, the last group is as long as the first, and what it lacks is dotted.
    None where only what is left over is asked for and nothing is.
    """
    first, second = parts.numbers
    rest = first.value % second.value
    stretches = [Stretch(second.value, second)]
    if (more := first.value - rest - second.value) > 0:
        stretches.append(Stretch(more, None, StretchRole.UNCUT))
    full = len(stretches)
    groups = Groups(None if number is None else int(number.value))
    match parts.asks:
        case Asks.GROUPS_NEEDED:
            if rest:
                stretches += [Stretch(rest), Stretch(second.value - rest, None, StretchRole.LACKING)]
            counted = len(stretches)
            return Bars((_grouped_row(stretches, first, groups, counted),))
        case Asks.GROUPS_FULL:
            stretches += [Stretch(rest)] if rest else []
            return Bars((_grouped_row(stretches, first, groups, full),))
        case _:
            stretches += [Stretch(rest, blank_or(number), StretchRole.ASKED)] if rest else []
            row = BarRow(tuple(stretches), first, bracketed=True, equal=Groups(None))
            return Bars((row,)) if rest else None


def _grouped_row(stretches: list[Stretch], things: Quantity, groups: Groups, counted: int) -> BarRow:
    """Return the bar of things in groups, with how many groups there are under the first stretches."""
    return BarRow(tuple(stretches), things, bracketed=True, under=groups, counted=counted, equal=groups)


def _left_over(parts: StoryQuestion, first: Quantity, second: Quantity) -> Fraction:
    """Return what is left over of what is shared or measured out, where it is asked for."""
    if parts.asks is Asks.DIVIDED:
        return Fraction(0)
    return _smallest(first) * (first.value / _smallest(first) % (second.value / _smallest(first)))


def _smallest(number: Quantity) -> Fraction:
    """Return the smallest unit of a number: what is left over is counted in it."""
    return number.ladder.finest
