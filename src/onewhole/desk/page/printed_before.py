"""Pages that were printed before they were set: once a night has just this page, it is printed already."""

from datetime import datetime
from hashlib import sha256

import msgspec

from onewhole.store.opening import Store
from onewhole.store.set_pages import set_pages
from onewhole.store.settings import set_setting, setting
from onewhole.store.steps import NightStep, keep_step

#: So many printed pages of a class are remembered.
REMEMBERED = 20


def note_printed(book: Store, room_number: int, typed: str, now: datetime) -> None:
    """Keep that a typed page was printed: for the nights that have just this page, and for those to come."""
    with book.transaction() as within:
        for night, kept in set_pages(within, room_number):
            if kept.typed == typed:
                keep_step(within, night.number, NightStep.PRINTED, now)
        before = {page: at for page, at in _printed(within, room_number).items() if page != _page(typed)}
        latest = [*before.items()][1 - REMEMBERED :]
        set_setting(
            within, _name(room_number), msgspec.json.encode({**dict(latest), _page(typed): now}).decode()
        )


def keep_printed_before(book: Store, room_number: int, night: int, typed: str) -> None:
    """Keep that a night that was just set is printed, where its page was printed before it was set."""
    before = _printed(book, room_number).get(_page(typed))
    if before is not None:
        keep_step(book, night, NightStep.PRINTED, before)


def _printed(book: Store, room_number: int) -> dict[str, datetime]:
    """Return when which page was printed; nothing where that cannot be read."""
    try:
        return msgspec.json.decode(setting(book, _name(room_number)) or "{}", type=dict[str, datetime])
    except (msgspec.DecodeError, RecursionError):
        return {}


def _page(typed: str) -> str:
    """Return what stands for a page: a digest, so that nothing that was typed is kept twice."""
    return sha256(typed.encode("utf-8", "surrogatepass")).hexdigest()


def _name(room_number: int) -> str:
    return f"printed before set in class {room_number}"
