"""The teacher's own word on the groups of a night: move, keep in place, merge, begin one; all undone."""

from datetime import datetime

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.classes.marked_nights import MarkedNight, marked_night
from onewhole.desk.classes.seen import is_to_be_written
from onewhole.desk.marking.mark import page_name
from onewhole.desk.tomorrow.keeping_groups import TEACHER, keep_seats
from onewhole.desk.tomorrow.morning import target
from onewhole.desk.tomorrow.overrides import (
    chosen_seat,
    group_key,
    key_of_seat,
    overrides_of,
    with_overrides,
)
from onewhole.desk.tomorrow.seats import known_before
from onewhole.errors import InputError
from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.notebook import Stay
from onewhole.marking.grouping.group import key_of
from onewhole.marking.grouping.identity import newborn
from onewhole.store.correction_rows import FindingAside, GroupKey, PlaceChosen
from onewhole.store.corrections import Correction, corrections_of, keep_correction, keep_corrections
from onewhole.store.opening import Store

#: The key of a group that is not there yet.
NEW = "new"


class MovedPupil(Struct, frozen=True):
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
    stays: bool = False,
) -> MovedPupil:
    """Move a pupil to the group of a key; an empty key puts the pupil back where the answers say.

    The key `NEW` begins a group. ``stays`` keeps the pupil there on later nights too, until let go with an
    empty key. ``saw`` is the key of the group that the pupil had been moved to when the window was loaded,
    empty for none. Raises InputError for a group that is not there (or is that of the absent),
    ChangedMeanwhile, and NotThere for a pupil.
    """
    found = marked_night(book, room_number, night_number)
    _known(found, code)
    chosen = _chosen(found, key, code) if key else None
    word = PlaceChosen(chosen, stays and chosen is not None)
    with book.transaction() as within:
        before = overrides_of(corrections_of(within, night_number)).places.get(code)
        stands = "" if before is None else key_of_seat(before).text
        typed = "" if chosen is None else chosen.text
        again = before is not None and typed == stands and (before.stays is Stay.ALWAYS) != word.stays
        free = before is None and code in _staying(found) and chosen is None
        if (
            again
            or free
            or is_to_be_written(
                f"The group of {code}", typed, saw, stands, shown=before.name if before else None
            )
        ):
            keep_seats(within, found, now)
            keep_correction(within, Correction(night_number, code, word, now, TEACHER))
    return MovedPupil(code, _group_now(found, code, word), stands)


def merge(
    book: Store, room_number: int, night_number: int, *, key: str, into: str, now: datetime
) -> tuple[str, ...]:
    """Put all pupils of a group into another one; return their codes. Raises InputError as `move`."""
    found = marked_night(book, room_number, night_number)
    group, other = target(found, key), target(found, into)
    if group.id == other.id:
        raise InputError("A group cannot be put into itself", remedy="Choose two groups.")
    with book.transaction() as within:
        keep_seats(within, found, now)
        put = (
            Correction(night_number, code, PlaceChosen(group_key(other)), now, TEACHER)
            for code in group.pupils
        )
        keep_corrections(within, tuple(put))
    return group.pupils


def _chosen(found: MarkedNight, key: str, code: str) -> GroupKey:
    if key != NEW:
        return group_key(target(found, key))
    groups = found.marked.groups
    placing = next(one for group in groups for one in group.placings if one.pupil == code)
    born = newborn(
        (*groups, *found.marked.seating.said),
        known_before(found.marked.tonight, page_name(found.marked.sheet)),
    )
    return GroupKey(born.name, key_of(GroupKind.FAMILY, (placing,)), born.id)


def _staying(found: MarkedNight) -> frozenset[str]:
    return frozenset(
        one.pupil for group in found.marked.groups for one in group.placings if one.stays is Stay.ALWAYS
    )


def _group_now(found: MarkedNight, code: str, word: PlaceChosen) -> str:
    """Return the name of the group that a pupil is in by one word more of the teacher's."""
    put = chosen_seat(word.group, stays=word.stays) if word.group else None
    sits = {pupil: sat for pupil, sat in found.overrides.sits.items() if pupil != code or put}
    said = replace(found.overrides, places={**found.overrides.places, code: put}, sits=sits)
    after = with_overrides(found.said, said)
    return next(group.name for group in after.groups if code in group.pupils)


def set_aside(
    book: Store, room_number: int, night_number: int, *, code: str, aside: bool, now: datetime
) -> None:
    """Set a pupil's finding of a night aside, or take it up again. Raises InputError."""
    _known(marked_night(book, room_number, night_number), code)
    keep_correction(book, Correction(night_number, code, FindingAside(aside), now, TEACHER))


def _known(found: MarkedNight, code: str) -> None:
    if code not in {one.pupil for one in found.said.findings}:
        raise InputError("There is no such pupil in this class", remedy="Load the page again.")
