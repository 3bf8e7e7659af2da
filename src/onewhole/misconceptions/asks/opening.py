"""Questions about a larger unit that is opened: where it went, and what came of it."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class EnoughToTake:
    """Are there enough of the small unit in ``start`` to take ``need`` of it away?"""

    start: Quantity
    small: Unit
    need: int


@dataclass(frozen=True, slots=True)
class NoneThere:
    """Is there any of the small unit in ``start``, and what must come first?"""

    start: Quantity
    small: Unit


@dataclass(frozen=True, slots=True)
class NotOpened:
    """One of the large unit of ``start`` is opened: how many are left that are not?"""

    start: Quantity
    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class CrossedOff:
    """One of the large unit was crossed off: where did it go?"""

    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class HowManyMake:
    """How many of the small unit make one of the large one?"""

    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class OneBesideOne:
    """Is one of the large unit the same amount as one of the small one?"""

    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class HadBefore:
    """There were ``have`` of the small unit before: where are they now?"""

    large: Unit
    small: Unit
    have: int


@dataclass(frozen=True, slots=True)
class HowManyOpened:
    """How many of the large unit of ``start`` were opened, and how many were not?"""

    start: Quantity
    large: Unit


@dataclass(frozen=True, slots=True)
class WhichIsShown:
    """Which of the two numbers is there, and which only tells how much to take?"""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class EnoughAlready:
    """``have`` are there and ``need`` are to be taken: are there enough already?"""

    small: Unit
    have: int
    need: int


@dataclass(frozen=True, slots=True)
class HowManyMore:
    """``have`` were taken: how many must go, and how many more?"""

    small: Unit
    have: int


@dataclass(frozen=True, slots=True)
class OnesAfterTrading:
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
