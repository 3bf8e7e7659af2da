"""A problem as an item of QTI 3.0, marked as the standard says: every equal form is right, nothing else."""

from fractions import Fraction

import pytest

from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.reading import read_statement
from onewhole.writers.questions.item import question_item
from tests.kit.response_processing import scored


def item(typed: str) -> str:
    """A problem as an item."""
    return question_item(WorkedProblem(Problem("1", read_statement(typed), typed)))


#: What is right of 9 5/8 - 4 6/8: shared/domain/interchange.md, part 7, test 4, from the review of QTI 3.0.
FORMS = [
    (("4", "7", "8"), 1),
    (("4", "14", "16"), 1),
    (("0", "39", "8"), 1),
    (("", "39", "8"), 1),
    (("3", "15", "8"), 1),
    (("5", "7", "8"), 0),
    (("4", "7", "0"), 0),
    (("0", "0", "0"), 0),
    (("", "", ""), 0),
    (("4", "", ""), 0),
    (("-4", "-7", "-8"), 0),
]


@pytest.mark.parametrize(("boxes", "score"), FORMS, ids=str)
def test_every_equal_form_is_right(boxes: tuple[str, str, str], score: int) -> None:
    """By the cross product; nothing over nothing and blanks are not."""
    whole, top, size = boxes
    assert scored(item("9 5/8 - 4 6/8"), WHOLE=whole, NUM=top, DEN=size) == score


def test_all_small_fractions_are_marked_by_what_they_are_worth() -> None:
    """Every answer in small boxes is right just where it is worth as much; a whole answer needs no pieces."""
    for typed, worth in (
        ("7 2/6 - 3 5/6", Fraction(7, 2)),
        ("1/3 + 2/3", Fraction(1)),
        ("1/2 - 1/2", Fraction(0)),
    ):
        made = item(typed)
        for whole in range(4):
            for size in range(1, 7):
                for top in range(8):
                    said = scored(made, WHOLE=str(whole), NUM=str(top), DEN=str(size))
                    assert said == (whole + Fraction(top, size) == worth)
            assert scored(made, WHOLE=str(whole)) == (whole == worth)


@pytest.mark.parametrize(
    ("typed", "right", "wrong"),
    [
        ("52 - 27", ("25", "025"), ("35", "")),
        ("5.2 - 2.7", ("2.5", "2.50"), ("3.5", "")),
        ("3/4 ? 2/3", ("GREATER",), ("LESS", "EQUAL", "")),
        ("5 ft 2 in - 2 ft 7 in", ("2 ft 7 in", "2 FT 7 IN"), ("3 ft", "")),
        ("12/18 in simplest form", ("2/3",), ("4/6", "12/18")),
        ("? - 5.7 = 4.3", ("10", "10.0"), ("1",)),
        ("11/4 = ?", ("2 3/4",), ("11/4",)),
        ("17 ÷ 5", ("3 r 2", "3 2/5"), ("3", "3 r 3")),
        ("order: 3/4, 1/2", ("1/2 < 3/4",), ("3/4 < 1/2",)),
        ("round 3,749 to hundreds", ("3700", "3,700"), ("3800",)),
    ],
)
def test_other_answers_are_marked(typed: str, right: tuple[str, ...], wrong: tuple[str, ...]) -> None:
    """A number by its worth, a sign by a choice, the rest by how it is written."""
    made = item(typed)
    assert [scored(made, RESPONSE=text) for text in right] == [1] * len(right)
    assert [scored(made, RESPONSE=text) for text in wrong] == [0] * len(wrong)
