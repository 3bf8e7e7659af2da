"""What one click does to a page, for a button; and what it did."""

from collections.abc import Sequence
from typing import assert_never

from onewhole.findings.click import (
    AddProblem,
    AskInstead,
    AsStory,
    Click,
    Done,
    EasyToHard,
    GoTo,
    Help,
    LeaveOut,
    LineUse,
    NewlyNumbered,
    NewNumbers,
    NoOtherNumbers,
    SetTo,
    TellAs,
    UseLine,
    WithoutWords,
)
from onewhole.languages.english.making import Nodes, bare, listed, told
from onewhole.languages.english.making import asked as question
from onewhole.sentences.node import Label, Said, Typed
from onewhole.sentences.sentence import End, Sentences
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.statement import Statement

#: So many names stand on a button.
MOST_TOLD = 4


def button(click: Click) -> Sentences:
    """Name a click, as a button does: with no full stop.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(button(LeaveOut(("1", "2"))))
    'Leave out 1 and 2'
    """
    match click:
        case AddProblem(asked):
            return _button("Add", _told_apart(asked))
        case LeaveOut(labels):
            return _button("Leave out", _problems(labels))
        case NewNumbers(labels):
            return _button("Change the numbers of", _problems(labels))
        case AskInstead(asked):
            return _button("Change", _few([(Label(label), "to", Said(other)) for label, other in asked]))
        case WithoutWords(labels):
            return _button("Ask", _problems(labels), "without words")
        case AsStory(labels, anew):
            return _button("Tell", _problems(labels), "in other words" if anew else "as a story")
        case EasyToHard():
            return _button("Put the page in order from easy to hard")
        case SetTo(lines):
            return _button("Set", _few([(Typed(line.typed),) for line in lines]))
        case TellAs(_, _, story):
            return question(Said(story))
        case UseLine(_, _, use):
            return _button(_use(use))
        case GoTo(label, need):
            return _button("Go to", "the page" if label is None else Label(label), ":", _help(need))
        case _:
            assert_never(click)


def clicked(done: Done) -> Sentences:
    """Say what a click did.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(clicked(LeaveOut(("1", "2"))))
    'Problems 1 and 2 left out.'
    """
    match done:
        case AddProblem(asked):
            return told("added", *_told_apart(asked))
        case LeaveOut(labels):
            return told(_named(labels), "left out")
        case AskInstead(asked):
            return tuple(
                sentence
                for label, other in asked
                for sentence in told("problem", Label(label), "asks", Said(other), "now")
            )
        case WithoutWords(labels):
            return told(_named(labels), "asked without words")
        case AsStory(labels, anew):
            return told(_named(labels), "told in other words" if anew else "told as a story")
        case EasyToHard():
            return told("the page goes from easy to hard")
        case SetTo(lines):
            return told("set", _few([(Typed(line.typed),) for line in lines]))
        case TellAs(_, _, asked):
            return told("the story asks", Said(asked), "now")
        case UseLine(_, _, use):
            return told(_used(use))
        case GoTo():
            return told("nothing was changed")
        case NewlyNumbered(asked, left):
            said = clicked(AskInstead(asked))
            if len(asked) > MOST_TOLD:
                said = told(bare(len(asked)), "problems have new numbers")
            return said + told("no other numbers are like", _problems(left)) if left else said
        case NoOtherNumbers(labels):
            return told("no other numbers are like these") + told(_named(labels), "left out")
        case _:
            assert_never(done)


def _button(*nodes: str | Label | Said | Nodes) -> Sentences:
    return told(*nodes, end=End.TYPED)


def _use(use: LineUse) -> str:
    match use:
        case LineUse.WORDS:
            return "These are words to the pupil"
        case LineUse.TITLE:
            return "This is the title"
        case LineUse.NOTHING:
            return "Leave this line out"
        case LineUse.JOINED:
            return "It goes on in the next line: join them"
        case LineUse.SPLIT:
            return "Put each on a line of its own"
        case _:
            assert_never(use)


def _used(use: LineUse) -> str:
    match use:
        case LineUse.WORDS:
            return "the line is words to the pupil now"
        case LineUse.TITLE:
            return "the line is the title now"
        case LineUse.NOTHING:
            return "the line is left out"
        case LineUse.JOINED:
            return "the two lines are one now"
        case LineUse.SPLIT:
            return "each problem has its own line now"
        case _:
            assert_never(use)


def _help(need: Help) -> str:
    match need:
        case Help.SHOW_THE_PIECES:
            return "ask the child to show the pieces"
        case Help.WRITE_THE_WORDS:
            return "only you can write these words"
        case Help.SEE_WHAT_IS_MEANT:
            return "see what you mean there"
        case Help.CHOOSE_NUMBERS:
            return "choose other numbers"
        case _:
            assert_never(need)


def _told_apart(asked: Statement) -> Nodes:
    """Say what is asked; words that tell somebody to do something stand behind a colon."""
    return (":", Said(asked)) if isinstance(asked, AskedInWords) else (Said(asked),)


def _named(labels: Sequence[str]) -> Nodes:
    return ("problems" if len(labels) > 1 else "problem", *_problems(labels))


def _problems(labels: Sequence[str]) -> Nodes:
    return _few([(Label(label),) for label in labels])


def _few(parts: Sequence[Nodes]) -> Nodes:
    """List some things; of many only the first few: 1, 2, 3, 4 and 25 more."""
    if len(parts) > MOST_TOLD + 1:
        parts = [*parts[:MOST_TOLD], (bare(len(parts) - MOST_TOLD), "more")]
    return listed(parts)
