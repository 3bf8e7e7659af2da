"""Words on a night's pages and papers, and the days of pupils: kept, standing, gone with the pupil."""

from datetime import date, timedelta

import pytest

from onewhole.findings.attendance import NightSaid, PageWord, PaperWord
from onewhole.store.cache_inputs import cache_inputs_of
from onewhole.store.keeping import all_on_pupil, erase_pupil
from onewhole.store.night_words import keep_night_words, night_words_of, pupils_on_night, words_by_night
from onewhole.store.opening import Store
from onewhole.store.pupil_days import ALL_YEAR, PupilDays, keep_pupil_days, pupil_days_of
from onewhole.store.refusals import NotThere
from tests.kit.kept import DAY, NOW, Round, first_round, write


@pytest.fixture
def kept(store: Store) -> Round:
    """A class with K01 and K02, and its night."""
    return first_round(store)


def test_every_word_stays_in_its_order(store: Store, kept: Round) -> None:
    """That a page was given says nothing of whether its paper is late."""
    for said in (PaperWord.ABSENT, PageWord.GIVEN, PaperWord.LATE):
        keep_night_words(store, kept.night, [("K01", said)], NOW, "teacher")
    words = night_words_of(store, 1)
    assert [one.said for one in words] == [PaperWord.ABSENT, PageWord.GIVEN, PaperWord.LATE]
    every: list[NightSaid] = [PaperWord.ABSENT, PageWord.GIVEN, PaperWord.LATE]
    assert words_by_night(store, 1) == {kept.night: {"K01": every}}
    assert [one.said for one in pupils_on_night(store, 1, kept.night)] == [tuple(every), ()]
    with pytest.raises(NotThere):
        keep_night_words(store, kept.night, [("K02", PaperWord.LATE), ("K09", PaperWord.LATE)], NOW, "t")
    assert len(night_words_of(store, 1)) == 3


def test_days_are_kept_in_place_of_those_that_stood(store: Store, kept: Round) -> None:
    """And both taken away leave no row."""
    keep_pupil_days(store, kept.class_number, "K01", PupilDays(DAY))
    keep_pupil_days(store, kept.class_number, "K01", PupilDays(None, DAY))
    assert pupil_days_of(store, kept.class_number) == {"K01": PupilDays(None, DAY)}
    keep_pupil_days(store, kept.class_number, "K01", ALL_YEAR)
    assert pupil_days_of(store, kept.class_number) == {}
    with pytest.raises(NotThere):
        keep_pupil_days(store, kept.class_number, "K09", PupilDays(DAY))


def test_a_word_and_a_day_change_what_a_night_is_worked_out_from(store: Store, kept: Round) -> None:
    """Days only where they take the pupil out of the night."""
    write(store, kept.night, "2 4/8")
    stood = cache_inputs_of(store, 1)
    keep_pupil_days(store, 1, "K02", PupilDays(DAY - timedelta(days=3), date(2027, 6, 1)))
    assert cache_inputs_of(store, 1) == stood
    keep_pupil_days(store, 1, "K02", PupilDays(DAY + timedelta(days=1)))
    moved = cache_inputs_of(store, 1)
    keep_night_words(store, kept.night, [("K02", PaperWord.LATE)], NOW, "teacher")
    assert len({stood, moved, cache_inputs_of(store, 1)}) == 3


def test_all_that_is_said_of_a_pupil_is_given_out_and_goes_with_the_pupil(store: Store, kept: Round) -> None:
    """Nothing of the other pupil."""
    keep_pupil_days(store, 1, "K01", PupilDays(DAY))
    both = [("K01", PaperWord.EXCUSED), ("K02", PaperWord.ABSENT)]
    keep_night_words(store, kept.night, both, NOW, "teacher")
    held = all_on_pupil(store, 1, "K01")
    rows = held["night_words"]
    assert isinstance(rows, list)
    assert (held["joined"], held["left"], [row["said"] for row in rows]) == (DAY.isoformat(), "", ["excused"])
    erase_pupil(store, 1, "K01")
    assert [one.code for one in night_words_of(store, 1)] == ["K02"]
    assert pupil_days_of(store, 1) == {}
