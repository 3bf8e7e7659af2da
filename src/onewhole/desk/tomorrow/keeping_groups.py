"""Groups that are kept once a teacher saw them, and changes that answers ask for: take them, or keep."""

from contextlib import suppress
from datetime import datetime

from onewhole.desk.classes.marked_nights import MarkedNight, keep_unchanged, marked_night
from onewhole.desk.tomorrow.morning import fingerprint, stamp_of
from onewhole.desk.tomorrow.overrides import key_of_seat
from onewhole.desk.tomorrow.unseen import is_unseen, unkept_seats
from onewhole.errors import InputError
from onewhole.store.correction_rows import PlaceChosen, SeatKept
from onewhole.store.corrections import Correction, keep_corrections
from onewhole.store.opening import Store
from onewhole.store.refusals import StoreRefused

TEACHER, PROGRAM = "teacher", "program"


def kept_as_shown(book: Store, room_number: int, night_number: int, now: datetime) -> MarkedNight:
    """Return a night marked, and keep where its pupils sit: late papers do not move what was printed.

    It is the last night of its class; groups of earlier ones were kept in their time. Where the file takes
    nothing more, nothing is kept. Raises NotThere, and InputError for a class without pupils.
    """
    found = marked_night(book, room_number, night_number)
    if is_unseen(book, found):
        with suppress(StoreRefused):
            keep_unchanged(book, found, _unkept(found, now))
    return found


def keep_seen(book: Store, room_number: int, night_number: int, *, saw: str, now: datetime) -> None:
    """Keep where pupils sit by the groups that a teacher looked at; ``saw`` is the stamp of that page.

    Where they are kept already, nothing is done. Raises InputError where there are other groups by now,
    StoreRefused when nothing could be written.
    """
    found = marked_night(book, room_number, night_number)
    if fingerprint(found) != saw:
        raise InputError(
            "There are other groups since this page was loaded",
            remedy="Load the page again and look at them.",
        )
    if is_unseen(book, found):
        keep_unchanged(book, found, _unkept(found, now))


def keep_seats(within: Store, found: MarkedNight, now: datetime) -> None:
    """Keep where every pupil sits who has no kept seat yet; those of whom nothing was read have none."""
    keep_corrections(within, _unkept(found, now))


def take_changes(book: Store, room_number: int, night_number: int, *, saw: str, now: datetime) -> int:
    """Move everybody whom the answers now move; return how many. ``saw`` is the stamp of what was shown.

    Raises InputError where other changes are asked for by now.
    """
    found, night = _offered(book, room_number, night_number, saw), night_number
    changes = found.marked.seating.changes
    with book.transaction() as within:
        keep_seats(within, found, now)
        taken = (Correction(night, one.pupil, SeatKept(key_of_seat(one.to)), now, TEACHER) for one in changes)
        keep_corrections(within, tuple(taken))
    return len(changes)


def keep_groups(book: Store, room_number: int, night_number: int, *, saw: str, now: datetime) -> int:
    """Leave everybody where they sit, by the teacher's own word; return how many the answers would move.

    Each of them can be moved, or let go, one by one. Raises InputError where other changes are asked for.
    """
    found, night = _offered(book, room_number, night_number, saw), night_number
    changes = found.marked.seating.changes
    with book.transaction() as within:
        keep_seats(within, found, now)
        put = (
            Correction(night, one.pupil, PlaceChosen(key_of_seat(one.was)), now, TEACHER) for one in changes
        )
        keep_corrections(within, tuple(put))
    return len(changes)


def _offered(book: Store, room_number: int, night_number: int, saw: str) -> MarkedNight:
    found = marked_night(book, room_number, night_number)
    if stamp_of(found.marked.seating.changes) != saw:
        raise InputError(
            "Other changes are asked for since this page was loaded",
            remedy="Load the page again and look at them.",
        )
    return found


def _unkept(found: MarkedNight, now: datetime) -> tuple[Correction, ...]:
    night = found.page.night.number
    return tuple(Correction(night, code, seat, now, PROGRAM) for code, seat in unkept_seats(found))
