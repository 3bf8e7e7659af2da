"""Which of two numbers is more, and which number is missing."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Expression


class WholesDecide(Struct, frozen=True):
    """The counts of wholes differ, and that decides."""

    unit: Unit
    first: int
    second: int


class PlaceDecides(Struct, frozen=True):
    """The counts of a place or unit differ, and that decides; those ``above`` are the same in both."""

    place: Unit
    first: int
    second: int
    above: tuple[Unit, ...] = ()


class SameNumber(Struct, frozen=True):
    """Both are the same number, written alike."""

    number: Quantity


class OnlyOneIsMore(Struct, frozen=True):
    """One of the two is 0, and the other is more."""

    more: Quantity


class WithWholes(Struct, frozen=True):
    """A fraction of more pieces than make a whole is written with its wholes."""

    wholes: Unit


class AsFractions(Struct, frozen=True):
    """A decimal is written as a fraction, because the other number is one."""


class WholesSame(Struct, frozen=True):
    """Both have as many wholes, so the fractions beside them decide."""

    unit: Unit
    count: int


class MoreBesideWholes(Struct, frozen=True):
    """Both have as many wholes, and only ``number`` has something beside them: ``more``."""

    unit: Unit
    count: int
    number: Quantity
    more: Quantity


class PiecesOfOneSize(Struct, frozen=True):
    """The pieces of both are of one size as they stand, so their counts decide."""

    small: Unit
    first: int
    second: int


class AsManyPieces(Struct, frozen=True):
    """Both have ``count`` pieces, and the larger pieces make more."""

    count: int
    first: Unit
    second: Unit


class AgainstOne(Struct, frozen=True):
    """One of the two is less than one whole, and the other is not."""

    whole: Unit
    first: Quantity
    second: Quantity


class AgainstHalf(Struct, frozen=True):
    """The two do not lie on the same side of one half, or both are one half."""

    first: Quantity
    second: Quantity


class AsManyMissing(Struct, frozen=True):
    """Both need ``missing`` pieces to make one whole, and where the pieces are smaller, less is missing."""

    missing: int
    first: Quantity
    second: Quantity


class MoreAndLarger(Struct, frozen=True):
    """``more`` has more pieces than ``less``, and its pieces are larger."""

    more: Quantity
    less: Quantity


class SameSizeToCompare(Struct, frozen=True):
    """Both numbers are written with pieces of one size."""

    small: Unit


class SamePlacesToCompare(Struct, frozen=True):
    """Both decimals are written as far as the same place, with zeros at the end."""

    small: Unit


class SameCountToCompare(Struct, frozen=True):
    """Both fractions are written with as many pieces."""

    count: int


class AllInPiecesToCompare(Struct, frozen=True):
    """Both numbers are counted in the smaller unit."""

    small: Unit


class CountDecides(Struct, frozen=True):
    """``first`` and ``second`` count the same unit, and that decides."""

    small: Unit
    first: int
    second: int


class UndoneToFind(Struct, frozen=True):
    """What is added or taken beside the blank is undone, so that the blank is alone."""


class TakenAndLeft(Struct, frozen=True):
    """What is taken (the blank) and what is ``left`` make the ``whole``, so the blank is the whole less that.

    Source: the part-part-whole structure of "take from, change unknown", CCSSM (2010), table 1 (from memory).
    """

    whole: Expression
    left: Expression


class PartTaken(Struct, frozen=True):
    """``part`` is what is taken, found from the whole and what is left of it."""

    part: Quantity


class GapRead(Struct, frozen=True):
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
