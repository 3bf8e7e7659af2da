"""Another operation chosen in stories, told apart from the same answers in numbers alone."""

from functools import partial

import pytest

from onewhole.desk.marking.asked_stories import told_as_asked
from onewhole.desk.tomorrow.seats import seated
from onewhole.findings.status import Status
from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.class_settings import CLASS_SETTINGS
from onewhole.marking.diagnosis.ask_next import ask_next
from onewhole.marking.diagnosis.diagnosis import Weighed, weigh
from onewhole.marking.diagnosis.finding import findings
from onewhole.marking.reading.answers_table import read_answers
from onewhole.marking.reading.asked import asked_line, with_asked
from onewhole.marking.reading.asked_table import about_what, read_asked
from onewhole.marking.reading.mark import ClassMarks, mark_class
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import text
from onewhole.problems.answer import answer
from onewhole.problems.problem import Problem
from onewhole.problems.story_structure import Structure
from onewhole.sheets.header import Header
from onewhole.sheets.stories import story
from onewhole.sheets.stories_to_ask import stories_to_ask
from onewhole.statements.reading import read_statement

TOLD = (
    ("52 - 27", Structure.TAKE_FROM),
    ("81 - 36", Structure.TURNED),
    ("64 - 18", Structure.SMALLER_UNKNOWN),
    ("45 + 38", Structure.TURNED),
    ("6 x 12", Structure.TIMES_AS_MUCH),
    ("84 / 4", Structure.TIMES_AS_MUCH),
    ("? - 16 = 48", Structure.TAKE_FROM),
    ("45 + 26", Structure.TAKE_FROM),
)
TAKEN = tuple((f"{a} - {b}", Structure.TAKE_FROM) for a, b in ((52, 27), (81, 36), (64, 18), (93, 47)))


def problems(*rows: tuple[str, Structure | None]) -> tuple[Problem, ...]:
    """Problems told as stories of a structure, or in numbers alone."""
    found = []
    for at, (typed, structure) in enumerate(rows, start=1):
        asked = read_statement(typed)
        told = story(asked, structure=structure).problem(str(at)) if structure else None
        found.append(told or Problem(str(at), asked, typed))
    return tuple(found)


def marked(idea: str, page: tuple[Problem, ...]) -> tuple[ClassMarks, Weighed]:
    """What one pupil writes who follows an idea, marked and weighed."""
    slips = [by_id(idea).slip(one.statement, one.told) for one in page]
    cells = [
        text(slip.wrote) if slip else text(answer(one.statement))
        for slip, one in zip(slips, page, strict=True)
    ]
    head = ",".join(one.label for one in page)
    marks = mark_class(read_answers(f"pupil,{head}\nK01,{','.join(cells)}", page))
    return marks, weigh(marks)


@pytest.mark.parametrize("idea", ["T01", "T03"])
def test_an_idea_that_hangs_on_words_is_found(idea: str) -> None:
    """By a page of stories, some of which mislead and some of which do not; and it makes a group."""
    marks, weighed = marked(idea, problems(*TOLD))
    [said] = findings(marks, weighed.diagnoses)
    assert (said.status, said.diagnosis.alike) == (Status.LIKELY, ((idea,),))
    assert [group.pupils for group in seated(marks.pupils, [said]).groups] == [("K01",)]


@pytest.mark.parametrize("idea", ["T02", "E28"])
def test_stories_of_one_kind_leave_open_what_numbers_alone_tell(idea: str) -> None:
    """Adding in stories and adding everywhere write the same there: a problem in numbers is asked next."""
    marks, weighed = marked(idea, problems(*TAKEN))
    [found] = weighed.diagnoses
    assert set(found.alike) == {("T02",), ("E28",)}
    [[first, *_]] = ask_next(weighed, marks.expected, findings=findings(marks, weighed.diagnoses))
    assert by_id("E28").slip(first.statement, first.told)
    assert by_id("T02").slip(first.statement, first.told) is None


@pytest.mark.parametrize("words", [ClassWords(), CLASS_SETTINGS["club de cometas"]])
def test_what_only_a_story_tells_is_asked_in_one(words: ClassWords) -> None:
    """Choosing by a word and turning a comparison round write the same after two stories: a third one tells.

    It stands in the class's words, its equation before a bar; what it may mislead with is known again when
    the answer is typed. Numbers alone, asked before, cannot tell the two apart.
    """
    header = Header(words=words)
    page = problems(*TOLD[:2])
    marks, weighed = marked("T01", page)
    found = findings(marks, weighed.diagnoses)
    assert set(found[0].diagnosis.alike) == {("T01",), ("T03",)}
    [[first, *_]] = ask_next(weighed, marks.expected, None, found, partial(stories_to_ask, header, page))
    assert first.story
    row = f'K01,"{asked_line(first)}",'
    for idea in ("T01", "T03"):
        slip = by_id(idea).slip(first.statement, first.told)
        wrote = text(slip.wrote if slip else answer(first.statement))
        asked = read_asked(f"pupil,asked,wrote\n{row}{wrote}", {"K01"}, {"T01"})
        told = with_asked(marks, about_what(told_as_asked(header, asked), {}))
        assert told.pupils[0].asked[0].expected.problem == first
        after = weigh(told)
        assert after.diagnoses[0].alike == ((idea,),)


@pytest.mark.parametrize("idea", ["T02", "E28"])
def test_a_page_of_both_kinds_tells_them_apart(idea: str) -> None:
    """Three told and three in numbers alone."""
    plain = tuple((f"{a} - {b}", None) for a, b in ((75, 29), (84, 36), (61, 15)))
    _, weighed = marked(idea, problems(*TAKEN[:3], *plain))
    assert weighed.diagnoses[0].alike == ((idea,),)
