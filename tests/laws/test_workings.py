"""Every step keeps the meaning, on any ladder, for any strategy; the whole walk is in tests/agreement."""

from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.statements.expression import Expression, Sum, Term
from onewhole.statements.statement import Comparison, MissingNumber, Question, Relation
from onewhole.working.checks import Agreed, Estimate, Undone
from onewhole.working.comparing import work_comparison
from onewhole.working.missing import work_missing
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.questions import for_question, suiting, unsuited, work_question
from onewhole.working.strategies.table import STRATEGIES
from onewhole.working.strategy import Strategy
from onewhole.working.working import Working
from tests.kit.exact import amount, keeps, order
from tests.kit.numbers import amounts_of
from tests.kit.statements import comparisons, missing_numbers
from tests.kit.worked import tried


@st.composite
def flat_questions(draw: st.DrawFn) -> Question:
    """Two to four numbers of one kind, any ladders, never below zero on the way."""
    numbers = amounts_of(draw(st.sampled_from(Kind)))
    terms = [Term(draw(numbers))]
    so_far = amount(terms[0].part)
    for _ in range(draw(st.integers(1, 3))):
        number = draw(numbers)
        taken = so_far >= amount(number) and draw(st.booleans())
        so_far += amount(number) * (-1 if taken else 1)
        terms.append(Term(number, taken))
    return Question(Sum(tuple(terms)))


@given(flat_questions())
def test_every_line_of_every_strategy_keeps_the_amount(question: Question) -> None:
    """Each strategy gives the exact amount by equal lines, or refuses with a reason."""
    wanted = amount(question.asked)
    for strategy in STRATEGIES:
        working = tried(question, strategy)
        if not isinstance(working, Working):
            assert working.why == unsuited(question, strategy)
            continue
        assert unsuited(question, strategy) is None
        assert isinstance(working.answer, Quantity)
        assert amount(working.answer) == wanted
        assert working.lines[0].says == question.asked
        assert working.lines[-1].says == working.answer
        assert all(keeps(line.says, wanted) for line in working.lines)
        assert all(line.because for line in working.lines[1:])
        for line in working.lines:
            assert all(amount(one) == amount(other) for fact in line.facts for one, other in fact.steps)


@given(flat_questions())
def test_no_line_stands_twice(question: Question) -> None:
    """A line that says what the one before it says is not written."""
    for strategy in suiting(question):
        says = [line.says for line in work_question(question, strategy, checked=False).lines]
        assert all(one != other for one, other in pairwise(says))


@given(flat_questions())
def test_every_question_suits_two_roads(question: Question) -> None:
    """There are always two strategies or more, so that every working can be checked by another one."""
    roads = suiting(question)
    assert len(roads) >= 2
    for strategy in STRATEGIES:
        assert for_question(question, strategy) in roads


@given(flat_questions())
def test_every_working_carries_its_three_checks(question: Question) -> None:
    """The estimate holds, undoing leads back to the first number, and a different strategy agrees."""
    wanted = amount(question.asked)
    assert isinstance(question.asked, Sum)
    for strategy in suiting(question):
        estimate, undone, agreed = work_question(question, strategy).checks
        assert isinstance(estimate, Estimate)
        assert isinstance(undone, Undone)
        assert isinstance(agreed, Agreed)
        assert amount(estimate.low) <= wanted <= amount(estimate.high)
        assert {amount(link) for link in undone.links} == {amount(question.asked.terms[0].part)}
        assert agreed.strategy != strategy.key
        assert amount(agreed.answer) == wanted


@given(flat_questions(), st.integers(0, 20))
def test_the_short_forms_hold_nothing_new(question: Question, blank: int) -> None:
    """Brief is full without the asides; faded is brief with the last lines blank and the problem kept."""
    for strategy in suiting(question):
        working = work_question(question, strategy, checked=False)
        brief, faded = working.brief(), working.faded(blank)
        assert [line for line in working.lines if not line.aside] == list(brief)
        assert brief[-1].says == working.answer
        assert len(faded) == len(brief)
        assert faded[0] == brief[0]
        shown = len(brief) - min(blank, len(brief) - 1)
        assert faded == brief[:shown] + (None,) * (len(brief) - shown)


@given(comparisons())
def test_every_line_of_a_comparison_keeps_the_order(asked: Comparison) -> None:
    """Which side is more never changes from line to line, and the last line says it."""
    try:
        working = work_comparison(asked)
    except NotWorkedError:
        assert not isinstance(asked.left, Quantity) or not isinstance(asked.right, Quantity)
        return
    wanted = order(asked)
    assert isinstance(working.answer, Relation)
    assert working.answer.value == wanted
    assert all(keeps(line.says, wanted) for line in working.lines)
    last = working.lines[-1].says
    assert isinstance(last, Comparison)
    assert last.sign == working.answer


@given(missing_numbers(), st.sampled_from(STRATEGIES))
def test_every_line_keeps_the_missing_number(asked: MissingNumber, strategy: Strategy) -> None:
    """The number found makes every line true, from the equation that was asked to the last one."""
    try:
        working = work_missing(asked, strategy)
    except NotWorkedError:
        parts = (asked.rest, *(part for part, _ in asked.beside))
        assert not all(flat(part) for part in parts)
        return
    assert isinstance(working.answer, Quantity)
    found = amount(working.answer)
    assert all(keeps(line.says, found) for line in working.lines)
    assert not working.lines[-1].aside
    assert all(one.says != other.says for one, other in pairwise(working.lines))


def flat(part: Expression) -> bool:
    """Say whether it is one number, or numbers in a row without brackets."""
    terms = part.terms if isinstance(part, Sum) else (Term(part),)
    return all(isinstance(term.part, Quantity) for term in terms)
