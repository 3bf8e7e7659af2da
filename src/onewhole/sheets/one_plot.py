"""Questions of a composed page about line plots: two to four stand on one plot, as teachers set them."""

from collections.abc import Collection, Sequence

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import OnewholeError
from onewhole.notations.text import text
from onewhole.problems.minutes import minutes_of
from onewhole.problems.needs import needs
from onewhole.sheets.arranging import Hard
from onewhole.sheets.learning import Doubt, settles
from onewhole.statements.line_plot import LinePlot, PlotQuestion
from onewhole.statements.statement import Statement

#: So many questions about one plot at most. Common practice, no source.
MOST_ON_ONE = 4


class _Tells(Struct, frozen=True):
    """What must not change when a question is asked of another plot."""

    settled: int
    regrouping: bool
    minutes: object

    @classmethod
    def of(cls, asked: PlotQuestion, open_doubts: Sequence[Doubt]) -> "_Tells":
        wanted = needs(asked)
        return cls(settles(asked, open_doubts), wanted.regrouping, minutes_of(asked, wanted))


def on_one_plot(
    statements: Sequence[Statement], open_doubts: Sequence[Doubt], gone: Collection[str] = ()
) -> tuple[Statement, ...]:
    """Return the problems of a page with questions about line plots in twos to fours on one plot.

    A question is asked of the plot of one before it where it has an answer there, tells apart the same, needs
    the same and takes as long; what cannot be, keeps its own plot. None of ``gone``, as typed, is asked.

    >>> from onewhole.statements.reading import read_statement
    >>> typed = ("plot 1/4: 2, 2/4: 1; total", "plot 1/8: 1, 2/8: 3; most")
    >>> [text(one) for one in on_one_plot([read_statement(one) for one in typed], ())]
    ['plot 1/4: 2, 2/4: 1; find the total of all', 'plot 1/4: 2, 2/4: 1; find the most common value']
    """
    found = list(statements)
    open_places = [at for at, one in enumerate(found) if isinstance(one, PlotQuestion)]
    while open_places:
        first, *others = open_places
        host = found[first]
        assert isinstance(host, PlotQuestion)
        group: list[PlotQuestion] = [host]
        left: list[int] = []
        for at in others:
            own = found[at]
            assert isinstance(own, PlotQuestion)
            asked = _asked_of(own, host.plot) if len(group) < MOST_ON_ONE else None
            fits = asked is not None and asked not in group and text(asked) not in gone
            if asked is None or not fits or _Tells.of(asked, open_doubts) != _Tells.of(own, open_doubts):
                left.append(at)
                continue
            found[at] = asked
            group.append(asked)
        open_places = left
    return tuple(found)


def _asked_of(asked: PlotQuestion, plot: LinePlot) -> PlotQuestion | None:
    """Ask a question of another plot, beside the value at the same place; None where it has no answer."""
    if len(plot.marks) != len(asked.plot.marks):
        return None
    among = asked.among
    if among is not None:
        values = [value for value, _ in asked.plot.marks]
        if among.value not in values:
            return None
        among = replace(among, value=plot.marks[values.index(among.value)][0])
    try:
        return PlotQuestion(plot, asked.asks, among)
    except OnewholeError:
        return None


def beside_each_other(order: Sequence[Hard]) -> tuple[Hard, ...]:
    """Return the same order with the questions about one plot together, where the first of them stands."""
    first: dict[object, int] = {}
    for at, one in enumerate(order):
        first.setdefault(_plot(one, at), at)
    places = sorted(range(len(order)), key=lambda at: (first[_plot(order[at], at)], at))
    return tuple(order[at] for at in places)


def _plot(one: Hard, at: int) -> object:
    return one.statement.plot if isinstance(one.statement, PlotQuestion) else at
