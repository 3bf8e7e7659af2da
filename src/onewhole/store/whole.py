"""A class read whole, by the functions that the pages use: what can be read here can be read by them."""

from sqlalchemy import select

from onewhole.store.answers import answers_of
from onewhole.store.asked import asked_rows
from onewhole.store.cache_inputs import cache_inputs_of
from onewhole.store.classes import classes_with_pupils
from onewhole.store.corrections import corrections_of
from onewhole.store.given_out import given_out_of
from onewhole.store.keeping import keep_until
from onewhole.store.morning_cache import cached_morning
from onewhole.store.night_cache import cached_nights
from onewhole.store.night_words import night_words_of
from onewhole.store.opening import Store
from onewhole.store.own_pages import own_pages_of
from onewhole.store.paper_cells import paper_cells_of
from onewhole.store.pupil_days import pupil_days_of
from onewhole.store.recordings import recorded_labels, recordings_of
from onewhole.store.set_pages import set_pages
from onewhole.store.sheets import newest_sheets, versions_of
from onewhole.store.steps import steps_of
from onewhole.store.tables import METADATA
from onewhole.store.years import year_of


def read_whole(store: Store) -> int:
    """Read every row of every table, then all of it again as the pages do; return how many rows there are.

    Raises `Damaged` and `StoreRefused` where anything cannot be read.
    """
    with store.snapshot() as one:
        rows = 0
        with one.reading() as connection:
            for table in METADATA.sorted_tables:
                for _ in connection.execute(select(table)):
                    rows += 1
        for sheet in newest_sheets(one):
            versions_of(one, sheet.number)
        for room, _ in classes_with_pupils(one):
            _read_class(one, room.number)
        keep_until(one)
    return rows


def _read_class(store: Store, number: int) -> None:
    for night, _ in set_pages(store, number):
        answers_of(store, night.number)
        corrections_of(store, night.number)
        cached_morning(store, night.number)
        asked_rows(store, night.number)
        paper_cells_of(store, night.number)
        if recorded_labels(store, night.number):
            recordings_of(store, night.number)
    steps_of(store, number)
    cached_nights(store, number)
    cache_inputs_of(store, number)
    given_out_of(store, number)
    pupil_days_of(store, number)
    own_pages_of(store, number)
    night_words_of(store, number)
    year_of(store, number)
