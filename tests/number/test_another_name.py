from fractions import Fraction

import pytest

from onewhole.notations.text import text
from onewhole.number.another_name import another_name
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity
from onewhole.statements.reading import read_quantity


@pytest.mark.parametrize(
    ("given", "name"),
    [
        ("6/8", "3/4"),
        ("4 6/8", "4 3/4"),
        ("14/8", "1 6/8"),
        ("8/4", "2"),
        ("2 1/2", "5/2"),
        ("0.7", "7/10"),
        ("2.05", "2 5/100"),
        ("26 in", "2 ft 2 in"),
        ("24 in", "2 ft"),
        ("7 ft", "2 yd 1 ft"),
        ("2 ft", "24 in"),
        ("1 h 5 min", "65 min"),
        ("20 oz", "1 lb 4 oz"),
        ("14 in", "1 ft 2 in"),
    ],
)
def test_one_other_name(given: str, name: str) -> None:
    """The same amount, written as a fourth-grade page means it; worked out by hand."""
    found = another_name(read_quantity(given))
    assert found is not None
    assert text(found) == name
    assert found.value == read_quantity(given).value


@pytest.mark.parametrize("given", ["5", "52", "3/4", "0", "5 in", "0 ft", "30 s", "1.0"])
def test_no_other_name(given: str) -> None:
    """What could be written in many ways, or in none, has no one name that is meant."""
    assert another_name(read_quantity(given)) is None


def test_every_fraction_up_to_twelfths() -> None:
    """All of the small space: the other name is another writing of the same amount, or there is none."""
    for bottom in range(2, 13):
        for wholes in (None, 1, 3):
            for top in range(1, 3 * bottom):
                given = Quantity(mixed(bottom), (wholes, top))
                found = another_name(given)
                if found is None:
                    assert wholes is None
                    assert top < bottom
                    assert Fraction(top, bottom).denominator == bottom
                else:
                    assert found != given
                    assert found.value == given.value
