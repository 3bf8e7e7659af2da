"""How far the round of a night has come: the moment each step was first taken."""

from datetime import datetime
from enum import StrEnum

from sqlalchemy import select
from sqlalchemy.dialects.sqlite import insert

from onewhole.store import tables
from onewhole.store.nights import find_night
from onewhole.store.opening import Store


class NightStep(StrEnum):
    """What a teacher does with a night once it is set, in the order of the round."""

    PRINTED = "printed"
    SHOWN = "shown"
    MARKED = "marked"
    REGROUPED = "regrouped"


def keep_step(store: Store, night: int, step: NightStep, now: datetime) -> None:
    """Keep that a step was taken; taken again, the first moment stays. Raises `NotThere`, `StoreRefused`."""
    with store.writing() as connection:
        find_night(connection, night)
        taken = insert(tables.steps).values(night_number=night, step=step.value, written=now)
        connection.execute(taken.on_conflict_do_nothing())


def steps_of(store: Store, class_number: int) -> dict[int, dict[NightStep, datetime]]:
    """The steps taken in every night of a class; a night without any is not in it."""
    columns = tables.steps.c
    asked = (
        select(columns.night_number, columns.step, columns.written)
        .join(tables.nights, tables.nights.c.number == columns.night_number)
        .where(tables.nights.c.class_number == class_number)
    )
    found: dict[int, dict[NightStep, datetime]] = {}
    with store.reading() as connection:
        for night, step, written in connection.execute(asked):
            found.setdefault(night, {})[NightStep(step)] = written
    return found
