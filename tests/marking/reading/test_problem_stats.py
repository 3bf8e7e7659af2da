"""How the class did on each problem."""

import random
from fractions import Fraction
from itertools import product

import pytest

from onewhole.marking.reading.mark import ClassMarks, mark_class
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
#: Seven pupils who have all right but the last problem, and five who have that one right only.
TURNED = (*["rrrw"] * 7, *["wwwr"] * 5)


def test_check_the_key_where_the_best_pupils_fail() -> None:
    """Right by those who fail elsewhere, wrong by those who do well: the key of problem 4 may be wrong.

    By hand, item out of the total: for 4 seven scores of 0 stand beside rests of 3 and five of 1 beside rests
    of 0: the correlation is -1, and 11 x 1 is more than 2.326 squared. For 1 seven scores of 1 stand beside
    rests of 2 and five of 0 beside rests of 1: it is above 0.
    """
    assert [item.check_key for item in problem_stats(marked(FOUR, _rows(*TURNED)))] == [
        False,
        False,
        False,
        True,
    ]


def test_no_word_about_the_key_otherwise() -> None:
    """All right, all alike, or too few pupils to say anything."""
    for rows in (_rows(*["rrr"] * 12), _rows(*["rww"] * 12), _rows("rrw", "wwr")):
        assert not any(item.check_key for item in problem_stats(marked(PAGE, rows)))


@pytest.mark.parametrize(
    "rows",
    [
        pytest.param((*["rrrr"] * 22, "rrrw"), id="one contrary pupil of 23"),
        pytest.param((*["wwww"] * 5, *["rrrr"] * 15, "rrrw", "rrrw"), id="two"),
        pytest.param((*["rrrw"] * 6, *["wwwr"] * 3), id="nine pupils"),
        pytest.param((*["rrww"] * 3, *["wrww"] * 3, *["rwwr"] * 2, *["wwwr"] * 2), id="no more than chance"),
    ],
)
def test_too_little_is_said_nothing_about(rows: tuple[str, ...]) -> None:
    """Few pupils, few on one side, or a correlation that chance brings about."""
    assert not any(item.check_key for item in problem_stats(marked(FOUR, _rows(*rows))))


def test_by_chance_it_is_said_about_once_in_a_hundred() -> None:
    """Pupils who are better or worse at everything, and one problem that is right by chance alone."""
    patterns = ["".join(letters) for letters in product("rw", repeat=4)]
    every = marked(FOUR, _rows(*patterns))
    by_pattern = dict(zip(patterns, every.pupils, strict=True))
    chance, said, times = random.Random(12), 0, 400
    for _ in range(times):
        pupils = []
        for pupil in range(24):
            elsewhere = "".join("r" if 24 * chance.random() < pupil else "w" for _ in range(3))
            pupils.append(by_pattern[elsewhere + chance.choice("rw")])
        said += problem_stats(ClassMarks(every.expected, tuple(pupils)))[3].check_key
    print(f"{said} of {times}")
    assert 0 < said <= 3 * times / 100


def test_pupils_who_wrote_nothing_do_not_speak_about_the_key() -> None:
    """Absent pupils would make every problem look as if it belonged with the others."""
    some = problem_stats(marked(FOUR, _rows(*TURNED, *["bbbb"] * 20, "ubbb")))
    assert [item.check_key for item in some] == [False, False, False, True]
