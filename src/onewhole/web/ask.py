"""What a page is asked with, and what it answers: plain records, so that a page is a plain function."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path

from onewhole.desk.classes.class_records import Classroom, Store, room
from onewhole.errors import InputError
from onewhole.web.door import DEMO, Door

_YEARS = range(1900, 2200)


@dataclass(frozen=True, slots=True)
class Upload:
    """A file handed in: the name it had (never used as a path), the kind it claims, its bytes."""

    name: str
    kind: str
    content: bytes


@dataclass(frozen=True, slots=True)
class Ask:
    """A request, read. ``fields`` are the form's by name, the last one counting; ``every`` has all of them.

    ``seal`` is what a form must carry; ``place`` are the parts of the address.
    """

    door: Door
    place: Mapping[str, str | int]
    query: Mapping[str, str] = field(default_factory=dict)
    every: tuple[tuple[str, str], ...] = ()
    files: Mapping[str, Upload] = field(default_factory=dict)
    seal: str = ""
    path: str = ""

    @property
    def fields(self) -> dict[str, str]:
        """Return the form's fields by name."""
        return dict(self.every)

    @property
    def book_name(self) -> str:
        """Return "mine" or "demo"."""
        return str(self.place.get("book", "mine"))

    @property
    def book(self) -> Store:
        """Return the open file. Raises NotThere, StoreRefused."""
        return self.door.books[self.book_name]

    @property
    def is_demo(self) -> bool:
        """Say whether this page is of the invented class."""
        return self.book_name == DEMO

    @property
    def room(self) -> Classroom:
        """Return the class of the address with its pupils. Raises NotThere."""
        return room(self.book, self.number("room"))

    def number(self, name: str) -> int:
        """Return a part of the address that is a number."""
        return int(self.place[name])

    def field(self, name: str, default: str | None = None) -> str:
        """Return a field of the form. Raises InputError where it is missing and has no default."""
        found = self.fields.get(name, default)
        if found is None:
            raise InputError(f"The form has no {name}", remedy="Load the page again and send it once more.")
        return found

    def count(self, name: str, least: int, most: int, default: int | None = None) -> int:
        """Return a field that is a whole number within limits. Raises InputError for anything else."""
        typed = self.field(name, None if default is None else str(default)).strip()
        if typed.isascii() and typed.isdecimal() and len(typed) < 10 and least <= int(typed) <= most:
            return int(typed)
        raise InputError(f"The {name} is a whole number from {least} to {most}", remedy="Type one.")

    def at(self, *parts: object) -> str:
        """Return an address under this class: ``ask.at("night", 3, "marking")``."""
        return "/".join(("", self.book_name, str(self.place.get("room", 1)), *map(str, parts)))


def day_typed(typed: str) -> date:
    """Return a day as a browser sends it, in a year that a class may see. Raises InputError.

    >>> day_typed("2026-09-01").isoformat()
    '2026-09-01'
    """
    try:
        day = date.fromisoformat(typed)
    except ValueError:
        day = date.min
    if day.year not in _YEARS:
        raise InputError("This is not a day", remedy="Choose one.")
    return day


@dataclass(frozen=True, slots=True)
class Shown:
    """A page: a template and its words."""

    template: str
    words: Mapping[str, object] = field(default_factory=dict)
    status: int = 200


@dataclass(frozen=True, slots=True)
class Told:
    """An answer to one of our own scripts, as JSON."""

    content: Mapping[str, object]
    status: int = 200


@dataclass(frozen=True, slots=True)
class Went:
    """Go on to another page (303)."""

    to: str


@dataclass(frozen=True, slots=True)
class Given:
    """Bytes with a kind; with a ``name`` they are saved and not shown.

    ``policy`` stands instead of the door's own content policy; only for a whole document with its own.
    """

    content: bytes
    kind: str
    name: str = ""
    policy: str = ""


@dataclass(frozen=True, slots=True)
class Lent:
    """A file of ours on the disk, with byte ranges, so that a film can be wound."""

    path: Path
    kind: str
    name: str = ""


Answer = Shown | Told | Went | Given | Lent
