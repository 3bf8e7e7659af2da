"""Questions about a story, and what to do with its numbers."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import WithRemainder


class TellWithoutNumbers(Struct, frozen=True):
    """What happens in the story, told without its numbers?"""

    first: Quantity
    second: Quantity


class WhichAreNeeded(Struct, frozen=True):
    """What does the question ask, and which numbers does it need?"""

    wrote: Quantity


class WhoseIsLarger(Struct, frozen=True):
    """Two things are compared, drawn as bars: whose is given, and is the other one longer?"""

    given: Quantity


class SharedAmongHowMany(Struct, frozen=True):
    """What is shared out here, and among how many?"""

    wrote: Quantity


class IsThatAsked(Struct, frozen=True):
    """Read the question once more: is this number what it asks?"""

    wrote: Quantity


class PartOfHowMuch(Struct, frozen=True):
    """A part of an amount: must it be more or less than the amount?"""

    part: Quantity
    whole: Quantity


class EveryoneIn(Struct, frozen=True):
    """So many groups are filled: is everyone, or everything, in?"""

    groups: Quantity
    by: Quantity


class CanBeOrdered(Struct, frozen=True):
    """Can so many be had, and what happens with those left over?"""

    wrote: Quantity | WithRemainder


class AllGroupsFull(Struct, frozen=True):
    """Are all of so many groups full?"""

    groups: Quantity
    by: Quantity


class GroupsOrThings(Struct, frozen=True):
    """Is this a number of groups, or of the things left over?"""

    wrote: Quantity


#: Every question about a story.
StoryAsk = (
    TellWithoutNumbers
    | WhichAreNeeded
    | WhoseIsLarger
    | SharedAmongHowMany
    | IsThatAsked
    | PartOfHowMuch
    | EveryoneIn
    | CanBeOrdered
    | AllGroupsFull
    | GroupsOrThings
)
