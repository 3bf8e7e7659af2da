"""The teacher's overrides of a night: a pupil moved to another group, a finding set aside; both undone."""

from dataclasses import dataclass
from datetime import datetime

from onewhole.desk.classes.marked_nights import MarkedNight, marked_night
from onewhole.desk.classes.seen import is_to_be_written
from onewhole.desk.tomorrow.morning import target
from onewhole.desk.tomorrow.overrides import Overrides, group_key, overrides_of, with_overrides
from onewhole.errors import InputError
from onewhole.store.correction_rows import FindingAside, PlaceChosen
from onewhole.store.corrections import Correction, corrections_of, keep_correction
from onewhole.store.opening import Store

BY = "teacher"


@dataclass(frozen=True, slots=True)
class MovedPupil:
    """Where a pupil is now, and the key that a move of the same pupil undoes it with (empty: none before)."""

    code: str
    group: str
    undo: str


def move(
    book: Store,
    room_number: int,
    night_number: int,
    *,
    code: str,
    key: str,
    now: datetime,
    saw: str | None = None,
) -> MovedPupil:
    """Move a pupil to the group of a key; an empty key puts the pupil back where the answers say.

    ``saw`` is the key of the group that the pupil had been moved to when the window was loaded, empty for
    none. Raises InputError for a group that is not there (or is that of the absent), ChangedMeanwhile, and
    NotThere for a pupil.
    """
    found = marked_night(book, room_number, night_number)
    _known(found, code)
    chosen = group_key(target(found, key)) if key else None
    with book.transaction() as within:
        before = overrides_of(corrections_of(within, night_number)).places.get(code)
        stands, shown = (before.text, before.name) if before else ("", None)
        if is_to_be_written(f"The group of {code}", key, saw, stands, shown=shown):
            keep_correction(within, Correction(night_number, code, PlaceChosen(chosen), now, BY))
    places = {**found.overrides.places, code: chosen}
    word = Overrides(found.overrides.aside, {one: said for one, said in places.items() if said})
    after = with_overrides(found.said, word)
    group = next(group.name for group in after.groups if code in group.pupils)
    return MovedPupil(code, group, before.text if before else "")


def set_aside(
    book: Store, room_number: int, night_number: int, *, code: str, aside: bool, now: datetime
) -> None:
    """Set a pupil's finding of a night aside, or take it up again. Raises InputError."""
    _known(marked_night(book, room_number, night_number), code)
    keep_correction(book, Correction(night_number, code, FindingAside(aside), now, BY))


def _known(found: MarkedNight, code: str) -> None:
    if code not in {one.pupil for one in found.said.findings}:
        raise InputError("There is no such pupil in this class", remedy="Load the page again.")
