from fractions import Fraction

import pytest

from onewhole.number.impossible import Impossible
from onewhole.number.ladder import mixed, places
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import Kind
from onewhole.number.with_minus import WithMinus

HALF = Quantity(mixed(2), (None, 1))


@pytest.mark.parametrize(
    ("number", "value"),
    [
        (WithMinus(HALF), Fraction(-1, 2)),
        (WithMinus(HALF, front=False, below=True), Fraction(-1, 2)),
        (WithMinus(HALF, below=True), Fraction(1, 2)),
        (WithMinus(Quantity(mixed(2), (1, 1))), Fraction(-3, 2)),
        (WithMinus(whole(0)), Fraction(0)),
        (WithMinus(Impossible(None, 1)), None),
    ],
)
def test_how_much_it_is(number: WithMinus, value: Fraction | None) -> None:
    """One sign is below zero, two are not, and nothing over 0 is an amount."""
    assert number.value == value
    assert number.kind is Kind.NUMBER


def test_numerator_and_denominator() -> None:
    """They are told without their signs; a whole number has none."""
    assert WithMinus(HALF, below=True).fraction == (1, 2)
    assert WithMinus(Impossible(None, 1), below=True).fraction == (1, 0)
    with pytest.raises(ValueError, match="without a fraction"):
        _ = WithMinus(whole(3)).fraction


@pytest.mark.parametrize("number", [Quantity(mixed(2), (1, 1)), Quantity(places(1), (3,)), Impossible(3, 1)])
def test_a_sign_below_stands_in_a_fraction_alone(number: Quantity | Impossible) -> None:
    """3 1/-2 and 3/-: what they would be is not clear, so they are not built."""
    with pytest.raises(ValueError, match="fraction without wholes"):
        WithMinus(number, below=True)


def test_without_a_sign_it_is_not_built() -> None:
    """A plain number is a quantity."""
    with pytest.raises(ValueError, match="has a minus sign"):
        WithMinus(HALF, front=False)
