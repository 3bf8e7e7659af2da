from fractions import Fraction

import pytest
from hypothesis import given

from onewhole.number.quantity import whole
from onewhole.number.unit import KindError
from onewhole.statements.reading import read_expression, read_statement
from onewhole.statements.statement import (
    Comparison,
    MissingNumber,
    Question,
    asked_quantities,
    gap_amount,
    meaning,
    relation,
)
from tests.kit.exact import order, true_with
from tests.kit.statements import comparisons, missing_numbers


@given(comparisons())
def test_the_meaning_of_a_comparison_is_the_order(asked: Comparison) -> None:
    """Whatever sign was written, the true one is what a step must keep."""
    assert meaning(asked) == order(asked)


@given(missing_numbers())
def test_the_meaning_of_an_equation_is_what_makes_it_true(asked: MissingNumber) -> None:
    """Put into the gap, the number found makes both sides worth the same."""
    found = meaning(asked)
    assert isinstance(found, int | Fraction)
    assert true_with(asked, Fraction(found))


def test_the_meaning_of_a_question_is_its_value() -> None:
    """7 2/6 - 3 5/6 means 3 1/2."""
    assert meaning(read_statement("7 2/6 - 3 5/6")) == Fraction(7, 2)


def test_two_kinds_have_no_order() -> None:
    """5 ft and 5 cannot be compared."""
    with pytest.raises(KindError, match=r"^a length and a number cannot be compared"):
        relation(read_expression("5 ft"), whole(5))


@pytest.mark.parametrize(
    ("typed", "amount"),
    [
        ("7 1/2 = 2 + ? 1/2", Fraction(11, 2)),
        ("7 - ? = 3", Fraction(4)),
        ("7 + 1 - ? - 2 = 3", Fraction(3)),
    ],
)
def test_how_much_the_number_with_the_gap_is_worth(typed: str, amount: Fraction) -> None:
    """What stands beside it is undone."""
    asked = read_statement(typed)
    assert isinstance(asked, MissingNumber)
    assert gap_amount(asked) == amount


def test_only_a_plain_row_is_taken_apart() -> None:
    """One number, or numbers joined by + and -; nothing in brackets, no product."""
    row = asked_quantities(Question(read_expression("5 - 2 + 1")))
    assert row == ((whole(5), False), (whole(2), True), (whole(1), False))
    assert asked_quantities(Question(whole(4))) == ((whole(4), False),)
    for typed in ("5 - (2 + 1)", "5 x 2", "(5 - 2)/6"):
        assert asked_quantities(Question(read_expression(typed))) is None
