"""What a question in words is to rooms that only need its numbers: one parent for all such questions."""

from abc import abstractmethod
from collections.abc import Iterator
from typing import Self

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression


class AskedInWords:
    """A question that stands on a line in words: factors of 36, is 37 prime, the total of a line plot.

    It has numbers, and no sides that are worked out as they stand. A room that asks for no more than what is
    here reads every such question, also one that is added later (docs/decisions/0058).
    """

    __slots__ = ()

    @property
    @abstractmethod
    def numbers(self) -> tuple[Quantity, ...]:
        """Return the numbers of the question, in order."""

    @property
    @abstractmethod
    def about(self) -> Expression:
        """Return what the question is about: a number, or what is worked out to answer it."""

    @abstractmethod
    def with_numbers(self, supply: Iterator[Quantity]) -> Self:
        """Return the same question about the next numbers of a supply."""
