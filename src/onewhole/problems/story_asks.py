"""What a statement asks for, seen as a story: which number is unknown, and what is known."""

from fractions import Fraction

from onewhole.errors import InputError
from onewhole.number.another_name import another_name
from onewhole.number.digits import in_digits
from onewhole.number.ladder import Ladder, Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.problems.story_of_dividing import IN_GROUPS, divided
from onewhole.problems.story_of_plots import of_plot
from onewhole.problems.story_of_steps import of_steps, same_kind
from onewhole.problems.story_question import Asks, StoryQuestion
from onewhole.statements.clock_sides import between_times, time_asked
from onewhole.statements.expression import Expression, Quotient, Sum, Term, Times
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing, ListSort
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    Statement,
    meaning,
)
from onewhole.statements.whole_groups import WholeGroups

#: What a refusal offers to do.
REMEDY = "Type the story yourself, with what it asks before it and a bar: 2 x 3 x 4 | The kite club ..."


class NoStoryError(InputError):
    """No story is told about this statement."""


def asked(statement: Statement, *, shared_out: bool = False) -> StoryQuestion:
    """Return what a statement asks for.

    With ``shared_out`` a remainder of whole numbers is shared too, so that nothing is left over.
    Raises NoStoryError for several steps in a shape that is not told, products of more than two, a sign that
    is given already, an amount of 0, a result below zero, a count that overfills its place (4 tens 12 ones),
    a number that has no other name, and gaps in a denominator or before a fraction.

    >>> from onewhole.statements.reading import read_statement
    >>> [asked(read_statement(typed)).asks.value for typed in ("5 - 1 3/8", "5 = ? + 2", "9 - ? = 3 1/2")]
    ['a - b = ?', '? + a = b', 'a - ? = b']
    >>> [asked(read_statement(typed)).asks.value for typed in ("4 x 2/3", "9:45 to 11:20", "26 in = ?")]
    ['a x b = ?', 'a to b', 'a in other units']
    """
    found = _asked(statement, shared_out=shared_out)
    if found is None:
        msg = "no story is told about this problem"
        raise NoStoryError(msg, remedy=REMEDY)
    told = meaning(statement)
    if isinstance(told, int | Fraction) and told < 0:
        msg = "the result is below zero, and no story ends there"
        raise NoStoryError(msg, remedy="Put the larger number first.")
    for number in found.numbers:
        if not number.value and not number.ladder.clock:
            msg = "no story is told about an amount of 0"
            raise NoStoryError(msg, remedy="Use two amounts above 0.")
        if number.ladder.style in {Style.PLACES, Style.DECIMAL} and not in_digits(number):
            msg = "a number with an overfull place does not stand in a story"
            raise NoStoryError(msg, remedy="Write it in digits: 52 and not 4 tens 12 ones.")
    return found


def can_be_told(statement: Statement) -> bool:
    """Say whether a story is told about a statement.

    >>> from onewhole.statements.reading import read_statement
    >>> [can_be_told(read_statement(typed)) for typed in ("4 x 2/3", "7 - 3 - 2", "2 x 3 x 4")]
    [True, True, False]
    """
    try:
        asked(statement)
    except NoStoryError:
        return False
    return True


def _asked(statement: Statement, *, shared_out: bool) -> StoryQuestion | None:
    match statement:
        case Question(Quotient(Quantity() as first, Quantity() as second)):
            return divided(first, second, shared_out=shared_out)
        case Question(expression):
            return _of_expression(expression)
        case Listing(sort, number, most):
            asks = Asks.FACTORS if sort is ListSort.FACTORS else Asks.MULTIPLES
            return StoryQuestion(asks, (number,) if most is None else (number, most))
        case Comparison(Quantity() as left, Quantity() as right, None):
            return StoryQuestion(Asks.WHICH, (left, right))
        case Ordering(parts, falling):
            return StoryQuestion(Asks.IN_ORDER, parts, falling=falling)
        case Rounding(number, to):
            return StoryQuestion(Asks.ROUNDED, (number,), to)
        case AnotherName(number, Ladder() as units):
            return StoryQuestion(Asks.OTHER_UNITS, (number,), units)
        case AnotherName(number, form):
            return StoryQuestion(Asks.OTHER_FORM, (number,), form)
        case MissingNumber():
            return _missing(statement)
        case PlotQuestion():
            return of_plot(statement)
        case WholeGroups():
            return StoryQuestion(IN_GROUPS[statement.asks], statement.numbers)
        case _:
            return None


def _of_expression(expression: Expression) -> StoryQuestion | None:
    match expression:
        case Quantity():
            return _alone(expression)
        case Times(Quantity() as first, Quantity() as second):
            return _product(first, second)
        case Sum((Term(Quantity() as end), Term(Quantity() as start))) if between_times(expression):
            return StoryQuestion(Asks.TIME_BETWEEN, (start, end))
        case Sum((Term(Quantity() as time), Term(Quantity() as change, earlier))) if time_asked(expression):
            return StoryQuestion(Asks.TIME_EARLIER if earlier else Asks.TIME_LATER, (time, change))
        case Sum((Term(Quantity() as first), Term(Quantity() as second, taken))):
            return StoryQuestion(Asks.DIFFERENCE if taken else Asks.SUM, (first, second))
        case Sum(
            (Term(Quantity() as first), Term(Quantity() as more, False), Term(Quantity() as last, taken))
        ) if not first.ladder.clock:
            return StoryQuestion(Asks.MORE_THEN_LESS if taken else Asks.ALL_THREE, (first, more, last))
        case _:
            found = of_steps(expression)
            return found if found and same_kind(found) else None


def _alone(number: Quantity) -> StoryQuestion | None:
    """Return what is asked of a number that stands alone, by the name that it is led to."""
    name = another_name(number)
    if name is None:
        return None
    if name.kind is not Kind.NUMBER:
        return StoryQuestion(Asks.OTHER_UNITS, (number,), name.ladder)
    alike = number.ladder.style is Style.MIXED
    if name.counts[0] is None:
        form = NumberForm.SIMPLEST if alike and number.counts[0] is None else NumberForm.FRACTION
    else:
        form = NumberForm.SIMPLEST if alike and name.ladder != number.ladder else NumberForm.MIXED
    return StoryQuestion(Asks.OTHER_FORM, (number,), form)


def _product(first: Quantity, second: Quantity) -> StoryQuestion | None:
    """Return how a product is told: so many times or a part of an amount, or an amount so many times."""
    if _plain(first):
        return StoryQuestion(Asks.PART_OF if first.value < 1 else Asks.TIMES, (first, second))
    if _plain(second) and second.value.denominator == 1:
        return StoryQuestion(Asks.EACH, (first, second))
    return None


def _plain(number: Quantity) -> bool:
    """Say whether a number has no unit."""
    return number.kind is Kind.NUMBER and not number.ladder.mark


def _missing(statement: MissingNumber) -> StoryQuestion | None:
    """Say which part of an equation is missing: what is changed, or what was there at first."""
    gap = statement.gap
    match statement:
        case MissingNumber(Sum() | Times() as rest, _, beside=()) if gap.alone and not statement.gap_taken:
            return _of_expression(rest)
        case MissingNumber(Quantity() as rest, _, beside=((Quantity() as part, taken),)) if gap.alone:
            if statement.before:
                asks = Asks.CHANGE_TAKEN if statement.gap_taken else Asks.CHANGE_ADDED
            else:
                asks = Asks.START_TAKEN if taken else Asks.START_ADDED
            return StoryQuestion(asks, (part, rest))
        case MissingNumber(
            Quantity() as rest, _, beside=((Quantity() as first, False), (Quantity() as second, False))
        ) if gap.alone and not statement.gap_taken:
            return StoryQuestion(Asks.ONE_OF_THREE, (first, second, rest))
        case MissingNumber(Quantity() as rest, Gap(_, top), beside=()) if (
            top is HOLE and rest.ladder.style in {Style.MIXED, Style.PLACES}
        ):
            return StoryQuestion(Asks.RENAMED, (rest,), gap)
        case _:
            return None
