"""Questions that compare: two numbers, two kinds of pieces, a fraction and a decimal."""

from msgspec import Struct

from onewhole.number.impossible import Impossible
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class SameAmount(Struct, frozen=True):
    """Are the two numbers the same amount, shown with strips?"""

    first: Quantity
    second: Quantity | Impossible


class CountTogether(Struct, frozen=True):
    """One piece of each kind side by side: can they be counted as the same kind?"""

    first: Unit
    second: Unit


class WhichPieces(Struct, frozen=True):
    """Which pieces are bigger?"""

    first: Unit
    second: Unit


class OneSize(Struct, frozen=True):
    """Are both kinds of pieces the same size?"""

    first: Unit
    second: Unit


class EnoughOfThem(Struct, frozen=True):
    """The bigger pieces: are there enough of them?"""

    bigger: Unit
    first: Quantity
    second: Quantity


class HowMuchMissing(Struct, frozen=True):
    """How much is missing from each to one whole, and which is closer?"""

    first: Quantity
    second: Quantity


class WhichIsLonger(Struct, frozen=True):
    """Both shaded on strips of one length: which shaded part is longer?"""

    first: Quantity
    second: Quantity


class WhichIsFurther(Struct, frozen=True):
    """Both on one number line: which is further along?"""

    first: Quantity
    second: Quantity


class LastDigits(Struct, frozen=True):
    """What is the last digit of each worth, and which digits belong under one another?"""

    first: Quantity
    second: Quantity


class BelowOneWhole(Struct, frozen=True):
    """Is the fraction more or less than one whole, and is the decimal that was written?"""

    fraction: Quantity
    wrote: Quantity


class FirstPlace(Struct, frozen=True):
    """What is the first place after the point worth, and is the fraction made of such pieces?"""

    fraction: Quantity
    wrote: Quantity


#: Every question that compares.
SizeAsk = (
    SameAmount
    | CountTogether
    | WhichPieces
    | OneSize
    | EnoughOfThem
    | HowMuchMissing
    | WhichIsLonger
    | WhichIsFurther
    | LastDigits
    | BelowOneWhole
    | FirstPlace
)
