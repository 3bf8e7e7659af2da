"""The open questions of a class's last night, for a page to be composed that settles them."""

from onewhole.desk.classes.marked_nights import mark_night, missing_before
from onewhole.desk.page.open_questions import left_open
from onewhole.errors import InputError
from onewhole.sheets.wishes import OpenQuestion, open_questions
from onewhole.store.marked import answered
from onewhole.store.nights import nights_of
from onewhole.store.opening import Store

#: So many earlier nights are read while one waits; more are read elsewhere first.
MOST_MISSING = 3
#: So many nights back answers are looked for.
NIGHTS_BACK = 10


def last_answered(book: Store, room_number: int) -> int | None:
    """Return the last night of a class to which an answer is written, of the last few; or None."""
    with book.snapshot() as seen:
        nights = [night.number for night in nights_of(seen, room_number)[-NIGHTS_BACK:]]
        written = answered(seen, nights)
    return next((night for night in reversed(nights) if written.get(night)), None)


def questions_left(book: Store, room_number: int) -> tuple[OpenQuestion, ...]:
    """Return the open questions of the last night that has answers; none where there is none.

    Raises InputError while earlier nights are not read yet.
    """
    night = last_answered(book, room_number)
    if night is None:
        return ()
    if missing_before(book, room_number, night) > MOST_MISSING:
        msg = "earlier nights are not read yet"
        raise InputError(
            msg, remedy="Open Tomorrow of the last night first, or do not ask what it left open."
        )
    return open_questions(left_open(mark_night(book, room_number, night).weighed.diagnoses))
