"""Working what is asked of a line plot: it is read first, and then worked as what it leads to.

Source: 4.MD.B.4 (adding and subtracting data of a line plot; the longest less the shortest) and 5.MD.B.2
(what each has if the total is shared out equally), CCSSM (2010).
"""

from typing import assert_never

from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import WithRemainder
from onewhole.statements.line_plot import PlotAsk, PlotQuestion
from onewhole.statements.statement import Question
from onewhole.working.line import Line
from onewhole.working.questions import work_beside
from onewhole.working.quotients.remainder_shared import as_fraction
from onewhole.working.reasons.dividing import DividedIsFraction
from onewhole.working.reasons.plotting import (
    EndsRead,
    HighestStack,
    InPlot,
    MarksCounted,
    TotalShared,
    ValuesTaken,
)
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategy import Strategy
from onewhole.working.way import NamedWay
from onewhole.working.working import Working

KEY = "read_the_plot"


def work_plot(asked: PlotQuestion, taught: NamedWay) -> Working:
    """Read a line plot and work what is asked line by line. Raises NotWorkedError as a question does.

    >>> from onewhole.statements.reading import read_statement
    >>> work_plot(read_statement("plot 1/4: 2, 1/2: 3, 3/4: 1; total"), REGROUP_FIRST).answer.counts
    (2, 3)
    """
    says = asked.leads_to
    lines = [Line(asked), Line(says, _why(asked))]
    if isinstance(says, Quantity):
        return Working(KEY, asked, tuple(lines), says)
    # What is read from a plot stands in no columns: its lines are those of the same numbers side by side.
    working = work_beside(Question(says), taught if isinstance(taught, Strategy) else REGROUP_FIRST)
    found = working.answer
    lines += working.lines[1:]
    if isinstance(found, WithRemainder) and found.by is not None:
        # What is left over is shared out too: 5.MD.B.2 asks for the amount that each has.
        if not found.quotient.value:
            last = _less_than_one_each(found.left, found.by)
            return Working(
                KEY,
                asked,
                (*lines[:-1], Line(last, DividedIsFraction(found.left.parts, found.by.parts))),
                last,
            )
        shared = as_fraction(found.quotient, found.left, found.by)
        return Working(KEY, asked, (*lines, *shared.lines), shared.found())
    return Working(KEY, asked, tuple(lines), found)


def _less_than_one_each(total: Quantity, by: Quantity) -> Quantity:
    """Write a total that is less than one for each as a fraction of the two numbers."""
    return Quantity(mixed(by.parts, total.ladder.mark), (None, total.parts))


def plot_found(asked: PlotQuestion) -> Quantity:
    """Return what a line plot is asked for, as its working writes it. Raises NotWorkedError.

    >>> from onewhole.statements.reading import read_statement
    >>> plot_found(read_statement("plot 1/4: 2, 1/2: 3; most")).counts
    (None, 1)
    """
    found = work_plot(asked, REGROUP_FIRST).answer
    assert isinstance(found, Quantity), "a line plot is answered by a number"
    return found


def _why(asked: PlotQuestion) -> InPlot:
    at = asked.looked_at
    match asked.asks:
        case PlotAsk.COUNT:
            return MarksCounted(at)
        case PlotAsk.TOTAL:
            return ValuesTaken(at)
        case PlotAsk.SHARE:
            return TotalShared(asked.plot.many)
        case PlotAsk.MOST:
            return HighestStack(*at[0])
        case PlotAsk.SPREAD:
            return EndsRead(at[0][0], at[1][0])
        case _:
            assert_never(asked.asks)
