"""What the words of a typed story tell, and the numbers that are spelt out in it."""

import pytest

from onewhole.sheets.story_cues import StoryAsks, cues, spelt_counts, spelt_numbers


@pytest.mark.parametrize(
    ("story", "told", "sure"),
    [
        ("He has 5. How many are left?", StoryAsks.APART, True),
        ("He has 5 and 2. How many does he have in all?", StoryAsks.TOGETHER, True),
        ("Which kite is longer?", StoryAsks.WHICH, True),
        ("How much longer is the red one than the blue one?", StoryAsks.APART, True),
        ("Each kite takes 2. How many are left?", StoryAsks.APART, False),
        ("She has 2 more than Ben. How many do they have together?", StoryAsks.TOGETHER, False),
        ("He turned left at 3 and walked on. How far did he walk?", None, False),
        ("She found 2 shells. How many has she now?", StoryAsks.TOGETHER, False),
        ("She lost 2. How many had she at first?", StoryAsks.TOGETHER, False),
        ("", None, False),
    ],
)
def test_cues(story: str, told: StoryAsks | None, sure: bool) -> None:
    """Only the question counts; a story that compares or shares settles nothing."""
    found = cues(story)
    assert (found.told, found.sure) == (told, sure)


@pytest.mark.parametrize(
    ("story", "digits"),
    [
        ("half a yard", ["1/2"]),
        ("a half and two-thirds", ["1/2", "2/3"]),
        ("Three and one fourth miles", ["3 1/4"]),
        ("the third kite", []),
        ("5 and a half", ["5 1/2"]),
    ],
)
def test_numbers_that_are_spelt_out(story: str, digits: list[str]) -> None:
    """Fractions and mixed numbers; "third" alone is an order."""
    assert [one.digits for one in spelt_numbers(story)] == digits


def test_counts_that_are_spelt_out() -> None:
    """One to twenty, whole words only."""
    assert [(one.start, one.digits) for one in spelt_counts("Twenty kites, fourteen tails, someone")] == [
        (0, "20"),
        (14, "14"),
    ]
