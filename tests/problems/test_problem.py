"""A labelled statement refuses what would not read back."""

import pytest

from onewhole.problems.problem import Problem, ProblemError
from onewhole.statements.reading import read_statement

ASKED = read_statement("7 2/6 - 3 5/6")


@pytest.mark.parametrize("label", ["1", "12b", "a", "Q3", "999"])
def test_labels(label: str) -> None:
    """A number, a letter or both."""
    assert Problem(label, ASKED, "7 2/6 - 3 5/6").label == label


@pytest.mark.parametrize("label", ["", " ", "1.", "2)", "1 2", "abcd", "1000", "½"])
def test_no_labels(label: str) -> None:
    """Anything else is refused with what to use."""
    with pytest.raises(ProblemError, match="is no label") as refused:
        Problem(label, ASKED, "7 2/6 - 3 5/6")
    assert refused.value.remedy


@pytest.mark.parametrize(
    ("typed", "story"), [("7 2/6  - 3 5/6", ""), ("7 2/6 -\n3 5/6", ""), ("7 2/6 - 3 5/6", "two\nlines")]
)
def test_one_line_with_single_blanks(typed: str, story: str) -> None:
    """What a line of a sheet cannot hold is refused."""
    with pytest.raises(ProblemError, match="does not stand on one line"):
        Problem("1", ASKED, typed, story=story)


def test_the_text_says_the_statement() -> None:
    """A text that asks something else is refused."""
    with pytest.raises(ProblemError, match="another problem"):
        Problem("1", ASKED, "52 - 27")


def test_where_it_was_typed_is_no_part_of_it() -> None:
    """The same problem on another line is the same problem."""
    assert Problem("1", ASKED, "7 2/6 - 3 5/6", 4) == Problem("1", ASKED, "7 2/6 - 3 5/6", 9)
