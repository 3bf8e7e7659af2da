"""A diagnosis that sees right and wrong only, and the most that it can reach."""

from lab.right_wrong import ceiling
from lab.trials import problems


def test_ideas_that_are_wrong_on_the_same_problems_share_one_row() -> None:
    """A01 and A02 need a whole opened, A10 that none is; A36 is wrong where A01 is: 2 rows for 4 ideas."""
    page = problems(("9 5/8 - 4 6/8", "6 7/8 - 3 2/8"))
    assert ceiling(page, ("A01", "A02", "A36", "A10")) == 2 / 4
    assert ceiling(page, ("A01", "A10")) == 1


def test_an_idea_that_a_page_cannot_show_does_not_count() -> None:
    """A20 is about a whole number first."""
    page = problems(("9 5/8 - 4 6/8", "6 7/8 - 3 2/8"))
    assert ceiling(page, ("A01", "A10", "A20")) == 1
    assert ceiling(page, ("A20",)) == 0
