"""Which steps of a taught strategy a pattern bends (replaces): derived from the code that runs."""

from collections.abc import Callable

from msgspec import Struct

from onewhole.misconceptions.attempt import Attempt
from onewhole.statements.statement import Statement

#: What works a problem wrongly; None where a pattern does not apply.
Try = Callable[[Statement], Attempt | None]


class Bend(Struct, frozen=True):
    """A taught strategy by its key, and the keys of its steps that are left out or done in another way."""

    strategy: str
    steps: tuple[str, ...]


class BentTry(Struct, frozen=True):
    """A problem worked by a bent strategy, which says what it bends."""

    bends: Bend
    attempt: Try

    def __call__(self, statement: Statement) -> Attempt | None:
        """Work a problem wrongly, or return None where that cannot be."""
        return self.attempt(statement)

    def also(self, other: Try) -> "BentTry":
        """Return this attempt, with another one that bends no strategy where this does not apply."""

        def attempt(statement: Statement) -> Attempt | None:
            tried = self.attempt(statement)
            return other(statement) if tried is None else tried

        return BentTry(self.bends, attempt)
