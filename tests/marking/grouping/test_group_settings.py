"""How many groups are met, and their sizes."""

import pytest

from onewhole.errors import InputError
from onewhole.marking.grouping.group_settings import USUAL, GroupSettings, Sizes


@pytest.mark.parametrize("sizes", [(0, 3), (4, 3), (-1, -1)])
def test_sizes_that_cannot_be_are_refused(sizes: tuple[int, int]) -> None:
    """Below one, and the smaller above the larger."""
    with pytest.raises(InputError, match="cannot be"):
        Sizes(*sizes)


def test_the_teacher_meets_at_least_one() -> None:
    """Nobody can be met in no groups."""
    with pytest.raises(InputError, match="at least one group, not 0"):
        GroupSettings(0)
    assert (USUAL.meets, USUAL.sizes) == (4, Sizes(3, 6))
