"""The right answer, written the usual way."""

import pytest

from onewhole.notations.text import text
from onewhole.number.quantity import NotOnLadderError
from onewhole.problems.answer import answer
from onewhole.statements.reading import read_statement


@pytest.mark.parametrize(
    ("typed", "right"),
    [
        ("7 2/6 - 3 5/6", "3 3/6"),
        ("3 3/8 - 2 5/6", "13/24"),
        ("11/8 - 1/8", "1 2/8"),
        ("2/3 - 2/3", "0"),
        ("52 - 27", "25"),
        ("5.2 - 2.7", "2.5"),
        ("5 ft 2 in - 2 ft 7 in", "2 ft 7 in"),
        ("5/6 ? 7/8", "<"),
        ("2/4 = 1/2", "="),
        ("7 2/6 = 6 ?/6", "8"),
        ("9 - ? = 3 1/2", "5 1/2"),
        ("4 + ? = 3 x 2 1/3", "3"),
        ("3 x 2/5", "1 1/5"),
        ("1/2 x 1/4", "1/8"),
        ("0.5 x 0.5", "0.25"),
        ("1/2 x 3 ft", "1 ft 6 in"),
        ("5 - (1 1/2 + 1)", "2 1/2"),
    ],
)
def test_answers(typed: str, right: str) -> None:
    """Counted in the pieces of the problem, nothing overfull."""
    assert text(answer(read_statement(typed))) == right


def test_a_measure_that_does_not_come_out_even_is_refused() -> None:
    """A fifth of 2 inches has no place among the units."""
    with pytest.raises(NotOnLadderError, match="smallest unit"):
        answer(read_statement("1/5 x 2 in"))


@pytest.mark.parametrize(
    ("typed", "right"),
    [("0.5 x $2.50", "$1.25"), ("1/2 x $5", "$2.50"), ("3 x $3.25", "$9.75"), ("$5 + $2", "$7")],
)
def test_a_price_has_cents(typed: str, right: str) -> None:
    """Whatever multiplies a price, the answer is written as a price."""
    found = answer(read_statement(typed))
    assert text(found) == right


@pytest.mark.parametrize(
    ("typed", "between"),
    [
        ("0.5 x $3.25", r"\$1\.62 and \$1\.63"),
        ("1/3 x $5", r"\$1\.66 and \$1\.67"),
        ("0.1 x $0.05", r"\$0\.00 and \$0\.01"),
    ],
)
def test_an_answer_between_two_prices_is_refused(typed: str, between: str) -> None:
    """No coin is worth less than a cent (31 U.S.C. 5112(a), from memory): $1.625 is no price."""
    with pytest.raises(NotOnLadderError, match=f"between {between}"):
        answer(read_statement(typed))
