"""A number written with a minus sign, as a child may write it: -1/2, -3, -1/-2."""

from fractions import Fraction

from msgspec import Struct

from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind


class WithMinus(Struct, frozen=True):
    """A number with a minus sign in front of it, before the denominator, or both.

    Grade 4 counts nothing below zero, so no quantity is ever below zero; what a child writes may be.
    ``unsigned`` is the number without its signs. Raises ValueError where no sign stands, and for a sign
    before a denominator beside wholes or where there is none.

    >>> from onewhole.number.ladder import mixed
    >>> half = Quantity(mixed(2), (None, 1))
    >>> WithMinus(half).value, WithMinus(half, front=True, below=True).value
    (Fraction(-1, 2), Fraction(1, 2))
    """

    unsigned: Quantity | Impossible
    front: bool = True
    below: bool = False

    def __post_init__(self) -> None:
        """Refuse a number without a sign, and a sign where it cannot stand."""
        if not (self.front or self.below):
            msg = "a signed number has a minus sign"
            raise ValueError(msg)
        if self.below and not _fraction_alone(self.unsigned):
            msg = "a minus sign stands before the denominator of a fraction without wholes only"
            raise ValueError(msg)

    @property
    def value(self) -> Fraction | None:
        """Return the amount, below zero where one sign stands; None over 0, which has none."""
        if isinstance(self.unsigned, Impossible):
            return None
        return self.unsigned.value if self.front and self.below else -self.unsigned.value

    @property
    def kind(self) -> Kind:
        """Return what is measured."""
        return self.unsigned.kind if isinstance(self.unsigned, Quantity) else Kind.NUMBER

    @property
    def fraction(self) -> tuple[int, int]:
        """Return numerator and denominator without their signs. Raises ValueError where there are none."""
        match self.unsigned:
            case Impossible(_, top):
                return top, 0
            case Quantity(ladder) if ladder.style is Style.MIXED:
                return self.unsigned.amounts[1], ladder.denominator
            case _:
                msg = "this number is written without a fraction"
                raise ValueError(msg)


def _fraction_alone(number: Quantity | Impossible) -> bool:
    if isinstance(number, Impossible):
        return number.wholes is None
    return number.ladder.style is Style.MIXED and number.counts[0] is None
