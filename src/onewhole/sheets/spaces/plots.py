"""Line plots in halves, fourths and eighths: 4.MD.B.4, and sharing their totals: 5.MD.B.2, CCSSM (2010).

The standards name the sizes and an example each, the longest less the shortest and sharing equally; how many
values and marks there are is common practice.
"""

from collections.abc import Iterator

from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

#: Axes on which every number has one denominator, and those that are named as on a ruler.
LIKE = (
    ("1/4", "2/4", "3/4", "1"),
    ("1/8", "2/8", "3/8", "4/8"),
    ("3/8", "4/8", "5/8", "6/8"),
    ("1/2", "1", "1 1/2", "2"),
    ("2 1/4", "2 2/4", "2 3/4", "3"),
    ("1 4/8", "1 5/8", "1 6/8", "1 7/8"),
)
RULED = (
    ("1/4", "3/8", "1/2", "5/8"),
    ("1/2", "5/8", "3/4", "7/8"),
    ("3 1/4", "3 1/2", "3 3/4", "4"),
    ("1 1/8", "1 1/4", "1 3/8", "1 1/2"),
)
#: How many marks may stand above a value.
FEW, MANY = range(5), range(1, 6)


def line_plots(_: Wishes) -> Iterator[ProblemForm]:
    """Yield what is asked of a line plot: how many, the most common value, a difference, a total."""
    for values in LIKE:
        second, third = values[1], values[2]
        for asked in (f"count above {second}", f"count below {third}", f"count at least {third}"):
            yield _plot(values, f"{asked} in")
        yield _plot(values, "most")
        yield _plot(values, "spread")
        yield _plot(values, f"total at most {second} in")
        yield _plot(values, f"total {third} in")
        yield _plot(values, "total")
    yield _plot(LIKE[0], "count")


def shared_plots(_: Wishes) -> Iterator[ProblemForm]:
    """Yield totals with unlike denominators, and totals that are shared out equally."""
    for values in (*LIKE, *RULED):
        yield _plot(values, "share")
    for values in RULED:
        yield _plot(values, "spread")
        yield _plot(values, "total")


def _plot(values: tuple[str, ...], asked: str) -> ProblemForm:
    """Return line plots with these values in inches, and one question about each."""
    first, second, third, last = values
    typed = f"plot {first}: {{0}}, {second}: {{1}}, {third}: {{2}}, {last} in: {{3}}; {asked}"
    return ProblemForm(typed, (MANY, FEW, MANY, FEW))
