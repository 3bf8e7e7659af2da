"""A way to divide."""

from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.stepped_way import SteppedWay, WayStep


class QuotientStep(WayStep[QuotientState], frozen=True):
    """One named step of a way to divide."""


class QuotientWay(SteppedWay[QuotientState], frozen=True):
    """A way to divide one number by another, as a class is taught it."""
