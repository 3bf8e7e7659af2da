"""Working a question: a sum or difference by a strategy, pair by pair, or a product by a way to multiply."""

from collections.abc import Iterable, Iterator
from contextlib import suppress
from functools import lru_cache
from itertools import accumulate, takewhile
from operator import mul

from onewhole.errors import InputError
from onewhole.number.ladder import joined
from onewhole.number.quantity import Quantity, counted_in_parts, trimmed, usual_in_parts
from onewhole.statements.expression import Expression, Sum, Term, WithRemainder
from onewhole.statements.statement import Question, asked_quantities
from onewhole.working.alone import work_alone
from onewhole.working.checks import Check, agreement, estimated, undone
from onewhole.working.clock import clock_ways, on_the_clock
from onewhole.working.line import Line, without_repeats
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.pair_state import PairState
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.product_way import ProductWay
from onewhole.working.products.table import PRODUCT_WAYS
from onewhole.working.products.work_product import factors, ways_to_multiply, work_product
from onewhole.working.quotients.quotient_way import QuotientWay
from onewhole.working.quotients.work_quotient import divided, ways_to_divide, work_quotient
from onewhole.working.reasons.regrouping import WrittenTogether
from onewhole.working.reasons.taking import InAll, SoFar
from onewhole.working.reasons.unsuited import OtherOperation, Unsuited
from onewhole.working.steps.ways import STEP_BY_STEP, STEP_WAYS, TIMES_EACH_PART
from onewhole.working.steps.work_steps import (
    StepsWorked,
    has_steps,
    times_each_part,
    work_steps,
)
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.strategies.count_up import COUNT_UP
from onewhole.working.strategies.jump_on import JUMP_ON
from onewhole.working.strategies.moves import as_found
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.same_units import Counted, Signed, common_ladder, same_units
from onewhole.working.strategies.table import STRATEGIES, strategy_named
from onewhole.working.strategies.to_fractions import TO_FRACTIONS
from onewhole.working.strategies.units_apart import UNITS_APART
from onewhole.working.strategy import Strategy, fits
from onewhole.working.taught import AsTaught, all_ways
from onewhole.working.way import NamedWay
from onewhole.working.working import Working

PAIR = 2

#: Strategies that check another one, the most different first; two of them suit every question.
SECOND_ROADS = (COUNT_UP, JUMP_ON, REGROUP_FIRST, UNITS_APART)


class DoesNotSuitError(InputError):
    """A strategy does not suit a problem; ``why`` is the reason with its numbers."""

    def __init__(self, strategy: NamedWay, why: Unsuited) -> None:
        """Keep the strategy and the reason."""
        super().__init__(
            f"“{strategy.name}” does not suit this problem",
            remedy="Choose another strategy, or all of them to see which suit.",
        )
        self.strategy = strategy.key
        self.why = why


def unsuited(question: Question, strategy: NamedWay) -> Unsuited | None:
    """Return why a way does not suit a question, or None when it does."""
    if (product := factors(question.asked)) is not None:
        return strategy.unsuited(product) if isinstance(strategy, ProductWay) else OtherOperation()
    if (quotient := divided(question.asked)) is not None:
        return strategy.unsuited(quotient) if isinstance(strategy, QuotientWay) else OtherOperation()
    if has_steps(question.asked):
        return None if strategy in ways_in_steps(question.asked) else OtherOperation()
    if not isinstance(strategy, Strategy):
        return OtherOperation()
    ways = clock_ways(question.asked)
    if ways and strategy.key not in ways:
        return OtherOperation()
    try:
        _work(same_units(_signed(question)), strategy)
    except DoesNotSuitError as error:
        return error.why
    return None


def suiting(question: Question) -> tuple[NamedWay, ...]:
    """Return the strategies that suit a question, in the order in which they are offered.

    Those that a teacher would not use for such numbers are left out: no jumps along a line up to 1,000,000.

    >>> from onewhole.statements.reading import read_statement
    >>> [strategy.key for strategy in suiting(read_statement("4 - 1 3/8"))]
    ['regroup_first', 'wholes_first', 'to_fractions', 'count_up', 'equal_shift']
    >>> [strategy.key for strategy in suiting(read_statement("4006 - 1278"))]
    ['columns', 'regroup_first']
    """
    if (product := factors(question.asked)) is not None:
        return ways_to_multiply(product)
    if (quotient := divided(question.asked)) is not None:
        return ways_to_divide(quotient)
    if has_steps(question.asked):
        return ways_in_steps(question.asked)
    signed = _signed(question)
    if len(signed) == 1:
        return (UNITS_APART,)
    ladder = common_ladder(signed)
    offered = (strategy for strategy in STRATEGIES if strategy.offered(ladder))
    return tuple(strategy for strategy in offered if unsuited(question, strategy) is None)


def for_question(question: Question, taught: Strategy) -> NamedWay:
    """Return the taught strategy, or its partner for the other operation, or the first that suits.

    A class taught to regroup first adds wholes and fractions apart; one that works in columns regroups first
    where there are no columns.
    """
    if (product := factors(question.asked)) is not None:
        return _first_way(product)
    if (quotient := divided(question.asked)) is not None:
        return ways_to_divide(quotient)[0]
    if has_steps(question.asked):
        return STEP_BY_STEP
    if len(_signed(question)) == 1:
        return taught
    return strategy_named(work_as_taught(question, taught, checked=False).strategy)


def work_as_taught(question: Question, taught: AsTaught, *, checked: bool = True) -> Working:
    """Work a question by the taught way, or its partner for the other operation, or one that suits.

    A strategy that a teacher would not use for such numbers gives way too. Raises NotWorkedError as
    :func:`work_question` does.

    >>> from onewhole.statements.reading import read_statement
    >>> work_as_taught(read_statement("2 4/5 + 1 3/5"), REGROUP_FIRST).strategy
    'units_apart'
    """
    ways = all_ways(taught)
    if (product := factors(question.asked)) is not None:
        return work_product(question, product, ways.times(product) or _first_way(product), checked=checked)
    if (quotient := divided(question.asked)) is not None:
        way = ways.divides(quotient) or ways_to_divide(quotient)[0]
        return work_quotient(question, quotient, way, checked=checked)
    if has_steps(question.asked):
        return _in_steps(question, STEP_BY_STEP, ways.strategy, checked=checked)
    signed = _signed(question)
    if len(signed) == 1:
        return work_alone(question, signed[0][0])
    return _worked_first(question, signed, ways.strategy, checked=checked)


def _worked_first(question: Question, signed: Signed, taught: Strategy, *, checked: bool) -> Working:
    """Work a sum or difference by the first strategy that suits, the taught one before all others."""
    counted = same_units(signed)
    ladder = counted[0][0][0].ladder
    partner = strategy_named(taught.partner)
    first = map(strategy_named, clock_ways(question.asked))
    for strategy in (*first, taught, partner, strategy_named(partner.partner), *STRATEGIES):
        if not strategy.offered(ladder):
            continue
        try:
            return _working(question, signed, counted, strategy, checked=checked)
        except DoesNotSuitError:
            continue
    raise DoesNotSuitError(taught, OtherOperation())


def ways_in_steps(asked: Expression) -> tuple[NamedWay, ...]:
    """Return the ways that suit an expression with several operations.

    >>> from onewhole.statements.reading import read_expression
    >>> [way.key for way in ways_in_steps(read_expression("3 x (20 + 7)"))]
    ['step_by_step', 'times_each_part']
    """
    return STEP_WAYS if times_each_part(asked) else (STEP_BY_STEP,)


def steps_found(asked: Expression) -> Quantity | WithRemainder:
    """Return what an expression with several operations comes to, as its working writes it.

    Raises NotWorkedError as :func:`work_question` does.

    >>> from onewhole.statements.reading import read_expression
    >>> steps_found(read_expression("2 + 3 x 4")).parts
    14
    """
    return _steps_worked(asked, REGROUP_FIRST).answer


def work_beside(question: Question, taught: Strategy) -> Working:
    """Work a part of a longer working: its numbers stand side by side, never in columns."""
    working = work_as_taught(question, REGROUP_FIRST if taught == COLUMNS else taught, checked=False)
    if working.strategy != COLUMNS.key:
        return working
    return work_as_taught(question, REGROUP_FIRST, checked=False)


@lru_cache(maxsize=1024)
def _steps_worked(asked: Expression, taught: Strategy, way: NamedWay = STEP_BY_STEP) -> StepsWorked:
    first = times_each_part(asked) if way == TIMES_EACH_PART else None

    return work_steps(asked, lambda question: work_beside(question, taught), *filter(None, (first,)))


def _in_steps(question: Question, way: NamedWay, taught: Strategy, *, checked: bool) -> Working:
    """Work an expression with several operations; a second way that suits must agree."""
    worked = _steps_worked(question.asked, taught, way)
    others = (other for other in ways_in_steps(question.asked) if checked and other != way)
    reached = ((other.key, _steps_worked(question.asked, taught, other).answer) for other in others)
    checks = tuple(agreement(way.key, worked.answer, reached))
    return Working(way.key, question, worked.lines, worked.answer, checks)


def _first_way(product: ProductState) -> ProductWay:
    """Return the first way to multiply two numbers that a teacher would use; one that only suits, else."""
    ways = ways_to_multiply(product) or tuple([way for way in PRODUCT_WAYS if way.unsuited(product) is None])
    if not ways:
        msg = "a part of this measure or price is no whole number of its smallest unit"
        remedy = "Choose numbers that come out even, such as 3/4 x 2 ft or 1 1/2 x $4, or leave the unit off."
        raise NotWorkedError(msg, remedy=remedy)
    return ways[0]


def work_question(question: Question, strategy: NamedWay, *, checked: bool = True) -> Working:
    """Work a sum, a difference or a product of quantities line by line.

    Raises DoesNotSuitError with the reason, NotWorkedError for anything else, and for a sum that runs below
    zero on the way (2 - 5 + 4).

    >>> from onewhole.statements.reading import read_statement
    >>> working = work_question(read_statement("7 2/6 - 3 5/6"), strategy_named("regroup_first"))
    >>> working.answer.counts, len(working.brief())
    ((3, 3), 3)
    """
    if (product := factors(question.asked)) is not None:
        way = strategy if isinstance(strategy, ProductWay) else _first_way(product)
        if why := way.unsuited(product):
            raise DoesNotSuitError(way, why)
        return work_product(question, product, way, checked=checked)
    if (quotient := divided(question.asked)) is not None:
        divides = strategy if isinstance(strategy, QuotientWay) else ways_to_divide(quotient)[0]
        if why := divides.unsuited(quotient):
            raise DoesNotSuitError(divides, why)
        return work_quotient(question, quotient, divides, checked=checked)
    if has_steps(question.asked):
        stepped = strategy if strategy in STEP_WAYS else STEP_BY_STEP
        if stepped not in ways_in_steps(question.asked):
            raise DoesNotSuitError(stepped, OtherOperation())
        taught = strategy if isinstance(strategy, Strategy) else REGROUP_FIRST
        return _in_steps(question, stepped, taught, checked=checked)
    if not isinstance(strategy, Strategy):
        raise DoesNotSuitError(strategy, OtherOperation())
    signed = _signed(question)
    if len(signed) == 1:
        return work_alone(question, signed[0][0])
    return _working(question, signed, same_units(signed), strategy, checked=checked)


def _working(
    question: Question, signed: Signed, counted: Counted, strategy: Strategy, *, checked: bool
) -> Working:
    ways = clock_ways(question.asked)
    if ways and strategy.key not in ways:
        raise DoesNotSuitError(strategy, OtherOperation())
    lines, answer = _work(counted, strategy)
    checks = tuple(_checks(signed, counted, strategy, answer)) if checked else ()
    working = Working(strategy.key, question, without_repeats((Line(question.asked), *lines)), answer, checks)
    return on_the_clock(working, question.asked) if ways else working


def _signed(question: Question) -> Signed:
    signed = asked_quantities(question)
    if signed is None:
        msg = "only sums, differences, products and quotients of two numbers are worked line by line"
        raise NotWorkedError(msg, remedy="Write one such as 7 2/6 - 3 5/6, 3 x 1 2/5 or 87 / 4.")
    if len(signed) > PAIR and min(accumulate(-n.value if taken else n.value for n, taken in signed)) < 0:
        msg = "from left to right more is taken away than there is"
        raise NotWorkedError(msg, remedy="Add first, then take away: 2 + 4 - 5. Below zero comes in grade 6.")
    return signed


def _work(counted: Counted, strategy: Strategy) -> tuple[tuple[Line, ...], Quantity]:
    """Work from left to right, carrying the numbers still to come at the end of every line."""
    moved, lines = counted
    if len(moved) > 1 and not any(fits(strategy, taken=taken) for _, taken in moved[1:]):
        raise DoesNotSuitError(strategy, OtherOperation())
    first = found = moved[0][0]
    at = 1
    while at < len(moved):
        second, taken = moved[at]
        chosen = strategy if fits(strategy, taken=taken) else strategy_named(strategy.partner)
        more = _added_at_once(moved[at:]) if chosen.at_once else ()
        at += 1 + len(more)
        waiting = tuple(Term(trimmed(quantity), later) for quantity, later in moved[at:])
        pair = _enough_wholes(
            PairState(first, second.on(first.ladder), taken, more=tuple(one.on(first.ladder) for one in more))
        )
        if why := chosen.unsuited(pair):
            raise DoesNotSuitError(chosen, why)
        state = (_steady(chosen) if waiting else chosen).run(pair)
        lines = (*lines, *(_carrying(line, waiting) for line in state.lines))
        found = state.found()
        first = found.on(joined(found.ladder, second.ladder))
    return lines, found


def _added_at_once(coming: Signed) -> tuple[Quantity, ...]:
    """Return the numbers that are added right after the first of those to come, which is added too."""
    return tuple(number for number, _ in takewhile(lambda one: not one[1], coming))[1:]


def _steady(strategy: Strategy) -> Strategy:
    """Return the strategy for a pair that is not the last: what is counted in the smallest unit stays so.

    Otherwise 130 minutes would be written as hours, and at the next number as minutes again.
    """
    return strategy.with_step("usual_form", as_found) if strategy == TO_FRACTIONS else strategy


def _enough_wholes(pair: PairState) -> PairState:
    """Put pieces together first where the first number has too few larger units written: 1 5/3 - 2 1/3."""
    worths = pair.first.ladder.worths
    have, gone = (accumulate(map(mul, side.amounts, worths)) for side in (pair.first, pair.second))
    if not pair.taken or all(a >= b for a, b in zip(have, gone, strict=True)):
        return pair
    full = counted_in_parts(pair.first.ladder, pair.first.parts)
    together = usual_in_parts(full.ladder, full.parts)
    reason = WrittenTogether(together)
    return pair.now(first=full).say(pair.joined(together), reason)


def _carrying(line: Line, waiting: tuple[Term, ...]) -> Line:
    if not waiting or not isinstance(line.says, Expression):
        return line
    terms = line.says.terms if isinstance(line.says, Sum) else (Term(line.says),)
    because = SoFar(line.because.result) if isinstance(line.because, InAll) else line.because
    return Line(Sum((*terms, *waiting)), because, line.aside, line.facts)


def _checks(signed: Signed, counted: Counted, strategy: Strategy, answer: Quantity) -> Iterable[Check]:
    yield estimated(counted[0], answer)
    yield undone(signed, answer)
    yield from agreement(strategy.key, answer, _second_roads(counted, strategy))


def _second_roads(counted: Counted, strategy: Strategy) -> Iterator[tuple[str, Quantity]]:
    for other in SECOND_ROADS:
        if other.key != strategy.key:
            with suppress(DoesNotSuitError):
                yield other.key, _work(counted, other)[1]
