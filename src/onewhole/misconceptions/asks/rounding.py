"""Questions about a number that is rounded."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class BetweenWhich:
    """Between which two of a unit does the number lie, and which is nearer?"""

    number: Quantity
    unit: Unit


@dataclass(frozen=True, slots=True)
class HowFarFromEach:
    """How far is the number itself from each of its neighbors?"""

    number: Quantity
    low: Quantity
    high: Quantity


@dataclass(frozen=True, slots=True)
class DigitInPlace:
    """Which digit of the number stands in the place that is rounded to?"""

    number: Quantity
    unit: Unit


@dataclass(frozen=True, slots=True)
class OneYouCountBy:
    """Is what was written one of the numbers you say when you count by a unit?"""

    wrote: Quantity
    unit: Unit


@dataclass(frozen=True, slots=True)
class DigitBeside:
    """Which digit stands just to the right of the place that is rounded to?"""

    number: Quantity
    unit: Unit


@dataclass(frozen=True, slots=True)
class NearTheNumber:
    """Is what was written near the number?"""

    wrote: Quantity
    number: Quantity


@dataclass(frozen=True, slots=True)
class NearerThanThat:
    """Is there a number of the unit that is nearer than what was written?"""

    number: Quantity
    wrote: Quantity
    unit: Unit


#: Every question about rounding.
RoundingAsk = (
    BetweenWhich
    | HowFarFromEach
    | DigitInPlace
    | OneYouCountBy
    | DigitBeside
    | NearTheNumber
    | NearerThanThat
)
