"""What was worked out for a morning, held in the class's file until anything that it rests on changes."""

import zlib
from base64 import b64decode, b64encode
from collections.abc import Sequence
from contextlib import suppress
from hashlib import sha256
from typing import Any

import msgspec

from onewhole.desk.classes.marked_nights import NightToMark
from onewhole.store.column_types import MOST_TEXT
from onewhole.store.morning_cache import HELD, cache_morning, cached_morning
from onewhole.store.opening import Store
from onewhole.store.refusals import StoreRefused

#: The version of the cache format, raised when that changes within one version of the program.
FORM = 1
#: A page for the morning is never larger when it is read back.
MOST_BYTES = 32 * 1024 * 1024

Parts = tuple[Any, ...]


def held_morning(book: Store, found: NightToMark, reader: "msgspec.json.Decoder[Parts]") -> Parts | None:
    """Return the parts that are held of a night as it is now; None where there are none, or none of today.

    ``reader`` says of what kinds they are. What does not fit is as if it were not there.
    """
    kept = cached_morning(book, found.page.night.number)
    if kept is None or kept[0] != _stamp(found):
        return None
    unpack = zlib.decompressobj()
    try:
        text = unpack.decompress(b64decode(kept[1], validate=True), MOST_BYTES)
        return reader.decode(text)
    except (ValueError, zlib.error, msgspec.DecodeError):
        return None


def hold_morning(book: Store, found: NightToMark, parts: Sequence[object]) -> None:
    """Hold the parts of a night's morning. A failed cache write is ignored.

    Only the last nights that have answers are held. Nothing is held where anything was written or a pupil
    erased since, nor what is too long for a row.
    """
    if found.page.night.number not in found.chain.nights[-HELD:]:
        return
    text = b64encode(zlib.compress(msgspec.json.encode(parts), 1)).decode()
    if len(text) > MOST_TEXT:
        return
    with suppress(StoreRefused), book.transaction() as now:
        if found.still_stands(now):
            cache_morning(now, found.page.night.number, _stamp(found), text)


def _stamp(found: NightToMark) -> str:
    return sha256(f"{FORM} {found.content}".encode()).hexdigest()
