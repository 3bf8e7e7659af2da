"""What numbers hide."""

import pytest

from onewhole.problems.traps import Traps, core_traps, is_core, traps
from onewhole.statements.reading import read_statement


@pytest.mark.parametrize(
    ("typed", "together"),
    [
        ("5 1/8 - 2 5/8", {"A01", "A02"}),
        ("7 2/6 - 3 5/6", {"A01", "A02"}),
        ("9 5/8 - 2 6/8", {"A08", "A09"}),
        ("9 5/8 - 4 3/8", set()),
        ("9 2/8 - 4 6/8", {"A06", "A29"}),
        ("9 5/8 - 4 6/8", {"A11", "A12"}),
    ],
)
def test_patterns_that_write_one_answer(typed: str, together: set[str]) -> None:
    """n2 - n1 = d/2 joins A01 and A02, w2 = 2 joins A08 and A09, d - n2 = n1 joins A06 and A29."""
    found = traps(read_statement(typed))
    assert any(together <= set(group) for group in found.alike)


@pytest.mark.parametrize(("typed", "key"), [("7 2/6 - 3 5/6", "A03"), ("7 2/6 - 3 5/6", "A28")])
def test_right_by_luck(typed: str, key: str) -> None:
    """A pattern that applies and comes out right shows nothing."""
    found = traps(read_statement(typed))
    assert key in found.lucky
    assert key not in found.shown


def test_ten_is_right_in_tenths() -> None:
    """D = 10 hides the pattern that always regroups as ten."""
    assert "A04" not in traps(read_statement("4 1/10 - 2 8/10")).shown
    assert "A04" in traps(read_statement("4 1/8 - 2 6/8")).shown


def test_the_core_patterns() -> None:
    """Regrouping and the pieces, worked unit by unit; not slips, forms and other strategies' patterns."""
    assert is_core("A02")
    assert not any(is_core(key) for key in ("A29", "A32", "A35", "A26"))
    found = traps(read_statement("5 1/8 - 2 5/8")).core
    assert ("A01", "A02") in found.alike
    assert all(map(is_core, (*found.shown, *found.lucky)))


def test_within() -> None:
    """A problem is within another when it shows as much and hides no more."""
    wide = Traps(("A01", "A02"), (("A01", "A02"),), ("A03",))
    assert Traps(("A01", "A02", "A03"), (), ()).within(wide)
    assert not Traps(("A01",), (), ()).within(wide)
    assert not wide.within(Traps(("A01", "A02"), (), ("A03",)))
    assert not wide.within(Traps(("A01", "A02"), (("A01", "A02"),), ()))


@pytest.mark.parametrize(
    "typed",
    [
        "9 5/8 - 4 6/8",
        "5 1/8 - 2 5/8",
        "5 - 1 3/8",
        "2 4/5 + 1 3/5",
        "304 - 128",
        "5 ft 2 in - 2 ft 7 in",
        "5/6 ? 7/8",
    ],
)
def test_core_traps_alone_is_the_same(typed: str) -> None:
    """Looking at the patterns about regrouping and the pieces only gives what looking at all and leaving the
    others out gives.
    """
    asked = read_statement(typed)
    assert core_traps(asked) == traps(asked).core
