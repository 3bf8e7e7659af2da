"""What the store refuses, and what SQLite says put into a teacher's words."""

import sqlite3

from msgspec import Struct
from sqlalchemy.exc import DontWrapMixin

from onewhole.errors import InputError, OnewholeError


class StoreRefused(OnewholeError, OSError):
    """The file of a class cannot be opened, read or written: nothing in it was changed."""


class Damaged(StoreRefused):
    """What stands under the name is not a class that can be opened: it may be moved aside, and a backup may
    take its place.
    """


class Newer(Damaged):
    """The file of a newer release: that one opens it."""


class NotAFile(Damaged):
    """A folder, a pipe, a device, or a link that leads to no file."""


class BackupRefused(StoreRefused):
    """A backup, or a file that was handed in as one, that cannot be used: nothing was changed."""


class UnreadableValue(ValueError, DontWrapMixin):
    """A value in a file is not what its column holds; `translate_errors` makes `Damaged` of it."""


class FileMoved(StoreRefused):
    """The name does not lead to the open file any more: nothing is told as kept in a file moved away."""


class NotStorable(InputError, DontWrapMixin):
    """A text that cannot be kept exactly as it is."""


class NotThere(OnewholeError, LookupError):
    """A class, pupil, sheet or night that is not in the file."""


class _Said(Struct, frozen=True):
    """What SQLite says: its result code, a part of its words, what that means, what to do next."""

    code: int
    part: str
    what: str
    remedy: str
    kind: type[StoreRefused] = StoreRefused


_ASIDE = "Keep it aside under another name, then restore a backup."
#: Damage comes first: the name of a table that is quoted in it may hold any words.
_SAID = (
    _Said(
        sqlite3.SQLITE_NOTADB,
        "not a database",
        "This is not the file of a class",
        "Choose the right file, or restore a backup.",
        Damaged,
    ),
    _Said(sqlite3.SQLITE_CORRUPT, "malformed", "The file is damaged", _ASIDE, Damaged),
    _Said(sqlite3.SQLITE_FULL, "is full", "The disk is full", "Make room on the disk, then do it again."),
    _Said(
        sqlite3.SQLITE_IOERR,
        "I/O error",
        "The disk did not take or give it",
        "See that the disk has room and is there; do it again.",
    ),
    *(
        _Said(code, part, "Another window is writing for too long", "Wait a moment, then do it again.")
        for code, part in ((sqlite3.SQLITE_BUSY, "is locked"), (sqlite3.SQLITE_LOCKED, "is locked"))
    ),
    _Said(
        sqlite3.SQLITE_READONLY,
        "readonly",
        "The file may not be written",
        "See that you may write the file and its folder.",
    ),
    _Said(
        sqlite3.SQLITE_CANTOPEN,
        "unable to open",
        "The file cannot be opened",
        "See that the folder is there and you may write in it.",
    ),
)


def translate_error(said: object, where: str) -> StoreRefused:
    """Translate what SQLite says, its error or its words, so that a teacher knows what to do next.

    `Damaged` where a backup may replace the file: for everything that is not the disk's or another window's.

    >>> print(translate_error("database or disk is full", "room12.class"))
    The disk is full (room12.class). Make room on the disk, then do it again.
    >>> type(translate_error("malformed database schema (disk is full)", "room12.class")).__name__
    'Damaged'
    """
    code = getattr(said, "sqlite_errorcode", None)
    for one in _SAID:
        if one.part in str(said) if code is None else one.code == code & 0xFF:
            return one.kind(one.what, where=where, remedy=one.remedy)
    first = next(iter(str(said).splitlines()), "")
    if isinstance(said, sqlite3.ProgrammingError | sqlite3.InterfaceError):
        return StoreRefused(
            f"The file cannot be used: {plain(first)[:200]}", where=where, remedy="Try again."
        )
    return Damaged(f"The file is damaged: {plain(first)[:200]}", where=where, remedy=_ASIDE)


def plain(text: str) -> str:
    """Text of a file as a message may show it: what is no plain sign is a ?.

    >>> plain("no such table: " + chr(27) + "[2J")
    'no such table: ?[2J'
    """
    return "".join(sign if sign.isprintable() else "?" for sign in text)
