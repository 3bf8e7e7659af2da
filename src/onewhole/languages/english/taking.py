"""Taking and adding, unit by unit, and what is there in the end."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import amount, bare, listed, single, some, told, units
from onewhole.number.unit import Unit
from onewhole.sentences.node import Said, Seam
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.taking import (
    AddedUnitByUnit,
    InAll,
    LargerUnitFirst,
    Left,
    OpenedToTake,
    PiecesAdded,
    PiecesTaken,
    SetAside,
    SoFar,
    TakenFromWhole,
    TakenUnitByUnit,
    Taking,
    UnitsTaken,
)


def taking(reason: Taking, words: ClassWords) -> Sentences:
    """Say what is taken or added, or what is there in the end.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(taking(PiecesTaken(mixed(6).units[1], 8, 5), ClassWords()))
    'Take 5 sixths from 8 sixths.'
    """
    match reason:
        case TakenUnitByUnit(taken):
            return _unit_by_unit(taken, "from", words)
        case AddedUnitByUnit(added):
            return _unit_by_unit(added, "with", words)
        case PiecesTaken(small, have, gone):
            return told("take", some(gone, small), "from", some(have, small))
        case PiecesAdded(small, have, more):
            return told("add", some(have, small), "and", some(more, small))
        case LargerUnitFirst(unit, count):
            return told("larger units first: take", some(count, unit, words))
        case UnitsTaken(unit, had, gone):
            return told(bare(had), "take away", bare(gone), "leaves", some(had - gone, unit, words))
        case Left(result):
            if not result.parts:
                return told("nothing is left")
            return told(amount(result, words), "is left" if single(result) else "are left")
        case InAll(result):
            return told("that", "makes", amount(result, words), "in all")
        case SoFar(result):
            return told("that", "makes", amount(result, words), "so far")
        case SetAside(wholes, pieces):
            return told("set", Said(pieces), "aside", Seam(", and"), "take from", Said(wholes))
        case OpenedToTake(wholes, opened):
            same = (Said(wholes), "is the same amount as", Said(opened))
            return told(same, Seam(", and"), "now there is enough of each unit")
        case TakenFromWhole(wholes, left):
            rest = Said(left) if left.parts else "nothing"
            return told(rest, "is left of", Said(wholes)) + told("now", "put back what was set aside")
        case _:
            assert_never(reason)


def _unit_by_unit(taken: tuple[Unit, ...], joined: str, words: ClassWords) -> Sentences:
    """Name every unit; the largest of several may be the class's wholes, ones below tens are ones."""
    if not taken:
        return ()
    largest = units(taken[0], words if len(taken) > 1 else None)
    names = (largest, *(units(unit) for unit in taken[1:]))
    return told(listed([(name, joined, name) for name in names], joiner=","))
