"""Questions about pieces: what they are called, how many there are, and how many make a whole."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class BottomTells:
    """What does the bottom number tell about the pieces, and does taking change it?"""

    bottom: int


@dataclass(frozen=True, slots=True)
class GotSmaller:
    """Pieces of another size were written: did the pieces get smaller?"""

    small: Unit
    written: Unit


@dataclass(frozen=True, slots=True)
class PiecesIn:
    """How many pieces are in one whole, in the wholes of a number, and in the number?"""

    number: Quantity
    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class WhichCountsWholes:
    """How many pieces make one whole, and which number counts the wholes?"""

    large: Unit
    small: Unit
    pieces: int


@dataclass(frozen=True, slots=True)
class CountAgain:
    """How many of the unit are left, counted once more?"""

    unit: Unit


@dataclass(frozen=True, slots=True)
class CouldMakeOne:
    """The amount is right: could some of the pieces make one of the large unit?"""

    large: Unit
    small: Unit
    pieces: int


@dataclass(frozen=True, slots=True)
class HowManyWholes:
    """The amount is right: how many of the large unit could be made of the pieces?"""

    large: Unit
    small: Unit
    pieces: int


@dataclass(frozen=True, slots=True)
class SideBySide:
    """One piece and one more: how many are there, and what is each called?"""

    small: Unit


@dataclass(frozen=True, slots=True)
class WhereIsTheWhole:
    """One whole was made from the pieces: where is it in what was written?"""

    large: Unit
    small: Unit
    pieces: int
    wrote: Quantity


@dataclass(frozen=True, slots=True)
class StillLoose:
    """One whole is made from the pieces: how many are still loose?"""

    large: Unit
    small: Unit
    pieces: int


@dataclass(frozen=True, slots=True)
class PushedTogether:
    """Two numbers are pushed together: how many of each of the units are there?"""

    first: Quantity
    second: Quantity
    units: tuple[Unit, ...]


@dataclass(frozen=True, slots=True)
class SetAsideBefore:
    """``have`` pieces were set aside: do they still belong to the first number?"""

    small: Unit
    have: int


@dataclass(frozen=True, slots=True)
class CutIntoSmaller:
    """A number is cut into smaller pieces: how many of them is it?"""

    number: Quantity
    small: Unit


@dataclass(frozen=True, slots=True)
class TenthsInAll:
    """How many tenths are there in all, and how many make one of the unit before the point?"""

    tenth: Unit
    one: Unit


#: Every question about pieces.
PieceAsk = (
    BottomTells
    | GotSmaller
    | PiecesIn
    | WhichCountsWholes
    | CountAgain
    | CouldMakeOne
    | HowManyWholes
    | SideBySide
    | WhereIsTheWhole
    | StillLoose
    | PushedTogether
    | SetAsideBefore
    | CutIntoSmaller
    | TenthsInAll
)
