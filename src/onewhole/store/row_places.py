"""Where a row of a damaged file belongs: class, night, pupil, page, each read also where it is damaged."""

from msgspec import Struct

from onewhole.store.digests import Value, any_text
from onewhole.store.opening import Store
from onewhole.store.transaction import driver_of


class Places(Struct, frozen=True):
    """By number: what classes and pages are called, a pupil's class and code, a night's class and day."""

    classes: dict[Value, str]
    pupils: dict[Value, tuple[Value, str]]
    nights: dict[Value, tuple[Value, str]]
    sheets: dict[Value, str]


def places_of(store: Store) -> Places:
    """Read all places of a file. Raises `StoreRefused`."""
    with store.reading() as connection, any_text(raw := driver_of(connection)):
        return Places(
            {number: shown(name) for number, name in raw.execute("SELECT number, name FROM classes")},
            {
                number: (of, shown(code))
                for number, of, code in raw.execute("SELECT number, class_number, code FROM pupils")
            },
            {
                number: (of, shown(day))
                for number, of, day in raw.execute("SELECT number, class_number, day FROM nights")
            },
            {number: shown(name) for number, name in raw.execute("SELECT number, name FROM sheets")},
        )


def shown(value: Value) -> str:
    """A value as text, whatever it is; of a text that cannot be read, what can.

    >>> shown(b"4 7/8"), shown(b"4" + bytes([255])), shown(7), shown(None)
    ('4 7/8', '4�', '7', '')
    """
    if isinstance(value, bytes):
        return value.decode(errors="replace")
    return "" if value is None else str(value)
