"""A class with a row in every table, for tests of what is read back."""

from datetime import timedelta

from onewhole.findings.attendance import NightSaid, PageWord, PaperWord
from onewhole.findings.own_page import OwnPage
from onewhole.store.asked import KeptAsked, keep_asked
from onewhole.store.correction_rows import CellReadAs
from onewhole.store.corrections import Correction, keep_correction
from onewhole.store.given_out import GivenOut, keep_given_out
from onewhole.store.keeping import set_keep_until
from onewhole.store.morning_cache import cache_morning
from onewhole.store.night_cache import cache_night
from onewhole.store.night_words import keep_night_words
from onewhole.store.nights import name_night
from onewhole.store.opening import Store
from onewhole.store.own_pages import keep_own_page
from onewhole.store.pupil_days import PupilDays, keep_pupil_days
from onewhole.store.recordings import KeptRecording, keep_recording
from onewhole.store.steps import NightStep, keep_step
from onewhole.store.years import keep_year
from tests.kit.kept import DAY, NOW, Round, first_round, write
from tests.kit.paper_cells import keep_cell, paper_cell


def whole_class(store: Store) -> Round:
    """Keep a round with answers, a correction, a step, a recording, a cached night, days,
    words on a night, a cell of a paper and a last day.
    """
    kept = first_round(store)
    for text in ("2 1/2", "2 4/8"):
        write(store, kept.night, text)
    write(store, kept.night, "3", code="K02")
    keep_correction(store, Correction(kept.night, "K01", CellReadAs("1", "2 4/8", "2 4/8"), NOW, "teacher"))
    keep_asked(store, KeptAsked(kept.night, "K01", "9 - 4", "5", "slip", "A01", NOW, "teacher"))
    keep_step(store, kept.night, NightStep.PRINTED, NOW)
    name_night(store, kept.night, "Wind")
    keep_year(store, 1, "first day: 2026-09-08", NOW)
    keep_recording(store, KeptRecording(kept.night, "1", "audio/wav", b"RIFF" * 40, (0, 1200), NOW))
    cache_night(store, kept.night, "stamp", "cached")
    cache_morning(store, kept.night, "stamp", "cached")
    keep_given_out(store, 1, GivenOut("K01", "all that is held", "the family", "asked", DAY, NOW, "teacher"))
    keep_pupil_days(store, 1, "K01", PupilDays(DAY, DAY + timedelta(days=200)))
    keep_own_page(store, 1, "K01", OwnPage.BRAILLE)
    words: list[tuple[str, NightSaid]] = [("K01", PageWord.GIVEN), ("K01", PaperWord.LATE)]
    keep_night_words(store, kept.night, words, NOW, "teacher")
    keep_cell(store, paper_cell(kept.night, "K01", "2"))
    set_keep_until(store, DAY)
    return kept
