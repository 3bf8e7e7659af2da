"""The same amount in other units."""

from dataclasses import dataclass

from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class WholesInPieces:
    """One larger unit is worth ``ratio`` smaller ones, so the larger ones are counted in smaller ones."""

    large: Unit
    small: Unit
    ratio: int


@dataclass(frozen=True, slots=True)
class AllInPieces:
    """Both numbers are counted in the smaller unit: ``first`` and ``second`` of it."""

    small: Unit
    first: int
    second: int


@dataclass(frozen=True, slots=True)
class CutAgain:
    """Each piece is cut again to get the smaller unit."""

    small: Unit


@dataclass(frozen=True, slots=True)
class SameSizePieces:
    """All pieces are of one size now."""

    small: Unit


@dataclass(frozen=True, slots=True)
class SamePlaces:
    """Every number is written as far as the same place."""

    small: Unit


@dataclass(frozen=True, slots=True)
class RenamedSameAmount:
    """The same amount, counted in the smaller unit."""

    small: Unit


@dataclass(frozen=True, slots=True)
class FewestPieces:
    """``times`` of a small piece make one larger piece, and of those none is left to be joined.

    ``top`` over ``bottom`` are the small pieces where ``times`` is to be named as a factor of both.
    """

    small: Unit
    large: Unit
    times: int
    top: int | None = None
    bottom: int | None = None


@dataclass(frozen=True, slots=True)
class OverOne:
    """A whole that is not cut is one piece: so many wholes are as many pieces over 1."""

    wholes: int


@dataclass(frozen=True, slots=True)
class PiecesJoined:
    """``times`` of a small piece make one larger piece: ``top`` over ``bottom`` are so many fewer pieces."""

    small: Unit
    large: Unit
    times: int
    top: int
    bottom: int


@dataclass(frozen=True, slots=True)
class SimplestAlready:
    """Nothing but 1 goes into the numerator and into the denominator."""

    top: int
    bottom: int


@dataclass(frozen=True, slots=True)
class PointPlaces:
    """Tenths take one place after the point, hundredths two: ``places`` of them for the smallest unit."""

    small: Unit
    places: int


@dataclass(frozen=True, slots=True)
class LastPlaceNames:
    """The last place after the point names the pieces, and so the denominator."""

    small: Unit


@dataclass(frozen=True, slots=True)
class NothingOf:
    """There is none of a small unit, so it is not written."""

    small: Unit


@dataclass(frozen=True, slots=True)
class EachIsWhole:
    """Over 1 each piece is a whole."""


#: Every reason that renames.
Renaming = (
    WholesInPieces
    | AllInPieces
    | CutAgain
    | SameSizePieces
    | SamePlaces
    | RenamedSameAmount
    | FewestPieces
    | OverOne
    | PiecesJoined
    | SimplestAlready
    | PointPlaces
    | LastPlaceNames
    | NothingOf
    | EachIsWhole
)
