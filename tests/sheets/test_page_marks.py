"""The marks of a page: said, read back, and refused where they are wrong."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.sheets.open_marks import COUNT
from onewhole.sheets.page_marks import (
    CORNERS,
    DIGITS,
    KEYS,
    MOST_MARKED,
    MarksError,
    PageMarks,
    corner_marks,
    page_key,
    read_corners,
)
from onewhole.sheets.pupil_marks import pupil_marked, pupil_marks
from onewhole.sheets.reading import read_sheet

SAID = st.builds(PageMarks, st.integers(0, KEYS - 1), st.integers(1, MOST_MARKED))


@given(SAID)
def test_what_is_said_is_read_whichever_way_the_page_lies(says: PageMarks) -> None:
    """Every quarter has one mark, and any order of the four says the same."""
    marks = corner_marks(says)
    assert [mark // DIGITS for mark in marks] == [0, 1, 2, 3]
    for turned in range(CORNERS):
        assert read_corners((*marks[turned:], *marks[:turned])) == says


@given(SAID, st.integers(0, CORNERS - 1), st.integers(1, DIGITS - 1))
def test_one_wrong_mark_is_refused(says: PageMarks, corner: int, change: int) -> None:
    """Whatever one corner is taken for, the check does not fit."""
    marks = list(corner_marks(says))
    marks[corner] = corner * DIGITS + (marks[corner] + change) % DIGITS
    with pytest.raises(MarksError, match="do not belong together"):
        read_corners(marks)


@given(SAID, st.integers(0, CORNERS - 1))
def test_a_corner_that_is_hidden_follows(says: PageMarks, hidden: int) -> None:
    """A thumb on one mark loses nothing."""
    marks = corner_marks(says)
    assert read_corners([mark for at, mark in enumerate(marks) if at != hidden]) == says


@pytest.mark.parametrize(
    "marks", [(), (1, 251), (1, 2, 251, 501), (1, 251, 501, 751, 752), (1, 251, 501, 1001)]
)
def test_no_page(marks: tuple[int, ...]) -> None:
    """Too few, one corner twice, or a mark of another dictionary."""
    with pytest.raises(MarksError, match="not the marks of one page"):
        read_corners(marks)


def test_what_marks_cannot_say() -> None:
    """A key and a page have bounds, told in words."""
    with pytest.raises(MarksError, match="the key of no page"):
        PageMarks(KEYS, 1)
    with pytest.raises(MarksError, match="Page 26 cannot have marks"):
        PageMarks(1, MOST_MARKED + 1)


@pytest.mark.parametrize(
    "change", ["paper: a4", "print: large", "fit: 1", "columns: 1", "picture: strip", "date: Friday"]
)
def test_another_way_on_paper_is_another_version(change: str) -> None:
    """Every setting that moves something on paper changes the key, and so do words that are printed."""
    plain = "7 2/6 - 3 5/6"
    assert page_key(read_sheet(f"1. {plain}")) != page_key(read_sheet(f"{change}\n\n1. {plain}"))


def test_a_label_is_part_of_the_version() -> None:
    """The same problem under another label is read as that one."""
    assert page_key(read_sheet("1. 52 - 27")) != page_key(read_sheet("2. 52 - 27"))


def test_a_class_of_codes() -> None:
    """Every code of a large class has marks of its own, and marks of no code stand for nobody."""
    codes = [f"K{number:02d}" for number in range(1, 61)]
    assert [pupil_marked(pupil_marks(code.lower()), codes) for code in codes] == codes
    assert all(0 <= mark < COUNT for code in codes for mark in pupil_marks(code))
    assert pupil_marked(pupil_marks("K61"), codes) is None


def test_a_code_that_is_there_twice_is_nobody_alone() -> None:
    """Two codes that are the same but for capitals are not told apart."""
    assert pupil_marked(pupil_marks("K01"), ["K01", "k01"]) is None
