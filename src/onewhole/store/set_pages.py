"""The nights of a class, each with the version of the sheet that went home."""

from sqlalchemy import select

from onewhole.store import tables
from onewhole.store.nights import NIGHT, WITH_NAMES, KeptNight
from onewhole.store.opening import Store
from onewhole.store.sheets import KeptSheet


def set_pages(
    store: Store, class_number: int, night: int | None = None
) -> tuple[tuple[KeptNight, KeptSheet], ...]:
    """Every night of a class by day with its sheet, or only the one asked for; none where there is none."""
    nights, versions = tables.nights.c, tables.sheet_versions.c
    asked = (
        select(*NIGHT, tables.sheets.c.name, versions.typed, versions.recipe, versions.written)
        .select_from(WITH_NAMES)
        .join(
            tables.sheet_versions,
            (versions.sheet_number == nights.sheet_number) & (versions.version == nights.version),
        )
        .join(tables.sheets, tables.sheets.c.number == nights.sheet_number)
        .where(nights.class_number == class_number)
        .order_by(nights.day, nights.number)
    )
    if night is not None:
        asked = asked.where(nights.number == night)
    with store.reading() as connection:
        return tuple(
            (
                KeptNight(*row[: len(NIGHT)]),
                KeptSheet(row.sheet_number, row.version, row.name, row.typed, row.recipe, row.written),
            )
            for row in connection.execute(asked)
        )
