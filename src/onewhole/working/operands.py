"""Two numbers with one sign between them while they are being worked, and the lines written so far."""

from collections.abc import Iterable
from typing import Self

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression
from onewhole.working.fact import Fact
from onewhole.working.line import Line, followed
from onewhole.working.reason import Reason


class Operands(Struct, frozen=True):
    """The number before the sign, the one behind it, and the lines so far."""

    left: Quantity
    right: Quantity
    lines: tuple[Line, ...] = ()

    def say(
        self, says: Expression, because: Reason, *, aside: bool = False, facts: Iterable[Fact | None] = ()
    ) -> Self:
        """Return the state with one more line, unless that would repeat the last one."""
        line = Line(says, because, aside=aside, facts=tuple([fact for fact in facts if fact]))
        return replace(self, lines=followed(self.lines, line))
