import pytest

from onewhole.errors import InputError
from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.words import (
    count_words,
    measure_name,
    names_listed,
    piece_name,
    place_name,
    plural,
    short,
    unit_name,
    words_for,
)
from onewhole.number.ladder import measure, mixed, places
from onewhole.number.unit import ONE
from tests.kit.numbers import GRADE_4


def test_pieces_of_grade_4() -> None:
    """Every denominator of grade 4 has its class word."""
    assert [piece_name(parts) for parts in GRADE_4] == [
        "halves",
        "thirds",
        "fourths",
        "fifths",
        "sixths",
        "eighths",
        "tenths",
        "twelfths",
        "hundredths",
    ]


def test_only_one_piece_is_singular() -> None:
    """One sixth, and zero, two and more sixths."""
    assert [piece_name(6, count) for count in (0, 1, 2)] == ["sixths", "sixth", "sixths"]


@pytest.mark.parametrize(
    ("parts", "name"),
    [(21, "twenty-firsts"), (103, "one-hundred-thirds"), (1000, "thousandths"), (10_000, "ten-thousandths")],
)
def test_long_names_of_pieces_are_one_word(parts: int, name: str) -> None:
    """Hyphens hold the name of a piece together."""
    assert piece_name(parts) == name


def test_every_name_of_pieces_is_its_own() -> None:
    """No two denominators up to 1000 share a name, one or many."""
    names = {piece_name(parts, count) for parts in range(1, 1001) for count in (1, 2)}
    assert len(names) == 2000


def test_counts_have_no_and_and_no_comma() -> None:
    """The word "and" is kept for mixed numbers, the comma for a rest."""
    assert count_words(1_234_105) == "one million two hundred thirty-four thousand one hundred five"


def test_names_of_units() -> None:
    """Places, measures, pieces, and ones that may be wholes."""
    feet, inches = measure("ft", "in").units
    tens, ones = places(2).units
    assert [unit_name(unit) for unit in (feet, inches, tens, ones)] == ["feet", "inches", "tens", "ones"]
    assert [unit_name(unit, 1) for unit in (feet, inches, tens, ones)] == ["foot", "inch", "ten", "one"]
    assert unit_name(ONE, 1, ClassWords()) == "whole"
    assert unit_name(tens, 3, ClassWords()) == "tens"
    assert unit_name(mixed(8).units[1], 3, ClassWords()) == "eighths"


def test_places_up_to_a_million() -> None:
    """Large places are named too."""
    assert [place_name(unit) for unit in places(7).units][:3] == [
        "millions",
        "hundred thousands",
        "ten thousands",
    ]


def test_a_number_has_no_measure_name() -> None:
    """Only measures have one."""
    with pytest.raises(KeyError):
        measure_name(ONE)


def test_plurals() -> None:
    """The head of a thing is put in the plural."""
    assert plural("strip of kite paper") == "strips of kite paper"
    assert plural("sheet") == "sheets"
    assert plural("inch of tape") == "inches of tape"
    assert plural("party") == "parties"


def test_class_words() -> None:
    """The singular makes the plural, and both can be said."""
    assert words_for("tray", "trade") == ClassWords("tray", "trays", "trade")
    assert ClassWords() == words_for("whole")


@pytest.mark.parametrize("word", ["", "  ", "two\nlines"])
def test_words_that_cannot_stand_in_a_sentence(word: str) -> None:
    """Empty words and line breaks are refused."""
    with pytest.raises(InputError, match="cannot stand in a sentence"):
        ClassWords(regroup=word)


def test_names_are_listed_as_they_are_read_out() -> None:
    """One, two or more."""
    assert [names_listed(labels) for labels in (["1"], ["1", "2"], ["1", "2", "3"])] == [
        "1",
        "1 and 2",
        "1, 2 and 3",
    ]


def test_later_mentions_are_short() -> None:
    """What the whole is made of is left out, in the teacher's own plural too."""
    assert short(ClassWords("leaf of gold", "leaves of gold", "trade")) == ClassWords(
        "leaf", "leaves", "trade"
    )
    assert short(ClassWords("strip", "strips")) == ClassWords("strip", "strips")
