"""Questions about a story, and what to do with its numbers."""

from typing import assert_never

from onewhole.languages.english.making import asked, told
from onewhole.misconceptions.asks.stories import (
    AllGroupsFull,
    CanBeOrdered,
    EveryoneIn,
    GroupsOrThings,
    IsThatAsked,
    PartOfHowMuch,
    SharedAmongHowMany,
    StoryAsk,
    TellWithoutNumbers,
    WhichAreNeeded,
    WhoseIsLarger,
)
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_stories(ask: StoryAsk) -> Sentences:
    """Ask about a story.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> text_of(ask_of_stories(IsThatAsked(whole(36))))
    'Read the question of the story once more. Is 36 what it asks?'
    """
    match ask:
        case TellWithoutNumbers(first, second):
            without = ("tell me the story without", Said(first), "and", Said(second))
            return told(*without) + asked("what happens in it")
        case WhichAreNeeded(wrote):
            needed = asked("what does the story want to know, and which numbers do you need for it")
            return needed + asked("can it be", Said(wrote))
        case WhoseIsLarger(given):
            bars = told("draw both things in the story as bars, and write", Said(given), "at the right one")
            return bars + asked("is the other bar longer or shorter")
        case SharedAmongHowMany(wrote):
            shared = asked("what is shared out in the story, and among how many")
            return shared + asked("can each get", Said(wrote))
        case IsThatAsked(wrote):
            again = told("read the question of the story once more")
            return again + asked("is", Said(wrote), "what it asks")
        case PartOfHowMuch(part, whole):
            part_of = ("should", Said(part), "of", Said(whole), "be more or less than")
            return asked(*part_of, Said(whole))
        case EveryoneIn(groups, by):
            filled = told("fill", Said(groups), "groups of", Said(by))
            return filled + asked("is everyone, or everything, in")
        case CanBeOrdered(wrote):
            ordered = asked("can you order", Said(wrote), "of them")
            return ordered + asked("what happens with those left over")
        case AllGroupsFull(groups, by):
            full = asked("are", Said(groups), "groups of", Said(by), "all full")
            return full + asked("how many are in the last one")
        case GroupsOrThings(wrote):
            return asked("is", Said(wrote), "how many groups there are, or how many things are left over")
        case _:
            assert_never(ask)
