"""Which stretch of a number line is drawn, and which ticks are numbered."""

import pytest

from onewhole.notations.text import printed
from onewhole.number.quantity import Quantity
from onewhole.pictures.number_line import number_line
from onewhole.pictures.scene import Words
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.reading import read_statement


@pytest.mark.parametrize(
    ("typed", "ticks"),
    [
        ("order 0.5, 0.45, 0.405", "0.40 0.41 0.42 0.43 0.44 0.45 0.46 0.47 0.48 0.49 0.50"),
        ("0.45 ? 0.6", "0.45 0.50 0.55 0.60"),
        ("$0.05 + $0.10", "$0 $0.05 $0.10 $0.15"),
        ("0.01 + 0.02", "0 0.01 0.02 0.03"),
        ("$5 - $2.35", "$0 $1 $2 $3 $4 $5"),
        ("40 min - 30 min", "0 min 10 min 20 min 30 min 40 min"),
        ("3 yd - 1 in", "2 yd 3 yd"),
        ("2 yd 1 ft 3 in - 1 yd 2 ft 8 in", "0 in 1 yd 2 yd 3 yd"),
        ("1 wk - 1 d", "0 d 1 wk"),
        ("12:00 p.m. to 12:00 a.m.", "12:00 2:00 4:00 6:00 8:00 10:00 12:00"),
        ("11:59 p.m. - 23 h 58 min", "12:00 3:00 6:00 9:00 12:00 3:00 6:00 9:00 12:00"),
        ("200 in", "16 ft 17 ft"),
        ("6000 - 2369", "3,500 4,000 4,500 5,000 5,500 6,000"),
        ("1000000 - 1", "999,999 1,000,000"),
        ("order 345, 354, 1205", "0 200 400 600 800 1,000 1,200 1,400"),
    ],
)
def test_the_stretch_is_chosen_around_the_numbers(typed: str, ticks: str) -> None:
    """From 0 where the numbers stand apart there, and only as many numbered ticks as stand clear."""
    working = WorkedProblem(Problem("1", read_statement(typed), typed)).working
    assert working is not None
    scene = number_line(working).scenes[0]
    words = [p.shape for p in scene.pieces if p.name.startswith("whole/") and isinstance(p.shape, Words)]
    assert " ".join(printed(word.caption) for word in words if isinstance(word.caption, Quantity)) == ticks
