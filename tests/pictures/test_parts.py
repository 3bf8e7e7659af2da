from fractions import Fraction

import pytest

from onewhole.pictures.parts import PartWhole, Share, part_whole
from onewhole.statements.gap import HOLE
from onewhole.statements.reading import read_statement

WHOLE, PART = Share(HOLE, Fraction(5)), Share(HOLE, Fraction(2))


def test_parts_make_the_whole() -> None:
    """Anything else is refused."""
    assert PartWhole(WHOLE, (PART, PART, Share(HOLE, Fraction(1)))).smallest == Fraction(1, 5)
    with pytest.raises(ValueError, match="the parts together are the whole"):
        PartWhole(WHOLE, (PART, PART))


@pytest.mark.parametrize(
    ("problem", "whole", "blank"),
    [
        ("9 - ? = 3 1/2", 9, 0),
        ("3 1/2 = 9 - ?", 9, 0),
        ("9 - 2 - ? = 3", 9, 1),
        ("9 - ? - 2 = 3", 9, 0),
        ("2 + ? = 5", 5, 1),
        ("? + 2 = 5", 5, 0),
        ("? - 2 = 3", 5, None),
    ],
)
def test_where_the_blank_is(problem: str, whole: int, blank: int | None) -> None:
    """Among the parts in the order of the problem, or the whole itself."""
    found = part_whole(read_statement(problem))
    assert found is not None
    assert found.whole.amount == whole
    holes = [at for at, part in enumerate(found.parts) if part.written is HOLE]
    assert holes == ([] if blank is None else [blank])
    assert (found.whole.written is HOLE) == (blank is None)
