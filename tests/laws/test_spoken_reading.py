import pytest

from onewhole.notations.text import text
from onewhole.statements.tokens import ReadingError
from tests.kit.spoken_reading import unsay, unsay_expression
from tests.languages.english.test_speech import SAID


@pytest.mark.parametrize(("written", "said"), SAID)
def test_words_are_read_back(written: str, said: str) -> None:
    """The same statement comes back, in plain text."""
    assert text(unsay(said)) == written


@pytest.mark.parametrize(
    ("said", "written"),
    [
        ("Seven and two sixths minus three and five sixths.", "7 2/6 - 3 5/6"),
        ("one thousand one hundred five", "1105"),
        ("two hundred thirty-four million five thousand", "234005000"),
        ("one hundred, plus two", "100 + 2"),
        ("zero thousands one hundred plus two tenths", "0 thousands 1 hundred + 2/10"),
        ("one sixths", "1/6"),
    ],
)
def test_ways_of_saying(said: str, written: str) -> None:
    """Capitals, full stops and a missing plural do not matter."""
    assert text(unsay_expression(said)) == written


@pytest.mark.parametrize(
    ("said", "column", "message"),
    [
        ("", 1, "a number is missing"),
        ("seven and two sixths minus", 27, "a number is missing"),
        ("seven and two sixths minos three", 22, "this word has no place here"),
        ("seven sixths sixths", 14, "this word has no place here"),
        ("seven two", 7, "two numbers stand side by side"),
        ("seven over zero", 12, "a whole cannot be cut into 0 equal parts"),
        ("three minus four", 1, "the result is below zero"),
        ("open bracket three", 19, "a bracket is not closed"),
        ("five feet minus two", 1, "a length and a number cannot be put together"),
        ("five point", 11, "a digit is missing after the point"),
        ("zero five plus one", 11, "a point is missing after a number that begins with zero"),
        ("zero hundred", 6, "this word has no place here"),
        ("two sixths equals blank sevenths", 1, "no whole number in the place of ?"),
        ("7 sixths", 1, "this word has no place here"),
        ("\N{PARTY POPPER}", 1, "this word has no place here"),
        ("one thousand two million", 18, "this word has no place here"),
        ("twenty one", 8, "two numbers stand side by side"),
    ],
)
def test_refusals_name_the_word(said: str, column: int, message: str) -> None:
    """What cannot be read is refused at its word."""
    with pytest.raises(ReadingError) as refused:
        unsay(said)
    assert message in refused.value.what
    assert refused.value.column == column
    word = said[column - 1 :].split()
    assert refused.value.detail == (f"at the word “{word[0].lower()}”" if word else "at the end")


def test_very_long_speech_is_refused() -> None:
    """There is a limit, and it says so."""
    with pytest.raises(ReadingError, match="Say one problem at a time"):
        unsay("seven " * 5000)
