"""Problems like one that divides: a unit fraction stays one, and nobody divides by 1."""

from itertools import islice

import pytest

from onewhole.notations.text import text
from onewhole.problems.parallel import parallel
from onewhole.statements.reading import read_statement


@pytest.mark.parametrize("asked", ["1/3 / 4", "2 / 1/3", "7 2/6 / 4", "5.2 / 4", "5 ft 2 in / 2", "87 / 4"])
def test_the_kind_is_kept(asked: str) -> None:
    """5.NF.B.7 (CCSSM 2010) is about unit fractions: 1/3 / 4 comes back as 1/5 / 6 and not as 2/3 / 6."""
    found = [text(one) for one in islice(parallel(read_statement(asked)), 4)]
    assert len(found) >= 3
    for one in found:
        left, right = one.split(" ÷ ")
        assert right != "1"
        assert (left[:2] == "1/") == (asked[:2] == "1/")
        assert (right[:2] == "1/") == ("/ 1/" in asked)
