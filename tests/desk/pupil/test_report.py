"""All about one pupil, from the desk."""

from datetime import date

import pytest

from onewhole.desk.classes.notebooks import and_tonight
from onewhole.desk.marking.mark import mark
from onewhole.desk.pupil.report import as_object, report, reports, told
from onewhole.desk.tomorrow.practice_pages import UnknownPupilError
from onewhole.marking.diagnosis.notebook import Notebook, Tonight
from onewhole.writers.report_words import idea

SHEET = "title: Kites\n\n1. 9 5/8 - 4 6/8\n2. 7 1/6 - 3 5/6\n3. 6 1/4 - 3 2/4\n"
ANSWERS = "pupil,1,2,3\nK01,5 1/8,4 4/6,3 1/4\nK02,4 7/8,3 2/6,2 3/4\n"


def test_a_pupil_is_told_by_code() -> None:
    """In the order in which the codes are named."""
    night = mark(SHEET, ANSWERS)
    assert report(night, "K01").sets == (("A01",),)
    assert [each.pupil for each in reports(night, ("K02", "K01"))] == ["K02", "K01"]
    assert told(night, report(night, "K02"))[0] == "K02"


def test_a_code_that_is_not_there_is_refused() -> None:
    """With the codes that are."""
    with pytest.raises(UnknownPupilError, match="no pupil is called “K99”") as refused:
        report(mark(SHEET, ANSWERS), "K99")
    assert refused.value.remedy == "Use a code as it stands there: K01, K02."


def test_a_night_with_a_notebook_tells_what_was_before() -> None:
    """The finding of a week ago is told with its page; three weeks later it has run out."""
    first = mark(SHEET, ANSWERS, tonight=Tonight(Notebook(), date(2026, 11, 10)))
    book = and_tonight(first)
    again = mark(SHEET, ANSWERS, tonight=Tonight(book, date(2026, 11, 17)))
    lines = told(again, report(again, "K01"))
    assert f"On 2026-11-10 answers to “Kites” fitted {idea('A01')}; that is good until 2026-11-24." in lines
    assert "Good until 2026-12-01; look again then." in lines
    late = mark(SHEET, ANSWERS, tonight=Tonight(book, date(2026, 12, 1)))
    assert as_object(late, report(late, "K01"))["earlier"] == []
