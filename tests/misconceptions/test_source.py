import pytest

from onewhole.misconceptions.source import CODED, COMMON, Source, coded


def test_a_source_names_something() -> None:
    """An empty source is refused."""
    with pytest.raises(ValueError, match=r"^a source names where the claim comes from$"):
        Source(" ")


def test_common_practice_is_from_memory() -> None:
    """What every classroom knows is not said to be read."""
    assert COMMON.provenance == "memory"


def test_a_coded_source_says_how_it_was_reached() -> None:
    """It was read second-hand, and its note says so, with more where there is more."""
    assert (coded("Cai (1995)", "58").provenance, coded("Cai (1995)", "58").note) == ("read", CODED)
    assert coded("Cai (1995)", "58", "the addition is ours").note == f"{CODED}; the addition is ours"
