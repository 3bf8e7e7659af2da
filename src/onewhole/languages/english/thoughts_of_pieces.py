"""Thoughts about wholes and pieces."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import PIECE, Nodes, a_single, amount, bare, one_of, some, told, units
from onewhole.misconceptions.thoughts.pieces import (
    AddedTimes,
    AddedToOne,
    BottomsLookLike,
    CarriesTen,
    EasierWhole,
    EnoughForOne,
    Miscounted,
    MultipliedFraction,
    MultipliedTwo,
    MultipliedWholes,
    NamedByCount,
    PieceThought,
    PutTogetherInstead,
    SameKind,
    SideBySideDigits,
    TakesTheseToo,
    ThatIsTheAnswer,
    TopStaysBottomsAdd,
    TurnedAndDone,
    WhichGoesWhere,
    WhichIsMultiplied,
    WholeLeftOut,
    WholesComeDown,
    WholesForgotten,
)
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Said
from onewhole.sentences.sentence import Sentences

TEN = 10


def thought_of_pieces(thought: PieceThought, words: ClassWords) -> Sentences:
    """Say a thought about wholes and pieces.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(thought_of_pieces(AddedTimes(3, 2), ClassWords()))
    '3 and 2 more are 5.'
    """
    match thought:
        case WholesForgotten(large):
            return told(
                "I finished the fractions and may have forgotten that", units(large, words), "were left"
            )
        case WholesComeDown(wholes):
            return told("I subtract the fractions and bring the", bare(wholes), "down")
        case PutTogetherInstead(small, have, need):
            lack = ("I can't take", some(need, small), "from", some(have, small) if have else "none")
            return told(lack, ", so I may put them together")
        case BottomsLookLike(bottom, together):
            return told("the bottoms are", bare(bottom), "and", bare(bottom)) + told(
                "that may look like", bare(together)
            )
        case TopStaysBottomsAdd(top, bottom, together):
            stays = told("both have", bare(top), "on top, so that stays")
            return stays + told(bare(bottom), "and", bare(bottom), "are", bare(together))
        case SameKind(whole, pieces):
            return told(
                "to subtract, they must be the same kind, so I write", Said(whole), "as", Said(pieces)
            )
        case AddedToOne(wholes, top, together, small):
            added = (bare(wholes), "and", bare(top), "are", bare(together))
            return told(added, ", so it is", some(together, small))
        case MultipliedTwo(wholes, top):
            return told("I remember that something is multiplied") + told(
                "I may have multiplied", bare(wholes), "and", bare(top)
            )
        case TurnedAndDone(large, small):
            turned = ("I turned the", units(large, words), "into", units(small))
            return told(turned, "and may have thought that was all")
        case SideBySideDigits(wholes, top, together):
            return told(bare(wholes), "and", bare(top), "side by side look like", bare(together))
        case WhichGoesWhere(large, small, wholes, over):
            found = (_or_no(wholes, large, words), "and", _or_no(over, small, words))
            return told("I found", *found) + told("I may not be sure which number goes where")
        case EasierWhole(taken, second):
            easier = ("it is easier to take", Said(taken), "than", Said(second))
            return told(easier, ", so I take", Said(taken))
        case TakesTheseToo(small, have):
            return told("it is a minus problem, so I take the", some(have, small), "away as well")
        case Miscounted(unit):
            return told("I may have counted", a_single(unit, words), "too many or too few")
        case ThatIsTheAnswer(wrote):
            return told(amount(wrote, words), "is the answer")
        case NamedByCount(pieces, named):
            return told("I have", Counted(pieces, PIECE), "now, so I write", units(named))
        case WholeLeftOut():
            return _left_out(thought, words)
        case EnoughForOne(small, pieces, large):
            enough = (some(pieces, small), "are enough for", a_single(large, words))
            return told(enough, ", so I write", a_single(large, words), "more")
        case CarriesTen(small, pieces):
            first, last = divmod(pieces, TEN)
            got = told("I get", some(pieces, small))
            return got + told("I write the", bare(last), "and carry the", bare(first))
        case WhichIsMultiplied(times, top, bottom):
            goes = ("I may not be sure if I multiply", bare(times), "with the", bare(top))
            return told(goes, "or with the", bare(bottom))
        case AddedTimes(times, top):
            return told(bare(times), "and", bare(top), "more are", bare(times + top))
        case MultipliedWholes(times, wholes):
            return told("I multiplied", bare(times), "and", bare(wholes), "and may have thought that was all")
        case MultipliedFraction(times, fraction, wholes):
            did = ("I multiplied", bare(times), "and", Said(fraction))
            return told(did, "and may have left the", bare(wholes), "alone")
        case _:
            assert_never(thought)


def _or_no(count: int, unit: Unit, words: ClassWords) -> Nodes:
    """Count a unit: 4 wholes, no sixths."""
    return (some(count, unit, words),) if count else ("no", units(unit, words))


def _left_out(thought: WholeLeftOut, words: ClassWords) -> Sentences:
    """Say what the full whole leaves."""
    small, left = thought.small, thought.left
    make = "makes" if thought.ratio == 1 else "make"
    if not left:
        full: Nodes = (
            some(thought.pieces, small),
            make,
            a_single(thought.large, words),
            ", so none are left",
        )
    else:
        are = "is" if left == 1 else "are"
        of = (
            bare(thought.ratio),
            "of the",
            some(thought.pieces, small),
            make,
            a_single(thought.large, words),
        )
        full = (*of, ", so", some(left, small), are, "left")
    return told(full) + told("I may have left the new", one_of(thought.large, words), "out")
