import json

import pytest
import typst

from onewhole.notations.typst_math import typst_math
from onewhole.number.impossible import Impossible
from onewhole.statements.reading import read_answer, read_statement
from onewhole.statements.statement import Relation

MINUS = [
    ("-1 1/2", "\N{MINUS SIGN}1 frac(1, 2)"),
    ("-1/-2", "\N{MINUS SIGN}frac(1, \N{MINUS SIGN}2)"),
    ("1/-2", "frac(1, \N{MINUS SIGN}2)"),
    ("-5 ft 2 in", '\N{MINUS SIGN}"5 ft 2 in"'),
]
SET = [
    ("7 2/6 - 3 5/6", "7 frac(2, 6) \N{MINUS SIGN} 3 frac(5, 6)"),
    ("(6 - 3) + 2/6", "(6 \N{MINUS SIGN} 3) + frac(2, 6)"),
    ("(44 - 23)/6", "frac(44 \N{MINUS SIGN} 23, 6)"),
    ("(3 x 3)/(8 x 3)", "frac(3 \N{MULTIPLICATION SIGN} 3, 8 \N{MULTIPLICATION SIGN} 3)"),
    ("7 2/6 = 6 ?/6", "7 frac(2, 6) = 6 frac(hole, 6)"),
    ("? + 1 = 5", "hole + 1 = 5"),
    ("5/6 ? 7/8", "frac(5, 6) ring frac(7, 8)"),
    ("5/6 < 7/8", "frac(5, 6) < frac(7, 8)"),
    ("5.2 - 2.7", "5.2 \N{MINUS SIGN} 2.7"),
    ("5 ft 2 in - 7 in", '"5 ft 2 in" \N{MINUS SIGN} "7 in"'),
    ("4 tens 12 ones - 27", '"4 tens 12 ones" \N{MINUS SIGN} 27'),
]

PAGE = """
#set page(width: auto, height: auto)
#for written in json(bytes(sys.inputs.formulas)) {
  let shown = eval(written, mode: "math", scope: (hole: square(size: 1em), ring: circle(radius: 0.5em)))
  assert(shown.func() == math.equation)
  [#shown \\ ]
}
"""


@pytest.mark.parametrize(("written", "math"), SET)
def test_typst_math(written: str, math: str) -> None:
    """Each kind of piece in Typst's own words."""
    assert typst_math(read_statement(written)) == math


def test_what_is_no_number_can_be_set() -> None:
    """A pupil's 3 3/0 and a sign alone are set too."""
    assert typst_math(Impossible(3, 3)) == "3 frac(3, 0)"
    assert typst_math(Relation.LESS) == "<"


@pytest.mark.parametrize(("written", "math"), MINUS)
def test_minus_signs_can_be_set(written: str, math: str) -> None:
    """In front of the number, and before the denominator."""
    assert typst_math(read_answer(written)) == math


def test_typst_takes_it() -> None:
    """Every formula above is math to Typst, with only the names hole and ring added."""
    formulas = [math for _, math in (*SET, *MINUS)]
    page = typst.compile(PAGE.encode(), format="svg", sys_inputs={"formulas": json.dumps(formulas)})
    assert page
