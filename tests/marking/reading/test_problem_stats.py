"""How the class did on each problem."""

from fractions import Fraction

from onewhole.marking.reading.mark import mark_class
from onewhole.marking.reading.problem_stats import problem_stats
from onewhole.working.form import FormWanted
from tests.kit.answers import marked, page, written_by

PAGE = page(("4 - 1 3/8", "5 4/6 - 2 1/6", "9 5/8 - 4 6/8"))
RIGHT = ("2 5/8", "3 3/6", "4 7/8", "3 3/6")


def _row(pattern: str) -> list[str]:
    """Cells by a letter each: r right, w wrong, b blank, u unreadable."""
    spelt = {"w": "9 1/7", "b": "", "u": "see me"}
    return [spelt.get(letter, answer) for letter, answer in zip(pattern, RIGHT, strict=False)]


def _rows(*patterns: str) -> dict[str, list[str]]:
    return {f"K{at:02}": _row(pattern) for at, pattern in enumerate(patterns)}


def test_tried_right_and_the_exact_share() -> None:
    """Tried are the answers that could be read; the share is a fraction of them."""
    first, second, third = problem_stats(marked(PAGE, _rows("rrb", "rwb", "wub", "bbb")))
    assert (first.label, first.tried, first.right, first.share) == ("1", 3, 2, Fraction(2, 3))
    assert (second.tried, second.right, second.share) == (2, 1, Fraction(1, 2))
    assert (third.tried, third.right, third.share) == (0, 0, None)


def test_another_form_is_counted_apart() -> None:
    """It was tried, and is not yet what the teacher asks for."""
    answers = written_by(PAGE, {"K01": ["21/8", "3 3/6", "4 7/8"]})
    first = problem_stats(mark_class(answers, FormWanted(mixed=True)))[0]
    assert (first.tried, first.right, first.form) == (1, 0, 1)
    assert problem_stats(mark_class(answers))[0].right == 1


FOUR = page(("4 - 1 3/8", "5 4/6 - 2 1/6", "9 5/8 - 4 6/8", "7 2/6 - 3 5/6"))
#: Three pupils who have all right but the last problem, and two who have that one right only.
TURNED = ("rrrw", "rrrw", "rrrw", "wwwr", "wwwr")


def test_check_the_key_where_the_best_pupils_fail() -> None:
    """Right by those who fail elsewhere, wrong by those who do well: the key of problem 4 may be wrong.

    By hand, item out of the total: for 4 the scores 0 0 0 1 1 stand beside the rests 3 3 3 0 0, and
    5 x 0 - 2 x 9 is below zero; for 1 the scores 1 1 1 0 0 beside 2 2 2 1 1, and 5 x 6 - 3 x 8 is not.
    """
    assert [item.check_key for item in problem_stats(marked(FOUR, _rows(*TURNED)))] == [
        False,
        False,
        False,
        True,
    ]


def test_no_word_about_the_key_otherwise() -> None:
    """All right, all alike, or too few pupils to say anything."""
    for rows in (_rows("rrr", "rrr", "rrr"), _rows("rww", "rww", "rww"), _rows("rrw", "wwr")):
        assert not any(item.check_key for item in problem_stats(marked(PAGE, rows)))


def test_pupils_who_wrote_nothing_do_not_speak_about_the_key() -> None:
    """Absent pupils would make every problem look as if it belonged with the others."""
    some = problem_stats(marked(FOUR, _rows(*TURNED, *["bbbb"] * 20, "ubbb")))
    assert [item.check_key for item in some] == [False, False, False, True]
