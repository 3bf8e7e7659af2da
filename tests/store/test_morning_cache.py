"""A cache of what was computed for the morning: of the last nights, and never truth."""

from datetime import timedelta

import pytest

from onewhole.store.classes import add_class, add_pupil
from onewhole.store.keeping import erase_pupil
from onewhole.store.morning_cache import HELD, cache_morning, cached_morning
from onewhole.store.nights import add_night
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere
from tests.kit.kept import DAY, NOW, first_round


def test_a_morning_is_kept_and_replaced(store: Store) -> None:
    """One a night, with what it was computed from; none for a night that is not there."""
    night = first_round(store).night
    assert cached_morning(store, night) is None
    cache_morning(store, night, "1", "old")
    cache_morning(store, night, "2", "new")
    assert cached_morning(store, night) == ("2", "new")
    with pytest.raises(NotThere):
        cache_morning(store, 99, "1", "x")


def test_only_the_last_nights_of_a_class_are_held(store: Store) -> None:
    """By day; an earlier night takes no later one's place, and another class has its own."""
    kept = first_round(store)
    other = add_class(store, "Room 13", NOW).number
    others = add_night(store, other, kept.sheet, 1, DAY - timedelta(days=9)).number
    cache_morning(store, others, "1", "elsewhere")
    nights = [
        add_night(store, kept.class_number, kept.sheet, 1, DAY + timedelta(days=at)).number
        for at in range(1, HELD + 1)
    ]
    for night in (kept.night, *nights):
        cache_morning(store, night, "1", str(night))
    assert cached_morning(store, kept.night) is None
    cache_morning(store, kept.night, "2", "looked at again")
    assert cached_morning(store, kept.night) is None
    assert [cached_morning(store, night) for night in nights] == [("1", str(night)) for night in nights]
    assert cached_morning(store, others) == ("1", "elsewhere")


def test_erasing_a_pupil_throws_the_class_s_away(store: Store) -> None:
    """No byte of what was computed of the pupil stays; another class keeps its own."""
    kept = first_round(store)
    other = add_class(store, "Room 13", NOW).number
    add_pupil(store, other)
    others = add_night(store, other, kept.sheet, 1, DAY).number
    cache_morning(store, kept.night, "1", "K01 remarkably")
    cache_morning(store, others, "1", "elsewhere")
    erase_pupil(store, kept.class_number, "K01")
    assert cached_morning(store, kept.night) is None
    assert cached_morning(store, others) == ("1", "elsewhere")
    everything = b"".join(path.read_bytes() for path in store.path.parent.iterdir())
    assert b"remarkably" not in everything
