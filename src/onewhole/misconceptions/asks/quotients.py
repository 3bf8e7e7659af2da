"""Questions about quotients: whether the groups make the number again, and where what is left went."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression


class GroupsMakeAgain(Struct, frozen=True):
    """So many groups of what was written: how much is that, and is it near the number?"""

    by: Quantity
    quotient: Quantity
    number: Quantity


class AllUsedUp(Struct, frozen=True):
    """So many groups of the divisor: how many are used up, and is that all?"""

    quotient: Quantity
    by: Quantity
    number: Quantity


class LeftAmongHowMany(Struct, frozen=True):
    """What is left is shared among how many, and is that the same as tenths?"""

    left: Quantity


class FirstBlocks(Struct, frozen=True):
    """Can each get one of the first blocks of a number, and what are they changed into if not?"""

    by: Quantity
    number: Quantity


class WhereTheRestWent(Struct, frozen=True):
    """When the first unit was shared out, was something left, and where did it go?"""

    number: Quantity


class OneMoreGroup(Struct, frozen=True):
    """Can one more group be made of what is left?"""

    left: Quantity
    by: Quantity


class LargerThanAll(Struct, frozen=True):
    """Is what was written larger than the number that was shared, and can it be?"""

    number: Quantity
    wrote: Quantity


class DigitNotUsed(Struct, frozen=True):
    """Which digit of a number is not used yet?"""

    number: Quantity


class TensOfAll(Struct, frozen=True):
    """How many tens has a number once its hundreds are changed into tens?"""

    number: Quantity


class HowBigIsAGroup(Struct, frozen=True):
    """Which of two fractions tells how big each group is?"""

    problem: Expression


class HowManyFit(Struct, frozen=True):
    """How many of the second fit in the first: more than one?"""

    number: Quantity
    by: Quantity


class WhichIsShared(Struct, frozen=True):
    """Which of two numbers is shared out?"""

    problem: Expression


class PiecesInAll(Struct, frozen=True):
    """How many pieces of a size are in one whole, and in so many wholes?"""

    piece: Quantity
    wholes: Quantity


class MoreOrLessThanAll(Struct, frozen=True):
    """A number is shared among so many: does each get more or less than the number?"""

    number: Quantity
    by: Quantity


class MoreOrLessThanOne(Struct, frozen=True):
    """So many wholes for more shares: does each get more or less than one?"""

    number: Quantity
    by: Quantity


class WhoGetsThePieces(Struct, frozen=True):
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
