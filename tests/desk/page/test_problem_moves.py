"""Problems moved up and down a page."""

import pytest

from onewhole.desk.page.problem_moves import moved, moved_on_line
from onewhole.errors import InputError


def test_moving_tells_what_it_did() -> None:
    """Up, down, beyond an end, and nowhere."""
    typed = "1. 5 - 2\n# Look first.\n2. 6 - 3\n3. 7 - 4"
    up = moved(typed, "3", 2)
    assert (up.typed, up.words) == (
        "1. 5 - 2\n# Look first.\n2. 7 - 4\n3. 6 - 3",
        "Problem 3 is number 2 of 3 now.",
    )
    assert moved(typed, "1", 0).words == "Problem 1 stays."
    assert moved(typed, "1", 99).typed == "1. 6 - 3\n# Look first.\n2. 7 - 4\n3. 5 - 2"
    with pytest.raises(InputError, match="no problem 9"):
        moved(typed, "9", 1)


def test_a_problem_without_a_number_is_moved_by_its_line() -> None:
    """It is the problem of its line; words to the pupil are none."""
    assert moved_on_line("5 - 2\n# Look.\n6 - 3", 3, -1).typed == "6 - 3\n# Look.\n5 - 2"
    assert moved_on_line("5 - 2\n# Look.\n6 - 3", 2, -1).place == 0
    assert moved_on_line("5 - 2", 9, -1).place == 0
