"""What a map of a printed page refuses to hold."""

import pytest

from onewhole.errors import Fault
from onewhole.sheets.page_map import PageBox


@pytest.mark.parametrize("box", [(-1, 0, 1, 1), (0, -1, 1, 1), (0, 0, 0, 1), (0, 0, 1, 0)])
def test_a_box_has_a_size_and_lies_on_the_paper(box: tuple[int, int, int, int]) -> None:
    """A rectangle without a size, or over the edge of the paper, is a fault of ours."""
    with pytest.raises(Fault, match="no rectangle on paper"):
        PageBox(*box)
