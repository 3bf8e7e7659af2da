"""A problem and what a pattern writes on it: what its question and its thought are filled from."""

from msgspec import Struct

from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.slip import Slip
from onewhole.statements.statement import Statement


class Case(Struct, frozen=True):
    """A problem as it was set, and the working with its false line that a pattern shows on it."""

    statement: Statement
    slip: Slip

    @property
    def wrote(self) -> Outcome:
        """Return the answer that the pattern writes."""
        return self.slip.wrote
