"""The days on which pupils joined and left a class: seen, typed, kept."""

from collections.abc import Mapping, Sequence
from datetime import date

from msgspec import Struct

from onewhole.desk.classes.class_records import room
from onewhole.desk.classes.seen import is_to_be_written
from onewhole.errors import InputError
from onewhole.store.classes import Pupil
from onewhole.store.nights import nights_of
from onewhole.store.opening import Store
from onewhole.store.pupil_days import ALL_YEAR, PupilDays, keep_pupil_days, pupil_days_of

__all__ = ["DaysRow", "days_of_class", "days_text", "joined_today", "keep_days"]


class DaysRow(Struct, frozen=True):
    """A pupil with the days that are kept; as they are typed, a day that is none is empty."""

    pupil: Pupil
    days: PupilDays

    @property
    def joined(self) -> str:
        """Return the day of joining as it is typed."""
        return _typed(self.days.joined)

    @property
    def left(self) -> str:
        """Return the day of leaving as it is typed."""
        return _typed(self.days.left)

    @property
    def saw(self) -> str:
        """Return both days as a form carries them."""
        return days_text(self.days)


def days_of_class(book: Store, room_number: int) -> tuple[DaysRow, ...]:
    """Return every pupil of a class with the days. Raises NotThere."""
    with book.snapshot() as seen:
        here, days = room(seen, room_number), pupil_days_of(seen, room_number)
    return tuple(DaysRow(one, days.get(one.code, ALL_YEAR)) for one in here.pupils)


def days_text(days: PupilDays) -> str:
    """Return both days as they are typed, a bar between them.

    >>> days_text(PupilDays(date(2026, 10, 1)))
    '2026-10-01|'
    """
    return f"{_typed(days.joined)}|{_typed(days.left)}"


def keep_days(
    book: Store, room_number: int, typed: Mapping[str, tuple[str, str]], saw: Mapping[str, str]
) -> int:
    """Keep the days typed beside the codes; return how many pupils they changed of. All are kept, or none.

    ``saw`` is what stood there when the window was loaded (:attr:`DaysRow.saw`). Raises InputError that names
    the pupil, ChangedMeanwhile and NotThere.
    """
    changed = 0
    with book.transaction() as within:
        here, stand = room(within, room_number), pupil_days_of(within, room_number)
        for code, (joined, left) in typed.items():
            shown = here.shown(here.pupil(code).code)
            wanted = _days(shown, joined.strip(), left.strip())
            now = stand.get(code, ALL_YEAR)
            told = f"joined {_typed(now.joined) or 'never'}, left {_typed(now.left) or 'never'}"
            what = f"What stands of the days of {shown}"
            if is_to_be_written(what, days_text(wanted), saw.get(code), days_text(now), shown=told):
                keep_pupil_days(within, room_number, code, wanted)
                changed += 1
    return changed


def joined_today(book: Store, room_number: int, codes: Sequence[str], today: date) -> None:
    """Let pupils who are added once the class has had pages join today: earlier pages were not theirs."""
    if any(night.day < today for night in nights_of(book, room_number)):
        for code in codes:
            keep_pupil_days(book, room_number, code, PupilDays(joined=today))


def _typed(day: date | None) -> str:
    return "" if day is None else day.isoformat()


def _days(shown: str, joined: str, left: str) -> PupilDays:
    days = PupilDays(_day(shown, joined), _day(shown, left))
    if days.joined and days.left and days.left < days.joined:
        raise InputError(
            f"{shown} would have left before joining", remedy="Change one of the two days; nothing was kept."
        )
    return days


def _day(shown: str, typed: str) -> date | None:
    if not typed:
        return None
    try:
        day = date.fromisoformat(typed)
    except ValueError:
        day = date.min
    if not 1900 <= day.year < 2200:
        raise InputError(f"A day of {shown} is none", remedy="Choose one, or leave it empty.")
    return day
