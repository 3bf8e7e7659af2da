"""Working an expression with several operations, one after another; each leans on the working of its own."""

from collections.abc import Callable, Iterator

from msgspec import Struct

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.statements.clock_sides import has_clock
from onewhole.statements.expression import (
    Expression,
    InBrackets,
    Over,
    Quotient,
    Sum,
    Term,
    Times,
    WithRemainder,
    value,
)
from onewhole.statements.statement import Question, asked_quantities
from onewhole.working.fact import Fact, hard_difference, hard_sum
from onewhole.working.line import Line, without_repeats
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.products.work_product import factors
from onewhole.working.quotients.remainder_shared import RemainderForm, remainder_shared
from onewhole.working.quotients.work_quotient import divided
from onewhole.working.reasons.stepping import BarDivides, StepBegins, StepDone, TimesEachPart
from onewhole.working.steps.next_step import NextStep, next_step, places
from onewhole.working.working import Working

#: Sums and differences up to here are worked in one line. Common practice, no source.
AT_ONCE = 100

#: Works a question of one operation.
WorkOne = Callable[[Question], Working]


class StepsWorked(Struct, frozen=True):
    """The lines of several steps, and what they come to."""

    lines: tuple[Line, ...]
    answer: Quantity | WithRemainder


def has_steps(asked: Expression) -> bool:
    """Say whether an expression has several operations that are not all sums and differences in a row.

    >>> from onewhole.statements.reading import read_expression
    >>> [has_steps(read_expression(typed)) for typed in ("2 + 3 x 4", "2 + 3 - 4", "3 x 4", "10 - (3 + 2)")]
    [True, False, False, True]
    """
    match asked:
        case Quantity() | WithRemainder():
            return False
        case Sum() | Times() | Quotient() | Over() | InBrackets():
            flat = asked_quantities(Question(asked)) is not None
            one = factors(asked) is not None or divided(asked) is not None
            return not flat and not one and not has_clock(asked)


def times_each_part(asked: Expression) -> Line | None:
    """Write a number times a sum as that number times each part; None for anything else.

    >>> from onewhole.notations.text import text
    >>> from onewhole.statements.reading import read_expression
    >>> text(times_each_part(read_expression("3 x (20 + 7)")).says)
    '3 x 20 + 3 x 7'
    """
    if (found := times_sum(asked)) is None:
        return None
    times, terms = found
    says = Sum(tuple([Term(Times(times, term.part), term.taken) for term in terms]))
    return Line(says, TimesEachPart(times))


def times_sum(asked: Expression) -> tuple[Quantity, tuple[Term, ...]] | None:
    """Return a number and the terms of the sum of numbers that it is multiplied by; else None."""
    match asked:
        case Times(Quantity() as times, Sum(terms)) | Times(Sum(terms), Quantity() as times):
            return (times, terms) if all(isinstance(term.part, Quantity) for term in terms) else None
        case _:
            return None


def work_steps(asked: Expression, work_one: WorkOne, *first: Line) -> StepsWorked:
    """Work an expression step by step, after ``first`` lines that write it in another way.

    Raises NotWorkedError where more is taken away than there is, and where something is left over in dividing
    that is no part of a number that could be worked on with.
    """
    lines: list[Line] = [Line(asked), *first]
    now: Expression = asked
    for line in first:
        assert isinstance(line.says, Expression), "another way to write an amount is one"
        now = line.says
    for divides, line in _bars_divide(now):
        lines.append(line)
        now = divides
    while (step := next_step(now)) is not None:
        found = tuple(_lines(step, work_one, last=step.part == now))
        lines += found
        says = found[-1].says
        assert isinstance(says, Expression), "a step says an amount"
        now = says
    if not isinstance(now, Quantity | WithRemainder):
        msg = "this is not worked line by line"
        raise NotWorkedError(msg, remedy="Write one such as 2 + 3 x 4 or 3 x (20 + 7).")
    return StepsWorked(without_repeats(lines), now)


def _lines(step: NextStep, work_one: WorkOne, *, last: bool) -> Iterator[Line]:
    """Yield the lines of one step, each written in its place; the last has the result in it."""
    if isinstance(step.part, Sum) and value(step.part) < 0:
        msg = "on the way more is taken away than there is"
        raise NotWorkedError(msg, remedy="Put what is added first. Below zero comes in grade 6.")
    inner = work_one(Question(step.part))
    assert isinstance(inner.answer, Quantity | WithRemainder), "a question is answered by a number"
    more = () if last else _shared(inner.answer)
    if len(inner.lines) <= 2 or _at_once(step):
        yield Line(step.put(inner.answer), StepDone(step.why, step.part, inner.answer), facts=_facts(step))
    else:
        for at, line in enumerate(inner.lines[1 : -1 if more else None]):
            assert isinstance(line.says, Expression), "a line of a question says an amount"
            assert line.because is not None, "every line but the first has a reason"
            because = line.because if at else StepBegins(step.why, step.part, line.because)
            yield Line(step.put(line.says), because, line.aside, line.facts)
    for line in more:
        assert isinstance(line.says, Expression), "a line of a question says an amount"
        yield Line(step.put(line.says), line.because, line.aside, line.facts)


def bars_as_divisions(asked: Expression) -> Expression:
    """Write each fraction whose top or bottom is still to be worked as a quotient; all else stays.

    >>> from onewhole.notations.text import text
    >>> from onewhole.statements.reading import read_expression
    >>> text(bars_as_divisions(read_expression("3 + (20 - 8)/4")))
    '3 + (20 - 8) ÷ 4'
    """
    for says, _ in _bars_divide(asked):
        asked = says
    return asked


def _bars_divide(asked: Expression) -> Iterator[tuple[Expression, Line]]:
    """Yield an expression with one bar more written as a quotient, and its line, until none is left."""
    while (found := _bar_divides(asked)) is not None:
        asked, because = found
        yield asked, Line(asked, because)


def _bar_divides(asked: Expression) -> tuple[Expression, BarDivides] | None:
    """Write the first fraction whose top or bottom is still to be worked as a quotient."""
    if isinstance(asked, Over):
        divided = Quotient(asked.top, asked.bottom)
        return divided, BarDivides(divided)
    for place in places(asked):
        if (found := _bar_divides(place.part)) is not None:
            return place.put(found[0]), found[1]
    return None


def _shared(found: Quantity | WithRemainder) -> tuple[Line, ...]:
    """Return the lines that share what is left over, so that a number can be worked on with."""
    if isinstance(found, Quantity):
        return ()
    shared = remainder_shared(found, RemainderForm.FRACTION)
    if shared is None:
        msg = "something is left over in dividing, and more is to be done with the number"
        raise NotWorkedError(msg, remedy="Change the numbers so that it comes out even.")
    return shared.lines


def _at_once(step: NextStep) -> bool:
    """Say whether a sum or a difference of two small whole numbers is worked in one line."""
    match step.part:
        case Sum((Term(Quantity() as first), Term(Quantity() as second))):
            plain = first.ladder.style is Style.PLACES is second.ladder.style
            return plain and max(first.value, second.value) <= AT_ONCE
        case _:
            return False


def _facts(step: NextStep) -> tuple[Fact, ...]:
    match step.part:
        case Sum((Term(Quantity() as first), Term(Quantity() as second, taken))) if (
            first.plain and second.plain
        ):
            hard = hard_difference if taken else hard_sum
            return tuple(fact for fact in (hard(first.parts, second.parts),) if fact)
        case _:
            return ()
