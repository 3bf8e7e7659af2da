"""Questions about addition in columns, of decimals too: what a column makes, and where its ten goes."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Expression


class MakeTogether(Struct, frozen=True):
    """What do the counts of one place make together, and where did ten of them go?"""

    first: Quantity
    second: Quantity
    place: Unit


class TenMade(Struct, frozen=True):
    """Do the counts of one place make one of the next, and is there something to carry?"""

    problem: Expression
    place: Unit
    large: Unit


class TenAreOneOf(Struct, frozen=True):
    """The counts of a place make ten or more: ten of them are one of what?"""

    place: Unit


class WhichDigitSays(Struct, frozen=True):
    """A place comes to ``total``: which digit of that counts the place?"""

    place: Unit
    total: int


class FirstDigits(Struct, frozen=True):
    """What does the first digit of each number stand for?"""

    first: Quantity
    second: Quantity


class FirstAndLast(Struct, frozen=True):
    """What does the first digit of a number stand for, and is it as much as the last?"""

    number: Quantity


class HowOftenCarried(Struct, frozen=True):
    """How many of the large place do the small ones make, and how often was it added?"""

    large: Unit
    small: Unit


class ZeroInTheColumn(Struct, frozen=True):
    """A zero stands in a column: how many of the place are there in all?"""

    problem: Expression
    place: Unit


class CarriedBefore(Struct, frozen=True):
    """One place was carried from: what about the next that makes ten?"""

    first: Unit
    second: Unit


class WhichColumnGets(Struct, frozen=True):
    """A place makes ten or more: which column should get ten of them?"""

    place: Unit


class HowManyOfEach(Struct, frozen=True):
    """How many of the one place is a number, and how many of the next?"""

    number: Quantity
    small: Unit
    large: Unit


class HandedOn(Struct, frozen=True):
    """What does the small place hand on to the large one?"""

    small: Unit
    large: Unit


class AsManyPlaces(Struct, frozen=True):
    """Both numbers written with as many places: what does each say now?"""

    first: Quantity
    second: Quantity


class WholesOfEach(Struct, frozen=True):
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
