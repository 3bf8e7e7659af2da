"""The same amount in other units."""

from typing import assert_never

from onewhole.notations.reasons.told import some
from onewhole.notations.words import ClassWords, unit_name
from onewhole.working.reasons.renaming import (
    AllInPieces,
    CutAgain,
    RenamedSameAmount,
    Renaming,
    SamePlaces,
    SameSizePieces,
    WholesInPieces,
)


def renaming(reason: Renaming, words: ClassWords) -> str:
    """Say how the same amount is written in other units.

    >>> from onewhole.number.ladder import mixed
    >>> renaming(CutAgain(mixed(12).units[1]), ClassWords())
    'Cut each piece again to get twelfths.'
    """
    match reason:
        case WholesInPieces(large, small, ratio):
            worth = f"One {unit_name(large, 1, words)} is {some(ratio, small)}"
            return f"{worth}, so count the {unit_name(large, 2, words)} in {unit_name(small)}."
        case AllInPieces(small, first, second):
            return f"That is {some(first, small)} and {some(second, small)}."
        case CutAgain(small):
            return f"Cut each piece again to get {unit_name(small)}."
        case SameSizePieces(small):
            return f"Now all the pieces are the same size: {unit_name(small)}."
        case SamePlaces(small):
            return f"Write every number as far as the {unit_name(small)}."
        case RenamedSameAmount(small):
            return f"It is the same amount, counted in {unit_name(small)}."
        case _:
            assert_never(reason)
