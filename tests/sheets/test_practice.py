"""A practice page: new numbers for what was missed, one to come back to, one slip to find."""

import pytest

from onewhole.misconceptions.telling import Doing, ToldAs
from onewhole.notations.text import text
from onewhole.problems.needs import needs
from onewhole.problems.problem import Problem
from onewhole.problems.story_structure import Structure
from onewhole.problems.twins import twin_key
from onewhole.sheets.audit import audit
from onewhole.sheets.find_the_slip import find_the_slip
from onewhole.sheets.header import CornerMarks, Header
from onewhole.sheets.practice import BESIDE_A_SLIP, PRACTICE, Practice, practice, settles
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.stories import story
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.writing import write_sheet
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.writers.finding_keys import finding_key

NIGHT = read_sheet("whole: strip\n\n1. 9 5/8 - 4 6/8\n2. 8 3/6 - 4 4/6\n3. 5 1/8 - 2 5/8\n")


def made(**asked: object) -> Practice:
    """A practice page of the night; there is one."""
    found = practice(NIGHT.header, NIGHT.problems, "Work these.", **asked)  # type: ignore[arg-type]
    assert found is not None
    return found


def test_the_page() -> None:
    """Six problems, one of them from an earlier skill, none of the night's and no twins; it climbs."""
    page = made()
    asked = [problem.statement for problem in page.sheet.problems]
    assert len(asked) == PRACTICE
    assert not set(asked) & {problem.statement for problem in NIGHT.problems}
    assert len({twin_key(one) for one in asked}) == PRACTICE
    assert page.slip is None
    (back,) = [one for one in page.sheet.problems if one.label == page.review]
    assert not needs(back.statement).regrouping
    assert not set(map(finding_key, audit(WorkedSheet(page.sheet)).findings)) & {
        "twins",
        "climb",
        "K11",
    }
    assert read_sheet(write_sheet(page.sheet)) == page.sheet


def test_a_slip_stands_last_and_leaves_the_page_room() -> None:
    """Four problems and the slip; its problem is none of theirs."""
    page = made(patterns=["A02"], find_slip=True)
    assert page.slip is not None
    assert (len(page.sheet.problems), page.slip.label, page.slip.pattern) == (BESIDE_A_SLIP, "5", "A02")
    assert page.slip.problem not in {problem.statement for problem in page.sheet.problems}


def test_no_slip_without_an_open_pattern() -> None:
    """Nobody is shown a wrong idea that no answer fits."""
    assert made(find_slip=True).slip is None


def test_what_is_open_is_asked_where_it_can_be_told_apart() -> None:
    """With A01 open, a parallel of 5 1/8 - 2 5/8 is one on which A01 and A02 do not write the same."""
    page = made(patterns=["A01"], count=4)
    regrouping = [one.statement for one in page.sheet.problems if one.label != page.review]
    assert settles(NIGHT.problems[2].statement, ["A01"]) == 0
    assert [settles(one, ["A01"]) for one in regrouping] == [1, 1, 1]


@pytest.mark.parametrize(
    ("typed", "patterns", "count"),
    [
        ("9 5/8 - 4 6/8", ["A01"], 1),
        ("9 5/8 - 4 6/8", ["A01", "A02"], 2),
        ("5 1/8 - 2 5/8", ["A01", "A02"], 0),
        ("6 7/8 - 3 2/8", ["A01"], 0),
        ("9 5/8 - 4 6/8", [], 0),
    ],
)
def test_how_much_a_problem_settles(typed: str, patterns: list[str], count: int) -> None:
    """A pattern counts where it shows and writes what no other writes."""
    assert settles(read_statement(typed), patterns) == count


def test_a_word_problem_is_practised_in_words() -> None:
    """Its parallels are stories with the class's whole; where a class has no word, strips of kite paper."""
    for header, whole in (("whole: strip\n\n", "strip"), ("", "strip of kite paper")):
        sheet = read_sheet(f"{header}1. 5 1/3 - 2 2/3 | A kite takes 2 2/3 of 5 1/3 strips.")
        page = practice(sheet.header, sheet.problems, "Work these.")
        assert page is not None
        told = [one for one in page.sheet.problems if one.label != page.review]
        assert all(one.story for one in told)
        assert page.sheet.header.words.whole == whole
        assert not set(map(finding_key, audit(WorkedSheet(page.sheet)).findings)) & {
            "K7",
            "story",
            "reading",
        }


def test_what_no_story_is_told_about_is_practised_plain() -> None:
    """A product of three with a story has parallels without one."""
    sheet = read_sheet("1. 2 x 3 x 4 | Two boxes hold 3 rows of 4 kites each.")
    page = practice(sheet.header, sheet.problems, "Work these.")
    assert page is not None
    assert not any(one.story for one in page.sheet.problems)


def test_without_models_there_is_no_page() -> None:
    """And none where there are no parallels."""
    assert practice(NIGHT.header, [], "Work these.") is None
    halves = read_sheet("1. 1/2 + 1/2")
    assert practice(halves.header, halves.problems, "Work these.") is None


def test_practice_has_no_marks_in_its_corners() -> None:
    """It is looked at together and is not photographed; its answers take no more room than they need."""
    night = read_sheet("corner marks: windows\n\n1. 9 5/8 - 4 6/8\n")
    found = practice(night.header, night.problems, "Work these.")
    assert found is not None
    assert found.sheet.header.marks is CornerMarks.NONE


def test_labels_must_fit() -> None:
    """A review that is not on the page, and a slip under a label that is taken, are refused."""
    slip = find_the_slip([NIGHT.problems[0].statement], ["A02"], REGROUP_FIRST, label="1")
    with pytest.raises(ValueError, match="no problem 9"):
        Practice(NIGHT, "9")
    with pytest.raises(ValueError, match="label 1 is taken"):
        Practice(NIGHT, None, slip)


def test_a_story_keeps_its_equation() -> None:
    """The words of a practised story tell its own numbers."""
    told = Problem("1", read_statement("5 1/3 - 2 2/3"), "5 1/3 - 2 2/3", story="2 2/3 of 5 1/3 strips.")
    page = practice(NIGHT.header, [told], "Work these.")
    assert page is not None
    for one in page.sheet.problems:
        assert not one.story or text(one.statement).split(" - ")[0] in one.story


def test_a_story_that_misleads_is_practised_in_words_that_mislead() -> None:
    """So that going by a word shows again where it showed."""
    asked = map(read_statement, ("81 - 36", "52 - 27"))
    models = [story(one, structure=Structure.TURNED).problem("1") for one in asked]
    page = practice(Header(), models, "Work these.", patterns=["T01"])
    assert page is not None
    told = [one for one in page.sheet.problems if one.label != page.review]
    assert len(told) > 2
    assert {one.told for one in told} == {ToldAs(Doing.ADDING, compares=True)}
