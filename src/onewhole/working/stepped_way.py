"""A way to work two numbers: named steps, and the numbers it does not suit."""

from collections.abc import Callable
from typing import Generic, TypeVar

from msgspec import Struct

from onewhole.working.operands import Operands
from onewhole.working.reasons.unsuited import Unsuited
from onewhole.working.way import NamedWay

State = TypeVar("State", bound=Operands)


class WayStep(Struct, Generic[State], frozen=True):
    """One named step: it takes a state and gives the next one."""

    key: str
    act: Callable[[State], State]


class SteppedWay(NamedWay, Generic[State], frozen=True):
    """A way to work two numbers, as a class is taught it.

    ``unsuited`` gives the reason why two numbers do not suit the way, or None. ``offered`` says for which
    numbers a teacher would use it; for others it is not offered, and still works where it was asked for.
    """

    steps: tuple[WayStep[State], ...]
    unsuited: Callable[[State], Unsuited | None]
    offered: Callable[[State], bool]

    def run(self, state: State) -> State:
        """Run the steps in order."""
        for step in self.steps:
            state = step.act(state)
        return state
