"""What a teacher notes of what was given out: read kindly, refused where it cannot be."""

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.pupil.given_out import LONGEST, given_out_of, note_given_out
from onewhole.errors import InputError
from onewhole.store.opening import Store, open_store
from onewhole.store.refusals import NotThere
from tests.kit.kept import NOW, first_round

TODAY = NOW.date()


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class file with a round, closed after the test."""
    opened = open_store(tmp_path / "room12.class")
    first_round(opened)
    yield opened
    opened.close()


def test_a_line_is_noted_without_idle_spaces(book: Store) -> None:
    """What for may be left out."""
    note_given_out(book, 1, "K01", what="  the  table ", to="her family", why="", day=TODAY, now=NOW)
    ((code, what, to, why),) = [(one.code, one.what, one.to, one.why) for one in given_out_of(book, 1)]
    assert (code, what, to, why) == ("K01", "the table", "her family", "")


@pytest.mark.parametrize(
    ("what", "to", "later", "said"),
    [
        (" ", "her family", 0, "What was given out is missing"),
        ("the table", "", 0, "To whom it was given is missing"),
        ("the table", "x" * (LONGEST + 1), 0, "too long"),
        ("the table", "her family", 1, "still to come"),
    ],
)
def test_a_line_that_says_too_little_is_refused(
    book: Store, what: str, to: str, later: int, said: str
) -> None:
    """Nothing is noted."""
    with pytest.raises(InputError, match=said):
        note_given_out(book, 1, "K01", what=what, to=to, why="", day=TODAY + timedelta(days=later), now=NOW)
    with pytest.raises(NotThere):
        note_given_out(book, 1, "K09", what="a", to="b", why="", day=TODAY, now=NOW)
    assert given_out_of(book, 1) == ()
