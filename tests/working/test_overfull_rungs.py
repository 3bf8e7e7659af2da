"""Numbers that cannot be taken away as they stand: put together first, or refused."""

import pytest

from onewhole.number.quantity import Quantity
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question, meaning
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.questions import suiting, work_question


@pytest.mark.parametrize(
    "typed",
    [
        "2 hundreds 0 tens 50 ones - 2 hundreds 1 ten 5 ones",
        "1 yd 0 ft 40 in - 1 yd 1 ft 2 in",
        "1 5/3 - 2 1/3",
    ],
)
def test_every_strategy_that_suits_reaches_the_amount(typed: str) -> None:
    """No strategy runs out of larger units to open."""
    question = read_statement(typed)
    assert isinstance(question, Question)
    for strategy in suiting(question):
        answer = work_question(question, strategy).answer
        assert isinstance(answer, Quantity)
        assert answer.value == meaning(question)


def test_running_below_zero_is_refused() -> None:
    """From left to right 2 - 5 + 4 goes below zero, which no fourth grade writes."""
    question = read_statement("2 - 5 + 4")
    assert isinstance(question, Question)
    with pytest.raises(NotWorkedError, match="more is taken away"):
        suiting(question)
