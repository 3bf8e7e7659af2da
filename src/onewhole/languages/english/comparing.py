"""Which of two numbers is more, and which number is missing."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import Nodes, a_single, amount, bare, single, some, told, units
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.sentences.node import Said, Seam
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.comparing import (
    AgainstHalf,
    AgainstOne,
    AllInPiecesToCompare,
    AsFractions,
    AsManyMissing,
    AsManyPieces,
    Comparing,
    CountDecides,
    Deciding,
    Finding,
    GapRead,
    MadeComparable,
    MoreAndLarger,
    MoreBesideWholes,
    OnlyOneIsMore,
    PartTaken,
    PiecesOfOneSize,
    PlaceDecides,
    SameCountToCompare,
    SameNumber,
    SamePlacesToCompare,
    SameSizeToCompare,
    TakenAndLeft,
    UndoneToFind,
    WholesDecide,
    WholesSame,
    WithWholes,
)

#: So many larger places are named one by one.
NAMED = 2


def comparing(reason: Comparing, words: ClassWords) -> Sentences:
    """Say how two numbers are compared, or how a missing number is found.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(comparing(CountDecides(mixed(4).units[1], 1, 3), ClassWords()))
    '1 fourth is fewer than 3 fourths.'
    """
    if isinstance(reason, Deciding):
        return _deciding(reason, words)
    if isinstance(reason, MadeComparable):
        return _made(reason, words)
    if isinstance(reason, Finding):
        return _finding(reason, words)
    assert_never(reason)


def _deciding(reason: Deciding, words: ClassWords) -> Sentences:
    match reason:
        case WholesDecide(unit, first, second):
            return told(_more(unit, first, second, words), Seam(", and"), "that decides")
        case PlaceDecides(place, first, second, above):
            return _same_above(above, words) + told(
                _more(place, first, second), Seam(", and"), "that decides"
            )
        case SameNumber(number):
            return told("both are", Said(number))
        case OnlyOneIsMore(more):
            return told(Said(more), "is more than nothing")
        case MoreBesideWholes(unit, count, number, more):
            return told(
                "both have", some(count, unit, words), Seam(", and"), Said(number), "has", Said(more), "more"
            )
        case PiecesOfOneSize(small, first, second):
            return told("the pieces are the same size") + told(_more(small, first, second))
        case AsManyPieces(count, first, second):
            there = (
                "there is" if count == 1 else "there are",
                bare(count),
                "piece" if count == 1 else "pieces",
            )
            return told(there, "in each") + told(_larger(first, second), Seam(", and"), "that decides")
        case AgainstOne(unit, first, second):
            return _against_one(first, unit, words) + _against_one(second, unit, words)
        case AgainstHalf(first, second):
            return _against_half(first) + _against_half(second)
        case AsManyMissing():
            return _missing(reason, words)
        case MoreAndLarger(more, less):
            counts = (Said(more), "has more pieces than", Said(less))
            return told(counts, Seam(", and"), _larger(more.ladder.units[1], less.ladder.units[1]))
        case CountDecides(small, first, second):
            return told(_more(small, first, second))
        case _:
            assert_never(reason)


def _made(reason: MadeComparable, words: ClassWords) -> Sentences:
    match reason:
        case WithWholes(wholes):
            return told("write each number with its", units(wholes, words))
        case AsFractions():
            return told("write the decimal as a fraction")
        case WholesSame(unit, count):
            return told("both have", some(count, unit, words), Seam(", so", "so"), "compare the fractions")
        case SameSizeToCompare(small):
            return told("write both numbers with pieces of the same size", Seam(":"), units(small))
        case SamePlacesToCompare(small):
            return told("write both numbers as far as the", units(small))
        case SameCountToCompare(count):
            return told("write both numbers with as many pieces", Seam(":"), bare(count))
        case AllInPiecesToCompare(small):
            return told("count everything in", units(small))
        case _:
            assert_never(reason)


def _finding(reason: Finding, words: ClassWords) -> Sentences:
    match reason:
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


def _same_above(above: tuple[Unit, ...], words: ClassWords) -> Sentences:
    """Say which larger places are the same in both numbers."""
    if not above:
        return ()
    if len(above) > NAMED:
        return told("the larger places are the same")
    names = [units(unit, words) for unit in above]
    both = (names[0],) if len(names) == 1 else (names[0], "and the", names[1])
    return told("the", both, "are the same")


def _more(unit: Unit, first: int, second: int, words: ClassWords | None = None) -> Nodes:
    """Say which of two counts is more; where there is none of one, the other stands first."""
    if not first:
        first, second = second, first
    than = some(second, unit, words) if second else units(unit, words)
    more = "more than" if first > second else "fewer than"
    return some(first, unit, words), "is" if first == 1 else "are", more, *(() if second else ("no",)), than


def _larger(first: Unit, second: Unit) -> Nodes:
    """Say which of two pieces is larger, as the first of them is against the second."""
    return units(first), "are larger than" if first.size > second.size else "are smaller than", units(second)


def _against_one(number: Quantity, unit: Unit, words: ClassWords) -> Sentences:
    """Say on which side of one whole a number lies; of the number 1 itself nothing."""
    one = a_single(unit, words)
    if number.value != 1:
        return told(Said(number), "is less than" if number.value < 1 else "is more than", one)
    return told(Said(number), "is", one) if number.ladder.style is Style.MIXED else ()


def _against_half(number: Quantity) -> Sentences:
    """Say on which side of one half a fraction lies; of 1/2 itself nothing."""
    top, bottom = number.amounts[1], number.ladder.denominator
    if (top, bottom) == (1, 2):
        return ()
    half = ("half of", bare(bottom), Seam(", so", "so"), Said(number))
    if 2 * top == bottom:
        return told(bare(top), "is", half, "is one half")
    than = "less than" if 2 * top < bottom else "more than"
    return told(bare(top), "is", than, half, "is", than, "one half")


def _missing(reason: AsManyMissing, words: ClassWords) -> Sentences:
    """Say how much each number needs to make one whole, and which needs less."""
    first, second = reason.first, reason.second
    small, other = first.ladder.units[1], second.ladder.units[1]
    one = a_single(first.ladder.units[0], words)
    needs = told(
        Said(first),
        "needs",
        some(reason.missing, small),
        "to make",
        one,
        Seam(", and"),
        Said(second),
        "needs",
        some(reason.missing, other),
    )
    nearer = first if small.size < other.size else second
    return needs + told(_larger(small, other), Seam(", so", "so"), Said(nearer), "is nearer to", one)
