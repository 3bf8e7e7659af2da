"""Answers to a number that is to be written another way: the form counts, the same amount is sent back."""

import pytest

from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_statement

RIGHT, FORM, WRONG = Verdict.RIGHT, Verdict.FORM, Verdict.WRONG


@pytest.mark.parametrize(
    ("asked", "answers"),
    [
        (
            "12/18 simplest",
            {"2/3": RIGHT, "4/6": FORM, "12/18": FORM, "3/2": WRONG, "2/18": WRONG, "-2/-3": FORM},
        ),
        ("18/12 simplest", {"3/2": RIGHT, "1 1/2": RIGHT, "1 6/12": FORM, "9/6": FORM}),
        ("3/4 simplest", {"3/4": RIGHT, "6/8": FORM, "0.75": FORM}),
        ("12/4 simplest", {"3": RIGHT, "3/1": FORM, "6/2": FORM}),
        (
            "11/4 as a mixed number",
            {"2 3/4": RIGHT, "2 6/8": RIGHT, "1 7/4": FORM, "11/4": FORM, "3 2/4": WRONG},
        ),
        ("12/4 as a mixed number", {"3": RIGHT, "2 4/4": FORM}),
        ("2 3/4 as a fraction", {"11/4": RIGHT, "22/8": RIGHT, "1 7/4": FORM, "2 3/4": FORM, "5/4": WRONG}),
        ("0.75 as a fraction", {"75/100": RIGHT, "3/4": RIGHT, "0.75": FORM, "75/10": WRONG}),
        ("3/4 as a decimal", {"0.75": RIGHT, ".75": RIGHT, "0.750": RIGHT, "75/100": FORM, "3.4": WRONG}),
        ("3 ft = ? in", {"36": RIGHT, "36 in": RIGHT, "3 ft": FORM, "1 yd": FORM, "30": WRONG}),
        ("26 in = ? ft ? in", {"2 ft 2 in": RIGHT, "1 ft 14 in": RIGHT, "26 in": FORM, "2 ft 6 in": WRONG}),
        ("24 in = ? ft ? in", {"2 ft 0 in": RIGHT, "2 ft": RIGHT}),
    ],
)
def test_the_form_counts(asked: str, answers: dict[str, Verdict]) -> None:
    """Right in every way to write what was asked for; the same amount in another form is marked with an f."""
    expected = expect(Problem("1", read_statement(asked), asked))
    assert {told: mark(expected, read_written(told)).verdict for told in answers} == answers


def test_what_is_sent_back_is_told_the_form() -> None:
    """4/6 may be renamed to the form that is asked for, and to no other."""
    for asked, told, name in (("12/18 simplest", "4/6", "2/3"), ("2 3/4 as a fraction", "2 3/4", "11/4")):
        expected = expect(Problem("1", read_statement(asked), asked))
        found = mark(expected, read_written(told)).renamed
        assert found[0] == expected.right, (asked, name)
