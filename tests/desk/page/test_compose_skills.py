"""A page of every skill looks like a teacher's, with many seeds."""

import os
from collections import Counter
from itertools import pairwise

import pytest

from onewhole.desk.page.compose import compose, compose_again, told, typed
from onewhole.findings.wished_skill import LIKE, WishedSkill
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.needs import needs
from onewhole.problems.numbers import numbers_of
from onewhole.problems.twins import twin_key
from onewhole.sheets.composed import Composed
from onewhole.sheets.page import FALL, page
from onewhole.sheets.page_program import OFTEN
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.wishes import Wishes
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.statement import Relation, Statement

WALK = bool(os.environ.get("ONEWHOLE_WHOLE_WALK"))
#: Without the whole walk a few skills stand on long pages, and each that is not two others on a short one.
SKILLS = (
    tuple(WishedSkill)
    if WALK
    else (WishedSkill.ADD, WishedSkill.COMPARE_DECIMALS, WishedSkill.EQUAL_FRACTIONS, WishedSkill.TIMES)
)
SEEDS = range(1, 31) if WALK else (5, 9)
#: Skills of so few problems that all of them are looked at.
LISTED = LIKE | {WishedSkill.DIVIDE_FRACTIONS, WishedSkill.TIMES_FRACTIONS}
#: Skills where most problems are shared by two, three or four: such a number may stand there once more.
BY_FEW = {WishedSkill.DIVIDE_MIXED, WishedSkill.DIVIDE_MEASURES}
TWO_AT_ONCE = LIKE | {
    WishedSkill.UNLIKE,
    WishedSkill.WHOLE,
    WishedSkill.DECIMALS,
    WishedSkill.MEASURES,
    WishedSkill.COMPARE,
}
SHORT = [skill for skill in WishedSkill if skill not in TWO_AT_ONCE and skill not in SKILLS]


def _on_one_plot(first: Statement, second: Statement) -> bool:
    """Two questions may stand under one line plot, and then have all its numbers."""
    return isinstance(first, PlotQuestion) and isinstance(second, PlotQuestion) and first.plot == second.plot


def like_a_teachers(composed: Composed) -> None:
    """No number twice in a problem, hardly one again, no neighbours alike, no twins, from easy to hard."""
    asked = composed.recipe.wishes
    problems = composed.sheet.problems
    assert len(problems) == asked.number
    numbers = [numbers_of(one.statement) for one in problems]
    assert all(len(set(row)) == len(row) for row in numbers)
    again = Counter((place, number) for row in numbers for place, number in enumerate(row))
    if asked.skill is not WishedSkill.EQUAL_FRACTIONS:
        few = 2 + asked.number // OFTEN + (asked.skill in BY_FEW)
        assert max(again.values()) <= few
    assert len({twin_key(one.statement) for one in problems}) == len(problems)
    for (one, row), (next_one, other) in pairwise(zip(problems, numbers, strict=True)):
        assert row[1:] != other[1:] or not row[1:] or _on_one_plot(one.statement, next_one.statement)
    answers = [answer(one.statement) for one in problems]
    assert all(right.value > 0 for right in answers if isinstance(right, Quantity))
    assert answers.count(Relation.EQUAL) <= max(1, len(answers) // 5)
    assert all(3 * answers.count(sign) <= 2 * len(answers) + 2 for sign in Relation)
    seen = page(WorkedSheet(composed.sheet))
    if asked.kept_regrouping is not None:
        assert sum(needs(one.statement).regrouping for one in problems) == asked.kept_regrouping
    scores = [one.difficulty.score for one in seen.problems]
    assert sum(before - after >= FALL for before, after in pairwise(scores)) <= len(scores) // 3
    assert scores[0] < max(scores) or len(set(scores)) == 1


@pytest.mark.parametrize("skill", SKILLS)
def test_a_page_of_every_skill(skill: WishedSkill) -> None:
    """It reads back, its recipe makes it again, looks like a teacher's, and another seed gives another page.

    Of fraction times fraction there are so few that now and then two seeds find the same page best.
    """
    pages = [compose(Wishes(skill=skill, number=12, seed=seed)) for seed in SEEDS]
    for composed in pages:
        like_a_teachers(composed)
        assert read_sheet(typed(composed)) == composed.sheet
        assert composed.drawn == (skill not in LISTED)
    assert typed(compose_again(pages[0].sheet)) == typed(pages[0])
    others = len({typed(composed).split("\n\n")[1] for composed in pages})
    assert others == len(pages) or (skill is WishedSkill.TIMES_FRACTIONS and 5 * others >= 4 * len(pages))


@pytest.mark.parametrize("skill", SHORT)
def test_a_short_page_of_every_skill(skill: WishedSkill) -> None:
    """Three problems with a seed of the skill's own look like a teacher's, and read back."""
    composed = compose(Wishes(skill=skill, number=3, seed=tuple(WishedSkill).index(skill)))
    like_a_teachers(composed)
    assert read_sheet(typed(composed)) == composed.sheet


def test_a_space_that_is_empty_for_some_wishes() -> None:
    """Mixed numbers with one denominator are not compared: the page is composed of the other kinds."""
    assert len(compose(Wishes(skill=WishedSkill.COMPARE, number=3, denominators=(12,))).sheet.problems) == 3


def test_few_of_the_numbers_compared_are_equal() -> None:
    """Of ten problems two at most: once there stood five and six."""
    like_a_teachers(compose(Wishes(skill=WishedSkill.COMPARE_FRACTIONS, number=10, seed=3)))


def test_numbers_do_not_come_again_on_a_long_page() -> None:
    """Twenty problems: once there stood - 1 6/12 four times."""
    like_a_teachers(compose(Wishes(number=20, denominators=(4, 6, 12), seed=5)))


def test_doubles_may_be_wished_for() -> None:
    """With halves and two wholes there are few sums: the doubles come when they are wanted."""
    few = Wishes(skill=WishedSkill.ADD, number=4, denominators=(2,), largest=2, regrouping=None, doubles=True)
    rows = [numbers_of(one.statement) for one in compose(few).sheet.problems]
    assert any(first == second for first, second in rows)


def test_what_is_drawn_is_said() -> None:
    """The proof speaks of the problems that were drawn."""
    lines = told(compose(Wishes(skill=WishedSkill.COMPARE_WHOLE, number=6)))
    assert ", which the seed drew from more. It leaves " in lines[0]
    assert lines[1].startswith("Proven: no page of these problems leaves less")
