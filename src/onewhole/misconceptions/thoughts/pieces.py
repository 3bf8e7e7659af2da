"""Thoughts about wholes and pieces: what is done with each number that is seen."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class WholesForgotten(Struct, frozen=True):
    """The fractions are done, and that wholes were left may be forgotten."""

    large: Unit


class WholesComeDown(Struct, frozen=True):
    """The fractions are subtracted, and the wholes come down."""

    wholes: int


class PutTogetherInstead(Struct, frozen=True):
    """``need`` pieces cannot be taken from ``have``, so they are put together."""

    small: Unit
    have: int
    need: int


class BottomsLookLike(Struct, frozen=True):
    """Two equal bottom numbers look like their sum."""

    bottom: int
    together: int


class TopStaysBottomsAdd(Struct, frozen=True):
    """Both have the same on top, so that stays; the bottoms are added."""

    top: int
    bottom: int
    together: int


class SameKind(Struct, frozen=True):
    """A whole number is written as so many pieces, to make both the same kind."""

    whole: Quantity
    pieces: Quantity


class AddedToOne(Struct, frozen=True):
    """Wholes and numerator are added: that many pieces."""

    wholes: int
    top: int
    together: int
    small: Unit


class MultipliedTwo(Struct, frozen=True):
    """Wholes and numerator are multiplied."""

    wholes: int
    top: int


class TurnedAndDone(Struct, frozen=True):
    """The wholes are turned into pieces, and that may seem to be all."""

    large: Unit
    small: Unit


class SideBySideDigits(Struct, frozen=True):
    """Wholes and numerator side by side look like one number."""

    wholes: int
    top: int
    together: int


class WhichGoesWhere(Struct, frozen=True):
    """So many wholes and so many pieces over were found: which number goes where?"""

    large: Unit
    small: Unit
    wholes: int
    over: int


class EasierWhole(Struct, frozen=True):
    """Taking a whole number is easier."""

    taken: Quantity
    second: Quantity


class TakesTheseToo(Struct, frozen=True):
    """It is a minus problem, so the pieces are taken as well."""

    small: Unit
    have: int


class Miscounted(Struct, frozen=True):
    """One of the unit was counted too many or too few."""

    unit: Unit


class ThatIsTheAnswer(Struct, frozen=True):
    """What was written is the answer."""

    wrote: Quantity


class NamedByCount(Struct, frozen=True):
    """There are so many pieces, so they are called by that number."""

    pieces: int
    named: Unit


class WholeLeftOut(Struct, frozen=True):
    """``ratio`` of the pieces make one whole, ``left`` are left, and the new whole is left out."""

    small: Unit
    ratio: int
    pieces: int
    large: Unit

    @property
    def left(self) -> int:
        """Return the pieces that are left."""
        return self.pieces - self.ratio


class EnoughForOne(Struct, frozen=True):
    """The pieces are enough for one whole, so there is one whole more."""

    small: Unit
    pieces: int
    large: Unit


class CarriesTen(Struct, frozen=True):
    """So many pieces: the last digit is written and the first is carried."""

    small: Unit
    pieces: int


class WhichIsMultiplied(Struct, frozen=True):
    """The whole number goes with one of two numbers."""

    times: int
    top: int
    bottom: int


class AddedTimes(Struct, frozen=True):
    """The whole number and the numerator are added."""

    times: int
    top: int


class MultipliedWholes(Struct, frozen=True):
    """The wholes are multiplied, and that may seem to be all."""

    times: int
    wholes: int


class MultipliedFraction(Struct, frozen=True):
    """The fraction is multiplied, and the wholes may be left alone."""

    times: int
    fraction: Quantity
    wholes: int


#: Every thought about pieces.
PieceThought = (
    WholesForgotten
    | WholesComeDown
    | PutTogetherInstead
    | BottomsLookLike
    | TopStaysBottomsAdd
    | SameKind
    | AddedToOne
    | MultipliedTwo
    | TurnedAndDone
    | SideBySideDigits
    | WhichGoesWhere
    | EasierWhole
    | TakesTheseToo
    | Miscounted
    | ThatIsTheAnswer
    | NamedByCount
    | WholeLeftOut
    | EnoughForOne
    | CarriesTen
    | WhichIsMultiplied
    | AddedTimes
    | MultipliedWholes
    | MultipliedFraction
)
