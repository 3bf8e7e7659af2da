"""Measures whose last unit a child left away. How they are read: common practice, no source."""

import pytest

from onewhole.findings.in_answer import Remark
from onewhole.languages.english.in_answer import remark_told
from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Mark, Verdict, mark
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_statement


def marked(typed: str, written: str) -> Mark:
    """Mark one answer to one problem."""
    problem = Problem("1", read_statement(typed), typed)
    return mark(expect(problem), read_written(written, problem))


@pytest.mark.parametrize(
    ("typed", "written", "read"),
    [
        ("45 min + 50 min", "1 h 35", "1 h 35 min"),
        ("45 min + 50 min", "45 min + 50 min = 1 h 35", "1 h 35 min"),
        ("1 h 50 min - 15 min", "1 hour 35 ", "1 h 35 min"),
        ("9:45 to 11:20", "1 h 35", "1 h 35 min"),
        ("95 min = ? h ? min", "1 h 35", "1 h 35 min"),
        ("5 ft 2 in + 1 in", "5' 3", "5 ft 3 in"),
        ("2 lb 3 oz + 1 oz", "2 lb 4", "2 lb 4 oz"),
        ("2 h 10 min 20 s + 5 s", "2 h 10 min 25", "2 h 10 min 25 s"),
    ],
)
def test_the_next_smaller_unit_of_the_problem_is_meant(typed: str, written: str, read: str) -> None:
    """The amount is right, the text is kept, and the teacher is told that the unit is missing."""
    found = marked(typed, written)
    assert isinstance(found.written.read, Quantity)
    assert text(found.written.read) == read
    assert (found.verdict, found.written.text) == (Verdict.RIGHT, written)
    assert found.written.last_unit_missing
    assert Remark.LAST_UNIT_MISSING in found.remarks


def test_a_wrong_amount_is_wrong_and_fits_what_it_fits_with_its_unit() -> None:
    """5 ft 2 in - 2 ft 7 in by taking the smaller from the larger, with the unit and without it."""
    with_it, without = (marked("5 ft 2 in - 2 ft 7 in", one) for one in ("3 ft 5 in", "3 ft 5"))
    assert with_it.patterns
    assert (without.verdict, without.patterns) == (Verdict.WRONG, with_it.patterns)
    assert without.remarks == (*with_it.remarks, Remark.LAST_UNIT_MISSING)


@pytest.mark.parametrize(
    ("typed", "written"),
    [
        ("3 ft + 2 ft", "5 ft 3"),
        ("9 5/8 - 4 6/8", "5 ft 3"),
        ("5 5/8 in + 1 in", "6 ft 5"),
        ("1 h 50 min - 15 min", "1 ft 35"),
    ],
)
def test_where_the_problem_does_not_say_which_unit_it_stays_unread(typed: str, written: str) -> None:
    """It is told that a unit is missing; nothing is guessed."""
    read = marked(typed, written).written.read
    assert isinstance(read, Unreadable)
    assert read.why.startswith("A unit is missing behind the last number")


@pytest.mark.parametrize("written", ["1 35", "1 h 3/5", "1 h 3.5", "h 35", "1 h 35 20"])
def test_other_texts_stay_unread_for_their_own_reason(written: str) -> None:
    """No measure that lacks nothing but its last unit."""
    found = marked("1 h 50 min - 15 min", written)
    assert found.verdict is Verdict.UNREADABLE
    assert not found.written.last_unit_missing


def test_the_teacher_is_told_in_words() -> None:
    """In a few words beside the verdict."""
    assert text_of(remark_told(Remark.LAST_UNIT_MISSING)) == "the last unit is missing"
