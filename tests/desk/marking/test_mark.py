"""The answers of a class marked."""

from pathlib import Path

import pytest

from onewhole.desk.marking.mark import as_object, fitting, mark, mark_files, shown_finding, shown_place
from onewhole.desk.pupil.report import talks_told
from onewhole.marking.reading.answers_table import AnswersError
from onewhole.misconceptions.catalogue import by_id

SHEET = "1. 6 7/8 - 3 2/8\n2. 9 5/8 - 4 6/8\n3. 8 3/6 - 4 4/6"
ANSWERS = "pupil,3,1,2\nK01,3 5/6,3 5/8,4 7/8\nK02,4 1/6,3 5/8,5 1/8\nK03,,5 3/8,1\nK04,,,\n"


def test_columns_may_come_in_any_order() -> None:
    """Marks stand in the order of the page; each pupil keeps what was written."""
    marked = mark(SHEET, ANSWERS)
    assert [entry.label for entry in marked.marks.pupils[1].marks] == ["1", "2", "3"]
    assert [entry.written.text for entry in marked.marks.pupils[1].marks] == ["3 5/8", "5 1/8", "4 1/6"]


def test_findings_in_a_few_words() -> None:
    """Nothing, likely with patterns and labels, no steady pattern, and nothing again for nothing written."""
    assert [shown_finding(found) for found in mark(SHEET, ANSWERS).findings] == [
        "",
        "likely: A01 in 2, 3",
        "no steady pattern",
        "",
    ]


def test_the_patterns_that_fit_are_named_once() -> None:
    """Of all pupils together, in the order of the ids; each is asked about on a problem whose answer fits."""
    ((key, name, ask),) = fitting(mark(SHEET, ANSWERS))
    assert (key, name) == ("A01", by_id("A01").name)
    assert ask.startswith("on 2: Show ")


def test_a_group_says_why_it_works_together() -> None:
    """Every pupil is in one group, and the group has a reason."""
    groups = mark(SHEET, ANSWERS).groups
    assert sorted(pupil for group in groups for pupil in group.pupils) == ["K01", "K02", "K03", "K04"]
    assert "takes the smaller number of pieces from the larger" in {shown_place(group) for group in groups}


def test_the_settings_of_the_sheet_are_asked_for() -> None:
    """Any equal form is right unless the sheet asks for one."""
    answers = "pupil,1,2,3\nK01,29/8,39/8,23/6\n"
    verdicts = [
        {entry.verdict.value for entry in mark(header + SHEET, answers).marks.pupils[0].marks}
        for header in ("", "mixed form: yes\n\n", "simplest form: yes\n\n")
    ]
    assert verdicts == [{"right"}, {"form"}, {"right"}]


def test_an_answer_that_two_patterns_write_in_different_forms_is_marked_and_seated() -> None:
    """2/2 for 4 1/2 - 2 1/2: what a pupil's answers may show always names the answers it comes from."""
    sheet = "1. 4 1/2 - 2 1/2\n2. 9 1/6 - 4 4/6"
    for others in ("", "K02,2,4 3/6\nK03,2,5 3/6\n"):
        marked = mark(sheet, f"pupil,1,2\nK01,2/2,4 5/6\n{others}")
        found = marked.findings[0]
        assert bool(found.evidence) == bool(found.patterns)
        assert found.wrong == ("1", "2")
        assert "K01" in {pupil for group in marked.groups for pupil in group.pupils}


def test_files_are_marked_as_texts_are(tmp_path: Path) -> None:
    """And a mistake names the file."""
    sheet, answers = tmp_path / "sheet.txt", tmp_path / "answers.csv"
    sheet.write_text(SHEET)
    answers.write_text(ANSWERS)
    assert mark_files(sheet, answers) == mark(SHEET, ANSWERS)
    answers.write_text("pupil,4\n")
    with pytest.raises(AnswersError) as refused:
        mark_files(sheet, answers)
    assert refused.value.file == str(answers)


def test_what_was_asked_since_counts() -> None:
    """One fit on the page is too little; with one more in the talk it is likely, for that pupil alone."""
    answers = "pupil,3,1,2\nK01,,3 5/8,5 1/8\nK02,,3 5/8,5 1/8\n"
    asked = "pupil,asked,wrote\nK02,7 1/4 - 3 3/4,4 2/4\n"
    assert [found.status.value for found in mark(SHEET, answers).findings] == ["possible", "possible"]
    night = mark(SHEET, answers, asked=asked)
    assert [found.status.value for found in night.findings] == ["possible", "likely"]
    assert [pupil for pupil, _ in talks_told(night)] == ["K02"]
    pupils = as_object(night)["pupils"]
    assert isinstance(pupils, list)
    assert ["talk" in one for one in pupils] == [False, True]


def test_this_idea_is_looked_up_on_the_page() -> None:
    """It is what the page names without the talk; where it names nothing the word is refused."""
    answers = "pupil,3,1,2\nK01,,3 5/8,5 1/8\nK02,3 5/6,3 5/8,4 7/8\n"
    night = mark(SHEET, answers, asked="pupil,word\nK01,this idea\n")
    word = night.marks.pupils[0].word
    assert word is not None
    assert word.text == f"this idea: {' '.join(mark(SHEET, answers).findings[0].patterns)}"
    with pytest.raises(AnswersError, match=r"names no idea of K02.*line 2, column 2"):
        mark(SHEET, answers, asked="pupil,word\nK02,this idea\n")
