"""Line plots of a page: each stands once above the problems that are about it."""

from collections.abc import Iterator, Sequence
from itertools import groupby

from msgspec import Struct

from onewhole.problems.problem import Problem
from onewhole.sheets.document import Instruction
from onewhole.statements.line_plot import LinePlot, PlotQuestion


class SharedPlot(Struct, frozen=True):
    """A line plot and the labels of the problems about it, in one text: 3, or 3-5."""

    plot: LinePlot
    labels: str


def shared_plots(items: Sequence[Instruction | Problem]) -> Iterator[tuple[str, SharedPlot]]:
    r"""Yield each line plot with the label of the first problem about it; those that follow share it.

    >>> from onewhole.sheets.reading import read_sheet
    >>> typed = "1. 9 - 4\n2. plot 3: 1, 4: 2; count\n3. plot 3: 1, 4: 2; most\n4. plot 3: 2, 4: 2; total"
    >>> [(label, shared.labels) for label, shared in shared_plots(read_sheet(typed).items)]
    [('2', '2–3'), ('4', '4')]
    """
    for plot, run in groupby(items, key=_plot):
        if plot is None:
            continue
        first, *_, last = (*_labels(run),) * 2
        yield first, SharedPlot(plot, first if first == last else f"{first}\N{EN DASH}{last}")


def _plot(item: Instruction | Problem) -> LinePlot | None:
    asked = item.statement if isinstance(item, Problem) else None
    return asked.plot if isinstance(asked, PlotQuestion) else None


def _labels(run: Iterator[Instruction | Problem]) -> Iterator[str]:
    return (item.label for item in run if isinstance(item, Problem))
