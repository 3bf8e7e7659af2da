"""What one cell says by itself."""

import pytest

from onewhole.marking.paper.ink_reading import MOST_READINGS, SURE, InkReading


def test_the_best_reading_comes_first() -> None:
    """The text and the likelihood of a cell are those of its first reading."""
    cell = InkReading((("13/4", 600_000), ("18/4", 300_000)), empty=50_000, not_an_answer=50_000, struck=7)
    assert (cell.text, cell.likelihood) == ("13/4", 600_000)


def test_an_empty_cell_has_no_text() -> None:
    """A cell without a reading has an empty text, which nothing makes likely."""
    cell = InkReading((), empty=SURE, not_an_answer=0)
    assert (cell.text, cell.likelihood) == ("", 0)


@pytest.mark.parametrize(
    ("readings", "empty", "not_an_answer", "struck"),
    [
        ((("7", 1), ("8", 2)), 0, 0, 0),
        ((("7", 2), ("7", 1)), 0, 0, 0),
        ((("", 2),), 0, 0, 0),
        ((("7", -1),), 0, 0, 0),
        ((("7", SURE),), 1, 0, 0),
        ((), 0, SURE + 1, 0),
        ((), -1, 0, 0),
        ((), 0, 0, SURE + 1),
        ((), 0, 0, -1),
        (tuple((str(n), 1) for n in range(MOST_READINGS + 1)), 0, 0, 0),
    ],
)
def test_what_cannot_be_so_is_not_built(
    readings: tuple[tuple[str, int], ...], empty: int, not_an_answer: int, struck: int
) -> None:
    """Readings out of order, twice, too many or without text, and more than all, are refused."""
    with pytest.raises(AssertionError):
        InkReading(readings, empty, not_an_answer, struck)
