"""Working a question by a strategy, with the refusal handed back instead of raised."""

from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.questions import DoesNotSuitError, work_question
from onewhole.working.strategies.table import STRATEGIES
from onewhole.working.strategy import Strategy
from onewhole.working.working import Working


def question(typed: str) -> Question:
    """Read a question, and nothing but a question."""
    found = read_statement(typed)
    assert isinstance(found, Question), typed
    return found


def tried(asked: Question, strategy: Strategy, *, checked: bool = True) -> Working | DoesNotSuitError:
    """Work it, or hand back why the strategy does not suit."""
    try:
        return work_question(asked, strategy, checked=checked)
    except DoesNotSuitError as refused:
        return refused


def all_workings(typed: str) -> dict[str, Working]:
    """Every strategy that suits, by its key."""
    found = {strategy.key: tried(question(typed), strategy) for strategy in STRATEGIES}
    return {key: working for key, working in found.items() if isinstance(working, Working)}
