"""Whole numbers of four or more digits are printed with commas, read with them, and spoken as before.

Source: the Chicago Manual of Style (17th edition), 9.54, commas between groups of three digits (from memory).
"""

import pytest

from onewhole.languages.english.tongue import ENGLISH
from onewhole.notations.mathml import mathml
from onewhole.notations.sentences.text import sentence_text
from onewhole.notations.text import printed, text
from onewhole.notations.typst_math import typst_math
from onewhole.number.ladder import decimal
from onewhole.number.quantity import whole
from onewhole.sentences.node import Counted, Said
from onewhole.sentences.sentence import Sentence
from onewhole.statements.reading import read_statement
from onewhole.statements.tokens import ReadingError


@pytest.mark.parametrize(
    ("typed", "as_printed"),
    [
        ("4006 - 1278", "4,006 - 1,278"),
        ("999 + 1", "999 + 1"),
        ("1000000 - 1", "1,000,000 - 1"),
        ("12345.678 - 0.0005", "12,345.678 - 0.0005"),
        ("1200 in - 3 ft", "1,200 in - 3 ft"),
        ("7 1234/8 - 1", "7 1,234/8 - 1"),
        ("? + 4006 = 12000", "? + 4,006 = 12,000"),
        ("2432 tenths - 13 tenths", "2,432 tenths - 13 tenths"),
    ],
)
def test_printed_with_commas_and_read_back(typed: str, as_printed: str) -> None:
    """What is printed reads back to the same problem; typed text and JSON keep plain digits."""
    statement = read_statement(typed)
    assert printed(statement) == as_printed
    assert read_statement(as_printed) == statement
    assert text(statement) == typed


@pytest.mark.parametrize(
    ("typed", "column"),
    [("40,06 - 3", 3), ("4,0061 - 3", 2), ("0,006 + 1", 2), ("4,00 - 1", 2), ("4006,123 - 1", 5)],
)
def test_a_wrong_grouping_is_refused_where_it_stands(typed: str, column: int) -> None:
    """A comma has three digits after it, and no zero alone before it."""
    with pytest.raises(ReadingError, match=rf"line 1, column {column}\).*three digits: 4,006"):
        read_statement(typed)


def test_every_notation_for_the_eye_has_the_comma() -> None:
    """In Typst math the number is one piece: a comma there would part two arguments of a fraction."""
    statement = read_statement("4006 - 1278")
    assert typst_math(statement) == '"4,006" \N{MINUS SIGN} "1,278"'
    assert typst_math(read_statement("1234/8 - 1")) == 'frac("1,234", 8) \N{MINUS SIGN} 1'
    written = mathml(statement)
    assert "<mn>4,006</mn>" in written
    assert 'alttext="4,006 - 1,278"' in written
    tenths = decimal(1, 1).units[1]
    sentence = Sentence("en-US", ("take", Said(whole(4006)), "and", Counted(2432, tenths)))
    assert sentence_text(sentence) == "Take 4,006 and 2,432 tenths."


def test_speech_has_words_and_no_comma() -> None:
    """A comma that is printed is no pause."""
    assert ENGLISH.say(read_statement("4006 - 1278")) == (
        "four thousand six minus one thousand two hundred seventy-eight"
    )
