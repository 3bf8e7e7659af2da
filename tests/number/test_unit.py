from fractions import Fraction

import pytest

from onewhole.number.unit import MEASURES, ONE, Kind, KindError, Unit


def test_the_measures_of_grade_four() -> None:
    """Feet in inches, pounds in ounces, hours in minutes; the yard stands above the foot."""
    sizes = {unit.mark: (unit.kind, int(unit.size)) for unit in MEASURES}
    assert sizes == {
        "yd": (Kind.LENGTH, 36),
        "ft": (Kind.LENGTH, 12),
        "in": (Kind.LENGTH, 1),
        "lb": (Kind.WEIGHT, 16),
        "oz": (Kind.WEIGHT, 1),
        "h": (Kind.TIME, 60),
        "min": (Kind.TIME, 1),
    }


def test_one_is_a_plain_number() -> None:
    """The unit of counting has no abbreviation."""
    assert Unit(Fraction(1), Kind.NUMBER, "") == ONE


@pytest.mark.parametrize("size", [Fraction(0), Fraction(-1, 6)])
def test_a_unit_is_worth_something(size: Fraction) -> None:
    """Nothing, or less, is no unit."""
    with pytest.raises(ValueError, match=f"^a unit must be worth more than nothing, not {size}$"):
        Unit(size)


@pytest.mark.parametrize(("kind", "mark"), [(Kind.LENGTH, ""), (Kind.NUMBER, "in")])
def test_a_measure_has_an_abbreviation_and_a_number_has_none(kind: Kind, mark: str) -> None:
    """Either without the other is refused."""
    with pytest.raises(ValueError, match=r"^a measure has an abbreviation and a number has none$"):
        Unit(Fraction(1), kind, mark)


def test_a_wrong_kind_is_also_a_type_error() -> None:
    """Whoever catches Python's own error catches this one."""
    assert issubclass(KindError, TypeError)
