"""A store with a class, two pupils, a sheet and a night, for the tests of the store."""

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta

from onewhole.store.answers import KeptAnswer, keep_answers
from onewhole.store.classes import add_class, add_pupil
from onewhole.store.nights import add_night
from onewhole.store.opening import Store
from onewhole.store.sheets import add_sheet

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
