"""The proof of the heart: one strategy of three steps works tens, sixths, tenths, inches, ounces and minutes.

Source of the problems: our own. The same digits are kept on purpose, so that a class can see one idea many
times. The ratios 12, 16 and 60: Common Core State Standards for Mathematics (2010), 4.MD.A.1.
"""

import pytest

from onewhole.statements.expression import Expression
from onewhole.statements.reading import read_expression, read_statement
from onewhole.statements.statement import Question
from onewhole.working.reasons.regrouping import OneIsWorth, OpensOne, PutTogether
from onewhole.working.reasons.taking import Left, TakenUnitByUnit
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import STRATEGIES
from onewhole.working.work import work
from onewhole.working.working import Working

#: Every line in full: the problem, one unit opened, its worth, put together, unit from unit, what is left.
LINES = {
    "52 - 27": (
        "52 - 27",
        "40 + 10 + 2 - 27",
        "40 + 10 ones + 2 - 27",
        "4 tens 12 ones - 27",
        "(40 - 20) + (12 ones - 7)",
        "25",
    ),
    "7 2/6 - 3 5/6": (
        "7 2/6 - 3 5/6",
        "6 + 1 + 2/6 - 3 5/6",
        "6 + 6/6 + 2/6 - 3 5/6",
        "6 8/6 - 3 5/6",
        "(6 - 3) + (8/6 - 5/6)",
        "3 3/6",
    ),
    "5 ft 2 in - 2 ft 7 in": (
        "5 ft 2 in - 2 ft 7 in",
        "4 ft + 1 ft + 2 in - 2 ft 7 in",
        "4 ft + 12 in + 2 in - 2 ft 7 in",
        "4 ft 14 in - 2 ft 7 in",
        "(4 ft - 2 ft) + (14 in - 7 in)",
        "2 ft 7 in",
    ),
    "5.2 - 2.7": (
        "5.2 - 2.7",
        "4 + 1 + 0.2 - 2.7",
        "4 + 10 tenths + 0.2 - 2.7",
        "4 ones 12 tenths - 2.7",
        "(4 - 2) + (12 tenths - 0.7)",
        "2.5",
    ),
    "5 lb 2 oz - 2 lb 7 oz": (
        "5 lb 2 oz - 2 lb 7 oz",
        "4 lb + 1 lb + 2 oz - 2 lb 7 oz",
        "4 lb + 16 oz + 2 oz - 2 lb 7 oz",
        "4 lb 18 oz - 2 lb 7 oz",
        "(4 lb - 2 lb) + (18 oz - 7 oz)",
        "2 lb 11 oz",
    ),
    "5 h 2 min - 2 h 7 min": (
        "5 h 2 min - 2 h 7 min",
        "4 h + 1 h + 2 min - 2 h 7 min",
        "4 h + 60 min + 2 min - 2 h 7 min",
        "4 h 62 min - 2 h 7 min",
        "(4 h - 2 h) + (62 min - 7 min)",
        "2 h 55 min",
    ),
}

#: Two units are opened one after the other, because there is no ten to open at first.
ACROSS_A_ZERO = (
    "304 - 128",
    "200 + 100 + 4 - 128",
    "200 + 10 tens + 4 - 128",
    "2 hundreds 10 tens 4 ones - 128",
    "290 + 10 + 4 - 128",
    "290 + 10 ones + 4 - 128",
    "2 hundreds 9 tens 14 ones - 128",
    "(200 - 100) + (90 - 20) + (14 ones - 8)",
    "176",
)


def _work(typed: str) -> Working:
    question = read_statement(typed)
    assert isinstance(question, Question)
    return work(question, REGROUP_FIRST)


def _expected(typed: tuple[str, ...]) -> list[Expression]:
    return [read_expression(line) for line in typed]


def test_it_has_three_steps() -> None:
    """Regroup, take unit from unit, write it the usual way."""
    assert [step.key for step in REGROUP_FIRST.steps] == ["regroup", "unit_by_unit", "usual_form"]


@pytest.mark.parametrize("typed", LINES)
def test_the_very_same_object_works_every_ladder(typed: str) -> None:
    """Six ladders with the ratios 10, 6, 12, 10, 16 and 60 are worked line by line as a class is taught."""
    before = REGROUP_FIRST
    working = _work(typed)
    assert [line.says for line in working.lines] == _expected(LINES[typed])
    assert working.answer == read_expression(LINES[typed][-1])
    assert working.strategy == "regroup_first"
    assert REGROUP_FIRST is before
    assert REGROUP_FIRST in STRATEGIES


def test_every_ladder_gives_the_same_reasons() -> None:
    """The reasons are of the same kinds on every ladder: nothing is a special case."""
    reasons = {tuple(type(line.because) for line in _work(typed).lines[1:]) for typed in LINES}
    assert reasons == {(OpensOne, OneIsWorth, PutTogether, TakenUnitByUnit, Left)}


def test_every_ladder_is_brief_in_the_same_lines() -> None:
    """A pupil writes the problem, the regrouped number and the answer; the rest is said by the teacher."""
    for typed, lines in LINES.items():
        assert [line.says for line in _work(typed).brief()] == _expected((lines[0], lines[3], lines[5]))


def test_across_a_zero_it_opens_one_unit_after_another() -> None:
    """304 - 128 opens a hundred, then a ten: two turns of the same step."""
    assert [line.says for line in _work("304 - 128").lines] == _expected(ACROSS_A_ZERO)


def test_a_mixed_number_needs_one_turn_only() -> None:
    """12 1/4 - 9 3/4 opens one whole; the 12 is simply one less."""
    working = _work("12 1/4 - 9 3/4")
    assert [line.says for line in working.brief()] == _expected(("12 1/4 - 9 3/4", "11 5/4 - 9 3/4", "2 2/4"))
