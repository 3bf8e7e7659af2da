"""Questions about products: what a digit makes, what a row is worth, how big a part of a part is."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression


class WhereAreItsTens(Struct, frozen=True):
    """A digit times another: what do they make, and where are its tens?"""

    digit: int
    by: int


class WhichDigitIsWritten(Struct, frozen=True):
    """A digit times another: what do they make, and which digit of that says ones?"""

    digit: int
    by: int


class WhenIsItJoined(Struct, frozen=True):
    """The next digit is multiplied: when do the tens that were carried join it?"""

    digit: int
    by: int


class TensInGroups(Struct, frozen=True):
    """So many groups of a number: how many tens are in one group, and in all?"""

    times: int
    number: Quantity


class LittleNumber(Struct, frozen=True):
    """What is the small number above the tens for, and how many times are the tens needed?"""

    times: int


class RowWorth(Struct, frozen=True):
    """What does the first digit of the multiplier stand for, and how much is its row worth?"""

    by: Quantity


class TenTimes(Struct, frozen=True):
    """How much is ten times a number, and can what was written be right?"""

    number: Quantity
    wrote: Quantity


class CutInFour(Struct, frozen=True):
    """A product drawn as a rectangle cut in four: which parts are counted?"""

    problem: Expression


class GroupsOfNothing(Struct, frozen=True):
    """How much are so many groups of nothing?"""

    times: int


class SignBetween(Struct, frozen=True):
    """What does the sign between two numbers tell to do?"""

    problem: Expression


class PartOfPart(Struct, frozen=True):
    """A part of a number is taken: is that more or less than the number?"""

    part: Quantity
    number: Quantity


class TakenTimes(Struct, frozen=True):
    """A number taken so many whole times: how much is that, and is what was written more?"""

    times: int
    number: Quantity
    wrote: Quantity


#: Every question about a product.
ProductAsk = (
    WhereAreItsTens
    | WhichDigitIsWritten
    | WhenIsItJoined
    | TensInGroups
    | LittleNumber
    | RowWorth
    | TenTimes
    | CutInFour
    | GroupsOfNothing
    | SignBetween
    | PartOfPart
    | TakenTimes
)
