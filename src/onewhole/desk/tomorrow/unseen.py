"""Groups that nobody has looked at yet: where their pupils would be kept."""

from onewhole.desk.classes.marked_nights import MarkedNight, is_last
from onewhole.desk.tomorrow.overrides import group_key
from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.notebook import Stay
from onewhole.store.correction_rows import SeatKept
from onewhole.store.opening import Store


def unkept_seats(found: MarkedNight) -> tuple[tuple[str, SeatKept], ...]:
    """Return the seat of each pupil who has no kept one; those of whom nothing was read have none."""
    return tuple(
        (one.pupil, SeatKept(group_key(group), stays=one.stays is Stay.ALWAYS))
        for group in found.marked.groups
        if group.place is not GroupKind.ABSENT
        for one in group.placings
        if one.pupil not in found.overrides.sits
    )


def is_unseen(book: Store, found: MarkedNight) -> bool:
    """Say whether some pupils of the last night of a class have no kept seat yet.

    Groups of earlier nights were kept in their time.
    """
    night = found.page.night
    return bool(unkept_seats(found)) and is_last(book, night.class_number, night.number)
