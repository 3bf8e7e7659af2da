"""Which of two numbers is more, and which number is missing."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Expression


@dataclass(frozen=True, slots=True)
class WholesDecide:
    """The counts of the larger unit differ, and that decides: wholes, feet."""

    unit: Unit
    first: int
    second: int


@dataclass(frozen=True, slots=True)
class PlaceDecides:
    """The digits in a place differ, and that decides; the places ``above`` are the same in both."""

    place: Unit
    first: int
    second: int
    above: tuple[Unit, ...] = ()


@dataclass(frozen=True, slots=True)
class SameSizeToCompare:
    """Both numbers are written with pieces of one size."""

    small: Unit


@dataclass(frozen=True, slots=True)
class AllInPiecesToCompare:
    """Both numbers are counted in the smaller unit."""

    small: Unit


@dataclass(frozen=True, slots=True)
class OnlyCountsMatter:
    """All pieces are of one size, so only the counts matter."""

    small: Unit


@dataclass(frozen=True, slots=True)
class CountDecides:
    """``first`` and ``second`` count the same unit, and that decides."""

    small: Unit
    first: int
    second: int


@dataclass(frozen=True, slots=True)
class UndoneToFind:
    """What is added or taken beside the blank is undone, so that the blank is alone."""


@dataclass(frozen=True, slots=True)
class TakenAndLeft:
    """What is taken (the blank) and what is ``left`` make the ``whole``, so the blank is the whole less that.

    Source: the part-part-whole structure of "take from, change unknown", CCSSM (2010), table 1 (from memory).
    """

    whole: Expression
    left: Expression


@dataclass(frozen=True, slots=True)
class PartTaken:
    """``part`` is what is taken, found from the whole and what is left of it."""

    part: Quantity


@dataclass(frozen=True, slots=True)
class GapRead:
    """Both sides look alike, so the missing number can be read."""


#: Every reason that compares or finds a missing number.
Comparing = (
    WholesDecide
    | PlaceDecides
    | SameSizeToCompare
    | AllInPiecesToCompare
    | OnlyCountsMatter
    | CountDecides
    | UndoneToFind
    | TakenAndLeft
    | PartTaken
    | GapRead
)
