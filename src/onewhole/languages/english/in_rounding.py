"""Rounding told: the two neighbors, what is halfway, and which neighbor is nearer."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import thing, told, units
from onewhole.languages.english.wordings import rung_called
from onewhole.number.unit import Kind, Unit
from onewhole.sentences.node import Counted, Naming, Node, Said, Seam, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.rounding import (
    BetweenNeighbors,
    ExactlyHalfway,
    InRounding,
    NearerNeighbor,
    NothingOver,
    PastHalfway,
)


def in_rounding(reason: InRounding, words: ClassWords) -> Sentences:
    """Say why a number is rounded to one neighbor and not to the other.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import places
    >>> from onewhole.number.quantity import whole
    >>> hundred = places(3).units[0]
    >>> why = BetweenNeighbors(hundred, whole(4567), whole(4500), whole(4600))
    >>> text_of(in_rounding(why, ClassWords()))
    'Count by hundreds: 4,567 comes after 4,500 and before 4,600.'
    """
    match reason:
        case BetweenNeighbors(unit, number, low, high):
            after = (Said(number), "comes after", Said(low))
            before = ("before", Said(high))
            return told("count by", counted_by(unit), Seam(":"), after, Seam("and", "it comes"), before)
        case PastHalfway(middle, number, past):
            side = "is past it" if past else "is not that far"
            return told("halfway is", Said(middle), Seam(", and"), Said(number), side)
        case NearerNeighbor(near, nearer, far, other):
            first, second = (Said(near), "from", Said(nearer)), (Said(far), "from", Said(other))
            apart = ("it is", *first, Seam("and", "it is"), *second)
            return told(apart, Seam(", so", "so"), Said(nearer), "is nearer")
        case ExactlyHalfway(low, high, far):
            start = ("it is exactly halfway", Seam(":", "it is"), Said(far), "from", Said(low))
            return told(start, Seam("and", "it is as far"), "from", Said(high)) + told("we agree to go up")
        case NothingOver(number, unit, count):
            exactly = (Said(number), "is exactly", Counted(count, _counted(unit, words)))
            return told(exactly, Seam(", so", "so"), "it stays")
        case _:
            assert_never(reason)


def _counted(unit: Unit, words: ClassWords) -> Unit | Thing:
    if unit.mark and _named(unit):
        return Thing(rung_called(unit, 1), rung_called(unit), None)
    return thing(unit, words)


def counted_by(unit: Unit) -> Node:
    """Name the unit that is counted by; ones are whole numbers, as a number with a fraction is rounded."""
    return Naming(Thing(rung_called(unit, 1), rung_called(unit), None)) if _named(unit) else units(unit)


def _named(unit: Unit) -> bool:
    """Say whether a unit is named by more than the place that it is."""
    return unit.kind is Kind.NUMBER and (unit.size == 1 or unit.mark != "")
