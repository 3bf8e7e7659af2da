"""Line plots: marks, places and stacks are taken for one another."""

from collections.abc import Callable, Collection

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.wrong_steps.steps import comes_to
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import Expression, Quotient, minus
from onewhole.statements.line_plot import Bound, PlotAsk, PlotQuestion, added, in_all
from onewhole.statements.statement import Statement
from onewhole.working.line import Line

#: What is worked instead; None where a rule does not apply.
Instead = Callable[[PlotQuestion], Expression | None]
#: Questions about the measurements on one side of a value.
BESIDE = (Bound.MORE, Bound.LESS)


def on_plot(asks: Collection[PlotAsk], instead: Instead) -> Try:
    """Return the attempt at what is asked of a line plot that works something else."""

    def attempt(statement: Statement) -> Attempt | None:
        if not isinstance(statement, PlotQuestion) or statement.asks not in asks:
            return None
        says = instead(statement)
        if says is None:
            return None
        if isinstance(says, Quantity):
            return Attempt((Line(statement), Line(says)), says)
        wrote = comes_to(says)
        return Attempt((Line(statement), Line(says), Line(wrote)), wrote)

    return attempt


def each_value_once(asked: PlotQuestion) -> Expression | None:
    """Add every value that has a mark once, whatever the number of its marks."""
    if all(count == 1 for _, count in asked.meant):
        return None
    found = added([value for value, _ in asked.meant])
    return Quotient(found, whole(asked.plot.many)) if asked.asks is PlotAsk.SHARE else found


def marks_for_values(asked: PlotQuestion) -> Expression | None:
    """Count the marks where what they stand for is to be added."""
    return whole(sum(count for _, count in asked.meant), asked.plot.mark)


def ticks_counted_on(asked: PlotQuestion) -> Expression | None:
    """Read the places on the axis as 1, 2, 3, and add those."""
    places = {tick.value: at for at, tick in enumerate(asked.plot.ticks, 1)}
    mark = asked.plot.mark
    return in_all((whole(places[value.value], mark), count) for value, count in asked.meant)


def places_for_marks(asked: PlotQuestion) -> Expression | None:
    """Count the places on the axis where marks are to be counted."""
    return whole(len(asked.plot.ticks)) if asked.among is None else None


def values_for_marks(asked: PlotQuestion) -> Expression | None:
    """Add what the marks stand for where they are only to be counted."""
    return in_all(asked.meant) if asked.meant else None


def highest_stack(asked: PlotQuestion) -> Expression | None:
    """Write how many marks the highest stack has, and not the value below it."""
    return whole(asked.plot.highest)


def stacks_compared(asked: PlotQuestion) -> Expression | None:
    """Take the lowest stack from the highest one, and not the least value from the greatest."""
    heights = [count for _, count in asked.plot.found]
    return minus(whole(max(heights)), whole(min(heights)))


def places_beside(asked: PlotQuestion) -> Expression | None:
    """Count the places on that side of the value, and not the marks above them."""
    among = asked.among
    if among is None or among.bound not in BESIDE:
        return None
    return whole(sum(among.holds(tick.value) for tick in asked.plot.ticks))


def value_too(asked: PlotQuestion) -> Expression | None:
    """Count the marks of the value itself too."""
    among = asked.among
    if among is None or among.bound not in BESIDE:
        return None
    here = asked.plot.count_at(among.value.value)
    return whole(here + sum(count for _, count in asked.meant)) if here else None
