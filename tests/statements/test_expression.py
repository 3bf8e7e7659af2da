from fractions import Fraction

import pytest
from hypothesis import given

from onewhole.number.ladder import measure, mixed
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import Kind, KindError
from onewhole.statements.expression import (
    Expression,
    Over,
    Sum,
    Term,
    Times,
    kind,
    minus,
    plus,
    quantities,
    value,
)
from tests.kit.exact import amount, kinds
from tests.kit.statements import any_expressions

FOOT = Quantity(measure("ft"), (1,))
POUND = Quantity(measure("lb"), (1,))
HALF = Quantity(mixed(2), (None, 1))


@given(any_expressions())
def test_the_quick_value_is_the_plain_one(expression: Expression) -> None:
    """The value agrees with adding and multiplying Fractions, unit by unit; so does the kind."""
    assert value(expression) == amount(expression)
    assert kind(expression) in kinds(expression)
    assert kinds(expression) <= {kind(expression), Kind.NUMBER}


def test_one_part_alone_is_itself() -> None:
    """No sum of one."""
    assert plus(whole(3)) == minus(whole(3)) == whole(3)


@pytest.mark.parametrize("terms", [(), (Term(whole(1)),), (Term(whole(1), taken=True), Term(whole(2)))])
def test_a_sum_has_two_parts_and_begins_with_adding(terms: tuple[Term, ...]) -> None:
    """Anything else is refused."""
    with pytest.raises(
        ValueError, match=r"^a sum has two or more parts and does not begin with taking away$"
    ):
        Sum(terms)


@pytest.mark.parametrize(
    ("wrong", "what"),
    [
        (plus(FOOT, whole(2)), "a length and a number cannot be put together"),
        (minus(FOOT, POUND), "a length and a weight cannot be put together"),
        (Times(FOOT, FOOT), "a length times a length is not worked here"),
        (Over(FOOT, whole(2)), "numerator and denominator are plain numbers"),
        (Over(whole(2), FOOT), "numerator and denominator are plain numbers"),
    ],
)
def test_kinds_that_do_not_go_together(wrong: Expression, what: str) -> None:
    """Neither a value nor a kind."""
    for asked in (value, kind):
        with pytest.raises(KindError) as refused:
            asked(wrong)
        assert refused.value.what == what
        assert refused.value.remedy


def test_a_measure_may_be_taken_many_times() -> None:
    """3 x 1 ft and 1 ft x 3 are 36 inches."""
    assert value(Times(whole(3), FOOT)) == value(Times(FOOT, whole(3))) == 36
    assert kind(Times(whole(3), FOOT)) is Kind.LENGTH


def test_no_parts_in_a_whole_has_no_value() -> None:
    """A denominator that comes out as 0."""
    with pytest.raises(ZeroDivisionError):
        value(Over(whole(3), minus(whole(1), whole(1))))


def test_every_number_from_left_to_right() -> None:
    """Through sums, products and fractions."""
    found = quantities(plus(Times(whole(1), whole(2)), Over(whole(3), plus(whole(4), HALF))))
    assert found == (whole(1), whole(2), whole(3), whole(4), HALF)
    assert value(found[-1]) == Fraction(1, 2)
