"""The teacher's recordings of a night: one is kept, heard again, recorded anew or taken away."""

from collections.abc import Mapping
from datetime import datetime

import msgspec
from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.walkthrough.board import Board
from onewhole.desk.walkthrough.soundtrack_choice import Recorded, called, check_recorded
from onewhole.errors import InputError
from onewhole.store.opening import Store
from onewhole.store.recordings import (
    KeptRecording,
    forget_recording,
    keep_recording,
    recorded_labels,
    recordings_of,
)
from onewhole.store.refusals import NotThere
from onewhole.store.settings import set_setting, setting
from onewhole.store.tables import SOUND_KINDS


class Heard(Struct, frozen=True):
    """What is known of a kept recording without reading its sound: how long it is in words ("" where that is
    not known), whether the board is written as it was when it was recorded, and which recording it is.
    """

    label: str
    seconds: str
    fits: bool
    which: str = ""


class _Mark(Struct, frozen=True):
    """How long a recording is, the stamp of the board it was recorded at, and when it was recorded."""

    seconds: str
    stamp: str
    written: str


def keep(
    book: Store,
    night: int,
    board: Board,
    label: str,
    recorded: Recorded,
    *,
    kind: str,
    now: datetime,
    saw: str | None = None,
) -> Heard:
    """Keep a recording of a part of a night in place of the one before; it is on the disk on return.

    ``kind`` is the sound's media type; ``saw`` is which recording stood there when the window was loaded,
    empty for none: ChangedMeanwhile where another one stands now. Raises InputError by name, and the one
    before stays: for a part that is not there, another kind, sound that is damaged, empty, silent, too long
    or too large, and steps that do not fit. Raises NotThere and StoreRefused.
    """
    plain = kind.split(";", maxsplit=1)[0].strip().lower()
    if plain not in SOUND_KINDS:
        msg = f"this is not a recording that can be read: “{kind[:40]}”"
        raise InputError(msg, where=f"the recording of {called(label)}", remedy="Record it on this page.")
    part = board.part(label)
    length = check_recorded(label, recorded, None if part is None else len(part.steps))
    assert part is not None, "a part that is not there was refused"
    mark = _Mark(length, part.stamp, now.isoformat())
    with book.transaction() as within:
        _check_seen(within, night, label, saw)
        keep_recording(within, KeptRecording(night, label, plain, recorded.sound, recorded.steps, now))
        marks = {**_marks(within, night), label: mark}
        set_setting(within, _name(night), msgspec.json.encode(marks).decode())
        which = _which(recorded_labels(within, night), marks, label)
    return replace(_heard(label, mark, board), which=which)


def heard(book: Store, night: int, board: Board) -> dict[str, Heard]:
    """Return what is recorded of a night, by label; sound is not read."""
    marks, sizes = _marks(book, night), recorded_labels(book, night)
    return {
        label: replace(_heard(label, marks.get(label), board), which=_which(sizes, marks, label))
        for label in sizes
    }


def sound_of(book: Store, night: int, label: str) -> KeptRecording:
    """Return a recording to hear it again. Raises NotThere."""
    for one in recordings_of(book, night):
        if one.label == label:
            return one
    raise NotThere(
        "There is no such recording", where=called(label[:20]), remedy="Choose one that was recorded."
    )


def forget(book: Store, night: int, label: str, saw: str | None = None) -> None:
    """Take the recording away that the window saw. Raises ChangedMeanwhile, NotThere and StoreRefused."""
    with book.transaction() as within:
        _check_seen(within, night, label, saw)
        forget_recording(within, night, label)


def _check_seen(book: Store, night: int, label: str, saw: str | None) -> None:
    """Refuse to replace another recording than the one that was seen: ChangedMeanwhile."""
    stands = _which(recorded_labels(book, night), _marks(book, night), label)
    if saw not in {None, stands} and stands:
        raise ChangedMeanwhile(
            f"Another window recorded {called(label)} since this one was loaded",
            stands=stands,
            remedy="Load the page in another window and hear it. Send yours again to put it in that place.",
        )


def _which(sizes: Mapping[str, int], marks: Mapping[str, "_Mark"], label: str) -> str:
    """Return which recording of a part this is; nothing where there is none."""
    if label not in sizes:
        return ""
    return f"{sizes[label]} bytes of {marks[label].written if label in marks else 'some day'}"


def recorded_fingerprint(book: Store, night: int) -> str:
    """Return a text that changes when a part of a night is recorded, recorded anew or taken away."""
    marks = _marks(book, night)
    sizes = recorded_labels(book, night)
    return repr([(label, size, marks.get(label)) for label, size in sizes.items()])


def usable(book: Store, night: int, board: Board) -> tuple[dict[str, Recorded], tuple[str, ...]]:
    """Return the recordings that fit the board as it is now, and words about those that do not."""
    fitting: dict[str, Recorded] = {}
    marks = _marks(book, night)
    notes: list[str] = []
    for one in recordings_of(book, night):
        part = board.part(one.label)
        fits = _heard(one.label, marks.get(one.label), board).fits
        if fits and part is not None and len(part.steps) == len(one.cues) + 1:
            fitting[one.label] = Recorded(one.sound, one.cues)
        else:
            notes.append(
                f"The recording of {called(one.label)} was made for other steps of the board and is not "
                "heard: record it again, or put the choices back."
            )
    return fitting, tuple(notes)


def _heard(label: str, mark: _Mark | None, board: Board) -> Heard:
    part = board.part(label)
    if mark is None:
        return Heard(label, "", part is not None)
    return Heard(label, mark.seconds, part is not None and part.stamp == mark.stamp)


def _marks(book: Store, night: int) -> dict[str, _Mark]:
    """What is known of each recording; nothing where it cannot be read, for the sound is what counts."""
    try:
        return msgspec.json.decode(setting(book, _name(night)) or "{}", type=dict[str, _Mark])
    except (msgspec.DecodeError, RecursionError):
        return {}


def _name(night: int) -> str:
    return f"recorded boards of night {night}"
