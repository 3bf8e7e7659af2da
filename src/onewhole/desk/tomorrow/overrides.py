"""The teacher's overrides: findings set aside, pupils moved to another group."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from types import MappingProxyType
from typing import assert_never

from onewhole.desk.marking.mark import Marked, page_name
from onewhole.desk.tomorrow.seats import seats
from onewhole.findings.placing import MovedHere
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.diagnosis import Diagnosis, Supposed
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.group_program import MEETS
from onewhole.store.correction_rows import CellReadAs, FindingAside, GroupKey, PlaceChosen
from onewhole.store.corrections import Correction


@dataclass(frozen=True, slots=True)
class Overrides:
    """What the teacher said of one night, the last word on each thing.

    ``aside`` are the pupils whose finding is set aside; ``places`` are the keys (:func:`group_key`) of the
    groups that pupils were moved to.
    """

    aside: frozenset[str]
    places: Mapping[str, GroupKey]


def overrides_of(corrections: Sequence[Correction]) -> Overrides:
    """Return the last word on each thing; a later one takes an earlier one back."""
    aside: dict[str, bool] = {}
    places: dict[str, GroupKey | None] = {}
    for one in corrections:
        match one.word:
            case FindingAside(said):
                aside[one.code] = said
            case PlaceChosen(group):
                places[one.code] = group
            case CellReadAs():
                pass
            case _:
                assert_never(one.word)
    return Overrides(
        frozenset(code for code, said in aside.items() if said),
        MappingProxyType({code: group for code, group in places.items() if group}),
    )


def group_key(group: Group) -> GroupKey:
    """Return what a group is known by when a pupil is moved to it."""
    return GroupKey(group.name, group.key)


def place_of(key: GroupKey, groups: Sequence[Group]) -> int | None:
    """Return which group a key means: the same, else one of the same conversation, else None."""
    same = [at for at, group in enumerate(groups) if group_key(group) == key]
    return next(iter((*same, *(at for at, group in enumerate(groups) if group.key == key.talk))), None)


def with_overrides(marked: Marked, word: Overrides) -> Marked:
    """Return a night with the teacher's word: what is set aside says nothing, who is moved is moved."""
    known = {pupil.pupil for pupil in marked.marks.pupils}
    if word.aside & known:
        found = tuple(_aside(one) if one.pupil in word.aside else one for one in marked.findings)
        sat = marked.tonight.before(page_name(marked.sheet)).seats if marked.tonight else {}
        marked = replace(
            marked, findings=found, groups=seats(marked.marks.pupils, found, meets=MEETS, before=sat)
        )
    return replace(marked, groups=moved(marked.groups, word.places))


def moved(groups: Sequence[Group], places: Mapping[str, GroupKey]) -> tuple[Group, ...]:
    """Return groups with some pupils moved; one that nobody is left in is gone.

    The reason of a pupil who was moved says so, and what the answers said.
    """
    seats_now = {pupil: at for at, group in enumerate(groups) for pupil in group.pupils}
    goes = {
        pupil: to
        for pupil, key in places.items()
        if pupil in seats_now and (to := place_of(key, groups)) is not None and to != seats_now[pupil]
    }
    if not goes:
        return tuple(groups)
    placings = {
        placed.pupil: replace(placed, because=(MovedHere(group.name, placed.because),))
        if placed.pupil in goes
        else placed
        for group in groups
        for placed in group.placings
    }
    now = seats_now | goes
    made = (
        replace(group, placings=tuple(placings[code] for code in sorted(placings) if now[code] == at))
        for at, group in enumerate(groups)
    )
    return tuple(group for group in made if group.placings)


def _aside(found: Finding) -> Finding:
    """Return a finding that says nothing any more; what is wrong stays wrong."""
    status = Status.UNSTEADY if set(found.wrong) - set(found.slips) else Status.NONE
    said = found.diagnosis
    nothing = Diagnosis(said.pupil, (Supposed((), Fraction(1)),), (), Fraction(0), False, said.evidence)  # noqa: FBT003 - not confident
    return Finding(found.pupil, status, (), found.wrong, found.slips, nothing)
