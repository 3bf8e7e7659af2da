"""How a scene is drawn in pencil: exact geometry and stacked numbers."""

import math
from fractions import Fraction

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.notations.pencil import Bar, Letters, arrowhead, cross, lettered, root, turned
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity
from onewhole.pictures.scene import Hop, Wedge, Words


@pytest.mark.parametrize("twelfths", range(-12, 25))
def test_turns(twelfths: int) -> None:
    """Sine and cosine agree with the machine's own to a millionth; quarter turns are exact."""
    sine, cosine = turned(Fraction(twelfths, 12))
    angle = math.tau * twelfths / 12
    assert (float(sine), float(cosine)) == pytest.approx((math.sin(angle), math.cos(angle)), abs=1e-6)
    if twelfths % 3 == 0:
        assert {sine, cosine} <= {-1, 0, 1}


@pytest.mark.parametrize("value", [Fraction(0), Fraction(2), Fraction(1, 3), Fraction(123456789)])
def test_root(value: Fraction) -> None:
    """The root is the largest whole number of millionths whose square is not above the value."""
    found = root(value)
    assert found**2 <= value < (found + Fraction(1, 10**6)) ** 2


@pytest.mark.parametrize("to_x", [10, 90])
def test_arrowhead_points_where_the_hop_goes(to_x: int) -> None:
    """The tip is the hop's end; both other corners are above it, on the side it comes from."""
    tip, *wings = arrowhead(Hop(Fraction(50), Fraction(60), Fraction(to_x), Fraction(20)))
    assert tip == (Fraction(to_x), Fraction(60))
    assert all(y < 60 for _, y in wings)
    assert (sum(x for x, _ in wings) / 2 < to_x) == (to_x > 50)


@pytest.mark.parametrize("parts", range(2, 25))
def test_a_cross_stays_in_its_wedge(parts: int) -> None:
    """The middle of the cross is in the middle of the wedge, and its ends are in the disc."""
    lines = cross(Wedge(Fraction(0), Fraction(0), Fraction(10), Fraction(1, 3), Fraction(1, parts)))
    ends = [point for x, y, to_x, to_y in lines for point in ((x, y), (to_x, to_y))]
    assert all(x * x + y * y <= 100 for x, y in ends)


def test_a_mixed_number_has_a_big_whole_and_a_stacked_fraction() -> None:
    """Whole, numerator over the bar, denominator under it; all of it is centred on its point."""
    seven, two, bar, six = _sorted(Quantity(mixed(6), (7, 2)))
    assert (seven.text, two.text, six.text) == ("7", "2", "6")
    assert seven.size > two.size == six.size
    assert two.x == six.x == (bar.x + bar.to_x) / 2
    assert two.y < bar.y < six.y
    assert abs((seven.x - seven.size * Fraction(542, 2000) + bar.to_x) / 2 - 50) < Fraction(1, 10**6)


def _sorted(quantity: Quantity) -> tuple[Letters, Letters, Bar, Letters]:
    parts = lettered(Words(Fraction(50), Fraction(50), quantity, Fraction(7)), ClassWords())
    first, second, bar, last = parts
    assert isinstance(first, Letters)
    assert isinstance(second, Letters)
    assert isinstance(bar, Bar)
    assert isinstance(last, Letters)
    return first, second, bar, last
