"""Two numbers of which one is divided by the other while they are being worked."""

from msgspec.structs import replace

from onewhole.number.ladder import Style, decimal, places
from onewhole.number.quantity import Quantity, trimmed
from onewhole.number.unit import DOLLAR
from onewhole.statements.expression import Expression, Quotient, WithRemainder, plus
from onewhole.working.operands import Operands


class QuotientState(Operands, frozen=True):
    """One number divided by another, the lines so far, and the result once it is found.

    ``done`` is what each share has, or how many groups there are, part by part; ``left`` is what is still to
    be divided. ``counting`` says that the number counts units of something: wholes are no things then.
    """

    done: tuple[Quantity, ...] = ()
    result: Quantity | WithRemainder | None = None
    counting: bool = False

    @property
    def shares(self) -> int | None:
        """Return among how many it is shared; None where the right number is no plain whole number.

        >>> from onewhole.number.quantity import whole
        >>> QuotientState(whole(52), whole(4)).shares
        4
        """
        return self.right.parts if self.right.plain else None

    @property
    def wholes(self) -> bool:
        """Say whether both are plain whole numbers."""
        return self.left.plain and self.right.plain

    @property
    def named(self) -> bool:
        """Say whether wholes go by the class's own word: those of pieces and decimals."""
        return not self.counting and self.left.ladder.style in {Style.MIXED, Style.DECIMAL}

    def standing(self, *parts: Quantity) -> Expression:
        """Return what is done with some parts more, and what is left divided by the right number."""
        rest = (Quotient(written(self.left), self.right),) if self.left.parts else ()
        return plus(*self.done, *parts, *rest)

    def found(self) -> Quantity | WithRemainder:
        """Return the result; ValueError before there is one."""
        if self.result is None:
            msg = "the last step has not found a result yet"
            raise ValueError(msg)
        return self.result

    def ends(self, result: Quantity | WithRemainder) -> "QuotientState":
        """Return the state with its result."""
        return replace(self, result=result)


def written(number: Quantity) -> Quantity:
    """Leave out what nobody writes of a number that is still to be divided, zeros behind a point too.

    >>> from onewhole.number.ladder import decimal
    >>> written(Quantity(decimal(1, 2), (0, 30, 0))).counts
    (0, 30)
    >>> written(Quantity(decimal(3, 1), (0, 18, 7, 0))).counts
    (18, 7)
    """
    ladder = number.ladder
    if ladder.style is not Style.DECIMAL or ladder.mark == DOLLAR:
        return trimmed(number)
    ones = len(ladder.units) - ladder.after - 1
    last = max([ones, *[rung for rung, count in enumerate(number.amounts) if count]])
    shorter = decimal(ones + 1, last - ones, ladder.mark) if last > ones else places(ones + 1, ladder.mark)
    return trimmed(Quantity(shorter, number.amounts[: last + 1]))
