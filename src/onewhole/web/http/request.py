"""What a page function gets: the request as a plain record, already read and checked."""

from collections.abc import Mapping
from datetime import date

from msgspec import Struct, field

from onewhole.desk.classes.class_records import Classroom, Store, room
from onewhole.errors import InputError
from onewhole.web.app import DEMO, App
from onewhole.web.http.addresses import Addresses
from onewhole.web.http.request_store import RequestStore

_YEARS = range(1900, 2200)


class Upload(Struct, frozen=True):
    """A file handed in: the name it had (never used as a path), the kind it claims, its bytes."""

    name: str
    kind: str
    content: bytes


class BrokenForm(InputError):
    """A form came without some of its fields: what was typed in it cannot be shown again."""

    def __init__(self) -> None:
        super().__init__("The form is not whole", remedy="Load the page again; nothing was changed.")


class PageRequest(Struct, frozen=True):
    """A request. ``fields`` has the last field of each name; ``form_items`` has every field in order.

    ``file_items`` has every file that was sent, and ``files`` the last of each name.

    ``query`` and ``query_items`` are the same of what follows the question mark of the address.
    ``csrf_token`` is what a form must send; ``path_params`` are the parts of the address.
    """

    app: App
    path_params: Mapping[str, str | int]
    store: RequestStore
    addresses: Addresses
    query: Mapping[str, str] = field(default_factory=dict)
    form_items: tuple[tuple[str, str], ...] = ()
    file_items: tuple[tuple[str, Upload], ...] = ()
    csrf_token: str = ""
    path: str = ""
    query_items: tuple[tuple[str, str], ...] = ()

    @property
    def fields(self) -> dict[str, str]:
        """Return the form's fields by name."""
        return dict(self.form_items)

    @property
    def files(self) -> dict[str, Upload]:
        """Return the form's files by name, of several with one name the last."""
        return dict(self.file_items)

    @property
    def book_name(self) -> str:
        """Return "mine" or "demo"."""
        return str(self.path_params.get("book", "mine"))

    @property
    def book(self) -> Store:
        """Return the class file in this request's snapshot or transaction. Raises NotThere, StoreRefused."""
        return self.store[self.book_name]

    @property
    def open_file(self) -> Store:
        """Return the class file itself, for work that goes on after the reply. Raises as :attr:`book`."""
        return self.app.books[self.book_name]

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
        return int(self.path_params[name])

    def field(self, name: str, default: str | None = None) -> str:
        """Return a field of the form. Raises InputError where it is missing and has no default."""
        found = self.fields.get(name, default)
        if found is None:
            raise InputError(f"The form has no {name}", remedy="Load the page again and send it once more.")
        return found

    def every(self, name: str) -> tuple[str, ...]:
        """Return everything of one name that follows the question mark of the address, in its order."""
        return tuple(value for key, value in self.query_items if key == name)

    def count(self, name: str, least: int, most: int, default: int | None = None) -> int:
        """Return a field that is a whole number within limits. Raises InputError for anything else."""
        typed = self.field(name, None if default is None else str(default)).strip()
        if typed.isascii() and typed.isdecimal() and len(typed) < 10 and least <= int(typed) <= most:
            return int(typed)
        raise InputError(f"“{name}” is a whole number from {least} to {most}", remedy="Type one.")

    def beside(self, what: str) -> dict[str, str]:
        """Return a field of the form by the codes that it stands beside: they come in turn.

        Raises BrokenForm where it has not as many.
        """
        codes = [value for key, value in self.form_items if key == "code"]
        found = [value for key, value in self.form_items if key == what]
        if len(codes) != len(found):
            raise BrokenForm
        return dict(zip(codes, found, strict=True))

    def changed_beside(self, what: str) -> dict[str, str]:
        """Return what of a field is not as the window saw it, by code. Raises BrokenForm."""
        saw = self.beside("saw")
        return {code: said for code, said in self.beside(what).items() if said != saw[code]}

    def at(self, page: str, **places: object) -> str:
        """Return the address of a page function: ``request.at("marking.look", night=3)``.

        What is not given is as in the address of this request; the file is the teacher's own where that names
        none.
        """
        return self.addresses.at(page, {"book": self.book_name, **self.path_params, **places})


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
