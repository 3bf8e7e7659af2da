"""One line of a working."""

from dataclasses import dataclass

from onewhole.statements.expression import Expression, value
from onewhole.statements.statement import Comparison, Meaning, MissingNumber, meaning
from onewhole.working.fact import Fact
from onewhole.working.reason import Reason

#: What can stand on a line: an amount being worked, or a whole statement.
Says = Expression | Comparison | MissingNumber


@dataclass(frozen=True, slots=True)
class Line:
    """What a line says, why it follows from the line before, and what stands beside it.

    ``aside`` marks a line that the teacher says and a pupil need not write. ``facts`` are hard facts inside
    the line, worked beside it. The first line of a working is the problem itself and has no reason.
    """

    says: Says
    because: Reason | None = None
    aside: bool = False
    facts: tuple[Fact, ...] = ()


def kept(says: Says) -> Meaning:
    """Return what the next line must keep: the amount, the order or the missing number."""
    if isinstance(says, Comparison | MissingNumber):
        return meaning(says)
    return value(says)
