"""The teacher's overrides: findings set aside, pupils moved to another group, groups that are kept."""

from collections.abc import Mapping, Sequence
from fractions import Fraction
from types import MappingProxyType
from typing import assert_never

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.marking.mark import Marked, page_name
from onewhole.desk.tomorrow.seats import known_before, seated
from onewhole.marking.diagnosis.diagnosis import Diagnosis, Supposed
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.diagnosis.notebook import Sat, Stay
from onewhole.marking.grouping.group import Group
from onewhole.store.correction_rows import CellReadAs, FindingAside, GroupKey, PlaceChosen, SeatKept
from onewhole.store.corrections import Correction


class Overrides(Struct, frozen=True):
    """What the teacher said of one night, the last word on each thing.

    ``aside`` are the pupils whose finding is set aside. ``places`` are where the teacher put pupils, or None
    for one who was let go; ``sits`` where they sit by the groups that were shown and are kept.
    """

    aside: frozenset[str]
    places: Mapping[str, Sat | None]
    sits: Mapping[str, Sat]


def overrides_of(corrections: Sequence[Correction]) -> Overrides:
    """Return the last word on each thing; a later one takes an earlier one back.

    Who was let go has no kept seat any more, and sits where the answers say until the groups are shown again.
    """
    aside: dict[str, bool] = {}
    places: dict[str, Sat | None] = {}
    sits: dict[str, Sat] = {}
    for one in corrections:
        match one.word:
            case FindingAside(said):
                aside[one.code] = said
            case PlaceChosen(group, stays):
                places[one.code] = chosen_seat(group, stays=stays) if group else None
                if group is None:
                    sits.pop(one.code, None)
            case SeatKept(group, stays):
                sits[one.code] = _seat(group, Stay.ALWAYS if stays else Stay.FREE)
            case CellReadAs():
                pass
            case _:
                assert_never(one.word)
    return Overrides(
        frozenset(code for code, said in aside.items() if said),
        MappingProxyType(places),
        MappingProxyType(sits),
    )


def group_key(group: Group) -> GroupKey:
    """Return what a group is known by when a pupil sits in it."""
    return GroupKey(group.name, group.key, group.id)


def chosen_seat(key: GroupKey, *, stays: bool) -> Sat:
    """Return the seat that a teacher chose for a pupil, for this night or until let go."""
    return _seat(key, Stay.ALWAYS if stays else Stay.TONIGHT)


def _seat(key: GroupKey, how: Stay) -> Sat:
    return Sat(key.name, key.talk, key.id, how)


def key_of_seat(sat: Sat) -> GroupKey:
    """Return what the group of a seat is known by."""
    return GroupKey(sat.name, sat.key, sat.id)


def with_overrides(marked: Marked, word: Overrides) -> Marked:
    """Return a night with the teacher's word in it: asides, kept groups, moves."""
    known = {pupil.pupil for pupil in marked.marks.pupils}
    found = marked.findings
    if word.aside & known:
        found = tuple(_aside(one) if one.pupil in word.aside else one for one in found)
    elif not word.places and not word.sits:
        return marked
    made = seated(
        marked.marks.pupils,
        found,
        marked.settings,
        known_before(marked.tonight, page_name(marked.sheet)),
        sits=word.sits,
        places=word.places,
    )
    return replace(marked, findings=found, seating=made)


def _aside(found: Finding) -> Finding:
    """Return a finding that says nothing any more; what is wrong stays wrong."""
    said = found.diagnosis
    nothing = Diagnosis(said.pupil, (Supposed((), Fraction(1)),), (), Fraction(0), False, said.evidence)  # noqa: FBT003 - not confident
    return Finding(found.pupil, found.status_unnamed, (), found.wrong, found.slips, nothing)
