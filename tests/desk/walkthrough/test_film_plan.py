"""How a night is to be filmed, kept as text and read again."""

import pytest

from onewhole.desk.walkthrough.film_options import FilmChoice
from onewhole.desk.walkthrough.film_plan import FilmPlan, plan_read, plan_text
from onewhole.errors import InputError

#: As texts of earlier releases stand in the files of classes.
KEPT = (
    '{"choices": {"1": {"length": "short"}, "2a": {"strategy": "count_up", "picture": "none"}}, '
    '"tried": ["3"], "minutes": 5, "mistake": true}'
)
PLAN = FilmPlan(
    {"1": FilmChoice(length="short"), "2a": FilmChoice("count_up", "none")}, ("3",), 5, mistake=True
)


def test_a_plan_that_was_kept_is_read_as_ever() -> None:
    """And written as ever: a film that was made by it is not out of date."""
    assert plan_read(KEPT) == PLAN
    assert plan_text(PLAN) == KEPT


def test_only_what_was_chosen_is_written() -> None:
    """A problem without a choice is not in it."""
    plan = FilmPlan({"1": FilmChoice(), "2": FilmChoice(picture="discs")})
    assert plan_read(plan_text(plan)) == FilmPlan({"2": FilmChoice(picture="discs")})
    assert plan_text(FilmPlan()) == '{"choices": {}, "tried": [], "minutes": null, "mistake": false}'


def test_answers_that_are_left_to_the_family_are_kept() -> None:
    """With the rest of the plan."""
    plan = FilmPlan(turns=("2", "3"))
    assert plan_read(plan_text(plan)) == plan
    assert plan.wishes().turns == ("2", "3")
    assert hash(plan) != hash(FilmPlan())


def test_equal_plans_are_one_key() -> None:
    """In whatever order the problems were chosen for: a board is told once for both."""
    other = FilmPlan(dict(list(PLAN.choices.items())[::-1]), PLAN.tried, PLAN.minutes, mistake=True)
    assert list(other.choices) != list(PLAN.choices)
    assert (other, hash(other)) == (PLAN, hash(PLAN))
    assert len({PLAN, other, FilmPlan()}) == 2


@pytest.mark.parametrize(
    "typed",
    [
        "[]",
        "{",
        "[" * 100_000,
        "\ud83d",
        KEPT.replace("5", "500"),
        KEPT.replace("5", '"5"'),
        KEPT.replace("short", "x"),
        KEPT.replace("length", "colour"),
        KEPT.replace("true", "3"),
        KEPT.replace('"tried"', '"untried"'),
        KEPT.replace('{"length": "short"}', "3"),
    ],
)
def test_what_is_no_plan_is_refused(typed: str) -> None:
    """With what to do next, and nothing of it is guessed."""
    with pytest.raises(InputError) as refused:
        plan_read(typed)
    assert refused.value.remedy
