"""A formula is set and said, with an equals sign before or after it where one is asked for."""

import pytest

from onewhole.languages.english.speech import say
from onewhole.statements.reading import read_expression, read_statement
from onewhole.writers.formula import chain, formula

TYPED = ("7 2/6 - 3 5/6", "5 ft 2 in - 2 ft 7 in", "5.2 - 2.7", "52 - 27")


@pytest.mark.parametrize("typed", TYPED)
def test_signs_around_a_formula(typed: str) -> None:
    """A leading sign is said before it; a blank is said after the sign behind it."""
    thing = read_expression(typed)
    plain, led, asked = formula(thing), formula(thing, leads=True), formula(thing, asks=True)
    assert plain["alt"] == say(thing)
    assert (led["math"], led["alt"]) == (f"= {plain['math']}", f"equals {plain['alt']}")
    assert (asked["math"], asked["alt"]) == (f"{plain['math']} =", f"{plain['alt']} equals blank")


def test_a_chain_is_one_formula() -> None:
    """Equal things are set and said as one chain."""
    found = chain((read_expression("1 1/2 + 1/2"), read_expression("2")))
    assert found == {
        "math": "1 frac(1, 2) + frac(1, 2) = 2",
        "alt": "one and one half plus one half equals two",
    }


def test_a_hole_is_a_blank() -> None:
    """A missing number is set as a hole and said as a blank."""
    found = formula(read_statement("7 2/6 = 6 ?/6"))
    assert "hole" in found["math"]
    assert "blank" in found["alt"]
