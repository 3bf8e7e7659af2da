"""An idea about what to do in a story: a problem in numbers alone cannot show it."""

from collections.abc import Callable

from msgspec import Struct

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.telling import ToldAs
from onewhole.statements.statement import Statement


class InStory(Struct, frozen=True):
    """An attempt at a problem that is told as a story, by its equation and how it is told."""

    told: Callable[[Statement, ToldAs], Attempt | None]

    def __call__(self, statement: Statement) -> Attempt | None:  # noqa: ARG002
        """Return None: without a story the operation is not chosen, its sign stands there."""
        return None


def whatever_it_tells(attempt: Try) -> InStory:
    """Return an attempt in a story that does not look at its words."""
    return InStory(lambda statement, _: attempt(statement))
