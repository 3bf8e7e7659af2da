"""The skill of a problem."""

import pytest

from onewhole.findings.skill import Skill
from onewhole.problems.skill import skill
from onewhole.statements.reading import read_statement

NAMED = [
    ("2/8 + 3/8", Skill.ADD),
    ("2 1/2 + 3 1/2", Skill.ADD_REGROUPED),
    ("7 5/6 - 3 2/6", Skill.TAKE),
    ("7 2/6 - 3 5/6", Skill.TAKE_REGROUPED),
    ("2 1/2 + 3 1/2 - 1 1/2", Skill.TAKE_REGROUPED),
    ("4 - 1 3/8", Skill.TAKE_FROM_WHOLES),
    ("57 - 24", Skill.WHOLE_NUMBERS),
    ("46 + 38", Skill.WHOLE_NUMBERS_REGROUPED),
    ("50 - 27", Skill.WHOLE_NUMBERS_REGROUPED),
    ("3/4 - 1/8", Skill.UNLIKE),
    ("5.2 - 2.7", Skill.DECIMALS),
    ("3 x 2/5", Skill.TIMES),
    ("87 / 4", Skill.DIVIDE),
    ("4 + 3 x 7", Skill.STEPS),
    ("10 - (3 + 2)", Skill.STEPS),
    ("factors of 36", Skill.FACTORS),
    ("plot 1/4: 2, 1/2: 3; total", Skill.LINE_PLOTS),
    ("5/6 ? 7/8", Skill.COMPARE),
    ("9 - ? = 3 1/2", Skill.FIND),
    ("7 2/6 = 6 ?/6", Skill.FIND),
    ("12/18 simplest", Skill.OTHER_NAMES),
    ("12/18 = ?", Skill.OTHER_NAMES),
    ("11/4", Skill.OTHER_NAMES),
    ("3/4 as a decimal", Skill.OTHER_NAMES),
    ("round 4,567 to the nearest hundred", Skill.ROUND),
    ("order 2/3, 1/2, 3/4", Skill.ORDER),
    ("5 lb 2 oz - 2 lb 7 oz", Skill.MEASURES),
]


@pytest.mark.parametrize(("typed", "named"), NAMED, ids=str)
def test_each_problem_has_its_skill(typed: str, named: Skill) -> None:
    """One problem of every kind that may be typed."""
    assert skill(read_statement(typed)) is named


def test_every_skill_is_met_above() -> None:
    """No skill without a problem."""
    assert {named for _, named in NAMED} == set(Skill)
