"""A part of a walkthrough recorded: kept, heard again, taken away."""

from onewhole.desk.classes.class_records import night_page
from onewhole.desk.walkthrough.board import Board, board
from onewhole.desk.walkthrough.film_plan import plan_of
from onewhole.desk.walkthrough.recordings import forget, keep, sound_of
from onewhole.desk.walkthrough.soundtrack_choice import MOST_BYTES, MOST_STEPS, Recorded
from onewhole.errors import InputError
from onewhole.web.ask import Ask, Given, Told, Went

#: A form with a recording has so many bytes at most: the sound, and what stands around it.
MOST = MOST_BYTES + 64 * 1024


def take(ask: Ask) -> Told:
    """Keep a recording; the answer comes when it is on the disk."""
    night, shown = _board(ask)
    sent = ask.files.get("sound")
    if sent is None:
        raise InputError("No sound came with the form", remedy="Record it again.")
    recorded = Recorded(sent.content, _steps(ask.field("steps")))
    kept = keep(ask.book, night, shown, ask.field("label"), recorded, kind=sent.kind, now=ask.door.now())
    return Told({"label": kept.label, "seconds": kept.seconds})


def hear(ask: Ask) -> Given:
    """Give a recording to be heard."""
    night, _ = _board(ask)
    found = sound_of(ask.book, night, str(ask.place["label"]))
    return Given(found.sound, found.kind)


def take_away(ask: Ask) -> Went:
    """Take a recording away."""
    night, _ = _board(ask)
    forget(ask.book, night, ask.field("label"))
    return Went(ask.at("night", night, "walkthrough") + "#voice")


def _board(ask: Ask) -> tuple[int, Board]:
    page = night_page(ask.book, ask.number("room"), ask.number("night"))
    return page.night.number, board(page.sheet, plan_of(ask.book, page.night.number))


def _steps(typed: str) -> tuple[int, ...]:
    """Read milliseconds, parted by blanks. Raises InputError."""
    parts = typed.split()
    if len(parts) > MOST_STEPS or not all(
        one.isascii() and one.isdecimal() and len(one) < 9 for one in parts
    ):
        raise InputError("The steps of the board cannot be read", remedy="Record it again.")
    return tuple(map(int, parts))
