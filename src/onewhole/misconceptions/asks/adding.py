"""Questions about addition in columns, of decimals too: what a column makes, and where its ten goes."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Expression


@dataclass(frozen=True, slots=True)
class MakeTogether:
    """What do the counts of one place make together, and where did ten of them go?"""

    first: Quantity
    second: Quantity
    place: Unit


@dataclass(frozen=True, slots=True)
class TenMade:
    """Do the counts of one place make one of the next, and is there something to carry?"""

    problem: Expression
    place: Unit
    large: Unit


@dataclass(frozen=True, slots=True)
class TenAreOneOf:
    """The counts of a place make ten or more: ten of them are one of what?"""

    place: Unit


@dataclass(frozen=True, slots=True)
class WhichDigitSays:
    """A place comes to ``total``: which digit of that counts the place?"""

    place: Unit
    total: int


@dataclass(frozen=True, slots=True)
class FirstDigits:
    """What does the first digit of each number stand for?"""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class FirstAndLast:
    """What does the first digit of a number stand for, and is it as much as the last?"""

    number: Quantity


@dataclass(frozen=True, slots=True)
class HowOftenCarried:
    """How many of the large place do the small ones make, and how often was it added?"""

    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class ZeroInTheColumn:
    """A zero stands in a column: how many of the place are there in all?"""

    problem: Expression
    place: Unit


@dataclass(frozen=True, slots=True)
class CarriedBefore:
    """One place was carried from: what about the next that makes ten?"""

    first: Unit
    second: Unit


@dataclass(frozen=True, slots=True)
class WhichColumnGets:
    """A place makes ten or more: which column should get ten of them?"""

    place: Unit


@dataclass(frozen=True, slots=True)
class HowManyOfEach:
    """How many of the one place is a number, and how many of the next?"""

    number: Quantity
    small: Unit
    large: Unit


@dataclass(frozen=True, slots=True)
class HandedOn:
    """What does the small place hand on to the large one?"""

    small: Unit
    large: Unit


@dataclass(frozen=True, slots=True)
class AsManyPlaces:
    """Both numbers written with as many places: what does each say now?"""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class WholesOfEach:
    """How many wholes are there in each of two numbers?"""

    first: Quantity
    second: Quantity


#: Every question about addition in columns.
AddingAsk = (
    MakeTogether
    | TenMade
    | TenAreOneOf
    | WhichDigitSays
    | FirstDigits
    | FirstAndLast
    | HowOftenCarried
    | ZeroInTheColumn
    | CarriedBefore
    | WhichColumnGets
    | HowManyOfEach
    | HandedOn
    | AsManyPlaces
    | WholesOfEach
)
