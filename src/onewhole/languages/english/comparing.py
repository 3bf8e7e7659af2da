"""Which of two numbers is more, and which number is missing."""

from typing import assert_never

from onewhole.languages.english.making import Nodes, amount, single, some, told, units
from onewhole.languages.english.words import ClassWords
from onewhole.number.unit import Unit
from onewhole.sentences.node import Said, Seam
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.comparing import (
    AllInPiecesToCompare,
    Comparing,
    CountDecides,
    GapRead,
    OnlyCountsMatter,
    PartTaken,
    PlaceDecides,
    SameSizeToCompare,
    TakenAndLeft,
    UndoneToFind,
    WholesDecide,
)


def comparing(reason: Comparing, words: ClassWords) -> Sentences:
    """Say how two numbers are compared, or how a missing number is found.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(comparing(CountDecides(mixed(4).units[1], 1, 3), ClassWords()))
    '1 fourth is fewer than 3 fourths.'
    """
    match reason:
        case WholesDecide(unit, first, second):
            return told(_more(unit, first, second, words), Seam(", and"), "that decides")
        case PlaceDecides(place, first, second, above):
            return _same_above(above) + told(_more(place, first, second), Seam(", and"), "that decides")
        case SameSizeToCompare(small):
            return told("write both numbers with pieces of the same size", Seam(":"), units(small))
        case AllInPiecesToCompare(small):
            return told("count everything in", units(small))
        case OnlyCountsMatter(small):
            return told("all are", units(small), "now", Seam(", so", "so"), "only the counts matter")
        case CountDecides(small, first, second):
            if first == second:
                return told("both are", some(first, small))
            return told(_more(small, first, second))
        case UndoneToFind():
            return told("undo what stands beside the blank", ", so that the blank is alone")
        case TakenAndLeft(whole, left):
            both = told("what is taken away and what is left make the whole", ",", Said(whole))
            return both + told("so", "the blank is the whole less what is left", ",", Said(left))
        case PartTaken(part) if not part.parts:
            return told("nothing is taken away")
        case PartTaken(part):
            return told(amount(part, words), "is" if single(part) else "are", "taken away")
        case GapRead():
            return told("both sides look alike now", Seam(", so", "so"), "you can read the missing number")
        case _:
            assert_never(reason)


def _same_above(above: tuple[Unit, ...]) -> Sentences:
    """Say which larger places are the same in both numbers."""
    if not above:
        return ()
    return told("the", *((units(above[0]),) if len(above) == 1 else ("larger places",)), "are the same")


def _more(unit: Unit, first: int, second: int, words: ClassWords | None = None) -> Nodes:
    """Say which of two counts is more; where there is none of one, the other stands first."""
    if not first:
        first, second = second, first
    than = some(second, unit, words) if second else units(unit, words)
    more = "more than" if first > second else "fewer than"
    return some(first, unit, words), "is" if first == 1 else "are", more, *(() if second else ("no",)), than
