"""Pupils outside the catalogue are outside it."""

import pytest

from lab.outside import HELD_OUT, RULES, written
from lab.pages import room12
from lab.pupils import Kind, Pupil
from lab.steps import page_of
from lab.trials import problems
from onewhole.marking.reading.writing import amount
from onewhole.misconceptions.catalogue import shows
from onewhole.notations.text import text
from onewhole.problems.answer import answer

PAGE = problems(room12())


def _amounts(rule: str) -> list[object]:
    wrote = [written(rule, problem.statement) for problem in PAGE]
    return [amount(one or answer(problem.statement)) for one, problem in zip(wrote, PAGE, strict=True)]


@pytest.mark.parametrize("rule", [*RULES, *HELD_OUT])
def test_no_pattern_writes_a_page_as_a_rule_does(rule: str) -> None:
    """Neither as written nor as much, on the example's page; and a rule is wrong somewhere."""
    right = [amount(answer(problem.statement)) for problem in PAGE]
    slips = [{slip.pattern: amount(slip.wrote) for slip in shows(problem.statement)} for problem in PAGE]
    by_rule = _amounts(rule)
    assert by_rule != right
    for key in {key for row in slips for key in row}:
        assert [row.get(key, own) for row, own in zip(slips, right, strict=True)] != by_rule


@pytest.mark.parametrize("rule", [*RULES, *HELD_OUT])
def test_a_pupil_outside_writes_what_the_rule_says(rule: str) -> None:
    """Without slips and turns back: what the rule writes, and rightly where it says nothing."""
    pupil = Pupil("K01", Kind.OUTSIDE, outside=rule)
    wanted = [written(rule, problem.statement) or answer(problem.statement) for problem in PAGE]
    assert page_of(pupil, PAGE, "outside") == tuple(map(text, wanted))


def test_turning_back_is_working_rightly() -> None:
    """A pupil who always turns back is right throughout."""
    pupil = Pupil("K01", Kind.OUTSIDE, outside="doubles the first number", back=1.0)
    right = tuple(text(answer(problem.statement)) for problem in PAGE)
    assert page_of(pupil, PAGE, "outside") == right
