"""A pair of numbers while it is being worked, and the lines written so far."""

from collections.abc import Iterable

from msgspec import Struct

from onewhole.number.quantity import Quantity, trimmed
from onewhole.statements.expression import Expression, Sum, Term
from onewhole.working.fact import Fact
from onewhole.working.line import Line, followed
from onewhole.working.reason import Reason


class PairState(Struct, frozen=True):
    """Two quantities on one ladder, joined by + or -, the lines so far, and the result once it is found.

    ``more`` are further numbers that are added at the same time, on the same ladder: only a strategy that
    adds all numbers at once is given any. A step takes a state and gives the next one; a strategy is a
    sequence of steps.
    """

    first: Quantity
    second: Quantity
    taken: bool
    lines: tuple[Line, ...] = ()
    result: Quantity | None = None
    more: tuple[Quantity, ...] = ()

    def say(
        self, says: Expression, because: Reason, *, aside: bool = False, facts: Iterable[Fact | None] = ()
    ) -> "PairState":
        """Return the state with one more line, unless that would repeat the last one."""
        line = Line(says, because, aside=aside, facts=tuple([fact for fact in facts if fact]))
        lines = followed(self.lines, line)
        return PairState(self.first, self.second, self.taken, lines, self.result, self.more)

    def now(
        self, first: Quantity | None = None, second: Quantity | None = None, result: Quantity | None = None
    ) -> "PairState":
        """Return the state with other quantities."""
        found = result or self.result
        return PairState(first or self.first, second or self.second, self.taken, self.lines, found, self.more)

    def found(self) -> Quantity:
        """Return the result; ValueError before there is one."""
        if self.result is None:
            msg = "the last step has not found a result yet"
            raise ValueError(msg)
        return self.result

    def joined(self, *parts: Expression) -> Expression:
        """Write parts of the first number with the second number added to them or taken from them."""
        return Sum((*[Term(part) for part in parts], Term(trimmed(self.second), taken=self.taken)))
