"""A number parted: every row is worth the number on top."""

import pytest

from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity, whole
from onewhole.working.reasons.parting import Parting


def test_a_false_parting_cannot_be_made() -> None:
    """Parts that are not worth the number, and a change that changes the amount, are refused."""
    seven, six, one = whole(7), whole(6), whole(1)
    sixths = Quantity(mixed(6), (None, 6))
    with pytest.raises(ValueError, match="worth the same"):
        Parting(seven, (six, six), 1, six, None, seven)
    with pytest.raises(ValueError, match="worth the same"):
        Parting(seven, (six, one), 0, sixths, None, seven)
    assert Parting(seven, (six, one), 1, sixths, None, seven).pieces is None
