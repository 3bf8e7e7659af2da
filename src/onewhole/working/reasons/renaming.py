"""The same amount in other units."""

from msgspec import Struct

from onewhole.number.unit import Unit


class WholesInPieces(Struct, frozen=True):
    """One larger unit is worth ``ratio`` smaller ones, so the larger ones are counted in smaller ones."""

    large: Unit
    small: Unit
    ratio: int


class AllInPieces(Struct, frozen=True):
    """Both numbers are counted in the smaller unit: ``first`` and ``second`` of it."""

    small: Unit
    first: int
    second: int


class CutAgain(Struct, frozen=True):
    """Each piece is cut again to get the smaller unit."""

    small: Unit


class SameSizePieces(Struct, frozen=True):
    """All pieces are of one size now."""

    small: Unit


class SamePlaces(Struct, frozen=True):
    """Every number is written as far as the same place."""

    small: Unit


class RenamedSameAmount(Struct, frozen=True):
    """The same amount, counted in the smaller unit."""

    small: Unit


class FewestPieces(Struct, frozen=True):
    """``times`` of a small piece make one larger piece, and of those none is left to be joined.

    ``top`` over ``bottom`` are the small pieces where ``times`` is to be named as a factor of both.
    """

    small: Unit
    large: Unit
    times: int
    top: int | None = None
    bottom: int | None = None


class OverOne(Struct, frozen=True):
    """A whole that is not cut is one piece: so many wholes are as many pieces over 1."""

    wholes: int


class PiecesJoined(Struct, frozen=True):
    """``times`` of a small piece make one larger piece: ``top`` over ``bottom`` are so many fewer pieces."""

    small: Unit
    large: Unit
    times: int
    top: int
    bottom: int


class SimplestAlready(Struct, frozen=True):
    """Nothing but 1 goes into the numerator and into the denominator."""

    top: int
    bottom: int


class PointPlaces(Struct, frozen=True):
    """Tenths take one place after the point, hundredths two: ``places`` of them for the smallest unit."""

    small: Unit
    places: int


class LastPlaceNames(Struct, frozen=True):
    """The last place after the point names the pieces, and so the denominator."""

    small: Unit


class NothingOf(Struct, frozen=True):
    """There is none of a small unit, so it is not written."""

    small: Unit


class EachIsWhole(Struct, frozen=True):
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
