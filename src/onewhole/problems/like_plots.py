"""Questions like one about a line plot: the same is asked of other measurements."""

from collections.abc import Iterator
from fractions import Fraction
from itertools import islice, permutations

from onewhole.errors import OnewholeError
from onewhole.statements.line_plot import Among, LinePlot, PlotQuestion

#: So many orders of the counts are tried on each axis, and so many axes, each some places further on.
ORDERS, AXES = 24, 16


def like_plots(asked: PlotQuestion) -> Iterator[PlotQuestion]:
    """Yield the question about plots whose counts stand in another order, on axes further on.

    >>> from onewhole.statements.reading import read_statement
    >>> first = next(like_plots(read_statement("plot 1/4: 2, 2/4: 3, 3/4: 1; total")))
    >>> [count for _, count in first.plot.marks], first.plot.marks[0][0].counts
    ([2, 1, 3], (None, 2))
    """
    counts = [count for _, count in asked.plot.marks]
    orders = list(dict.fromkeys(islice(permutations(counts), ORDERS)))
    for turn in range(len(orders) * AXES):
        further = turn % AXES + 1
        order = orders[(turn + turn // AXES + 1) % len(orders)]
        found = _moved(asked, Fraction(further, asked.plot.pieces), order)
        if found is not None:
            yield found


def _moved(asked: PlotQuestion, by: Fraction, counts: tuple[int, ...]) -> PlotQuestion | None:
    """Move every value of a question on, with other counts; None where nothing is asked then."""
    plot, among = asked.plot, asked.among
    values = (plot.named(value.value + by) for value, _ in plot.marks)
    beside = None if among is None else Among(among.bound, plot.named(among.value.value + by))
    try:
        return PlotQuestion(LinePlot(tuple(zip(values, counts, strict=True))), asked.asks, beside)
    except OnewholeError:
        return None
