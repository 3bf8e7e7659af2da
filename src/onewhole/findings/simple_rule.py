"""A simple rule that would write every wrong answer of a pupil, and is none of the catalogue's."""

from enum import Enum

from msgspec import Struct


class PartMade(Enum):
    """How one part of an answer may come from the same parts of the two numbers of a problem."""

    WORKED = "worked as asked"
    ADDED = "added"
    APART = "smaller from larger"
    FIRST = "of the first number"
    SECOND = "of the second number"
    LARGER = "the larger"
    SMALLER = "the smaller"
    TIMES = "multiplied"
    ONE_FEWER = "worked, and one fewer"
    TWO_FEWER = "worked, and two fewer"
    TWICE_FIRST = "twice those of the first number"
    MISSING = "what both lack to a whole"
    SIZE = "the denominator"
    PIECES_ADDED = "the pieces added"
    WHOLE = "the first whole number"
    NOTHING = "left out"


class SimpleRule(Struct, frozen=True):
    """How the wholes, the pieces and the denominator of every wrong answer come about."""

    wholes: PartMade
    pieces: PartMade
    size: PartMade
