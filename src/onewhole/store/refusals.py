"""What the store refuses, and what SQLite says put into a teacher's words."""

from sqlalchemy.exc import DontWrapMixin

from onewhole.errors import InputError, OnewholeError


class StoreRefused(OnewholeError, OSError):
    """The file of a class cannot be opened, read or written: nothing in it was changed."""


class Damaged(StoreRefused):
    """The file is torn, or is not the file of a class: a backup may take its place."""


class NotStorable(InputError, DontWrapMixin):
    """A text that cannot be kept exactly as it is."""


class NotThere(OnewholeError, LookupError):
    """A class, pupil, sheet or night that is not in the file."""


#: What SQLite says (a part of it), what that means, what to do next.
_SAID = (
    ("is full", "The disk is full", "Make room on the disk, then do it again."),
    (
        "I/O error",
        "The disk did not take or give it",
        "See that the disk has room and is there; do it again.",
    ),
    ("locked", "Another window is writing for too long", "Wait a moment, then do it again."),
    ("readonly", "The file may not be written", "See that you may write the file and its folder."),
    ("unable to open", "The file cannot be opened", "See that the folder is there and you may write in it."),
    ("not a database", "This is not the file of a class", "Choose the right file, or restore a backup."),
    ("malformed", "The file is damaged", "Keep it aside under another name, then restore a backup."),
)
_DAMAGED = frozenset({"not a database", "malformed"})


def translate_error(said: object, where: str) -> StoreRefused:
    """Translate SQLite's message so that a teacher knows what to do next.

    `Damaged` where a backup may replace the file.

    >>> print(translate_error("database or disk is full", "room12.class"))
    The disk is full (room12.class). Make room on the disk, then do it again.
    """
    for part, what, remedy in _SAID:
        if part in str(said):
            kind = Damaged if part in _DAMAGED else StoreRefused
            return kind(what, where=where, remedy=remedy)
    return StoreRefused(
        f"The file cannot be used: {str(said).splitlines()[0]}",
        where=where,
        remedy="Try again; if it stays so, restore a backup.",
    )
