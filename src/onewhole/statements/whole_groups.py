"""What is asked of a division in groups: how many are needed, how many are full, or what is left over."""

from collections.abc import Iterator
from enum import Enum
from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import Quotient, value

#: Divisors and numbers, at most: as many digits as 4.NBT.B.6 and 5.NBT.B.6 have (CCSSM 2010).
LARGEST_GROUP, LARGEST = 99, 9999


class GroupsAsk(Enum):
    """What is asked of things in groups of one size.

    ``NEEDED``: the groups that all of them need, a last one that is not full among them. ``FULL``: the full
    groups only. ``LEFT``: the things that are in no full group.

    Source: a remainder is to be understood from what is asked (4.OA.A.3: "problems in which remainders must
    be interpreted", CCSSM 2010).
    """

    NEEDED = "groups needed"
    FULL = "full groups"
    LEFT = "left over"


class GroupsError(InputError, ValueError):
    """No whole number of groups can be asked for of these numbers."""


class GroupsMeaning(Struct, frozen=True):
    """What a division is worth, and the whole number that is asked for: 50 / 8 is 25/4, and 7 are needed."""

    worth: Fraction
    asked: Fraction


class WholeGroups(AskedInWords, Struct, frozen=True):
    """``number`` things are put in groups of ``by``: how many groups, or how many are left over?

    ``gives`` is the number that a line gives as the answer, true or not; None while it is asked. Raises
    GroupsError for numbers that are not whole, for groups of 1, and for fewer things than one group has.

    >>> [WholeGroups(whole(50), whole(8), asks).found.parts for asks in GroupsAsk]
    [7, 6, 2]
    """

    number: Quantity
    by: Quantity
    asks: GroupsAsk
    gives: Quantity | None = None

    def __post_init__(self) -> None:
        """Refuse what cannot be put in groups, or not in two that differ."""
        if not self.number.plain or not self.by.plain:
            msg = "this is asked of whole numbers without a unit"
            raise GroupsError(msg, remedy="A measure can be cut: divide it as it stands, such as 50 in ÷ 8.")
        if not 1 < self.by.parts <= LARGEST_GROUP:
            msg = f"a group holds 2 to {LARGEST_GROUP} here"
            raise GroupsError(msg, remedy="Write for example 50 ÷ 8, groups needed.")
        if not self.by.parts <= self.number.parts <= LARGEST:
            msg = f"a number that is put in groups of {self.by.parts} is {self.by.parts} to {LARGEST:,} here"
            raise GroupsError(msg, remedy="Write all things first, and what one group holds second.")

    @property
    def numbers(self) -> tuple[Quantity, ...]:
        """Return how many things there are, and how many are in a group."""
        return self.number, self.by

    @property
    def about(self) -> Quotient:
        """Return the division that is worked out."""
        return Quotient(self.number, self.by)

    def with_numbers(self, supply: Iterator[Quantity]) -> "WholeGroups":
        """Return the same question about the next numbers of a supply."""
        return WholeGroups(next(supply), next(supply), self.asks)

    @property
    def full(self) -> int:
        """Return how many groups are full."""
        return self.number.parts // self.by.parts

    @property
    def left(self) -> int:
        """Return how many things are in no full group."""
        return self.number.parts % self.by.parts

    @property
    def found(self) -> Quantity:
        """Return the number that is asked for."""
        match self.asks:
            case GroupsAsk.NEEDED:
                return whole(self.full + bool(self.left))
            case GroupsAsk.FULL:
                return whole(self.full)
            case GroupsAsk.LEFT:
                return whole(self.left)

    @property
    def claims(self) -> GroupsMeaning:
        """Return what the division is worth, and the number that a line gives or that is true."""
        return GroupsMeaning(value(self.about), (self.gives or self.found).value)

    def answered(self, number: Quantity) -> "WholeGroups":
        """Return the line that gives a number as the answer."""
        return replace(self, gives=number)
