"""Questions about a number that is rounded."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class BetweenWhich(Struct, frozen=True):
    """Between which two of a unit does the number lie, and which is nearer?"""

    number: Quantity
    unit: Unit


class HowFarFromEach(Struct, frozen=True):
    """How far is the number itself from each of its neighbors?"""

    number: Quantity
    low: Quantity
    high: Quantity


class DigitInPlace(Struct, frozen=True):
    """Which digit of the number stands in the place that is rounded to?"""

    number: Quantity
    unit: Unit


class OneYouCountBy(Struct, frozen=True):
    """Is what was written one of the numbers you say when you count by a unit?"""

    wrote: Quantity
    unit: Unit


class DigitBeside(Struct, frozen=True):
    """Which digit stands just to the right of the place that is rounded to?"""

    number: Quantity
    unit: Unit


class NearTheNumber(Struct, frozen=True):
    """Is what was written near the number?"""

    wrote: Quantity
    number: Quantity


class NearerThanThat(Struct, frozen=True):
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
