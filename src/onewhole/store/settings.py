"""Settings: a name and a text; what they mean is the caller's business."""

from sqlalchemy import delete, insert, select

from onewhole.store import tables
from onewhole.store.opening import Store


def set_setting(store: Store, name: str, text: str | None) -> None:
    """Keep a setting, or with None forget it."""
    with store.writing() as connection:
        connection.execute(delete(tables.settings).where(tables.settings.c.name == name))
        if text is not None:
            connection.execute(insert(tables.settings).values(name=name, text=text))


def setting(store: Store, name: str) -> str | None:
    """The text of a setting; None where there is none."""
    with store.reading() as connection:
        return connection.scalar(select(tables.settings.c.text).where(tables.settings.c.name == name))
