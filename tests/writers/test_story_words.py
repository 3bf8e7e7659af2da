"""The words of a word problem on a page."""

import pytest

from onewhole.languages.english.speech import say
from onewhole.number.ladder import Style
from onewhole.problems.numbers import numbers_of
from onewhole.sheets.stories import story
from onewhole.statements.reading import read_statement
from onewhole.writers.story_words import story_words
from tests.kit.stories import TOLD


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
    told = story_words(story)
    assert spoken(told) == alts
    assert isinstance(told, str) == (not alts)


@pytest.mark.parametrize("typed", [one for one in TOLD if "?/" not in one])
def test_every_fraction_of_a_told_story_is_spoken(typed: str) -> None:
    """Each number with a fraction part, in the order of the words."""
    statement = read_statement(typed)
    for seed in range(6):
        told = story_words(story(statement, seed=seed).words)
        fractions = {say(number) for number in numbers_of(statement) if number.ladder.style is Style.MIXED}
        assert set(spoken(told)) == fractions
