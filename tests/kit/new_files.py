"""New files for the tests, with the tables as the steps leave them: the steps take most of a short test."""

from functools import cache

import pytest
from sqlalchemy import Connection, create_engine

from onewhole.store import opening
from onewhole.store.handed_in import fresh
from onewhole.store.migrating import bring_forward
from onewhole.store.transaction import driver_of

_PARTS = "SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%' ORDER BY rowid"


@cache
def made_by_steps(step: str = "head") -> tuple[str, ...]:
    """Return the statements that make of an empty file what the steps make; taken once, in memory."""
    engine = create_engine("sqlite://")
    try:
        with engine.begin() as connection:
            bring_forward(connection, step)
            raw = driver_of(connection)
            rows = (line for line in raw.iterdump() if line.startswith(("INSERT", "DELETE")))
            return (*(part for (part,) in raw.execute(_PARTS)), *rows)
    finally:
        engine.dispose()


def bring_forward_at_once(connection: Connection, step: str = "head") -> None:
    """Do as `bring_forward` does; where nothing is in the file yet, without going through each step."""
    raw = driver_of(connection)
    if raw.execute("SELECT 1 FROM sqlite_schema").fetchone():
        bring_forward(connection, step)
        return
    for line in made_by_steps(step):
        raw.execute(line)


def make_files_at_once(patched: pytest.MonkeyPatch) -> None:
    """Let new files be made so, in the store and where a backup is handed in."""
    for module in (opening, fresh):
        patched.setattr(module, "bring_forward", bring_forward_at_once)


def make_files_by_steps(patched: pytest.MonkeyPatch) -> None:
    """Let new files be made as the program makes them."""
    for module in (opening, fresh):
        patched.setattr(module, "bring_forward", bring_forward)
