"""Why pupils work together, in words."""

import pytest

from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import (
    AllRight,
    FindingSetAside,
    FitsFamilies,
    JoinsOthers,
    LeftBlank,
    LikelierThanNot,
    MaybeSlips,
    MovedHere,
    NoSteadyPattern,
    NothingWritten,
    NotReadable,
    OtherFormWanted,
    SpeaksAgainst,
    TooFewToTell,
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
        ((AllRight(12), OtherFormWanted(("3",))), "All 12 right; another form is wanted in 3."),
        (
            (FitsFamilies(("1", "2"), (Family.REGROUPING, Family.FORM)), SpeaksAgainst(("4",))),
            "Answers to 1 and 2 fit a pattern (regrouping and form of answer); against it: 4.",
        ),
        (
            (MaybeSlips(("2",)), LeftBlank(("3",))),
            "One step beside right, perhaps a slip, in 2; nothing written in 3.",
        ),
        (
            (Wrong(("7",)), TooFewToTell(("7",)), LikelierThanNot((Family.NUMERATOR,))),
            (
                "Wrong in 7; 7 may fit a pattern, which is too few to tell; "
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
            (NotReadable(("1", "2")), JoinsOthers()),
            "Not readable: 1 and 2; joins these, as too few others need that talk.",
        ),
    ],
)
def test_why_a_pupil_sits_there(because: tuple[WhyPlaced, ...], words: str) -> None:
    """One sentence, however many reasons."""
    assert text_of(placed_because(because)) == words


def test_every_kind_of_group_and_every_family_has_a_name_of_its_own() -> None:
    """No two are told alike."""
    assert len({text_of(group_about(kind)) for kind in GroupKind}) == len(GroupKind)
    assert len({family_name(family) for family in Family}) == len(Family)
