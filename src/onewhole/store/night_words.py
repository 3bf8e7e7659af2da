"""The teacher's word on the nights of a class: who got the page, who was away, whose paper is late."""

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from msgspec import Struct
from sqlalchemy import ColumnElement, Select, insert, select

from onewhole.findings.attendance import NightSaid, PageWord, PaperWord
from onewhole.store import tables
from onewhole.store.nights import pupil_numbers
from onewhole.store.opening import Store
from onewhole.store.pupil_days import PupilDays

#: Every word by the text that is kept for it.
_SAID: dict[str, NightSaid] = {word.value: word for word in (*PageWord, *PaperWord)}


class NightWord(Struct, frozen=True):
    """What is said of one pupil and one night, when, and who wrote it."""

    night: int
    code: str
    said: NightSaid
    written: datetime
    by: str


def keep_night_words(
    store: Store, night: int, said: Sequence[tuple[str, NightSaid]], written: datetime, by: str
) -> None:
    """Keep words on pupils of a night, all or none: a row is added and stays. Raises `NotThere`."""
    if not said:
        return
    with store.writing() as connection:
        pupils = pupil_numbers(connection, night, {code for code, _ in said})
        rows = [
            {
                "night_number": night,
                "pupil_number": pupils[code],
                "said": word.value,
                "written": written,
                "by": by,
            }
            for code, word in said
        ]
        connection.execute(insert(tables.night_words), rows)


def night_words_of(store: Store, class_number: int) -> tuple[NightWord, ...]:
    """Every word on the nights of a class, in the order they were written."""
    rows = tables.night_words.c
    with store.reading() as connection:
        return tuple(
            NightWord(night, code, _SAID[said], written, by)
            for night, code, said, written, by in connection.execute(
                _said(class_number, rows.written, rows.by)
            )
        )


def words_by_night(store: Store, class_number: int) -> dict[int, dict[str, list[NightSaid]]]:
    """What is said of each night of a class, by night and code, in the order it was written."""
    found: dict[int, dict[str, list[NightSaid]]] = {}
    with store.reading() as connection:
        for night, code, said in connection.execute(_said(class_number)):
            found.setdefault(night, {}).setdefault(code, []).append(_SAID[said])
    return found


def _said(class_number: int, *more: ColumnElement[Any]) -> Select[Any]:
    """Ask for night, code, word and more of each word on a class's nights, in the order they were written."""
    rows, pupils = tables.night_words.c, tables.pupils.c
    return (
        select(rows.night_number, pupils.code, rows.said, *more)
        .join(tables.pupils, pupils.number == rows.pupil_number)
        .where(pupils.class_number == class_number)
        .order_by(rows.number)
    )


class PupilOnNight(Struct, frozen=True):
    """A pupil of a class with the days, and every word on one night in the order they were written."""

    code: str
    days: PupilDays
    said: tuple[NightSaid, ...]


def pupils_on_night(store: Store, class_number: int, night: int) -> tuple[PupilOnNight, ...]:
    """The pupils of a class, in the class's order, on one night: one statement."""
    words, days, pupils = tables.night_words.c, tables.pupil_days.c, tables.pupils.c
    asked = (
        select(pupils.code, days.joined, days.left, words.said)
        .join(tables.pupil_days, days.pupil_number == pupils.number, isouter=True)
        .join(
            tables.night_words,
            (words.pupil_number == pupils.number) & (words.night_number == night),
            isouter=True,
        )
        .where(pupils.class_number == class_number)
        .order_by(pupils.number, words.number)
    )
    found: dict[str, tuple[PupilDays, list[NightSaid]]] = {}
    with store.reading() as connection:
        for code, joined, left, said in connection.execute(asked):
            _, among = found.setdefault(code, (PupilDays(joined, left), []))
            if said is not None:
                among.append(_SAID[said])
    return tuple(PupilOnNight(code, here, tuple(among)) for code, (here, among) in found.items())
