"""One problem to come back to."""

import pytest

from onewhole.notations.text import text
from onewhole.problems.needs import needs
from onewhole.sheets.earlier_skill import earlier_skill, review
from onewhole.statements.reading import read_statement


@pytest.mark.parametrize(
    ("typed", "earlier"),
    [
        ("9 5/8 - 4 6/8", "9 6/8 - 4 5/8"),
        ("6 7/8 - 3 2/8", "3 5/8 + 3 2/8"),
        ("5 - 1 3/8", "5 3/8 - 1"),
        ("2 4/5 + 1 3/5", "2 4/5 - 1 3/5"),
        ("304 - 128", "328 - 104"),
        ("5 ft 2 in - 2 ft 7 in", "5 ft 7 in - 2 ft 2 in"),
        ("5.2 - 2.7", "5.7 - 2.2"),
        ("5 1/2 - 2 2/3", "5 4/6 - 2 3/6"),
        ("5/6 - 1/6", "4/6 + 1/6"),
    ],
)
def test_one_step_easier(typed: str, earlier: str) -> None:
    """Taking away without regrouping, or the addition that undoes what needs none."""
    found = earlier_skill(read_statement(typed))
    assert found is not None
    assert text(found) == earlier
    assert not needs(found).regrouping


@pytest.mark.parametrize(
    "typed", ["2/8 + 3/8", "5/6 ? 7/8", "7 2/6 = 6 ?/6", "3 x 2/5", "2 1/2 + 3 1/2 - 1 1/2", "3/5 + 3/5"]
)
def test_no_easier_step(typed: str) -> None:
    """An addition without regrouping, what is no sum of two, and numbers that leave nothing."""
    assert earlier_skill(read_statement(typed)) is None


def test_an_earlier_sheet_comes_first() -> None:
    """One without regrouping before an addition with it, with new numbers."""
    models = [read_statement("9 5/8 - 4 6/8")]
    earlier = [read_statement(typed) for typed in ("7 3/5 - 2 4/5", "2 4/5 + 1 3/5", "4/10 - 1/10")]
    found = review(models, earlier, models)
    assert found is not None
    assert needs(found) == needs(earlier[2])
    assert found not in earlier
    second = review(models, earlier[:2], models)
    assert second is not None
    assert needs(second) == needs(earlier[1])


def test_others_get_other_numbers() -> None:
    """Each group another problem of the same skill."""
    models = [read_statement("9 5/8 - 4 6/8")]
    found = {review(models, [], models, skip=skip) for skip in range(4)}
    assert len(found) == 4
    assert None not in found


def test_without_parallels_the_problem_itself_comes_back() -> None:
    """1/2 + 1/2 has no other numbers; where it stands on the page already, nothing comes back."""
    halves = read_statement("1/2 + 1/2")
    assert review([], [halves], []) == halves
    assert review([], [halves], [halves]) is None
    assert review([], [], []) is None
