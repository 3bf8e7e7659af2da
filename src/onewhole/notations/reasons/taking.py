"""Taking and adding, unit by unit, and what is there in the end."""

from typing import assert_never

from onewhole.notations.reasons.told import amount, single, some
from onewhole.notations.text import text
from onewhole.notations.words import ClassWords, unit_name
from onewhole.number.unit import Unit
from onewhole.working.reasons.taking import (
    AddedUnitByUnit,
    InAll,
    LargerUnitFirst,
    Left,
    OpenedToTake,
    PiecesAdded,
    PiecesTaken,
    SetAside,
    TakenFromWhole,
    TakenUnitByUnit,
    Taking,
    UnitsTaken,
)


def taking(reason: Taking, words: ClassWords) -> str:
    """Say what is taken or added, or what is there in the end.

    >>> from onewhole.number.ladder import mixed
    >>> taking(PiecesTaken(mixed(6).units[1], 8, 5), ClassWords())
    'Take 5 sixths from 8 sixths.'
    """
    match reason:
        case TakenUnitByUnit(units):
            return _unit_by_unit(units, "from", words)
        case AddedUnitByUnit(units):
            return _unit_by_unit(units, "with", words)
        case PiecesTaken(small, have, gone):
            return f"Take {some(gone, small)} from {some(have, small)}."
        case PiecesAdded(small, have, more):
            return f"Add {some(have, small)} and {some(more, small)}."
        case LargerUnitFirst(unit, count):
            return f"Larger units first: take {some(count, unit, words)}."
        case UnitsTaken(unit, had, gone):
            return f"{had} take away {gone} leaves {some(had - gone, unit, words)}."
        case Left(result):
            if not result.parts:
                return "Nothing is left."
            return f"{amount(result, words)} {'is' if single(result) else 'are'} left."
        case InAll(result):
            return f"That makes {amount(result, words)} in all."
        case SetAside(wholes, pieces):
            return f"Set {text(pieces)} aside, and take from {text(wholes)}."
        case OpenedToTake(wholes, opened):
            same = f"{text(wholes)} is the same amount as {text(opened)}"
            return f"{same}, and now there is enough of each unit."
        case TakenFromWhole(wholes, left):
            rest = text(left) if left.parts else "Nothing"
            return f"{rest} is left of {text(wholes)}. Now put back what was set aside."
        case _:
            assert_never(reason)


def _unit_by_unit(units: tuple[Unit, ...], joined: str, words: ClassWords) -> str:
    """Name every unit; the largest of several may be the class's wholes, ones below tens are ones."""
    largest = unit_name(units[0], 2, words if len(units) > 1 else None)
    names = (largest, *(unit_name(unit) for unit in units[1:]))
    said = ", ".join(f"{name} {joined} {name}" for name in names)
    return f"{said[0].upper()}{said[1:]}."
