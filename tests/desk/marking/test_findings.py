"""The most useful findings of a night."""

from onewhole.desk.marking.findings import most_useful
from onewhole.desk.marking.mark import mark

SHEET = "1. 6 7/8 - 3 2/8\n2. 9 5/8 - 4 6/8\n3. 8 3/6 - 4 4/6"


def test_the_shared_idea_then_talks_then_the_problem() -> None:
    """Three sentences: what most answers fit and what to ask, whom to talk with, what was hardest."""
    answers = (
        "pupil,1,2,3\nK01,3 5/8,5 1/8,4 1/6\nK02,3 5/8,5 1/8,4 1/6\nK03,9,5 1/8,7\nK04,3 5/8,4 7/8,3 5/6\n"
    )
    first, second, third = most_useful(mark(SHEET, answers))
    assert first.startswith("The answers of K01 and K02 fit one idea: takes the smaller number of pieces")
    assert " Ask, on 2: " in first
    assert second == "Talk first with K03: no steady pattern, so only a talk can tell."
    assert third == "Problem 2 was the hardest: 1 of 4 right."


def test_a_steady_idea_that_is_not_ours_is_asked_to_be_shown() -> None:
    """The larger number of pieces each time: no talk about no pattern, and no pattern named."""
    page = f"{SHEET}\n4. 9 1/8 - 4 6/8\n5. 9 1/12 - 4 9/12\n6. 7 2/10 - 3 9/10"
    first, *_ = most_useful(mark(page, "pupil,1,2,3,4,5,6\nK01,3 7/8,5 6/8,4 4/6,5 6/8,5 9/12,4 9/10\n"))
    assert first == (
        "The answers of K01 are steady, and not one of our patterns: ask to be shown how it was done."
    )


def test_a_class_that_is_right_has_little_to_tell() -> None:
    """Only how the problems went."""
    found = most_useful(mark(SHEET, "pupil,1,2,3\nK01,3 5/8,4 7/8,3 5/6\n"))
    assert found == ("Problem 1 was the hardest: 1 of 1 right.",)


def test_a_problem_whose_key_should_be_looked_at() -> None:
    """It is told before the hardest one."""
    right, wrong = "3 5/8,4 7/8,3 5/6", "3 5/8,9,9"
    rows = [f"K{at},{cells}" for at, cells in enumerate([right.replace("3 5/8", "9", 1)] * 7 + [wrong] * 5)]
    found = most_useful(mark(SHEET, "\n".join(["pupil,1,2,3", *rows])))
    assert any(one.startswith("Look at the key of problem 1") for one in found)


def test_nobody_wrote_anything() -> None:
    """Then nothing is found."""
    assert most_useful(mark(SHEET, "pupil,1,2,3\nK01,,,\n")) == ()
