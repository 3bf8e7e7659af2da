"""Checks a working carries: an estimate, undoing it, and a second strategy that agrees."""

from dataclasses import dataclass

from onewhole.errors import Fault
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression, value


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
        if len({value(link) for link in self.links}) != 1:
            msg = "undoing the working does not lead back"
            raise CheckError(msg)


@dataclass(frozen=True, slots=True)
class Agreed:
    """A second strategy, by its key, reaches the same amount; ``answer`` is what it reaches."""

    strategy: str
    answer: Quantity


Check = Estimate | Undone | Agreed
