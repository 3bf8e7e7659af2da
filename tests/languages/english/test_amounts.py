"""Amounts in a sentence: singular, plural and parts of a whole."""

import pytest

from onewhole.languages.english.amounts import measured
from onewhole.languages.english.making import told
from onewhole.languages.english.words import article, words_for
from onewhole.notations.sentences.text import text_of
from onewhole.sentences.sentence import End
from onewhole.statements.reading import read_quantity

STRIP = words_for("strip of paper")


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("1", "1 strip of paper"),
        ("2", "2 strips of paper"),
        ("0", "0 strips of paper"),
        ("2 1/6", "2 1/6 strips of paper"),
        ("1 1/6", "1 1/6 strips of paper"),
        ("5/6", "5/6 of a strip of paper"),
        ("0 5/6", "0 5/6 of a strip of paper"),
        ("6/6", "6/6 of a strip of paper"),
        ("11/6", "11/6 strips of paper"),
        ("0.7", "0.7 of a strip of paper"),
        ("1.0", "1.0 strips of paper"),
        ("5.2", "5.2 strips of paper"),
        ("5 ft 1 in", "5 feet 1 inch"),
        ("1 lb 15 oz", "1 pound 15 ounces"),
        ("1 h 1 min", "1 hour 1 minute"),
        ("3 yd", "3 yards"),
    ],
)
def test_units_and_plurals(typed: str, said: str) -> None:
    """One strip, several strips, a part of a strip; measures in their own words."""
    assert text_of(told(measured(read_quantity(typed), STRIP), end=End.TYPED)) == said


@pytest.mark.parametrize(
    ("thing", "said"),
    [
        ("strip", "a strip"),
        ("orange", "an orange"),
        ("inch", "an inch"),
        ("hour", "an hour"),
        ("unit", "a unit"),
        ("one", "a one"),
        ("Apple pie", "an Apple pie"),
    ],
)
def test_the_article_goes_by_the_sound(thing: str, said: str) -> None:
    """An hour and a unit, though their first letters say otherwise."""
    assert f"{article(thing)} {thing}" == said
