"""Taking and adding, unit by unit, and what is there in the end, in Spanish."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import Nodes, amount, bare, listed, some, the, told, units, verb
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
    'A 8 sextos les quitamos 5 sextos.'
    """
    match reason:
        case TakenUnitByUnit(taken):
            return _unit_by_unit(taken, words, taken_away=True)
        case AddedUnitByUnit(added):
            return _unit_by_unit(added, words, taken_away=False)
        case PiecesTaken(small, have, gone):
            to = "le quitamos" if have == 1 else "les quitamos"
            return told("a", some(have, small), to, some(gone, small))
        case PiecesAdded(small, have, more):
            return told("sumamos", some(have, small), "y", some(more, small))
        case LargerUnitFirst(unit, count):
            return told("primero lo más grande: quitamos", some(count, unit, words))
        case UnitsTaken(unit, had, gone):
            left = had - gone
            is_left = "es" if left == 1 else "son"
            return told(bare(had), "menos", bare(gone), is_left, some(left, unit, words))
        case Left(result):
            if not result.parts:
                return told("no queda nada")
            return told(verb("queda", "quedan", result), amount(result, words))
        case InAll(result):
            return told("en total", verb("es", "son", result), amount(result, words))
        case SoFar(result):
            return told("hasta aquí", verb("es", "son", result), amount(result, words))
        case SetAside(wholes, pieces):
            return told("apartamos", Said(pieces), Seam(", y"), "quitamos de", Said(wholes))
        case OpenedToTake(wholes, opened):
            same = (Said(wholes), "es la misma cantidad que", Said(opened))
            return told(same, Seam(", y"), "ahora hay suficiente de cada unidad")
        case TakenFromWhole(wholes, left):
            rest = (verb("queda", "quedan", left), Said(left)) if left.parts else ("no queda nada",)
            return told("de", Said(wholes), rest) + told("ahora", "devolvemos lo que apartamos")
        case _:
            assert_never(reason)


def _unit_by_unit(named: tuple[Unit, ...], words: ClassWords, *, taken_away: bool) -> Sentences:
    """Name every unit; the largest of several may be the class's wholes, ones below tens are units."""
    if not named:
        return ()
    parts: list[Nodes] = []
    for at, unit in enumerate(named):
        own = words if not at and len(named) > 1 else None
        with_what: Nodes = ("de", *the(unit, own)) if taken_away else ("con", units(unit, own))
        parts.append((units(unit, own), *with_what))
    return told("quitamos" if taken_away else "juntamos", listed(parts))
