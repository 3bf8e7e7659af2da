"""How much each unit is worth, as it is published.

Source: customary units: the table of U.S. units of OpenStax Prealgebra 2e, section Systems of Measurement
(read), with NIST Handbook 44, Appendix C behind it (from memory). Metric units: the table of metric units of
the same section, with the SI Brochure, 9th edition, behind it (from memory). The rows with a star stand in
the standards themselves: Common Core State Standards for Mathematics (2010), 4.MD.A.1 and 5.MD.A.1.
"""

import pytest

from onewhole.number.ladder import measure
from onewhole.statements.reading import read_quantity

PUBLISHED = (
    ("1 ft", "12 in"),  # *
    ("4 ft", "48 in"),  # *
    ("1 yd", "3 ft"),
    ("1 yd", "36 in"),
    ("1 mi", "5280 ft"),
    ("1 mi", "1760 yd"),
    ("1 lb", "16 oz"),
    ("1 T", "2000 lb"),
    ("1 ton", "32000 oz"),
    ("1 c", "8 fl oz"),
    ("1 pt", "2 c"),
    ("1 qt", "2 pt"),
    ("1 qt", "4 c"),
    ("1 gal", "4 qt"),
    ("1 gal", "8 pt"),
    ("1 gal", "128 fl oz"),
    ("1 min", "60 s"),
    ("1 h", "60 min"),
    ("1 day", "24 h"),
    ("1 wk", "7 d"),
    ("9 weeks", "90720 minutes"),
    ("1 km", "1000 m"),
    ("1 km", "100000 cm"),
    ("10 km", "10000 m"),
    ("1 m", "100 cm"),
    ("1 m", "1000 mm"),
    ("1 cm", "10 mm"),
    ("1 kg", "1000 g"),
    ("1 L", "1000 mL"),
)


@pytest.mark.parametrize(("one", "other"), PUBLISHED)
def test_units_are_worth_what_is_published(one: str, other: str) -> None:
    """Both are of one kind and one amount."""
    first, second = read_quantity(one), read_quantity(other)
    assert (first.kind, first.value) == (second.kind, second.value)


def test_an_ounce_of_weight_is_no_fluid_ounce() -> None:
    """Weight and liquid volume never convert, and neither do customary and metric units."""
    kinds = [measure(mark).kind for mark in ("oz", "fl oz", "g", "mL", "in", "cm")]
    assert len(set(kinds)) == len(kinds)
