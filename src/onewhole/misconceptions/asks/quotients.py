"""Questions about quotients: whether the groups make the number again, and where what is left went."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression


@dataclass(frozen=True, slots=True)
class GroupsMakeAgain:
    """So many groups of what was written: how much is that, and is it near the number?"""

    by: Quantity
    quotient: Quantity
    number: Quantity


@dataclass(frozen=True, slots=True)
class AllUsedUp:
    """So many groups of the divisor: how many are used up, and is that all?"""

    quotient: Quantity
    by: Quantity
    number: Quantity


@dataclass(frozen=True, slots=True)
class LeftAmongHowMany:
    """What is left is shared among how many, and is that the same as tenths?"""

    left: Quantity


@dataclass(frozen=True, slots=True)
class FirstBlocks:
    """Can each get one of the first blocks of a number, and what are they changed into if not?"""

    by: Quantity
    number: Quantity


@dataclass(frozen=True, slots=True)
class WhereTheRestWent:
    """When the first unit was shared out, was something left, and where did it go?"""

    number: Quantity


@dataclass(frozen=True, slots=True)
class OneMoreGroup:
    """Can one more group be made of what is left?"""

    left: Quantity
    by: Quantity


@dataclass(frozen=True, slots=True)
class LargerThanAll:
    """Is what was written larger than the number that was shared, and can it be?"""

    number: Quantity
    wrote: Quantity


@dataclass(frozen=True, slots=True)
class DigitNotUsed:
    """Which digit of a number is not used yet?"""

    number: Quantity


@dataclass(frozen=True, slots=True)
class TensOfAll:
    """How many tens has a number once its hundreds are changed into tens?"""

    number: Quantity


@dataclass(frozen=True, slots=True)
class HowBigIsAGroup:
    """Which of two fractions tells how big each group is?"""

    problem: Expression


@dataclass(frozen=True, slots=True)
class HowManyFit:
    """How many of the second fit in the first: more than one?"""

    number: Quantity
    by: Quantity


@dataclass(frozen=True, slots=True)
class WhichIsShared:
    """Which of two numbers is shared out?"""

    problem: Expression


@dataclass(frozen=True, slots=True)
class PiecesInAll:
    """How many pieces of a size are in one whole, and in so many wholes?"""

    piece: Quantity
    wholes: Quantity


@dataclass(frozen=True, slots=True)
class MoreOrLessThanAll:
    """A number is shared among so many: does each get more or less than the number?"""

    number: Quantity
    by: Quantity


@dataclass(frozen=True, slots=True)
class MoreOrLessThanOne:
    """So many wholes for more shares: does each get more or less than one?"""

    number: Quantity
    by: Quantity


@dataclass(frozen=True, slots=True)
class WhoGetsThePieces:
    """The wholes are shared out: who gets the small pieces?"""

    pieces: Quantity


#: Every question about a quotient.
QuotientAsk = (
    GroupsMakeAgain
    | AllUsedUp
    | LeftAmongHowMany
    | FirstBlocks
    | WhereTheRestWent
    | OneMoreGroup
    | LargerThanAll
    | DigitNotUsed
    | TensOfAll
    | HowBigIsAGroup
    | HowManyFit
    | WhichIsShared
    | PiecesInAll
    | MoreOrLessThanAll
    | MoreOrLessThanOne
    | WhoGetsThePieces
)
