"""What a pupil was asked and said is written down, in the words of the desk."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import open_book, set_night, start_room
from onewhole.desk.classes.talk_rows import rows_of_talks, talk_texts
from onewhole.desk.pupil.asked_answers import (
    LONGEST,
    asked_of_pupil,
    note_asked,
    take_asked_back,
    talk_lines,
    word_choices,
)
from onewhole.errors import InputError
from onewhole.marking.reading.talk_word import TalkSaid
from onewhole.store.asked import KeptAsked, asked_rows, keep_asked
from onewhole.store.opening import Store
from tests.kit.doors import NOW


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of two with one night, nothing written."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 2, NOW)
    set_night(made, 1, "1. 5 1/8 - 2 5/8\n", NOW.date(), NOW)
    yield made
    made.close()


def _note(book: Store, asked: str, wrote: str, word: str = "", code: str = "K01") -> None:
    note_asked(book, 1, 1, code, asked=asked, wrote=wrote, word=word, now=NOW)


def test_rows_are_kept_as_a_teacher_types_them(book: Store) -> None:
    """Idle blanks go; a dash is nothing written; the word keeps what it is about."""
    _note(book, " 9 5/8  - 4 6/8", " 5  1/8 ", "another idea: A02 A01")
    _note(book, "9 - 4", "-")
    _note(book, "9 - 4", "", "slip")
    rows = [(one.asked, one.wrote, one.said, one.about) for one in asked_rows(book, 1)]
    assert rows == [
        ("9 5/8 - 4 6/8", "5 1/8", "another idea", "A01 A02"),
        ("9 - 4", "-", "", ""),
        ("", "", "slip", ""),
    ]


@pytest.mark.parametrize(
    ("asked", "wrote", "word"),
    [
        ("", "", ""),
        ("9 - 4", "5\x07", ""),
        ("9 - 4", "5" * (LONGEST + 1), ""),
        ("9 4" * LONGEST, "5", ""),
        ("9 - 4", "5", "this idea: A99"),
        ("9 - 4", "", "this idea"),
    ],
)
def test_what_cannot_be_kept_is_refused_with_what_to_do(
    book: Store, asked: str, wrote: str, word: str
) -> None:
    """Nothing is kept."""
    with pytest.raises(InputError) as refused:
        _note(book, asked, wrote, word)
    assert refused.value.remedy
    assert asked_rows(book, 1) == ()


def test_lines_are_told_by_pupil_and_gone_when_taken_back(book: Store) -> None:
    """As a formula where it can be read, as text where not."""
    _note(book, "9 - 4", "5", "slip")
    _note(book, "9 - 4", "see me", code="K02")
    found = talk_lines(book, 1, 1)
    assert [(one.is_formula, one.wrote, one.word) for one in found["K02"]] == [(False, "see me", "")]
    (first,) = found["K01"]
    assert (first.asked_is_formula, first.is_formula, first.word) == (True, True, "it was a slip")
    take_asked_back(book, 1, 1, "K01", number=first.number, now=NOW)
    assert "K01" not in talk_lines(book, 1)


def test_a_problem_that_cannot_be_read_any_more_counts_for_nothing(book: Store) -> None:
    """Another release may have kept it: it is shown as text, and its word still counts."""
    keep_asked(book, KeptAsked(1, "K01", "9 ÷ ? mod 4", "5", "slip", "", NOW, "teacher"))
    keep_asked(book, KeptAsked(1, "K01", "9 ÷ ? mod 4", "5", "", "", NOW, "teacher"))
    keep_asked(book, KeptAsked(1, "K01", "", "", "this idea", "", NOW, "teacher"))
    rows = rows_of_talks(talk_texts(book, 1))
    assert [(one.answer.problem, one.answer.word and one.answer.word.said) for one in rows] == [
        (None, TalkSaid.SLIP)
    ]
    assert [one.asked_is_formula for one in talk_lines(book, 1)["K01"]] == [False, False, False]


def test_a_pupil_who_wrote_nothing_may_be_asked_anything(book: Store) -> None:
    """No problem is offered and no idea; the night may be chosen."""
    found = asked_of_pupil(book, 1, "K01", at_once=2)
    assert (found.lines, found.suggested, found.moved) == ((), "", "")
    assert [number for number, _, _ in found.nights] == [1]
    assert [value for value, _ in found.words] == ["", "slip", "another idea"]


def test_each_idea_in_question_may_be_meant() -> None:
    """Two that the answers do not tell apart are two words; another idea is neither."""
    assert [value for value, _ in word_choices([("A01", "one"), ("A02", "two")])][2:] == [
        "this idea: A01",
        "this idea: A02",
        "another idea: A01 A02",
    ]
