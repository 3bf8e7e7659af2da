"""The list of tomorrow's printed pages, and what they are called."""

import pytest

from onewhole.desk.tomorrow.papers import TomorrowPage, papers_text, read_papers
from onewhole.errors import Fault
from onewhole.findings.paper import (
    EveryPaper,
    GroupPractice,
    MorningPaper,
    PracticeKey,
    PupilPractice,
    TalksPaper,
)
from onewhole.languages.english.papers import paper_called
from onewhole.notations.sentences.text import text_of

PAPERS = (
    (TomorrowPage("together", EveryPaper()), "Everything in one file"),
    (TomorrowPage("morning", MorningPaper()), "Morning page"),
    (TomorrowPage("talks", TalksPaper()), "Talks"),
    (TomorrowPage("practice-larks-2", GroupPractice("Larks 2")), "Practice for Larks 2"),
    (TomorrowPage("pupil-k-1", PupilPractice("k/1")), "Practice for k/1"),
    (TomorrowPage("practice-key", PracticeKey()), "Key of the practice pages"),
)


def test_a_list_comes_back_as_it_was() -> None:
    """Names of groups and codes of pupils are kept as they are, not as a file's name has them."""
    papers = tuple(paper for paper, _ in PAPERS)
    assert read_papers(papers_text(papers)) == papers


@pytest.mark.parametrize(("paper", "words"), PAPERS)
def test_each_has_its_name(paper: TomorrowPage, words: str) -> None:
    """A page for a group or pupil says whose it is."""
    assert text_of(paper_called(paper.which)) == words


@pytest.mark.parametrize("text", ["", "{", "[1]", '[["a", "kite", ""]]', '[["a", ["group"], ""]]', '[["a"]]'])
def test_what_is_no_list_is_a_fault(text: str) -> None:
    """The program wrote it: nothing else is expected there."""
    with pytest.raises(Fault):
        read_papers(text)
