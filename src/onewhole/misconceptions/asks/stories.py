"""Questions about a story, and what to do with its numbers."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity


@dataclass(frozen=True, slots=True)
class TellWithoutNumbers:
    """What happens in the story, told without its numbers?"""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class WhichAreNeeded:
    """What does the question ask, and which numbers does it need?"""

    wrote: Quantity


@dataclass(frozen=True, slots=True)
class WhoseIsLarger:
    """Two things are compared, drawn as bars: whose is given, and is the other one longer?"""

    given: Quantity


@dataclass(frozen=True, slots=True)
class SharedAmongHowMany:
    """What is shared out here, and among how many?"""

    wrote: Quantity


@dataclass(frozen=True, slots=True)
class IsThatAsked:
    """Read the question once more: is this number what it asks?"""

    wrote: Quantity


@dataclass(frozen=True, slots=True)
class PartOfHowMuch:
    """A part of an amount: must it be more or less than the amount?"""

    part: Quantity
    whole: Quantity


#: Every question about a story.
StoryAsk = (
    TellWithoutNumbers | WhichAreNeeded | WhoseIsLarger | SharedAmongHowMany | IsThatAsked | PartOfHowMuch
)
