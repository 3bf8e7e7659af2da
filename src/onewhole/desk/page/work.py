"""Work a typed problem line by line."""

from onewhole.errors import InputError
from onewhole.languages.english.unsuited import unsuited
from onewhole.languages.english.words import words_for
from onewhole.notations.sentences.text import text_of
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import AnotherName, Question, Statement
from onewhole.working.alone import joined_in_steps
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.questions import DoesNotSuitError, for_question, suiting
from onewhole.working.strategies.table import USUAL
from onewhole.working.way import NamedWay
from onewhole.working.ways import way_named
from onewhole.working.work import work as worked
from onewhole.working.working import Working
from onewhole.writers.json_lines import Json, working_object
from onewhole.writers.plain import working_lines


class ToldUnsuitedError(DoesNotSuitError):
    """A strategy does not suit a problem, with the reason in a sentence and the strategies that do suit."""

    def __init__(self, question: Question, refused: DoesNotSuitError) -> None:
        """Put the reason into words."""
        strategy = way_named(refused.strategy)
        InputError.__init__(
            self,
            f"“{strategy.name}” does not suit this problem: {text_of(unsuited(refused.why))}",
            remedy=f"Strategies that suit: {', '.join(one.key for one in suiting(question))}.",
        )
        self.strategy = refused.strategy
        self.why = refused.why


def work(problem: str, *, strategy: str | None = None) -> Working:
    """Work a typed problem by a strategy, every line checked.

    ``strategy`` is a key (``regroup_first``) or its usual name; None takes the way that is taught first and
    suits. Raises ReadingError with line and column for text that is no problem, UnknownStrategyError,
    DoesNotSuitError with the reason why a strategy does not suit, NotWorkedError for what is not worked.

    >>> from onewhole.notations.text import text
    >>> text(work("7 2/6 - 3 5/6").answer)
    '3 3/6'
    """
    statement = read_statement(problem)
    try:
        return worked(statement, _chosen(statement, strategy))
    except DoesNotSuitError as unsuited:
        if isinstance(statement, Question):
            raise ToldUnsuitedError(statement, unsuited) from None
        raise
    except NotWorkedError as refused:
        raise _at_its_start(refused) from None


def work_every_way(problem: str) -> tuple[Working, ...]:
    """Work a typed problem by every strategy that suits it, in the order in which they are offered.

    >>> [working.strategy for working in work_every_way("2 4/5 + 1 3/5")]
    ['to_fractions', 'units_apart', 'make_a_whole', 'jump_on']
    """
    statement = read_statement(problem)
    if isinstance(statement, AnotherName):
        in_steps = joined_in_steps(statement)
        return (worked(statement, USUAL), *([in_steps] if in_steps else []))
    if not isinstance(statement, Question):
        return (worked(statement, USUAL),)
    try:
        return tuple(worked(statement, strategy) for strategy in suiting(statement)) or (work(problem),)
    except NotWorkedError as refused:
        raise _at_its_start(refused) from None


def _at_its_start(refused: NotWorkedError) -> NotWorkedError:
    """Say where a problem stands that can be read and is not worked: all of it is meant."""
    return NotWorkedError(refused.what, remedy=refused.remedy, line=1, column=1)


def told(working: Working, whole: str = "whole", *, brief: bool = False, blank: int = 0) -> tuple[str, ...]:
    """Return a working as plain lines (see :func:`onewhole.writers.plain.working_lines`)."""
    return working_lines(working, words_for(whole), brief=brief, blank=blank)


def as_object(working: Working, whole: str = "whole") -> Json:
    """Return a working as a JSON object."""
    return working_object(working, words_for(whole))


def _chosen(statement: Statement, strategy: str | None) -> NamedWay:
    if strategy is not None:
        return way_named(strategy)
    return for_question(statement, USUAL) if isinstance(statement, Question) else USUAL
