"""Questions that compare: two numbers, two kinds of pieces, a fraction and a decimal."""

from dataclasses import dataclass

from onewhole.number.impossible import Impossible
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class SameAmount:
    """Are the two numbers the same amount, shown with strips?"""

    first: Quantity
    second: Quantity | Impossible


@dataclass(frozen=True, slots=True)
class CountTogether:
    """One piece of each kind side by side: can they be counted as the same kind?"""

    first: Unit
    second: Unit


@dataclass(frozen=True, slots=True)
class WhichPieces:
    """Which pieces are bigger?"""

    first: Unit
    second: Unit


@dataclass(frozen=True, slots=True)
class OneSize:
    """Are both kinds of pieces the same size?"""

    first: Unit
    second: Unit


@dataclass(frozen=True, slots=True)
class EnoughOfThem:
    """The bigger pieces: are there enough of them?"""

    bigger: Unit
    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class HowMuchMissing:
    """How much is missing from each to one whole, and which is closer?"""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class WhichIsLonger:
    """Both shaded on strips of one length: which shaded part is longer?"""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class WhichIsFurther:
    """Both on one number line: which is further along?"""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class LastDigits:
    """What is the last digit of each worth, and which digits belong under one another?"""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class BelowOneWhole:
    """Is the fraction more or less than one whole, and is the decimal that was written?"""

    fraction: Quantity
    wrote: Quantity


@dataclass(frozen=True, slots=True)
class FirstPlace:
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
