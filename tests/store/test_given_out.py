"""What was given out on a pupil: kept line by line, taken back, and gone with the pupil."""

from datetime import date

import pytest

from onewhole.store.given_out import GivenOut, forget_given_out, given_out_of, keep_given_out
from onewhole.store.keeping import erase_pupil
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere
from tests.kit.kept import NOW, first_round


def _line(code: str, what: str, day: int) -> GivenOut:
    return GivenOut(code, what, "Ms Lark", "the next school", date(2026, 9, day), NOW, "teacher")


def test_lines_come_back_by_day_and_pupil(store: Store) -> None:
    """Exactly as they were typed; those of a class, and those of one pupil."""
    kept = first_round(store)
    given = [_line("K01", "the table", 3), _line("K02", "a talk", 2), _line("K01", "a page\u202e<b>", 1)]
    for one in given:
        keep_given_out(store, kept.class_number, one)
    whole = given_out_of(store, kept.class_number)
    assert [(one.code, one.what, one.day.day) for one in whole] == [
        ("K01", "a page\u202e<b>", 1),
        ("K02", "a talk", 2),
        ("K01", "the table", 3),
    ]
    assert given_out_of(store, kept.class_number, "K02") == (whole[1],)
    assert (whole[1].to, whole[1].why, whole[1].written) == ("Ms Lark", "the next school", NOW)
    with pytest.raises(NotThere):
        keep_given_out(store, kept.class_number, _line("K09", "a page", 1))


def test_only_a_pupil_s_own_line_is_taken_back(store: Store) -> None:
    """A line of another pupil, and one that is gone already, is told as not there."""
    kept = first_round(store)
    for code in ("K01", "K02"):
        keep_given_out(store, kept.class_number, _line(code, "the table", 1))
    mine, other = given_out_of(store, kept.class_number)
    with pytest.raises(NotThere):
        forget_given_out(store, kept.class_number, "K01", other.number)
    forget_given_out(store, kept.class_number, "K01", mine.number)
    assert given_out_of(store, kept.class_number) == (other,)
    with pytest.raises(NotThere):
        forget_given_out(store, kept.class_number, "K01", mine.number)


def test_the_lines_go_with_the_pupil(store: Store) -> None:
    """No byte of them stays in the file; those of another pupil stay."""
    kept = first_round(store)
    keep_given_out(store, kept.class_number, _line("K01", "remarkable table", 1))
    keep_given_out(store, kept.class_number, _line("K02", "a talk", 1))
    erase_pupil(store, kept.class_number, "K01")
    assert [one.code for one in given_out_of(store, kept.class_number)] == ["K02"]
    assert b"remarkable" not in b"".join(path.read_bytes() for path in store.path.parent.iterdir())
