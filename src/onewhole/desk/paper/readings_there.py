"""Which readings of papers a night has, so that each can be taken back by itself."""

from datetime import datetime

from msgspec import Struct

from onewhole.desk.paper.paper_by import reading_of
from onewhole.store.answers import KeptAnswer, writings_of
from onewhole.store.opening import Store


class ReadingThere(Struct, frozen=True):
    """A reading: its number, how many answers of a night stand as it wrote them, and when it was."""

    number: int
    standing: int
    when: datetime


def readings_there(book: Store, night: int) -> tuple[ReadingThere, ...]:
    """Return the readings of which an answer stands as the program read it, in their order."""
    last: dict[tuple[str, str], KeptAnswer] = {}
    for one in writings_of(book, night):
        last[one.code, one.problem] = one
    found: dict[int, list[datetime]] = {}
    for one in last.values():
        reading = reading_of(one.by)
        if reading is not None and not reading.checked:
            found.setdefault(reading.number, []).append(one.written)
    return tuple(ReadingThere(number, len(those), max(those)) for number, those in sorted(found.items()))
