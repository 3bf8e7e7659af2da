"""A problem worked the way a class was taught."""

from onewhole.statements.statement import Question, Statement
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.form import ANY_FORM, FormWanted, led_to
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.questions import DoesNotSuitError, work_as_taught
from onewhole.working.taught import AsTaught, Taught, all_ways
from onewhole.working.way import NamedWay
from onewhole.working.work import work
from onewhole.working.working import Working


def as_taught(statement: Statement, taught: AsTaught, wanted: FormWanted = ANY_FORM) -> Working | None:
    """Return the working by the taught way, or its partner for the other operation, or one that suits.

    It goes on to the form that is wanted. None for what is not worked line by line, such as 3 x 2/5.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> as_taught(read_statement("2 4/5 + 1 3/5"), REGROUP_FIRST).strategy
    'units_apart'
    """
    try:
        working = (
            work_as_taught(statement, taught)
            if isinstance(statement, Question)
            else work(statement, _way(statement, all_ways(taught)))
        )
    except (DoesNotSuitError, NotWorkedError):
        return None
    return led_to(working, wanted)


def _way(statement: Statement, ways: Taught) -> NamedWay:
    """Return the taught way for what is no question: to divide where groups are asked for."""
    return (isinstance(statement, WholeGroups) and ways.quotient) or ways.strategy
