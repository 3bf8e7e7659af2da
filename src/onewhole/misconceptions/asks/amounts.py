"""Questions about the whole problem: its sign, what is to be taken, and how big the answer should be."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Expression


@dataclass(frozen=True, slots=True)
class HowMuchTaken:
    """How much of the second number was taken, and what must still go?"""

    second: Quantity


@dataclass(frozen=True, slots=True)
class WhichPartMissing:
    """Which parts of the numbers are not in the answer?"""

    problem: Expression


@dataclass(frozen=True, slots=True)
class AboutHowBig:
    """About how big should the answer be, and is what was written near that?"""

    problem: Expression
    wrote: Quantity


@dataclass(frozen=True, slots=True)
class WholesToo:
    """Do wholes go too when the second number is taken?"""

    first: Quantity
    second: Quantity
    large: Unit


@dataclass(frozen=True, slots=True)
class SignTells:
    """What does the sign tell to do with each of the units that are there?"""

    problem: Expression
    units: tuple[Unit, ...]


@dataclass(frozen=True, slots=True)
class MoreOrLess:
    """Will the answer be more or less than the first number, and is it?"""

    problem: Expression
    first: Quantity


@dataclass(frozen=True, slots=True)
class CanBeLeft:
    """Can what was written be left when the second number is taken from the first?"""

    first: Quantity
    second: Quantity
    wrote: Quantity


@dataclass(frozen=True, slots=True)
class MoreThanEach:
    """Is what was written more than each of the two numbers, and should it be?"""

    first: Quantity
    second: Quantity
    wrote: Quantity


@dataclass(frozen=True, slots=True)
class TookTooMuch:
    """``taken`` was taken in place of the second number: how is that made up for?"""

    second: Quantity
    taken: Quantity


@dataclass(frozen=True, slots=True)
class MoveBoth:
    """Both numbers move on a number line: when does the distance stay the same?"""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class AllOfThem:
    """A number is laid out once, then so many times: do the pieces stay what they are?"""

    times: int
    number: Quantity
    small: Unit


@dataclass(frozen=True, slots=True)
class WriteAsAdding:
    """A product written as adding the same number again and again: what comes of it?"""

    problem: Expression
    number: Quantity


#: Every question about the whole problem.
AmountAsk = (
    HowMuchTaken
    | WhichPartMissing
    | AboutHowBig
    | WholesToo
    | SignTells
    | MoreOrLess
    | CanBeLeft
    | MoreThanEach
    | TookTooMuch
    | MoveBoth
    | AllOfThem
    | WriteAsAdding
)
