"""The right answer to a problem, written the usual way."""

from collections.abc import Iterator
from fractions import Fraction
from functools import reduce
from math import floor
from typing import assert_never

from onewhole.number.another_name import another_name
from onewhole.number.clock import on_clock
from onewhole.number.ladder import TEN, Ladder, Style, decimal, joined, measure, mixed
from onewhole.number.name_wanted import named_as
from onewhole.number.quantity import NotOnLadderError, Quantity, usual, whole
from onewhole.number.unit import CENT_PLACES, DOLLAR, MEASURES, Kind
from onewhole.problems.numbers import numbers_of
from onewhole.statements.clock_sides import time_asked
from onewhole.statements.expression import Expression, kind, quantities, value
from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.rounding import Rounding, on_rung
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    RightAnswer,
    Statement,
    gap_amount,
    relation,
)
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.line_plot import plot_found
from onewhole.working.listing import listed
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.questions import DoesNotSuitError, steps_found
from onewhole.working.quotients.work_quotient import divided, quotient_found
from onewhole.working.steps.work_steps import has_steps


def answer(statement: Statement) -> RightAnswer:
    """Return the number (or the sign between two, or the numbers in order) that a statement asks for.

    A number is counted in the pieces of the problem, nothing overfull: 7 2/6 - 3 5/6 is 3 3/6. It is what a
    working reaches (`tests/agreement` holds the two together), and is there too for what is not worked line
    by line, such as 3 x 2/5. Raises NotOnLadderError for a measure that does not come out even
    (1/5 x 2 in), and for an answer between two prices (1/2 x $3.25). A number that stands alone is answered
    by its other name (:mod:`onewhole.number.another_name`).
    A comparison already written with its sign is answered by the sign that is true.

    >>> from onewhole.statements.reading import read_statement
    >>> answer(read_statement("7 2/6 - 3 5/6")).counts
    (3, 3)
    >>> answer(read_statement("1/2 x 1/3")).counts
    (None, 1)
    """
    match statement:
        case Question(Quantity() as alone):
            return another_name(alone) or alone
        case Question(asked) if (quotient := divided(asked)) is not None:
            return quotient_found(quotient)
        case Question(asked) if has_steps(asked):
            return _after_steps(asked)
        case Question(asked):
            return written_usually(asked)
        case Comparison(left, right):
            return relation(left, right)
        case Ordering():
            return statement.ordered
        case MissingNumber():
            amount = gap_amount(statement)
            found = statement.gap.filling(amount)
            return (
                whole(found)
                if isinstance(found, int)
                else _written(amount, kind(statement.rest), numbers_of(statement))
            )
        case AnotherName(number, wanted):
            return named_as(number, wanted)
        case Listing():
            return listed(statement)
        case FactorQuestion():
            return statement.found
        case PlotQuestion():
            return plot_found(statement)
        case WholeGroups():
            return statement.found
        case Rounding():
            return on_rung(statement, int(statement.rounded / statement.to.size))
        case _:
            assert_never(statement)


def _after_steps(asked: Expression) -> RightAnswer:
    """Return what several steps come to, also where they are not worked line by line."""
    try:
        return steps_found(asked)
    except (NotWorkedError, DoesNotSuitError):
        return written_usually(asked)


def also_right(statement: Statement) -> Quantity | None:
    """Return another amount that is right too: of a number exactly halfway the smaller neighbor; else None.

    The standards have no rule for a number exactly halfway, and a state's published rules of scoring take
    either (docs/decisions/0039).

    >>> from onewhole.statements.reading import read_statement
    >>> also_right(read_statement("round 450 to hundreds")).counts
    (4, 0, 0)
    """
    return statement.low if isinstance(statement, Rounding) and statement.tie else None


def written_usually(asked: Expression) -> Quantity:
    """Return the amount of an expression in the pieces of its numbers, nothing overfull.

    Raises NotOnLadderError as :func:`answer` does.
    """
    found = _written(value(asked), kind(asked), quantities(asked))
    time = time_asked(asked)
    return found if time is None else on_clock(found, time)


def _written(amount: Fraction, measured: Kind, numbers: tuple[Quantity, ...]) -> Quantity:
    found = [quantity.ladder for quantity in numbers if quantity.kind is measured]
    if prices := [ladder for ladder in found if ladder.mark == DOLLAR]:
        return _price(amount, reduce(joined, prices))
    for ladder in (reduce(joined, found), *_finer(found, measured)):
        try:
            return usual(ladder, amount)
        except NotOnLadderError:
            continue
    if measured is Kind.NUMBER:
        return usual(mixed(amount.denominator, _mark(found)), amount)
    msg = f"the answer, a {measured}, is no whole number of the smallest unit"
    raise NotOnLadderError(msg, remedy="Change the numbers so that it comes out even.")


def _price(amount: Fraction, ladder: Ladder) -> Quantity:
    """Write an amount of dollars as the prices of a problem are written, with cents where it has some.

    >>> _price(Fraction(5, 2), decimal(1, 0, DOLLAR)).counts
    (2, 5, 0)
    """
    for one in (ladder, decimal(1, CENT_PLACES, DOLLAR)):
        try:
            return usual(one, amount)
        except NotOnLadderError:
            continue
    below = floor(amount * TEN**CENT_PLACES)
    low, high = (
        f"${cents // TEN**CENT_PLACES}.{cents % TEN**CENT_PLACES:02}" for cents in (below, below + 1)
    )
    msg = f"the answer is between {low} and {high}, and there is no price between them"
    raise NotOnLadderError(msg, remedy="Change the numbers so that it comes out in whole cents.")


def _mark(found: list[Ladder]) -> str:
    """Return the unit that one of the numbers has: 1 1/2 x 2 1/2 ft are feet."""
    return next((ladder.mark for ladder in found if ladder.mark), "")


def _finer(found: list[Ladder], measured: Kind) -> Iterator[Ladder]:
    """Yield ladders that a product or a quotient may need: more decimals, every unit of a measure."""
    if all(ladder.style in {Style.PLACES, Style.DECIMAL} for ladder in found):
        yield decimal(1, sum(ladder.after for ladder in found), _mark(found))
    if measured is not Kind.NUMBER:
        yield measure(*(unit.mark for unit in MEASURES if unit.kind is measured))
