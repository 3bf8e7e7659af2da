"""Words read back to the same statement."""

import pytest
from hypothesis import example, given

from onewhole.languages.english.speech import say
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question, Statement
from tests.kit.numbers import GRADE_4, quantities
from tests.kit.spoken_reading import unsay, unsay_expression
from tests.kit.statements import any_expressions, every_question, plain_questions, statements

DENOMINATORS = (*range(2, 13), *(d for d in GRADE_4 if d > 12))


@given(quantities())
def test_a_quantity_reads_back(quantity: Quantity) -> None:
    """Every quantity as the reader makes it."""
    assert unsay_expression(say(quantity)) == quantity


@given(any_expressions())
def test_an_expression_reads_back(expression: Expression) -> None:
    """Brackets are said where the tree needs them."""
    assert unsay_expression(say(expression)) == expression


@example(read_statement("round 2 0/1 mi to the nearest mile"))
@example(read_statement("round 0/1 mi to the nearest mile"))
@given(statements())
def test_a_statement_reads_back(statement: Statement) -> None:
    """Questions, comparisons, and equations with a number missing."""
    assert unsay(say(statement)) == statement


@given(plain_questions())
def test_a_plain_question_reads_back(question: Question) -> None:
    """One operation on two numbers of any writing."""
    assert unsay(say(question)) == question


@pytest.mark.parametrize("denominator", DENOMINATORS)
def test_every_small_problem_reads_back(denominator: int) -> None:
    """Every sum and difference of numbers with wholes up to 3; of hundredths, below 1."""
    for question in every_question(denominator, wholes=3 if denominator <= 12 else 0):
        assert unsay(say(question)) == question


@given(statements())
def test_words_are_words(statement: Statement) -> None:
    """Nothing but small letters, hyphens and the rest after one hundred is said."""
    said = say(statement)
    assert set(said) <= set("abcdefghijklmnopqrstuvwxyz-, ")
    assert said == " ".join(said.split())
