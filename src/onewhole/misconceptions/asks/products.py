"""Questions about products: what a digit makes, what a row is worth, how big a part of a part is."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression


@dataclass(frozen=True, slots=True)
class WhereAreItsTens:
    """A digit times another: what do they make, and where are its tens?"""

    digit: int
    by: int


@dataclass(frozen=True, slots=True)
class WhichDigitIsWritten:
    """A digit times another: what do they make, and which digit of that says ones?"""

    digit: int
    by: int


@dataclass(frozen=True, slots=True)
class WhenIsItJoined:
    """The next digit is multiplied: when do the tens that were carried join it?"""

    digit: int
    by: int


@dataclass(frozen=True, slots=True)
class TensInGroups:
    """So many groups of a number: how many tens are in one group, and in all?"""

    times: int
    number: Quantity


@dataclass(frozen=True, slots=True)
class LittleNumber:
    """What is the small number above the tens for, and how many times are the tens needed?"""

    times: int


@dataclass(frozen=True, slots=True)
class RowWorth:
    """What does the first digit of the multiplier stand for, and how much is its row worth?"""

    by: Quantity


@dataclass(frozen=True, slots=True)
class TenTimes:
    """How much is ten times a number, and can what was written be right?"""

    number: Quantity
    wrote: Quantity


@dataclass(frozen=True, slots=True)
class CutInFour:
    """A product drawn as a rectangle cut in four: which parts are counted?"""

    problem: Expression


@dataclass(frozen=True, slots=True)
class GroupsOfNothing:
    """How much are so many groups of nothing?"""

    times: int


@dataclass(frozen=True, slots=True)
class SignBetween:
    """What does the sign between two numbers tell to do?"""

    problem: Expression


@dataclass(frozen=True, slots=True)
class PartOfPart:
    """A part of a number is taken: is that more or less than the number?"""

    part: Quantity
    number: Quantity


@dataclass(frozen=True, slots=True)
class TakenTimes:
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
