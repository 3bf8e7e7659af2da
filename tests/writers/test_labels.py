"""Labels in few characters."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.writers.labels import runs

PAGE = ["1", "2a", "2b", "3", "4", "5", "6"]


@pytest.mark.parametrize(
    ("labels", "written"),
    [
        ([], ""),
        (["3"], "3"),
        (["3", "4"], "3, 4"),
        (["5", "3", "4"], "3–5"),
        (["1", "2a", "2b", "4", "6"], "1–2b, 4, 6"),
        (PAGE, "1–6"),
    ],
)
def test_neighbours_are_a_run(labels: list[str], written: str) -> None:
    """Three or more neighbours on the page are a run, whatever they are called."""
    assert runs(labels, PAGE) == written


@given(st.sets(st.sampled_from(PAGE)))
def test_no_label_is_lost(labels: set[str]) -> None:
    """The runs spread out again are the labels, in the order of the page."""
    found: list[str] = []
    for part in filter(None, runs(labels, PAGE).split(", ")):
        first, _, last = part.partition("–")
        found += PAGE[PAGE.index(first) : PAGE.index(last or first) + 1]
    assert found == [label for label in PAGE if label in labels]
