"""Recordings: the teacher's own voice for one part of a night's walkthrough, and when the board stepped."""

from datetime import datetime
from itertools import pairwise

from msgspec import Struct
from sqlalchemy import Delete, delete, func, insert, select

from onewhole.store import tables
from onewhole.store.nights import find_night
from onewhole.store.opening import Store
from onewhole.store.refusals import NotStorable, NotThere


class KeptRecording(Struct, frozen=True):
    """One part: `label` is a problem's label, "opening" or "closing"; `kind` is the sound's media type.

    `cues` are the milliseconds from the start of `sound` at which the board stepped, in order. Cues that are
    below 0 or go backwards raise `NotStorable`.
    """

    night: int
    label: str
    kind: str
    sound: bytes
    cues: tuple[int, ...]
    written: datetime

    def __post_init__(self) -> None:
        """Check the cues."""
        if any(one > other for one, other in pairwise((0, *self.cues))):
            raise NotStorable("The board cannot step backwards in time", remedy="Record this part again.")


def keep_recording(store: Store, recording: KeptRecording) -> None:
    """Keep a part in place of the one recorded before. Raises `NotThere`, `NotStorable`, `StoreRefused`."""
    part = {"night_number": recording.night, "label": recording.label}
    rest = {
        "kind": recording.kind,
        "sound": recording.sound,
        "cues": " ".join(map(str, recording.cues)),
        "written": recording.written,
    }
    with store.writing() as connection:
        find_night(connection, recording.night)
        connection.execute(_part(recording.night, recording.label))
        connection.execute(insert(tables.recordings).values(**part, **rest))


def recordings_of(store: Store, night: int) -> tuple[KeptRecording, ...]:
    """Every part of a night with its sound, by label."""
    columns = tables.recordings.c
    asked = select(
        columns.night_number, columns.label, columns.kind, columns.sound, columns.cues, columns.written
    ).where(columns.night_number == night)
    with store.reading() as connection:
        return tuple(
            KeptRecording(number, label, kind, sound, tuple(map(int, cues.split())), written)
            for number, label, kind, sound, cues, written in connection.execute(asked.order_by(columns.label))
        )


def recorded_labels(store: Store, night: int) -> dict[str, int]:
    """The label of every part and how many bytes its sound has; the sound itself is not read."""
    columns = tables.recordings.c
    asked = select(columns.label, func.length(columns.sound)).where(columns.night_number == night)
    with store.reading() as connection:
        return {label: size for label, size in connection.execute(asked.order_by(columns.label))}  # noqa: C416 - rows are no pairs for mypy


def forget_recording(store: Store, night: int, label: str) -> None:
    """Take a part away. Raises `NotThere` where none was recorded, and `StoreRefused`."""
    with store.writing() as connection:
        gone = connection.execute(_part(night, label))
        if gone.rowcount != 1:
            raise NotThere(
                "There is no such recording",
                where=f"night {night}, part {label[:20]!r}",
                remedy="Choose one that was recorded.",
            )


def _part(night: int, label: str) -> Delete:
    """Take a part away, if it is there."""
    columns = tables.recordings.c
    return delete(tables.recordings).where(columns.night_number == night, columns.label == label)
