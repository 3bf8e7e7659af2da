"""What pupils were asked, read from CSV text."""

import pytest

from onewhole.marking.reading.answers_table import AnswersError
from onewhole.marking.reading.asked_table import MOST_ROWS, about_what, read_asked
from onewhole.marking.reading.talk_word import TalkSaid

CLASS, IDS = ("K01", "K02"), ("A01", "A02")
HEAD = "pupil,asked,wrote,word\n"


def _places(text: str) -> list[tuple[int | None, int | None]]:
    with pytest.raises(AnswersError) as refused:
        read_asked(text, CLASS, IDS, "asked.csv")
    return [(one.line, one.column) for one in refused.value.refusals]


def test_columns_come_in_any_order_and_a_word_may_be_left_out() -> None:
    """Semicolons divide too; a dash is an answer that was not given; lines of a working are read."""
    text = "wrote;pupil;asked\n5 1/8;K01;9 5/8 - 4 6/8\n-;K02;9 - 4\n\n9 = 8;K02;9 - 1"
    found = [one.answer for one in read_asked(text, CLASS, IDS)]
    assert [(one.pupil, one.problem.typed if one.problem else "") for one in found] == [
        ("K01", "9 5/8 - 4 6/8"),
        ("K02", "9 - 4"),
        ("K02", "9 - 1"),
    ]
    assert [one.written.blank for one in found if one.written] == [False, True, False]
    assert {one.word for one in found} == {None}


def test_a_word_needs_no_problem() -> None:
    """A talk may have been about the page itself."""
    (row,) = read_asked("pupil,word\nK01,slip", CLASS, IDS)
    assert (row.answer.problem, row.answer.word and row.answer.word.said) == (None, TalkSaid.SLIP)


@pytest.mark.parametrize(
    ("row", "place"),
    [
        (",9 - 4,5,", (2, 1)),
        ("K09,9 - 4,5,", (2, 1)),
        ("K01,9 -,5,", (2, 2)),
        ("K01,1/0 - 1,5,", (2, 2)),
        ("K01,,5,", (2, 2)),
        ("K01,9 - 4,,", (2, 3)),
        ("K01,9 - 4,,slip", (2, 3)),
        ("K01,,,", (2, 2)),
        ("K01,,,maybe", (2, 4)),
        ("K01,9 - 4,5,slip,more", (2, 5)),
    ],
)
def test_a_row_that_cannot_be_used_is_told_by_its_place(row: str, place: tuple[int, int]) -> None:
    """Line and column as a spreadsheet counts them."""
    assert _places(HEAD + row) == [place]


def test_every_mistake_is_told_at_once() -> None:
    """In the order of the file."""
    assert _places(f"{HEAD}K01,9 - 4,5,no\nK01,9 - 4,5,\nK09,,5,slip") == [(2, 4), (4, 1), (4, 2)]


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("", (1, None)),
        ("pupil,asked,wrote,mood\nK01,1,1,x", (1, 4)),
        ("pupil,asked,wrote,asked\nK01,1,1,1", (1, 4)),
        ("pupil,asked,word\nK01,9 - 4,slip", (1, None)),
        ("asked,wrote\n9 - 4,5", (1, None)),
        (HEAD + "K01,,,slip\n" * (MOST_ROWS + 1), (MOST_ROWS + 2, 1)),
        (HEAD + 'K01,"9 - 4,5,', (2, None)),
    ],
)
def test_a_table_of_another_kind_is_refused(text: str, place: tuple[int, int | None]) -> None:
    """No table, a column that is not ours, twice or missing, and more rows than a morning holds."""
    assert _places(text) == [place]


def test_this_idea_is_the_one_that_the_page_names() -> None:
    """What was typed with an id keeps it; a slip is about nothing."""
    rows = read_asked(f"{HEAD}K01,,,this idea\nK01,,,A02\nK02,,,another idea\nK02,,,slip", CLASS, IDS)
    words = [one.word for one in about_what(rows, {"K01": ("A01",), "K02": ("A01", "A02")})]
    assert [word.about for word in words if word] == [("A01",), ("A02",), ("A01", "A02"), ()]


def test_this_idea_is_refused_where_the_page_names_none() -> None:
    """Another idea may still be said: one that no page of ours has named."""
    rows = read_asked(f"{HEAD}K01,,,another idea\nK01,,,this idea", CLASS, IDS, "asked.csv")
    with pytest.raises(AnswersError, match=r"names no idea of K01.*asked\.csv, line 3, column 4") as refused:
        about_what(rows, {})
    assert "such as A01" in str(refused.value)
