"""Why pupils work together, in words."""

import pytest

from onewhole.findings.attendance import PaperWord
from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import (
    AllRight,
    AnotherIdea,
    FindingSetAside,
    FitsIdea,
    KeptHere,
    LeftBlank,
    LikelierThanNot,
    MaybeSlips,
    MayFit,
    MeetingsUsedUp,
    MovedHere,
    NoPaper,
    NoSteadyPattern,
    NothingWritten,
    NotReadable,
    NotToldApart,
    OtherFormWanted,
    SpeaksAgainst,
    SteadyNotOurs,
    TooFewAlike,
    TooManyAlike,
    WhyPlaced,
    Wrong,
)
from onewhole.languages.english.families import family_name
from onewhole.languages.english.placing import group_about, placed_because
from onewhole.misconceptions.pattern import Family
from onewhole.notations.sentences.text import text_of


@pytest.mark.parametrize(
    ("because", "words"),
    [
        ((NothingWritten(),), "Nothing was written."),
        ((NoPaper(PaperWord.ABSENT),), "Absent."),
        ((NoPaper(PaperWord.LATE),), "The paper is late."),
        ((AllRight(12), OtherFormWanted(("3",))), "All 12 right; another form is wanted in 3."),
        (
            (FitsIdea(("1", "2"), "A02"), NotToldApart(("A12",)), SpeaksAgainst(("4",))),
            (
                "Answers to 1 and 2 fit “opens a whole and still counts it”; "
                "they do not tell it from “wholes only”; against it: 4."
            ),
        ),
        (
            (MaybeSlips(("2",)), LeftBlank(("3",))),
            "One step beside right, perhaps a slip, in 2; nothing written in 3.",
        ),
        (
            (Wrong(("7",)), MayFit(("7",)), LikelierThanNot((Family.NUMERATOR,))),
            (
                "Wrong in 7; 7 may fit an idea, and one more answer would tell; "
                "likelier than not one of these (numerator)."
            ),
        ),
        (
            (MovedHere("Larks 2", (Wrong(("1",)), NoSteadyPattern())), FindingSetAside()),
            (
                "Moved here by the teacher; the answers said Larks 2: wrong in 1; no steady pattern; "
                "you set the finding aside."
            ),
        ),
        (
            (NotReadable(("1", "2")), TooFewAlike(2)),
            "Not readable: 1 and 2; joins these, as only 2 have an idea of that kind.",
        ),
        ((TooFewAlike(1),), "Joins these, as nobody else has an idea of that kind."),
        ((MeetingsUsedUp(4),), "Joins these, as you meet 4 groups."),
        ((AnotherIdea(),), "Another kind of idea than most here."),
        (
            (FitsIdea(("1",), "E12"), NotToldApart(("A01", "A02")), TooManyAlike(8)),
            (
                "Answers to 1 fit “a 1 that is regrouped becomes ten”; they do not tell it from 2 other "
                "ideas; 8 fit this, more than one group holds."
            ),
        ),
        ((SteadyNotOurs(("1", "3")),), "Steady, and not one of ours: ask the child to show 1 and 3."),
        ((KeptHere("Larks", (AllRight(3),)),), "Kept here; the answers now say Larks: all 3 right."),
    ],
)
def test_why_a_pupil_sits_there(because: tuple[WhyPlaced, ...], words: str) -> None:
    """One sentence, however many reasons."""
    assert text_of(placed_because(because)) == words


@pytest.mark.parametrize(
    ("ideas", "words"),
    [
        (["A01"], "takes the smaller number of pieces from the larger"),
        (["A12", "P08"], "wholes only"),
        (["A12", "A13"], "wholes only; fractions only"),
        (["A12", "A13", "A17", "A36"], "wholes only; fractions only; and 2 more ideas"),
        ([], "perhaps an idea about numerator"),
    ],
)
def test_a_group_is_called_by_its_ideas(ideas: list[str], words: str) -> None:
    """In plain words, each once; two at most are named."""
    assert text_of(group_about(GroupKind.FAMILY, ideas, [Family.NUMERATOR])) == words


def test_every_kind_of_group_and_every_family_has_a_name_of_its_own() -> None:
    """No two are told alike."""
    assert len({text_of(group_about(kind)) for kind in GroupKind}) == len(GroupKind)
    assert len({family_name(family) for family in Family}) == len(Family)
