"""Thoughts about wholes and pieces: what is done with each number that is seen."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class WholesForgotten:
    """The fractions are done, and that wholes were left may be forgotten."""

    large: Unit


@dataclass(frozen=True, slots=True)
class WholesComeDown:
    """The fractions are subtracted, and the wholes come down."""

    wholes: int


@dataclass(frozen=True, slots=True)
class PutTogetherInstead:
    """``need`` pieces cannot be taken from ``have``, so they are put together."""

    small: Unit
    have: int
    need: int


@dataclass(frozen=True, slots=True)
class BottomsLookLike:
    """Two equal bottom numbers look like their sum."""

    bottom: int
    together: int


@dataclass(frozen=True, slots=True)
class TopStaysBottomsAdd:
    """Both have the same on top, so that stays; the bottoms are added."""

    top: int
    bottom: int
    together: int


@dataclass(frozen=True, slots=True)
class SameKind:
    """A whole number is written as so many pieces, to make both the same kind."""

    whole: Quantity
    pieces: Quantity


@dataclass(frozen=True, slots=True)
class AddedToOne:
    """Wholes and numerator are added: that many pieces."""

    wholes: int
    top: int
    together: int
    small: Unit


@dataclass(frozen=True, slots=True)
class MultipliedTwo:
    """Wholes and numerator are multiplied."""

    wholes: int
    top: int


@dataclass(frozen=True, slots=True)
class TurnedAndDone:
    """The wholes are turned into pieces, and that may seem to be all."""

    large: Unit
    small: Unit


@dataclass(frozen=True, slots=True)
class SideBySideDigits:
    """Wholes and numerator side by side look like one number."""

    wholes: int
    top: int
    together: int


@dataclass(frozen=True, slots=True)
class WhichGoesWhere:
    """So many wholes and so many pieces over were found: which number goes where?"""

    large: Unit
    small: Unit
    wholes: int
    over: int


@dataclass(frozen=True, slots=True)
class EasierWhole:
    """Taking a whole number is easier."""

    taken: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class TakesTheseToo:
    """It is a minus problem, so the pieces are taken as well."""

    small: Unit
    have: int


@dataclass(frozen=True, slots=True)
class Miscounted:
    """One of the unit was counted too many or too few."""

    unit: Unit


@dataclass(frozen=True, slots=True)
class ThatIsTheAnswer:
    """What was written is the answer."""

    wrote: Quantity


@dataclass(frozen=True, slots=True)
class NamedByCount:
    """There are so many pieces, so they are called by that number."""

    pieces: int
    named: Unit


@dataclass(frozen=True, slots=True)
class WholeLeftOut:
    """``ratio`` of the pieces make one whole, ``left`` are left, and the new whole is left out."""

    small: Unit
    ratio: int
    pieces: int
    large: Unit

    @property
    def left(self) -> int:
        """Return the pieces that are left."""
        return self.pieces - self.ratio


@dataclass(frozen=True, slots=True)
class EnoughForOne:
    """The pieces are enough for one whole, so there is one whole more."""

    small: Unit
    pieces: int
    large: Unit


@dataclass(frozen=True, slots=True)
class CarriesTen:
    """So many pieces: the last digit is written and the first is carried."""

    small: Unit
    pieces: int


@dataclass(frozen=True, slots=True)
class WhichIsMultiplied:
    """The whole number goes with one of two numbers."""

    times: int
    top: int
    bottom: int


@dataclass(frozen=True, slots=True)
class AddedTimes:
    """The whole number and the numerator are added."""

    times: int
    top: int


@dataclass(frozen=True, slots=True)
class MultipliedWholes:
    """The wholes are multiplied, and that may seem to be all."""

    times: int
    wholes: int


@dataclass(frozen=True, slots=True)
class MultipliedFraction:
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
