"""Questions about the whole problem: its sign, what is to be taken, and how big the answer should be."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Expression


class HowMuchTaken(Struct, frozen=True):
    """How much of the second number was taken, and what must still go?"""

    second: Quantity


class WhichPartMissing(Struct, frozen=True):
    """Which parts of the numbers are not in the answer?"""

    problem: Expression


class AboutHowBig(Struct, frozen=True):
    """About how big should the answer be, and is what was written near that?"""

    problem: Expression
    wrote: Quantity


class WholesToo(Struct, frozen=True):
    """Do wholes go too when the second number is taken?"""

    first: Quantity
    second: Quantity
    large: Unit


class SignTells(Struct, frozen=True):
    """What does the sign tell to do with each of the units that are there?"""

    problem: Expression
    units: tuple[Unit, ...]


class MoreOrLess(Struct, frozen=True):
    """Will the answer be more or less than the first number, and is it?"""

    problem: Expression
    first: Quantity


class CanBeLeft(Struct, frozen=True):
    """Can what was written be left when the second number is taken from the first?"""

    first: Quantity
    second: Quantity
    wrote: Quantity


class MoreThanEach(Struct, frozen=True):
    """Is what was written more than each of the two numbers, and should it be?"""

    first: Quantity
    second: Quantity
    wrote: Quantity


class TookTooMuch(Struct, frozen=True):
    """``taken`` was taken in place of the second number: how is that made up for?"""

    second: Quantity
    taken: Quantity


class MoveBoth(Struct, frozen=True):
    """Both numbers move on a number line: when does the distance stay the same?"""

    first: Quantity
    second: Quantity


class AllOfThem(Struct, frozen=True):
    """A number is laid out once, then so many times: do the pieces stay what they are?"""

    times: int
    number: Quantity
    small: Unit


class WriteAsAdding(Struct, frozen=True):
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
