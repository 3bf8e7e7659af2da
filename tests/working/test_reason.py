import pytest

from onewhole.number.quantity import whole
from onewhole.working.reason import Reason, because


def test_a_reason_is_a_key_and_its_numbers() -> None:
    """By name, in order; equal when all is equal."""
    reason = because("left", result=whole(3))
    assert reason == Reason("left", (("result", whole(3)),))
    assert reason["result"] == whole(3)


def test_a_number_it_has_not_got() -> None:
    """Asked for by name."""
    with pytest.raises(KeyError, match="missing"):
        because("left")["missing"]
