"""Working any statement by a strategy."""

from typing import assert_never

from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    Statement,
)
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.alone import work_named
from onewhole.working.comparing import work_comparison
from onewhole.working.factor_question import work_factor_question
from onewhole.working.line_plot import work_plot
from onewhole.working.listing import work_listing
from onewhole.working.missing import work_missing
from onewhole.working.ordering import work_ordering
from onewhole.working.questions import work_question
from onewhole.working.rounding import work_rounding
from onewhole.working.strategy import Strategy
from onewhole.working.way import NamedWay
from onewhole.working.whole_groups import work_groups
from onewhole.working.working import Working


def work(statement: Statement, strategy: NamedWay) -> Working:
    """Work any statement line by line: a question, a comparison, an ordering, a missing number, another name.

    Raises DoesNotSuitError or NotWorkedError (see :mod:`onewhole.working.questions`).
    """
    match statement:
        case Question():
            return work_question(statement, strategy)
        case Comparison():
            return work_comparison(statement)
        case Ordering():
            return work_ordering(statement)
        case MissingNumber():
            return work_missing(statement, strategy if isinstance(strategy, Strategy) else None)
        case AnotherName():
            return work_named(statement)
        case Rounding():
            return work_rounding(statement)
        case Listing():
            return work_listing(statement)
        case FactorQuestion():
            return work_factor_question(statement)
        case PlotQuestion():
            return work_plot(statement, strategy)
        case WholeGroups():
            return work_groups(statement, strategy)
        case _:
            assert_never(statement)
