"""A way to multiply: named steps, and the products it does not suit."""

from collections.abc import Callable
from dataclasses import dataclass

from onewhole.working.products.product_state import ProductState
from onewhole.working.reasons.unsuited import Unsuited
from onewhole.working.way import NamedWay


@dataclass(frozen=True, slots=True)
class ProductStep:
    """One named step: it takes a state and gives the next one."""

    key: str
    act: Callable[[ProductState], ProductState]


@dataclass(frozen=True, slots=True)
class ProductWay(NamedWay):
    """A way to multiply, as a class is taught it.

    ``unsuited`` gives the reason why two numbers do not suit the way, or None. ``offered`` says for which
    numbers a teacher would use it; for others it is not offered, and still works where it was asked for.
    """

    steps: tuple[ProductStep, ...]
    unsuited: Callable[[ProductState], Unsuited | None]
    offered: Callable[[ProductState], bool]

    def run(self, state: ProductState) -> ProductState:
        """Run the steps in order."""
        for step in self.steps:
            state = step.act(state)
        return state
