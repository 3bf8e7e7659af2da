"""Reading what asks for another name: every wording, and the place of every mistake."""

import pytest

from onewhole.languages.english.speech import say
from onewhole.notations.text import text
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import AnotherName
from onewhole.statements.tokens import ReadingError
from tests.kit.spoken_reading import unsay


@pytest.mark.parametrize(
    ("typed", "written", "said"),
    [
        ("12/18 simplest", "12/18 in simplest form", "twelve eighteenths in simplest form"),
        ("12/18 simplest form", "12/18 in simplest form", "twelve eighteenths in simplest form"),
        ("12/18 = ? in simplest form", "12/18 in simplest form", "twelve eighteenths in simplest form"),
        ("11/4 as mixed number", "11/4 as a mixed number", "eleven fourths as a mixed number"),
        ("2 3/4 as an improper fraction", "2 3/4 as a fraction", "two and three fourths as a fraction"),
        ("3/4 = ? as a decimal", "3/4 as a decimal", "three fourths as a decimal"),
        ("0.75 as a fraction", "0.75 as a fraction", "zero point seven five as a fraction"),
        ("3 ft = ? in", "3 ft = ? in", "three feet equals blank inches"),
        ("26 in = __ ft __ in", "26 in = ? ft ? in", "twenty-six inches equals blank feet blank inches"),
    ],
)
def test_what_is_typed_is_written_and_said(typed: str, written: str, said: str) -> None:
    """One meaning whatever its wording, read back from its text and from its words."""
    asked = read_statement(typed)
    assert isinstance(asked, AnotherName)
    assert (text(asked), say(asked)) == (written, said)
    assert read_statement(written) == asked == unsay(said)


@pytest.mark.parametrize(
    ("typed", "column", "what"),
    [
        ("3/8 as a kite", 5, "these words do not say"),
        ("3/8 as", 5, "these words do not say"),
        ("1/2 + 1/4 simplest", 11, "only one number"),
        ("12/18 simplest form of all", 21, "does not belong"),
        ("26 in = ? ft ? lb", 16, "the smaller unit comes second"),
        ("3/4 as a mixed number", 1, "less than one whole"),
        ("1/3 as a decimal", 1, "does not come out"),
        ("26 in = ? ft", 1, "does not come out even"),
        ("3 ft = ? lb", 1, "cannot be written as a weight"),
        ("3/4 = ? in", 1, "cannot be written as a length"),
    ],
)
def test_a_mistake_has_its_place(typed: str, column: int, what: str) -> None:
    """A refusal says where, and what to write."""
    with pytest.raises(ReadingError, match=what) as refused:
        read_statement(typed)
    assert refused.value.column == column
    assert refused.value.remedy
