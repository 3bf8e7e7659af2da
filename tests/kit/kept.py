"""A store with a class, two pupils, a sheet and a night, for the tests of the store."""

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta

from msgspec.structs import replace

from onewhole.findings.attendance import PageWord, PaperWord
from onewhole.findings.own_page import OwnPage
from onewhole.marking.paper.read_cell import ReadCell
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy
from onewhole.store.answers import KeptAnswer, keep_answers
from onewhole.store.asked import KeptAsked, keep_asked
from onewhole.store.classes import add_class, add_pupil, name_pupil, rename_class
from onewhole.store.correction_rows import FindingAside
from onewhole.store.corrections import Correction, keep_correction
from onewhole.store.given_out import GivenOut, keep_given_out
from onewhole.store.keeping import set_keep_until
from onewhole.store.morning_cache import cache_morning
from onewhole.store.night_cache import cache_night
from onewhole.store.night_words import keep_night_words
from onewhole.store.nights import add_night, change_day, change_version, name_night
from onewhole.store.opening import Store
from onewhole.store.own_pages import keep_own_page
from onewhole.store.paper_cells import PaperCell, ReadBy, change_paper_cells, keep_paper_cells
from onewhole.store.pupil_days import PupilDays, keep_pupil_days
from onewhole.store.recordings import KeptRecording, keep_recording
from onewhole.store.sheets import add_sheet, change_sheet
from onewhole.store.steps import NightStep, keep_step
from onewhole.store.years import keep_year

NOW = datetime(2026, 9, 1, 18, 30, tzinfo=UTC)
DAY = date(2026, 9, 1)


@dataclass(frozen=True, slots=True)
class Round:
    """The numbers of what was kept first."""

    class_number: int
    sheet: int
    night: int


def first_round(store: Store) -> Round:
    """Keep Room 12 with K01 and K02, a sheet and its night."""
    room = add_class(store, "Room 12", NOW)
    add_pupil(store, room.number)
    add_pupil(store, room.number)
    sheet = add_sheet(store, "Kite paper", "1. 5 1/8 - 2 5/8", NOW)
    night = add_night(store, room.number, sheet.number, 1, DAY)
    return Round(room.number, sheet.number, night.number)


def keep_answer(store: Store, answer: KeptAnswer) -> KeptAnswer:
    """Keep one writing by itself."""
    (kept,) = keep_answers(store, (answer,))
    return kept


def write(
    store: Store, night: int, text: str, *, code: str = "K01", problem: str = "1", after: int = 0
) -> None:
    """Keep one writing, so many minutes after the first moment."""
    keep_answer(store, KeptAnswer(night, code, problem, text, NOW + timedelta(minutes=after), "teacher"))


def every_kind_of_row(store: Store) -> Round:
    """Write every table of a file by the functions that write it, and change what may be changed."""
    first = first_round(store)
    for text in ("4 7/8", "4 8/8", "4 7/8"):
        write(store, first.night, text)
    write(store, first.night, "5", code="K02", problem="2")
    change_sheet(store, first.sheet, "1. 5 1/8 - 3 5/8", NOW)
    other = add_night(store, first.class_number, first.sheet, 1, DAY + timedelta(days=1))
    change_version(store, other.number, 2)
    for _ in range(2):
        keep_correction(store, Correction(first.night, "K01", FindingAside(aside=True), NOW, "teacher"))
        cache_night(store, first.night, "stamp", "what was computed")
        cache_morning(store, first.night, "stamp", "what was computed")
        keep_recording(store, KeptRecording(first.night, "1", "audio/webm", b"\x1a\x45", (0, 5), NOW))
        keep_step(store, first.night, NightStep.PRINTED, NOW)
        set_keep_until(store, DAY + timedelta(days=300))
    keep_asked(store, KeptAsked(first.night, "K01", "9 - 4", "5", "this idea", "A01", NOW, "teacher"))
    keep_asked(store, KeptAsked(first.night, "K01", "", "", "", "", NOW, "teacher", takes_back=1))
    keep_given_out(store, first.class_number, GivenOut("K01", "the page", "Ada", "", DAY, NOW, "teacher"))
    for joined in (None, DAY):
        keep_pupil_days(store, first.class_number, "K01", PupilDays(joined, DAY + timedelta(days=200)))
    for form in (OwnPage.LARGE, OwnPage.BRAILLE):
        keep_own_page(store, first.class_number, "K01", form)
    for said in (PaperWord.ABSENT, PaperWord.LATE):
        keep_night_words(store, first.night, [("K01", said), ("K02", PageWord.GIVEN)], NOW, "teacher")
    cell = ReadCell(PaperVerdict.UNSURE, "4 7/8", ("4 7/8", "4 1/8"), 70_000, 90_000, PaperWhy.DOUBTFUL)
    read = PaperCell(first.night, "K01", "2", 1, cell, ReadBy.PROGRAM, NOW)
    for _ in range(2):
        keep_paper_cells(store, first.night, [(read, b"\x89PNG")])
    change_paper_cells(store, first.night, [replace(read, by=ReadBy.PERSON)])
    for typed in ("first day: 2026-09-08", "first day: 2026-09-09"):
        keep_year(store, first.class_number, typed, NOW)
    name_night(store, other.number, "Wind")
    change_day(store, other.number, DAY + timedelta(days=2))
    name_pupil(store, first.class_number, "K01", "Wren")
    rename_class(store, first.class_number, "Room 13")
    return first
