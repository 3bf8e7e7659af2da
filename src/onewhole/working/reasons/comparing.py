"""Which of two numbers is more, and which number is missing."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Expression


@dataclass(frozen=True, slots=True)
class WholesDecide:
    """The counts of wholes differ, and that decides."""

    unit: Unit
    first: int
    second: int


@dataclass(frozen=True, slots=True)
class PlaceDecides:
    """The counts of a place or unit differ, and that decides; those ``above`` are the same in both."""

    place: Unit
    first: int
    second: int
    above: tuple[Unit, ...] = ()


@dataclass(frozen=True, slots=True)
class SameNumber:
    """Both are the same number, written alike."""

    number: Quantity


@dataclass(frozen=True, slots=True)
class OnlyOneIsMore:
    """One of the two is 0, and the other is more."""

    more: Quantity


@dataclass(frozen=True, slots=True)
class WithWholes:
    """A fraction of more pieces than make a whole is written with its wholes."""

    wholes: Unit


@dataclass(frozen=True, slots=True)
class AsFractions:
    """A decimal is written as a fraction, because the other number is one."""


@dataclass(frozen=True, slots=True)
class WholesSame:
    """Both have as many wholes, so the fractions beside them decide."""

    unit: Unit
    count: int


@dataclass(frozen=True, slots=True)
class MoreBesideWholes:
    """Both have as many wholes, and only ``number`` has something beside them: ``more``."""

    unit: Unit
    count: int
    number: Quantity
    more: Quantity


@dataclass(frozen=True, slots=True)
class PiecesOfOneSize:
    """The pieces of both are of one size as they stand, so their counts decide."""

    small: Unit
    first: int
    second: int


@dataclass(frozen=True, slots=True)
class AsManyPieces:
    """Both have ``count`` pieces, and the larger pieces make more."""

    count: int
    first: Unit
    second: Unit


@dataclass(frozen=True, slots=True)
class AgainstOne:
    """One of the two is less than one whole, and the other is not."""

    whole: Unit
    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class AgainstHalf:
    """The two do not lie on the same side of one half, or both are one half."""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class AsManyMissing:
    """Both need ``missing`` pieces to make one whole, and where the pieces are smaller, less is missing."""

    missing: int
    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class MoreAndLarger:
    """``more`` has more pieces than ``less``, and its pieces are larger."""

    more: Quantity
    less: Quantity


@dataclass(frozen=True, slots=True)
class SameSizeToCompare:
    """Both numbers are written with pieces of one size."""

    small: Unit


@dataclass(frozen=True, slots=True)
class SamePlacesToCompare:
    """Both decimals are written as far as the same place, with zeros at the end."""

    small: Unit


@dataclass(frozen=True, slots=True)
class SameCountToCompare:
    """Both fractions are written with as many pieces."""

    count: int


@dataclass(frozen=True, slots=True)
class AllInPiecesToCompare:
    """Both numbers are counted in the smaller unit."""

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


#: Every reason that tells which of two numbers is more.
Deciding = (
    WholesDecide
    | PlaceDecides
    | SameNumber
    | OnlyOneIsMore
    | MoreBesideWholes
    | PiecesOfOneSize
    | AsManyPieces
    | AgainstOne
    | AgainstHalf
    | AsManyMissing
    | MoreAndLarger
    | CountDecides
)

#: Every reason that writes two numbers so that they can be compared.
MadeComparable = (
    WithWholes
    | AsFractions
    | WholesSame
    | SameSizeToCompare
    | SamePlacesToCompare
    | SameCountToCompare
    | AllInPiecesToCompare
)

#: Every reason that finds a missing number.
Finding = UndoneToFind | TakenAndLeft | PartTaken | GapRead

#: Every reason that compares or finds a missing number.
Comparing = Deciding | MadeComparable | Finding
