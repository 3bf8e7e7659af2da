"""What is asked of a line plot, seen as a story: the measurements stand on the plot."""

from onewhole.problems.story_question import Asks, StoryQuestion
from onewhole.statements.line_plot import PlotAsk, PlotQuestion

_ASKS = {
    (PlotAsk.COUNT, False): Asks.PLOT_COUNT,
    (PlotAsk.COUNT, True): Asks.PLOT_SOME,
    (PlotAsk.TOTAL, False): Asks.PLOT_TOTAL,
    (PlotAsk.TOTAL, True): Asks.PLOT_PART,
    (PlotAsk.SHARE, False): Asks.PLOT_SHARE,
    (PlotAsk.MOST, False): Asks.PLOT_MOST,
    (PlotAsk.SPREAD, False): Asks.PLOT_SPREAD,
}


def of_plot(asked: PlotQuestion) -> StoryQuestion:
    """Return what a question about a line plot asks.

    >>> from onewhole.statements.reading import read_statement
    >>> of_plot(read_statement("plot 1/4: 2, 1/2 in: 3; count above 1/4")).asks.name
    'PLOT_SOME'
    """
    among = asked.among
    if among is not None:
        return StoryQuestion(_ASKS[asked.asks, True], (among.value,), bound=among.bound)
    finest = max((value for value, _ in asked.plot.found), key=lambda one: one.value.denominator)
    return StoryQuestion(_ASKS[asked.asks, False], (finest,))
