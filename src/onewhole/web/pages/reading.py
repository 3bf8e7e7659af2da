"""Read the answers of the nights that are not read yet: long work, started by a button."""

from onewhole.desk.classes.class_records import Store
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.web.ask import Ask, Went
from onewhole.web.long_work import Outcome, Progress, Work

#: So many earlier nights are read while a page waits; with more it shows how far that is.
READ_AT_ONCE = 2


def read(ask: Ask) -> Went:
    """Start the reading and go to it; afterwards back to the page that was asked from."""
    code = ask.field("pupil", "")
    known = {pupil.code for pupil in ask.room.pupils}
    back = ask.at("pupil", code) if code in known else ask.at("week")
    return Went(f"/under-way/{started(ask, ask.book, ask.room.number, back).name}")


def started(ask: Ask, book: Store, room: int, back: str) -> Work:
    """Start the reading."""

    def run(progress: Progress) -> Outcome:
        nights = mark_missing(book, room, progress)
        return Outcome(back, f"{nights} {'night is' if nights == 1 else 'nights are'} read.")

    return ask.door.works.start("Reading the answers", back, run)
