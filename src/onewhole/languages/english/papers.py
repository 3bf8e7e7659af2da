"""What tomorrow's printed pages are called, for the teacher."""

from collections.abc import Sequence
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
from onewhole.languages.english.words import names_listed
from onewhole.sentences.node import Said, Typed
from onewhole.sentences.sentence import End, Sentences
from onewhole.statements.writable import Writable


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


def practice_missing(groups: Sequence[str], like: Writable) -> Sentences:
    """Say why there is no practice page, for some groups or (none named) for nobody, and what to do.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.statements.reading import read_statement
    >>> text_of(practice_missing(["Larks", "Owls"], read_statement("1/2 + 1/2"))).partition(":")[0]
    'There is no practice page for Larks and Owls'
    """
    whose = ("for", Typed(names_listed(groups))) if groups else ()
    return (
        *told("there is no practice page", *whose, ": no other numbers make a problem like", Said(like)),
        *told("for practice, type a page of your own, with other pieces or larger numbers"),
    )
