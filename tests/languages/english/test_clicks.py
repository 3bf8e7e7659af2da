"""Buttons, and what they did."""

import pytest

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
    SettingLine,
    SetTo,
    TellAs,
    UseLine,
    WithoutWords,
)
from onewhole.languages.english.clicks import button, clicked
from onewhole.notations.sentences.text import text_of
from onewhole.statements.reading import read_statement

ASKED = read_statement("7 2/6 - 3 5/6")
PLOT = read_statement("plot 1/4: 2, 3/4: 3; total")
PICTURE = SetTo((SettingLine("picture", "strip"),))
MANY = tuple((str(at), ASKED) for at in range(1, 8))


@pytest.mark.parametrize(
    ("click", "words"),
    [
        (AddProblem(ASKED), "Add 7 2/6 - 3 5/6"),
        (AddProblem(PLOT), "Add: find the total of all"),
        (LeaveOut(tuple(map(str, range(1, 30)))), "Leave out 1, 2, 3, 4 and 25 more"),
        (NewNumbers(("2", "b")), "Change the numbers of 2 and b"),
        (AskInstead((("2", ASKED),)), "Change 2 to 7 2/6 - 3 5/6"),
        (WithoutWords(("2",)), "Ask 2 without words"),
        (AsStory(("2",)), "Tell 2 as a story"),
        (AsStory(("2",), anew=True), "Tell 2 in other words"),
        (EasyToHard(), "Put the page in order from easy to hard"),
        (PICTURE, "Set picture: strip"),
        (TellAs(3, "", ASKED), "7 2/6 - 3 5/6?"),
        (UseLine(3, "", LineUse.WORDS), "These are words to the pupil"),
        (UseLine(3, "", LineUse.TITLE), "This is the title"),
        (UseLine(3, "", LineUse.NOTHING), "Leave this line out"),
        (UseLine(3, "", LineUse.JOINED), "It goes on in the next line: join them"),
        (UseLine(3, "", LineUse.SPLIT), "Put each on a line of its own"),
        (GoTo("2", Help.CHOOSE_NUMBERS), "Go to 2: choose other numbers"),
        (GoTo(None, Help.SEE_WHAT_IS_MEANT), "Go to the page: see what you mean there"),
    ],
)
def test_a_button(click: Click, words: str) -> None:
    """It names what it does, and has no full stop."""
    assert text_of(button(click)) == words


@pytest.mark.parametrize(
    ("done", "words"),
    [
        (AddProblem(ASKED), "Added 7 2/6 - 3 5/6."),
        (LeaveOut(("1", "2")), "Problems 1 and 2 left out."),
        (AskInstead((("2", ASKED),)), "Problem 2 asks 7 2/6 - 3 5/6 now."),
        (WithoutWords(("2",)), "Problem 2 asked without words."),
        (AsStory(("2",)), "Problem 2 told as a story."),
        (AsStory(("2",), anew=True), "Problem 2 told in other words."),
        (EasyToHard(), "The page goes from easy to hard."),
        (PICTURE, "Set picture: strip."),
        (TellAs(3, "", ASKED), "The story asks 7 2/6 - 3 5/6 now."),
        (UseLine(3, "", LineUse.WORDS), "The line is words to the pupil now."),
        (UseLine(3, "", LineUse.TITLE), "The line is the title now."),
        (UseLine(3, "", LineUse.NOTHING), "The line is left out."),
        (UseLine(3, "", LineUse.JOINED), "The two lines are one now."),
        (UseLine(3, "", LineUse.SPLIT), "Each problem has its own line now."),
        (GoTo(None, Help.CHOOSE_NUMBERS), "Nothing was changed."),
        (NewlyNumbered(MANY, ()), "7 problems have new numbers."),
        (
            NewlyNumbered((("2", ASKED),), ("3",)),
            "Problem 2 asks 7 2/6 - 3 5/6 now. No other numbers are like 3.",
        ),
        (NoOtherNumbers(("3",)), "No other numbers are like these. Problem 3 left out."),
    ],
)
def test_what_was_done(done: Done, words: str) -> None:
    """One sentence, or two where something could not be done."""
    assert text_of(clicked(done)) == words
