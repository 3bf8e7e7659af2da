"""One cell as written: kept exactly, and read as a number, a sign, nothing, or nothing readable."""

import pytest

from onewhole.marking.reading.answer import Blank, Unreadable, read_written
from onewhole.number.impossible import Impossible
from onewhole.number.with_minus import WithMinus
from onewhole.statements.reading import read_answer, read_quantity
from onewhole.statements.statement import Relation


@pytest.mark.parametrize(
    "cell", ["", " ", "\t", "-", " - ", "\N{EN DASH}", "\N{EM DASH}", "\N{MINUS SIGN}", "--"]
)
def test_nothing_written_is_blank(cell: str) -> None:
    """An empty cell, spaces and dashes alone are blank, and the text stays."""
    written = read_written(cell)
    assert (written.text, written.read, written.blank) == (cell, Blank(), True)


@pytest.mark.parametrize("cell", ["3 3/6", " 3 3/6", "3 and 3/6", "= 3 3/6", "3\N{FIGURE SPACE}3/6"])
def test_a_number_is_read_and_its_text_kept(cell: str) -> None:
    """Spellings of one number are one quantity; what stood in the cell is kept to the letter."""
    assert read_written(cell).read == read_quantity("3 3/6")
    assert read_written(cell).text == cell


def test_signs_and_impossible_fractions_are_answers() -> None:
    """A sign between two numbers and a fraction over 0 are what a child may write."""
    assert read_written("<").read is Relation.LESS
    assert read_written("=").read is Relation.EQUAL
    assert read_written("3 3/0").read == Impossible(3, 3)


@pytest.mark.parametrize(
    "cell",
    [
        "three",
        "3 3/",
        "3 5",
        "--3",
        "-?/6",
        "3 1/-2",
        "1/2/",
        "=SUM(A1:A9)",
        "=2+3",
        "@cmd",
        "\N{GRINNING FACE}",
        "9" * 10_000,
        "3 \N{ARABIC-INDIC DIGIT THREE}/6",
        "6 ?/6",
        "x" * 5000,
        "see me",
    ],
)
def test_what_cannot_be_read_is_kept_with_the_reason(cell: str) -> None:
    """Nothing is refused and nothing guessed: the text stays, and a sentence says why it is not read."""
    written = read_written(cell)
    assert written.text == cell
    assert isinstance(written.read, Unreadable)
    assert written.read.why.endswith("Look at the paper; an answer is one number such as 3 3/6")
    assert not written.blank


@pytest.mark.parametrize(
    ("cell", "plain"),
    [("-3/6", "-3/6"), ("'-3/6", "-3/6"), (" \N{MINUS SIGN}3", "-3"), ("3/5 - 1/2 = 2/5 = -1/10", "-1/10")],
)
def test_a_minus_sign_is_read_as_written(cell: str, plain: str) -> None:
    """Also behind the apostrophe that keeps it text in a spreadsheet, and at the end of a working."""
    written = read_written(cell)
    assert (written.text, written.read) == (cell, read_answer(plain))
    assert isinstance(written.read, WithMinus)


@pytest.mark.parametrize("cell", ["6-Mar", "Mar-06", "03/06/2026", "2026-03-06", "6-Mar-26"])
def test_a_fraction_that_a_spreadsheet_made_a_date_says_so(cell: str) -> None:
    """Common practice, no source: spreadsheets read 3/6 as a day in March or June."""
    read = read_written(cell).read
    assert isinstance(read, Unreadable)
    assert "a spreadsheet may have made it from a fraction" in read.why
