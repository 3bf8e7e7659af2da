"""Two numbers that are multiplied while they are being worked, and the lines written so far."""

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import DOLLAR
from onewhole.statements.expression import Times
from onewhole.working.operands import Operands


class ProductState(Operands, frozen=True):
    """One number times another, the lines so far, and the result once it is found.

    A step takes a state and gives the next one; a way to multiply is a sequence of steps.
    """

    result: Quantity | None = None

    @property
    def times(self) -> int | None:
        """Return how many times the right number is taken; None where the left one is no plain whole number.

        >>> from onewhole.number.quantity import whole
        >>> ProductState(whole(3), whole(12)).times
        3
        """
        return self.left.parts if self.left.plain else None

    @property
    def part_of_money(self) -> bool:
        """Say whether a price is taken in part, and not so many times (1/2 x $5)."""
        both = ((self.left, self.right), (self.right, self.left))
        return any(
            one.ladder.mark == DOLLAR and other.ladder.style is not Style.PLACES for one, other in both
        )

    @property
    def asked(self) -> Times:
        """Return the product as it stands."""
        return Times(self.left, self.right)

    def found(self) -> Quantity:
        """Return the result; ValueError before there is one."""
        if self.result is None:
            msg = "the last step has not found a result yet"
            raise ValueError(msg)
        return self.result
