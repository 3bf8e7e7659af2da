"""Groups that are kept while answers change, and the changes that the answers now ask for."""

from collections.abc import Callable, Mapping, Sequence

from msgspec import Struct
from msgspec.structs import replace

from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import KeptHere, MovedHere, WhyPlaced
from onewhole.marking.diagnosis.notebook import Sat, Stay
from onewhole.marking.grouping.group import Group, in_order, place_of
from onewhole.marking.grouping.placement import Placement


class SeatChange(Struct, frozen=True):
    """One pupil who would sit elsewhere by the answers as they are now: from where to where, and why."""

    pupil: str
    was: Sat
    to: Sat
    because: tuple[WhyPlaced, ...]


class Seating(Struct, frozen=True):
    """Tomorrow's groups as they stand, and the ``changes`` that would make of them what the answers say.

    ``said`` are the groups that the answers alone would make, the teacher's own moves in them: to take the
    changes is to take these.
    """

    groups: tuple[Group, ...]
    changes: tuple[SeatChange, ...]
    said: tuple[Group, ...]


def kept(said: Sequence[Group], seats: Mapping[str, Sat]) -> tuple[Group, ...]:
    """Return the groups of ``seats`` with those who have no seat yet placed as the answers say.

    Nobody who has a seat is moved. A new pupil sits in the group that the answers say, if need be in a new
    one; where that is one of the kept groups it is that one.
    """
    was = {one.pupil: group for group in said for one in group.placings}
    goes = {
        pupil: _found(seats[pupil], said) if pupil in seats else group.seat for pupil, group in was.items()
    }
    return _seated(said, goes, lambda one, group: KeptHere(group.name, one.because))


def moved(groups: Sequence[Group], places: Mapping[str, Sat]) -> tuple[Group, ...]:
    """Return groups with some pupils where the teacher put them; one that nobody is left in is gone.

    A place is known by its identity, whatever the group is about by now. Where the group is gone it is made
    anew, so that what the teacher said is never dropped. The reason of a pupil who was moved says so, and
    what the answers said.
    """
    was = {one.pupil: group for group in groups for one in group.placings}
    put = {pupil: _found(sat, groups) for pupil, sat in places.items() if pupil in was}
    goes = {pupil: group.seat for pupil, group in was.items()} | put
    made = _seated(groups, goes, lambda one, group: MovedHere(group.name, one.because))
    stays = {pupil: places[pupil].stays for pupil in put}
    return tuple(
        replace(
            group,
            placings=tuple(replace(one, stays=stays.get(one.pupil, one.stays)) for one in group.placings),
        )
        for group in made
    )


def changes(stand: Sequence[Group], said: Sequence[Group]) -> tuple[SeatChange, ...]:
    """Return who would sit elsewhere by what the answers say, by code; those whom the teacher put stay."""
    to = {one.pupil: (group, one) for group in said for one in group.placings}
    found = [
        SeatChange(one.pupil, group.seat, to[one.pupil][0].seat, to[one.pupil][1].because)
        for group in stand
        for one in group.placings
        if one.stays is Stay.FREE and to[one.pupil][0].id != group.id
    ]
    return tuple(sorted(found, key=lambda change: change.pupil))


def _found(sat: Sat, groups: Sequence[Group]) -> Sat:
    """Return the seat that a place means: by identity, else (of an earlier release) by name and words."""
    tries = (
        lambda one: bool(sat.id) and one.id == sat.id,
        lambda one: not sat.id and (one.name, one.key) == (sat.name, sat.key),
        lambda one: not sat.id and one.key == sat.key,
        lambda one: one.name == sat.name,
    )
    for same in tries:
        for group in groups:
            if same(group):
                return group.seat
    return replace(sat, id=sat.group, stays=Stay.FREE)


def _seated(
    groups: Sequence[Group],
    goes: Mapping[str, Sat],
    why: Callable[[Placement, Group], WhyPlaced],
) -> tuple[Group, ...]:
    """Return the groups in which everybody sits where they go; who sits elsewhere than before says why."""
    made: dict[str, Group] = {}
    there = {group.id: group for group in groups}
    for group in groups:
        for one in group.placings:
            to = goes[one.pupil]
            placing = one if to.group == group.id else replace(one, because=(why(one, group),))
            seat = there[to.group].seat if to.group in there else to
            held = made.get(to.group) or Group(seat.name, _place(to, there), (), seat.key, to.group)
            made[to.group] = replace(held, placings=(*held.placings, placing))
    return in_order(
        replace(one, placings=tuple(sorted(one.placings, key=lambda each: each.pupil)))
        for one in made.values()
    )


def _place(to: Sat, there: Mapping[str, Group]) -> GroupKind:
    """Return the place of a group: as it is now, or as its key tells."""
    return there[to.group].place if to.group in there else place_of(to.key)
