import pytest

from onewhole.statements.reading import read_quantity, read_statement
from onewhole.statements.statement import Relation
from onewhole.working.strategies.table import strategy_named
from onewhole.working.work import work


@pytest.mark.parametrize(
    ("typed", "key", "answer"),
    [
        ("7 2/6 - 3 5/6", "count_up", read_quantity("3 3/6")),
        ("5/6 ? 7/8", "compare", Relation.LESS),
        ("7 2/6 = 6 ?/6", "find_the_missing_number", read_quantity("8")),
    ],
)
def test_every_statement_is_worked(typed: str, key: str, answer: object) -> None:
    """A question by the strategy that is asked for; the others each have their own way."""
    working = work(read_statement(typed), strategy_named("count_up"))
    assert (working.strategy, working.answer, working.statement) == (key, answer, read_statement(typed))
