"""What tomorrow's printed pages are called, for the teacher."""

from typing import assert_never

from onewhole.findings.paper import (
    EveryPaper,
    GroupPractice,
    MorningPaper,
    PracticeKey,
    PupilPractice,
    TalksPaper,
    TomorrowPaper,
)
from onewhole.languages.english.making import told
from onewhole.sentences.node import Typed
from onewhole.sentences.sentence import End, Sentences


def paper_called(paper: TomorrowPaper) -> Sentences:
    """Name a printed page, as it stands in a list.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(paper_called(GroupPractice("Larks 2")))
    'Practice for Larks 2'
    """
    match paper:
        case EveryPaper():
            return told("Everything in one file", end=End.TYPED)
        case MorningPaper():
            return told("Morning page", end=End.TYPED)
        case TalksPaper():
            return told("Talks", end=End.TYPED)
        case GroupPractice(name) | PupilPractice(name):
            return told("Practice for", Typed(name), end=End.TYPED)
        case PracticeKey():
            return told("Key of the practice pages", end=End.TYPED)
        case _:
            assert_never(paper)
