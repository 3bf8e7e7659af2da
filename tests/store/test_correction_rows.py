"""What the teacher says instead, as it is kept."""

import pytest

from onewhole.store.correction_rows import (
    CellReadAs,
    FindingAside,
    GroupKey,
    PlaceChosen,
    SeatKept,
    TeacherWord,
    row_of,
    word_of,
)
from onewhole.store.refusals import NotStorable


@pytest.mark.parametrize(
    "word",
    [
        CellReadAs("3b", "3 and a smudge", "3 3/6"),
        CellReadAs("3", None, "3 3/6"),
        FindingAside(aside=True),
        FindingAside(aside=False),
        PlaceChosen(GroupKey("Larks 2", "numerator + form of answer")),
        PlaceChosen(GroupKey("Larks 2", "numerator", "2026-11-24.1"), stays=True),
        SeatKept(GroupKey("Larks", "slips only", "2026-11-24.10")),
        SeatKept(GroupKey("Larks", "numerator"), stays=True),
        PlaceChosen(None),
    ],
)
def test_a_word_comes_back_as_it_was(word: TeacherWord) -> None:
    """Through the columns of the database."""
    assert word_of(*row_of(word)) == word


@pytest.mark.parametrize("text", ["4 7/8", "[4", "", "5"])
def test_a_reading_of_the_first_release_is_of_any_text(text: str) -> None:
    """It was kept as plain words."""
    assert word_of("1", "reading", text) == CellReadAs("1", None, text)


def test_what_earlier_files_hold_is_read() -> None:
    """Any text sets a finding aside; a group's key without a conversation is that of no group there is."""
    assert word_of("", "finding", "copied wrongly") == FindingAside(aside=True)
    assert word_of("", "place", "talk") == PlaceChosen(GroupKey("talk", ""))


def test_a_kind_that_is_none() -> None:
    """It is refused and not guessed at."""
    with pytest.raises(ValueError, match="kite"):
        word_of("", "kite", "")


def test_half_a_character_is_no_reading() -> None:
    """It is refused as any text of the file is: it is no fault of the program."""
    with pytest.raises(NotStorable):
        row_of(CellReadAs("1", "\ud83d", "3 3/6"))
