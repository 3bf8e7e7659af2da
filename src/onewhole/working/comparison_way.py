"""How two numbers are compared: what is done to them first, and what then decides."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.working.reasons.comparing import Deciding, MadeComparable


class MadeAlike(Struct, frozen=True):
    """Both numbers written in another way, or without the wholes that both have; their order stays."""

    left: Quantity
    right: Quantity
    because: MadeComparable


class ComparisonWay(Struct, frozen=True):
    """The steps that make two numbers easy to compare, and the reason that decides which is more."""

    steps: tuple[MadeAlike, ...]
    decides: Deciding

    def after(self, *steps: MadeAlike) -> "ComparisonWay":
        """Return the same way with other steps before it."""
        return ComparisonWay((*steps, *self.steps), self.decides)
