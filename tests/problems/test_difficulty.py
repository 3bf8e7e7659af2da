"""Difficulty is a sum of parts that say why."""

import pytest
from hypothesis import given

from onewhole.problems.difficulty import Part, difficulty
from onewhole.problems.points import POINTS, Hardness
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement
from onewhole.working.strategies.table import strategy_named
from tests.kit.statements import statements


@pytest.mark.parametrize(
    ("easier", "harder"),
    [
        ("7 5/6 - 3 2/6", "7 2/6 - 3 5/6"),
        ("5/6 - 2/6", "7 5/6 - 3 2/6"),
        ("7 2/6 - 3 5/6", "7 - 3 5/6"),
        ("7 2/6 - 3 5/6", "7 2/12 - 3 5/12"),
        ("7 2/6 - 3 5/6", "7 2/6 - 3 5/6 - 1 1/6"),
        ("3/4 - 3/8", "3/4 - 1/6"),
        ("54 - 22", "52 - 27"),
        ("52 - 27", "304 - 128"),
        ("52 - 27", "50 - 27"),
        ("517 - 49", "507 - 49"),
        ("507 - 49", "500 - 49"),
        ("6 3/5 - 2 4/5", "6 - 2 4/5"),
    ],
)
def test_what_makes_a_problem_harder(easier: str, harder: str) -> None:
    """One more thing to do, or larger numbers, is worth more points."""
    assert difficulty(read_statement(easier)).score < difficulty(read_statement(harder)).score


def test_the_parts_say_why() -> None:
    """Every part has points, and together they are the score."""
    found = difficulty(read_statement("7 2/6 - 3 5/6"))
    assert found.parts == (
        Part(Hardness.REGROUPED, 4),
        Part(Hardness.MIXED, 1),
        Part(Hardness.LINE, 2),
    )
    assert found.score == 7


def test_the_taught_strategy_counts() -> None:
    """Changing both to one fraction is one line more than taking units apart where nothing is regrouped."""
    asked = read_statement("7 5/6 - 3 2/6")
    assert difficulty(asked, strategy_named("to_fractions")).score > difficulty(asked).score


@given(statements())
def test_never_below_zero(statement: Statement) -> None:
    """Every statement has a score, also what is not worked line by line."""
    assert all(part.points > 0 for part in difficulty(statement).parts)


def test_every_reason_has_points() -> None:
    """One table holds them all, and none is worth nothing."""
    assert set(POINTS) == set(Hardness)
    assert min(POINTS.values()) > 0
