"""Answers: exactly as they were typed, with their history."""

from datetime import timedelta

import pytest
from msgspec.structs import replace

from onewhole.store.answers import (
    KeptAnswer,
    answers_of,
    history_of,
    keep_answers,
    last_writing,
)
from onewhole.store.classes import add_class, add_pupil
from onewhole.store.column_types import ZonelessError
from onewhole.store.nights import add_night
from onewhole.store.opening import Store
from onewhole.store.refusals import NotStorable, NotThere
from tests.kit.kept import DAY, NOW, first_round, keep_answer, write

HOSTILE = (
    "<script>alert(1)</script>",
    '=HYPERLINK("x")',
    "a\0b",
    "x" * 10_240,
    "\u202e8/5 1\u202c",
    "'; DROP TABLE answers; --",
    " 2 4/8 ",
    "e\u0301 and \u00e9",
    "",
    "\ufeff\r\n\t",
)


def test_the_last_writing_is_the_answer(store: Store) -> None:
    """By pupil, then by problem; every earlier writing is in the history, in order of writing."""
    night = first_round(store).night
    write(store, night, "2 4/8")
    write(store, night, "3", code="K02")
    write(store, night, "2 1/2", after=5)
    write(store, night, "7", problem="2")
    found = answers_of(store, night)
    assert [(one.code, one.problem, one.text) for one in found] == [
        ("K01", "1", "2 1/2"),
        ("K01", "2", "7"),
        ("K02", "1", "3"),
    ]
    history = history_of(store, night, "K01", "1")
    assert [(one.text, one.written - NOW, one.by) for one in history] == [
        ("2 4/8", timedelta(0), "teacher"),
        ("2 1/2", timedelta(minutes=5), "teacher"),
    ]
    assert history_of(store, night, "K01", "9") == ()


def test_a_column_is_kept_all_or_not_at_all(store: Store) -> None:
    """In the order given; one wrong code or half a character among them keeps none."""
    night = first_round(store).night
    column = tuple(
        KeptAnswer(night, code, "1", text, NOW, "t") for code, text in (("K01", "2"), ("K02", "3"))
    )
    again = replace(column[0], text="4")
    assert keep_answers(store, (*column, again)) == (*column, again)
    assert answers_of(store, night) == (again, column[1])
    for wrong in (replace(again, code="K03"), replace(again, text="\ud83d"), replace(again, night=99)):
        with pytest.raises((NotThere, NotStorable)):
            keep_answers(store, (replace(again, text="5"), wrong))
    assert keep_answers(store, ()) == ()
    assert answers_of(store, night) == (again, column[1])


def test_the_last_writing_tells_whether_anything_changed(store: Store) -> None:
    """It grows with every writing, also of the same text, and knows only its own night."""
    kept = first_round(store)
    later = add_night(store, kept.class_number, kept.sheet, 1, DAY + timedelta(days=1)).number
    assert last_writing(store, kept.night) == 0
    seen = []
    for _ in range(3):
        write(store, kept.night, "2")
        seen.append(last_writing(store, kept.night))
    assert seen == sorted(set(seen))
    write(store, later, "2")
    assert last_writing(store, kept.night) == seen[-1] < last_writing(store, later)
    assert last_writing(store, 99) == 0


def test_a_clock_set_back_changes_no_order(store: Store) -> None:
    """The answer is the one written last, though its time is earlier."""
    night = first_round(store).night
    write(store, night, "first", after=0)
    write(store, night, "last", after=-600)
    assert [one.text for one in answers_of(store, night)] == ["last"]


@pytest.mark.parametrize("text", HOSTILE, ids=ascii)
def test_a_text_is_kept_exactly(store: Store, text: str) -> None:
    """As an answer, a label, a writer and a pupil's name; nothing is read into it."""
    kept = first_round(store)
    code = add_pupil(store, kept.class_number, text).code
    answer = KeptAnswer(kept.night, code, text, text, NOW, text)
    assert keep_answer(store, answer) == answer
    assert answers_of(store, kept.night) == (answer,)


def test_half_a_character_is_refused(store: Store) -> None:
    """A lone surrogate is no text; where it stands is told, and nothing is kept."""
    night = first_round(store).night
    with pytest.raises(NotStorable, match="column 3"):
        write(store, night, "2 \ud83d")
    assert answers_of(store, night) == ()


def test_a_moment_needs_its_zone(store: Store) -> None:
    """A bare time would be another moment on another machine."""
    night = first_round(store).night
    with pytest.raises(ZonelessError):
        keep_answer(store, KeptAnswer(night, "K01", "1", "2", NOW.replace(tzinfo=None), "t"))


@pytest.mark.asvs("V2.2.3")
def test_only_a_pupil_of_the_night_s_class_answers(store: Store) -> None:
    """What is not there is told: a night, a code, one of another class, a number past all bounds."""
    night = first_round(store).night
    other = add_class(store, "Room 13", NOW)
    for _ in range(3):
        add_pupil(store, other.number)
    others = add_night(store, other.number, 1, 1, DAY).number
    write(store, others, "5", code="K03")
    assert [one.code for one in answers_of(store, others)] == ["K03"]
    for wrong_night, code in ((night, "K03"), (others + 1, "K01"), (10**30, "K01")):
        with pytest.raises(NotThere):
            write(store, wrong_night, "2", code=code)
    assert answers_of(store, night) == ()
