"""A cache of what was computed, never truth."""

import pytest

from onewhole.store.classes import add_class, add_pupil
from onewhole.store.keeping import erase_pupil
from onewhole.store.night_cache import cache_night, cached_nights
from onewhole.store.nights import add_night
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere
from tests.kit.kept import DAY, NOW, first_round


def test_a_reckoning_is_kept_and_replaced(store: Store) -> None:
    """One a night, with what it was computed from; none for another class or a night that is not there."""
    kept = first_round(store)
    cache_night(store, kept.night, "1", "old")
    cache_night(store, kept.night, "2", "new")
    assert cached_nights(store, kept.class_number) == {kept.night: ("2", "new")}
    assert cached_nights(store, kept.class_number + 1) == {}
    with pytest.raises(NotThere):
        cache_night(store, 99, "1", "x")


def test_erasing_a_pupil_throws_the_class_s_away(store: Store) -> None:
    """No byte of what was reckoned of the pupil stays; another class keeps its own."""
    kept = first_round(store)
    other = add_class(store, "Room 13", NOW).number
    add_pupil(store, other)
    others = add_night(store, other, kept.sheet, 1, DAY).number
    cache_night(store, kept.night, "1", "K01 remarkably")
    cache_night(store, others, "1", "elsewhere")
    erase_pupil(store, kept.class_number, "K01")
    assert (cached_nights(store, kept.class_number), cached_nights(store, other)) == (
        {},
        {others: ("1", "elsewhere")},
    )
    everything = b"".join(path.read_bytes() for path in store.path.parent.iterdir())
    assert b"remarkably" not in everything
