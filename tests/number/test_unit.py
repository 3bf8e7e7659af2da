from fractions import Fraction
from itertools import pairwise

import pytest

from onewhole.number.unit import MEASURES, ONE, Kind, KindError, Unit


def test_the_measures_stand_largest_first_within_their_kind() -> None:
    """Units of one kind stand together, each a whole number of the next, and no abbreviation stands twice."""
    kinds = list(dict.fromkeys(unit.kind for unit in MEASURES))
    assert [unit.kind for unit in MEASURES] == sorted((unit.kind for unit in MEASURES), key=kinds.index)
    for one, other in pairwise(MEASURES):
        assert one.kind is not other.kind or (
            one.size > other.size and (one.size / other.size).denominator == 1
        )
    assert len({unit.mark for unit in MEASURES}) == len(MEASURES)


def test_one_is_a_plain_number() -> None:
    """The unit of counting has no abbreviation."""
    assert Unit(Fraction(1), Kind.NUMBER, "") == ONE


@pytest.mark.parametrize("size", [Fraction(0), Fraction(-1, 6)])
def test_a_unit_is_worth_something(size: Fraction) -> None:
    """Nothing, or less, is no unit."""
    with pytest.raises(ValueError, match=f"^a unit must be worth more than nothing, not {size}$"):
        Unit(size)


def test_a_measure_has_an_abbreviation() -> None:
    """Without one it is refused; a number has one where a unit stands behind it."""
    with pytest.raises(ValueError, match=r"^a measure has an abbreviation$"):
        Unit(Fraction(1), Kind.LENGTH, "")
    assert Unit(Fraction(1), Kind.NUMBER, "in") != ONE


def test_a_wrong_kind_is_also_a_type_error() -> None:
    """Whoever catches Python's own error catches this one."""
    assert issubclass(KindError, TypeError)
