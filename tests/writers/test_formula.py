"""A formula is set and said, with an equals sign before or after it where one is asked for."""

import pytest

from onewhole.languages.english.speech import say
from onewhole.number.ladder import Style
from onewhole.number.quantity import with_mark
from onewhole.sentences.typed import typed_sentences
from onewhole.sheets.stories import story
from onewhole.statements.reading import read_expression, read_statement
from onewhole.writers.formula import chain, formula, set_words
from tests.kit.stories import TOLD, to_be_told

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


def spoken(told: str | list[str | dict[str, str]]) -> list[str]:
    """The spoken words of the formulas in a story."""
    return [] if isinstance(told, str) else [part["alt"] for part in told if not isinstance(part, str)]


@pytest.mark.parametrize(
    ("story", "alts"),
    [
        ("A kite takes 2 2/3 of 5 1/3 strips.", ["two and two thirds", "five and one third"]),
        ("Half, 1/2 that is.", ["one half"]),
        ("5/6 of a strip", ["five sixths"]),
        ("11/6 strips", ["eleven sixths"]),
        ("Room 12 has 5 strips and 5.2 more.", []),
        ("Torn on 3/4/25 or 1/0.", []),
        ("It has 05/6 strips.", []),
    ],
)
def test_fractions_are_formulas(story: str, alts: list[str]) -> None:
    """Fractions and mixed numbers are set and spoken; dates, decimals and whole numbers stay words."""
    told = set_words(typed_sentences(story, "en-US"))
    assert spoken(told) == alts
    assert isinstance(told, str) == (not alts)


@pytest.mark.parametrize("typed", [one for one in TOLD if "?/" not in one])
def test_every_fraction_of_a_told_story_is_spoken(typed: str) -> None:
    """Each with a fraction part, its unit a word behind it; what stands on a line plot is not told."""
    statement = read_statement(typed)
    for seed in range(6):
        told = set_words(story(statement, seed=seed).told)
        plain = [with_mark(one, "") for one in to_be_told(statement) if one.ladder.style is Style.MIXED]
        fractions = {say(number) for number in plain}
        assert set(spoken(told)) == fractions
