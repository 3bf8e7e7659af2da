"""Rounding told: the two neighbors, what is halfway, and which neighbor is nearer."""

from typing import assert_never

from onewhole.languages.english.making import told, units
from onewhole.languages.english.words import ClassWords
from onewhole.number.unit import ONE, Unit
from onewhole.sentences.node import Node, Said, Seam
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.rounding import (
    BetweenNeighbors,
    ExactlyHalfway,
    InRounding,
    NearerNeighbor,
    NothingOver,
    PastHalfway,
)


def in_rounding(reason: InRounding, _: ClassWords) -> Sentences:
    """Say why a number is rounded to one neighbor and not to the other.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import places
    >>> from onewhole.number.quantity import whole
    >>> hundred = places(3).units[0]
    >>> why = BetweenNeighbors(hundred, whole(4567), whole(4500), whole(4600))
    >>> text_of(in_rounding(why, ClassWords()))
    'Count by hundreds: 4,567 is between 4,500 and 4,600.'
    """
    match reason:
        case BetweenNeighbors(unit, number, low, high):
            between = (Said(number), "is between", Said(low), "and", Said(high))
            return told("count by", _named(unit), Seam(":"), between)
        case PastHalfway(low, high, middle, number, past):
            where = ("halfway between", Said(low), "and", Said(high), "is", Said(middle))
            side = "is past it" if past else "is not that far"
            return told(where, Seam(", and"), Said(number), side)
        case NearerNeighbor(near, nearer, far, other):
            steps = ("it is", Said(near), "from", Said(nearer), "and", Said(far), "from", Said(other))
            return told(steps, Seam(", so", "so"), Said(nearer), "is nearer")
        case ExactlyHalfway(low, high, far):
            halfway = told(
                "it is exactly halfway", Seam(":"), Said(far), "from", Said(low), "and from", Said(high)
            )
            return halfway + told("we agree to go up")
        case NothingOver(unit, number):
            return told(
                Said(number), "is a number of", _named(unit), "already", Seam(", so", "so"), "it stays"
            )
        case _:
            assert_never(reason)


def _named(unit: Unit) -> Node:
    """Name the unit that is counted by; ones are whole numbers, as a number with a fraction is rounded."""
    return "whole numbers" if unit == ONE else units(unit)
