"""Checks a working carries: an estimate, undoing it, and a second strategy that agrees."""

from dataclasses import dataclass

from onewhole.errors import Fault
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, usual_in_parts
from onewhole.statements.expression import Expression, Sum, Term, is_worth, value
from onewhole.working.strategies.same_units import Signed

PAIR = 2


class CheckError(Fault, ArithmeticError):
    """A working disagrees with its own check: a fault in the program, never shown as a result."""


@dataclass(frozen=True, slots=True)
class Estimate:
    """The answer is at least ``low`` and less than ``high``, seen from the wholes alone."""

    low: Quantity
    high: Quantity


@dataclass(frozen=True, slots=True)
class Undone:
    """Putting back what was taken (or taking back what was added) gives the first number again.

    ``links`` is a chain of equal expressions.
    """

    links: tuple[Expression, ...]

    def __post_init__(self) -> None:
        """Refuse a chain that is not true."""
        amount = value(self.links[0])
        if not all(is_worth(link, amount) for link in self.links[1:]):
            msg = "undoing the working does not lead back"
            raise CheckError(msg)


@dataclass(frozen=True, slots=True)
class Agreed:
    """A second strategy, by its key, reaches the same amount; ``answer`` is what it reaches."""

    strategy: str
    answer: Quantity


Check = Estimate | Undone | Agreed


def estimated(signed: Signed, answer: Quantity) -> Estimate:
    """Bound the answer from the wholes of each number: at least ``low``, less than ``high``.

    The quantities stand on one ladder. For a plain difference the pieces tell on which side of the difference
    of the wholes the answer lies. Raises CheckError when the answer is not within the bounds.
    Source: 5.NF.A.2 asks for number sense to judge an answer; CCSSM (2010). The bound itself is arithmetic.
    """
    ladder = signed[0][0].ladder
    unit = ladder.worths[0 if ladder.style in {Style.PLACES, Style.MEASURE} else -1 - ladder.after]
    low = high = 0
    counted = [(quantity.parts, taken) for quantity, taken in signed]
    for parts, taken in counted:
        floor = parts // unit * unit
        low, high = (low - floor - unit, high - floor) if taken else (low + floor, high + floor + unit)
    if len(counted) == PAIR and counted[1][1]:
        enough = counted[0][0] % unit >= counted[1][0] % unit
        low, high = (low + unit, high) if enough else (low, high - unit)
    if not low <= answer.on(ladder).parts < high:
        msg = "the answer lies outside its estimate"
        raise CheckError(msg)
    return Estimate(usual_in_parts(ladder, max(low, 0)), usual_in_parts(ladder, high))


def undone(signed: Signed, answer: Quantity) -> Undone:
    """Put back what was taken and take back what was added, last first."""
    undo = tuple([Term(quantity, not taken) for quantity, taken in reversed(signed[1:])])
    return Undone((Sum((Term(answer), *undo)), signed[0][0]))
