"""Questions about a larger unit that is opened: where it went, and what came of it."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class EnoughToTake(Struct, frozen=True):
    """Are there enough of the small unit in ``start`` to take ``need`` of it away?"""

    start: Quantity
    small: Unit
    need: int


class NoneThere(Struct, frozen=True):
    """Is there any of the small unit in ``start``, and what must come first?"""

    start: Quantity
    small: Unit


class NotOpened(Struct, frozen=True):
    """One of the large unit of ``start`` is opened: how many are left that are not?"""

    start: Quantity
    large: Unit
    small: Unit


class CrossedOff(Struct, frozen=True):
    """One of the large unit was crossed off: where did it go?"""

    large: Unit
    small: Unit


class HowManyMake(Struct, frozen=True):
    """How many of the small unit make one of the large one?"""

    large: Unit
    small: Unit


class OneBesideOne(Struct, frozen=True):
    """Is one of the large unit the same amount as one of the small one?"""

    large: Unit
    small: Unit


class HadBefore(Struct, frozen=True):
    """There were ``have`` of the small unit before: where are they now?"""

    large: Unit
    small: Unit
    have: int


class HowManyOpened(Struct, frozen=True):
    """How many of the large unit of ``start`` were opened, and how many were not?"""

    start: Quantity
    large: Unit


class WhichIsShown(Struct, frozen=True):
    """Which of the two numbers is there, and which only tells how much to take?"""

    first: Quantity
    second: Quantity


class EnoughAlready(Struct, frozen=True):
    """``have`` are there and ``need`` are to be taken: are there enough already?"""

    small: Unit
    have: int
    need: int


class HowManyMore(Struct, frozen=True):
    """``have`` were taken: how many must go, and how many more?"""

    small: Unit
    have: int


class OnesAfterTrading(Struct, frozen=True):
    """One was traded for the small unit: are there still as many ones, or dollars?"""

    ones: int
    one: Unit
    small: Unit


#: Every question about opening.
OpeningAsk = (
    EnoughToTake
    | NoneThere
    | NotOpened
    | CrossedOff
    | HowManyMake
    | OneBesideOne
    | HadBefore
    | HowManyOpened
    | WhichIsShown
    | EnoughAlready
    | HowManyMore
    | OnesAfterTrading
)
