"""Questions about pieces: what they are called, how many there are, and how many make a whole."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class BottomTells(Struct, frozen=True):
    """What does the bottom number tell about the pieces, and does taking change it?"""

    bottom: int


class GotSmaller(Struct, frozen=True):
    """Pieces of another size were written: did the pieces get smaller?"""

    small: Unit
    written: Unit


class PiecesIn(Struct, frozen=True):
    """How many pieces are in one whole, in the wholes of a number, and in the number?"""

    number: Quantity
    large: Unit
    small: Unit


class WhichCountsWholes(Struct, frozen=True):
    """How many pieces make one whole, and which number counts the wholes?"""

    large: Unit
    small: Unit
    pieces: int


class CountAgain(Struct, frozen=True):
    """How many of the unit are left, counted once more?"""

    unit: Unit


class CouldMakeOne(Struct, frozen=True):
    """The amount is right: could some of the pieces make one of the large unit?"""

    large: Unit
    small: Unit
    pieces: int


class HowManyWholes(Struct, frozen=True):
    """The amount is right: how many of the large unit could be made of the pieces?"""

    large: Unit
    small: Unit
    pieces: int


class SideBySide(Struct, frozen=True):
    """One piece and one more: how many are there, and what is each called?"""

    small: Unit


class WhereIsTheWhole(Struct, frozen=True):
    """One whole was made from the pieces: where is it in what was written?"""

    large: Unit
    small: Unit
    pieces: int
    wrote: Quantity


class StillLoose(Struct, frozen=True):
    """One whole is made from the pieces: how many are still loose?"""

    large: Unit
    small: Unit
    pieces: int


class PushedTogether(Struct, frozen=True):
    """Two numbers are pushed together: how many of each of the units are there?"""

    first: Quantity
    second: Quantity
    units: tuple[Unit, ...]


class SetAsideBefore(Struct, frozen=True):
    """``have`` pieces were set aside: do they still belong to the first number?"""

    small: Unit
    have: int


class CutIntoSmaller(Struct, frozen=True):
    """A number is cut into smaller pieces: how many of them is it?"""

    number: Quantity
    small: Unit


class TenthsInAll(Struct, frozen=True):
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
