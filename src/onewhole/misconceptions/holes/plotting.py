"""Line plots: what a question may name of them."""

from onewhole.misconceptions.case import Case
from onewhole.number.quantity import Quantity
from onewhole.statements.line_plot import Among, Bound, PlotQuestion


def value_with_more(case: Case) -> Quantity:
    """Return the first value that has more than one mark."""
    return next(value for value, count in _asked(case).meant if count > 1)


def value_named(case: Case) -> Quantity:
    """Return the value beside which the measurements are counted. Raises LookupError where there is none."""
    return _among(case).value


def asks_for_more(case: Case) -> bool:
    """Say whether those above the value are counted. Raises LookupError where no value is named."""
    return _among(case).bound is Bound.MORE


def most_marks(case: Case) -> int:
    """Return how many marks the highest stack has."""
    return _asked(case).plot.highest


def _among(case: Case) -> Among:
    among = _asked(case).among
    if among is None:
        msg = "this problem is about all measurements"
        raise LookupError(msg)
    return among


def _asked(case: Case) -> PlotQuestion:
    match case.statement:
        case PlotQuestion() as asked:
            return asked
        case _:
            msg = "this problem asks nothing of a line plot"
            raise LookupError(msg)
