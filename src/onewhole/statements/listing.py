"""Every number of a kind is asked for: the factors of 36, the multiples of 7 to 50."""

from collections.abc import Iterator
from enum import Enum
from fractions import Fraction

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.number.quantity import Quantity
from onewhole.statements.asked_in_words import AskedInWords

#: Factors are asked of numbers up to here: 4.OA.B.4 (CCSSM 2010) has 1 to 100, and a little more is kept.
LARGEST = 200
#: As many multiples are written on paper. Common practice, no source.
MOST_MULTIPLES = 15


class ListSort(Enum):
    """What is listed."""

    FACTORS = "factors"
    MULTIPLES = "multiples"


class NotListedError(InputError, ValueError):
    """The numbers that are asked for are none, or too many to be written."""


class Listing(AskedInWords, Struct, frozen=True):
    """The factors of a number, or its multiples up to ``most``.

    Raises NotListedError where there are none, or too many to be written.

    >>> from onewhole.number.quantity import whole
    >>> Listing(ListSort.FACTORS, whole(12)).found, Listing(ListSort.MULTIPLES, whole(7), whole(30)).found
    ((1, 2, 3, 4, 6, 12), (7, 14, 21, 28))
    """

    sort: ListSort
    number: Quantity
    most: Quantity | None = None

    def __post_init__(self) -> None:
        """Refuse what is no whole number, or gives no list or a long one."""
        for number in (self.number, self.most):
            if number is not None and (not number.plain or not number.parts):
                msg = f"{self.sort.value} are asked of whole numbers from 1 on"
                raise NotListedError(msg, remedy="Write for example: factors of 36, multiples of 7 to 50.")
        if (self.most is None) != (self.sort is ListSort.FACTORS):
            msg = "multiples have an end, and factors have none"
            raise NotListedError(msg, remedy="Write for example: factors of 36, multiples of 7 to 50.")
        if self.most is None and self.number.parts > LARGEST:
            msg = f"factors are asked of numbers up to {LARGEST}"
            raise NotListedError(msg, remedy="Choose a smaller number: grade 4 stays at or below 100.")
        if self.most is not None and not 1 <= self.most.parts // self.number.parts <= MOST_MULTIPLES:
            msg = f"so many multiples cannot be listed; 1 to {MOST_MULTIPLES} can"
            raise NotListedError(msg, remedy="Choose another end.")

    @property
    def numbers(self) -> tuple[Quantity, ...]:
        """Return the number, and the end where there is one."""
        return (self.number,) if self.most is None else (self.number, self.most)

    @property
    def about(self) -> Quantity:
        """Return the number whose factors or multiples are listed."""
        return self.number

    def with_numbers(self, supply: Iterator[Quantity]) -> "Listing":
        """Return the same list of the next numbers of a supply."""
        return Listing(self.sort, next(supply), None if self.most is None else next(supply))

    @property
    def found(self) -> tuple[int, ...]:
        """Return the numbers that are asked for, the least first."""
        number = self.number.parts
        if self.most is not None:
            return tuple(range(number, self.most.parts + 1, number))
        return tuple(by for by in range(1, number + 1) if not number % by)

    @property
    def values(self) -> tuple[Fraction, ...]:
        """Return the amounts that are asked for, the least first."""
        return tuple(map(Fraction, self.found))

    @property
    def pairs(self) -> tuple[tuple[int, int], ...]:
        """Return the two numbers of each product that makes the number, the smaller one first.

        >>> from onewhole.number.quantity import whole
        >>> Listing(ListSort.FACTORS, whole(12)).pairs
        ((1, 12), (2, 6), (3, 4))
        """
        number = self.number.parts
        return tuple(
            (by, number // by) for by in range(1, number + 1) if not number % by and by * by <= number
        )
