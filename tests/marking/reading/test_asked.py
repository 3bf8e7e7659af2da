"""What pupils were asked, beside the marks of a page."""

import pytest

from onewhole.errors import InputError
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.asked import AskedAnswer, asked_problem, with_asked
from onewhole.marking.reading.mark import Verdict
from onewhole.marking.reading.talk_word import TalkSaid, TalkWord
from tests.kit.answers import all_right, marked, page

PAGE = page(("9 5/8 - 4 6/8",))


def _asked(pupil: str, typed: str, wrote: str, word: TalkWord | None = None) -> AskedAnswer:
    return AskedAnswer(pupil, asked_problem(typed), read_written(wrote), word)


def test_every_answer_counts_and_the_last_word() -> None:
    """Each pupil has their own; one who is not in the class is left out; the page's marks stay."""
    marks = marked(PAGE, {"K01": all_right(PAGE), "K02": [""]})
    slip, this = TalkWord(TalkSaid.SLIP), TalkWord(TalkSaid.THIS, ("A01",))
    rows = (
        _asked("K02", "7 2/6 - 3 5/6", "4 3/6", slip),
        _asked("K02", "9 - 4", "5"),
        AskedAnswer("K02", None, None, this),
        _asked("K07", "9 - 4", "5"),
    )
    first, second = with_asked(marks, rows).pupils
    assert first == marks.pupils[0]
    assert (second.marks, second.word) == (marks.pupils[1].marks, this)
    assert [one.mark.verdict for one in second.asked] == [Verdict.WRONG, Verdict.RIGHT]


def test_without_questions_the_marks_are_the_same() -> None:
    """Nothing is made anew."""
    marks = marked(PAGE, {"K01": all_right(PAGE)})
    assert with_asked(marks, ()) is marks


@pytest.mark.parametrize("typed", ["", "9 -", "1/0 + 1", "3 - 5"])
def test_what_is_no_problem_is_refused(typed: str) -> None:
    """With what to do next."""
    with pytest.raises(InputError) as refused:
        asked_problem(typed)
    assert refused.value.remedy


def test_half_a_row_cannot_be_built() -> None:
    """A problem has its answer, and an empty row says nothing."""
    with pytest.raises(ValueError, match="has its answer"):
        AskedAnswer("K01", asked_problem("9 - 4"), None)
    with pytest.raises(ValueError, match="nothing"):
        AskedAnswer("K01", None, None)
