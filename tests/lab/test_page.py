"""The page of the docs that the laboratory writes."""

import pytest

from lab.page import with_rows, written
from lab.table import Part

HEADS = ("topic", "first")
PART = Part("Pages", "Of 12.", HEADS, (("sums", "1 %"), ("plots", "2 %")))
PAGE = written("before\n\n<!-- table: made by make lab -->\nx\n<!-- table end -->\nafter\n", [PART])


def test_one_row_is_measured_anew_and_one_is_put_in_its_place() -> None:
    """The others stay as they were, and so does all around the table."""
    measured = Part("Pages", "", HEADS, (("plots", "3 %"), ("lists", "4 %")))
    page = with_rows(PAGE, measured, ("sums", "lists", "plots"))
    assert page == PAGE.replace("| plots | 2 % |", "| lists | 4 % |\n| plots | 3 % |")


@pytest.mark.parametrize(("title", "heads"), [("Other", HEADS), ("Pages", ("topic", "last"))])
def test_another_table_is_refused(title: str, heads: tuple[str, ...]) -> None:
    """One of another title, and one with other heads."""
    with pytest.raises(ValueError, match="has no table"):
        with_rows(PAGE, Part(title, "", heads, ()), ("sums",))
