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
    """``times`` of a small piece make one larger piece; with those there are as few pieces as can be."""

    small: Unit
    large: Unit
    times: int


@dataclass(frozen=True, slots=True)
class OverOne:
    """A whole that is not cut is one piece: so many wholes are as many pieces over 1."""

    wholes: int


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
)
