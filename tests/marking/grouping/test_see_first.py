"""Whom to see first, and why."""

from onewhole.desk.tomorrow.seats import seated
from onewhole.languages.english.placing import first_because
from onewhole.marking.diagnosis.finding import findings
from onewhole.marking.grouping.class_ideas import class_ideas
from onewhole.marking.grouping.see_first import SeeFirst, see_first
from onewhole.notations.sentences.text import text_of
from tests.kit.answers import all_right, by_pattern, marked, page

PAGE = page()
#: K01 all right, K02 and K03 one idea (K03 with a right answer against it), K04 another, K05 and K06 a talk.
ROWS = {
    "K01": all_right(PAGE),
    "K02": by_pattern("A02", PAGE),
    "K03": [*by_pattern("A02", PAGE)[:11], all_right(PAGE)[11]],
    "K04": by_pattern("A04", PAGE),
    "K05": ["9 1/7", *all_right(PAGE)[1:]],
    "K06": ["9 1/7", "1 1/7", *all_right(PAGE)[2:]],
}


def _first(most: int) -> tuple[SeeFirst, ...]:
    marks = marked(PAGE, ROWS)
    found = findings(marks)
    return see_first(marks.pupils, found, seated(marks.pupils, found).groups, most=most)


def _said(seen: SeeFirst) -> str:
    return text_of(first_because(seen.because))


def test_one_pupil_an_idea_in_the_order_of_the_ideas_and_then_the_talks() -> None:
    """The most evidence ahead within an idea, the most wrong answers ahead among the talks."""
    assert [seen.pupil for seen in _first(9)] == ["K02", "K04", "K06", "K05"]
    assert [seen.pupil for seen in _first(3)] == ["K02", "K06", "K05"]
    assert [seen.pupil for seen in _first(1)] == ["K06"]


def test_the_order_is_that_of_the_ideas_of_the_class() -> None:
    """The idea of most pupils is told first here and there."""
    marks = marked(PAGE, ROWS)
    ideas = class_ideas(marks.pupils, findings(marks))
    seen = [one.pupil for one in _first(9)][: len(ideas)]
    assert [code in idea.pupils for code, idea in zip(seen, ideas, strict=True)] == [True, True]


def test_the_reason_names_labels_and_what_was_written() -> None:
    """A sentence a teacher can read out, the problem to ask about, and no name of a pattern."""
    idea, _, talk, single = _first(9)
    assert (_said(single), single.wrote.text) == ("Wrong in 1.", "9 1/7")
    assert (talk.ask_about, _said(talk), talk.wrote.text) == (
        "1",
        "Wrong in 1 and 2, each in its own way.",
        "9 1/7",
    )
    assert (idea.ask_about, _said(idea), idea.wrote.text) == (
        "3",
        "Answers to 3, 4, 5, 6, 7, 8, 9, 11 and 12 may come from one idea.",
        "3 2/3",
    )
