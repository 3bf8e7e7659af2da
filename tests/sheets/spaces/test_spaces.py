"""Every form of every skill gives problems that can be asked."""

from itertools import islice

import pytest

from onewhole.errors import OnewholeError
from onewhole.findings.wished_skill import LIKE, WishedSkill
from onewhole.languages.english.wished_skills import wished_heads
from onewhole.notations.text import text
from onewhole.problems.needs import Operation, needs
from onewhole.sheets.spaces.amounts import MOST_COMMON, decimals, unlike_pairs, with_zeros
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.spaces.table import SPACES, forms_of
from onewhole.sheets.wishes import Wishes
from onewhole.statements.reading import read_statement

DRAWN = [skill for skill in WishedSkill if skill not in LIKE]


def test_every_skill_has_a_space_and_a_name() -> None:
    """A skill that can be typed can be composed, and stands once in the list to choose from."""
    assert set(SPACES) == set(DRAWN)
    offered = [skill for _, skills in wished_heads() for skill, _ in skills]
    assert sorted(offered) == sorted(WishedSkill)
    names = [called for _, skills in wished_heads() for _, called in skills]
    assert len(set(names)) == len(names)


@pytest.mark.parametrize("skill", DRAWN)
def test_every_form_has_problems_that_can_be_read(skill: WishedSkill) -> None:
    """Among a few of each form; what is read is written again as the same problem."""
    for row in forms_of(Wishes(skill=skill)):
        assert row
        for form in row:
            read = []
            for typed in form.walk(1, 60):
                try:
                    read.append(read_statement(typed))
                except OnewholeError:
                    continue
            assert read, form
            assert all(read_statement(text(one)) == one for one in read[:5])


@pytest.mark.parametrize(
    ("skill", "operations"),
    [
        (WishedSkill.SUBTRACT_WHOLE, {Operation.SUBTRACT}),
        (WishedSkill.ADD_DECIMALS, {Operation.ADD}),
        (WishedSkill.COMPARE_FRACTIONS, {Operation.COMPARE}),
        (WishedSkill.ORDER_FRACTIONS, {Operation.ORDER}),
        (WishedSkill.TIMES, {Operation.MULTIPLY}),
        (WishedSkill.EQUAL_FRACTIONS, {Operation.FIND}),
        (WishedSkill.OTHER_NAMES, {Operation.RENAME}),
    ],
)
def test_the_problems_are_of_the_skill(skill: WishedSkill, operations: set[Operation]) -> None:
    """Whatever form they have."""
    for row in forms_of(Wishes(skill=skill)):
        for form in row:
            for typed in islice(form.walk(3, 200), 20):
                try:
                    asked = read_statement(typed)
                except OnewholeError:
                    continue
                assert set(needs(asked).operations) == operations


def test_a_walk_meets_every_problem_once() -> None:
    """From another place with another seed; as many as are wanted."""
    form = ProblemForm("{0} - {1}", (range(50, 60), range(11, 18)))
    whole = list(form.walk(1, 1000))
    assert len(whole) == len(set(whole)) == form.size == 70
    assert set(form.walk(2, 1000)) == set(whole)
    assert list(form.walk(2, 5)) != list(form.walk(1, 5)) == whole[:5]
    assert list(ProblemForm("{0}", ((),)).walk(1, 9)) == []


def test_the_digits_are_as_wished() -> None:
    """Both numbers of a page of two digits have two at most."""
    for row in forms_of(Wishes(skill=WishedSkill.WHOLE, digits=2)):
        for form in row:
            for typed in form.walk(1, 50):
                assert all(len(word) <= 2 for word in typed.split() if word.isdigit())


def test_amounts() -> None:
    """No decimal ends in 0, common pieces can be written, and zeros stand inside."""
    assert not any(one.endswith("0") for one in decimals(2, 1))
    assert all(a != b and a * b for a, b in unlike_pairs((2, 3, 8, 12)))
    assert (8, 12) in unlike_pairs((8, 12))
    assert unlike_pairs((10, 12)) == ()
    assert MOST_COMMON < 60
    assert {str(one)[1:-1] for one in with_zeros(5)} == {"000"}
