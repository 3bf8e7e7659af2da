import pytest

from onewhole.number.quantity import whole
from onewhole.statements.chain import Chain, Link
from onewhole.statements.reading import read_chains


def chain(typed: str) -> Chain:
    """Read one chain."""
    (found,) = read_chains(typed)
    return found


@pytest.mark.parametrize(
    ("typed", "first_false"),
    [
        ("7 2/6 - 3 5/6 = 6 8/6 - 3 5/6 = 3 3/6", None),
        ("3 3/6 = 3 1/2 = 7/2 = 3.5", None),
        ("7 2/6 - 3 5/6 = 6 12/6 - 3 5/6 = 3 3/6", 0),
        ("2 + 3 = 5 = 6 = 6", 1),
        ("5 ft = 60 in", None),
        ("5 ft = 5", 0),
        ("2 - 3 = 4 - 5", None),
    ],
)
def test_the_first_false_equals_sign(typed: str, first_false: int | None) -> None:
    """Counted from 0; the kind is part of what is equal."""
    assert chain(typed).first_false() == first_false


@pytest.mark.parametrize(
    ("typed", "runs_on"),
    [
        ("2 + 3 = 5 + 4 = 9", True),
        ("7 2/6 - 3 = 4 2/6 - 5/6 = 3 3/6", True),
        ("7 2/6 - 3 = 4 3/6 - 5/6", False),
        ("2 + 3 = 6 + 4 = 10", False),
        ("5 ft = 5 + 1", False),
    ],
)
def test_a_sign_that_only_runs_on(typed: str, runs_on: bool) -> None:
    """The next side goes on from the amount just found: each act makes sense, the sign does not."""
    assert chain(typed).first_false() == 0
    assert chain(typed).runs_on(0) is runs_on


def test_a_chain_has_two_sides() -> None:
    """One side alone is no equality."""
    with pytest.raises(ValueError, match=r"^a chain has at least two sides$"):
        Chain((Link(whole(4), 1, 1),))
