"""Rows of talks: added, taken back by a row more, gone with the pupil."""

import pytest
from msgspec.structs import replace

from onewhole.store.asked import KeptAsked, asked_rows, keep_asked, standing_asked
from onewhole.store.cache_inputs import cache_inputs_of
from onewhole.store.keeping import all_on_pupil, erase_pupil
from onewhole.store.opening import Store
from onewhole.store.refusals import NotStorable, NotThere
from tests.kit.kept import NOW, Round, first_round

ROW = KeptAsked(1, "K01", "9 5/8 - 4 6/8", " 5 1/8\u202e<b>", "this idea", "A01 A02", NOW, "teacher")


@pytest.fixture
def kept(store: Store) -> Round:
    """A class with K01 and K02, and its night."""
    return first_round(store)


def _take_back(number: int, code: str = "K01") -> KeptAsked:
    return KeptAsked(1, code, "", "", "", "", NOW, "teacher", takes_back=number)


def test_rows_come_back_as_they_were_typed_and_stay(store: Store, kept: Round) -> None:
    """A row that is taken back stays in the file and stands no more; the others stand."""
    for row in (ROW, replace(ROW, code="K02", said="", about=""), replace(ROW, wrote="-")):
        keep_asked(store, row)
    assert replace(asked_rows(store, kept.night)[0], number=0) == ROW
    keep_asked(store, _take_back(1))
    rows = asked_rows(store, kept.night)
    assert [one.number for one in rows] == [1, 2, 3, 4]
    assert [one.number for one in standing_asked(rows)] == [2, 3]


def test_only_what_stands_and_is_the_pupils_own_is_taken_back(store: Store, kept: Round) -> None:
    """Another pupil's row, one that is gone, one that took back, and one that never was."""
    keep_asked(store, ROW)
    for wrong in (_take_back(1, "K02"), _take_back(7)):
        with pytest.raises(NotThere):
            keep_asked(store, wrong)
    keep_asked(store, _take_back(1))
    for wrong in (_take_back(1), _take_back(2)):
        with pytest.raises(NotThere):
            keep_asked(store, wrong)
    assert len(asked_rows(store, kept.night)) == 2


def test_what_cannot_be_kept_is_refused_whole(store: Store, kept: Round) -> None:
    """Half a character, a pupil and a night that are not there."""
    with pytest.raises(NotStorable):
        keep_asked(store, replace(ROW, wrote="\ud800"))
    with pytest.raises(NotThere):
        keep_asked(store, replace(ROW, code="K09"))
    with pytest.raises(NotThere):
        keep_asked(store, replace(ROW, night=9))
    assert asked_rows(store, kept.night) == ()


def test_every_row_makes_the_night_s_cache_old(store: Store, kept: Round) -> None:
    """Also one that takes another back."""
    seen = [cache_inputs_of(store, kept.class_number)]
    for row in (ROW, _take_back(1)):
        keep_asked(store, row)
        seen.append(cache_inputs_of(store, kept.class_number))
    assert [one.asked for (one,) in seen] == [0, 1, 2]


def test_rows_are_held_on_a_pupil_and_go_with_it(store: Store, kept: Round) -> None:
    """All of them are in what is held, with the day; after erasing no byte of them is in the folder."""
    keep_asked(store, replace(ROW, wrote="remarkable"))
    keep_asked(store, replace(ROW, code="K02"))
    keep_asked(store, _take_back(1))
    held = all_on_pupil(store, kept.class_number, "K01")["asked_answers"]
    assert isinstance(held, list)
    assert [(one["number"], one["wrote"], one["takes_back"], one["day"]) for one in held] == [
        ("1", "remarkable", "0", "2026-09-01"),
        ("3", "", "1", "2026-09-01"),
    ]
    erase_pupil(store, kept.class_number, "K01")
    assert [one.code for one in asked_rows(store, kept.night)] == ["K02"]
    assert b"remarkable" not in b"".join(path.read_bytes() for path in store.path.parent.iterdir())
