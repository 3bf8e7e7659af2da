"""Tomorrow's groups: who works with whom, what it is about, and the reason for every placing.

Source of the rule and of the sizes: our own proposal (common practice, no source).
"""

from collections import Counter
from collections.abc import Iterable

from msgspec import Struct

from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.diagnosis.notebook import Sat
from onewhole.marking.grouping.placement import Placement
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family

#: Between the families of a group's key.
AND = " + "


class IdeaHeld(Struct, frozen=True):
    """An idea of a group and who of it has that idea; none for those of whom none is named."""

    idea: str
    pupils: tuple[str, ...]


class Group(Struct, frozen=True):
    """Pupils who work together tomorrow, with the reason for each placing.

    ``name`` may be printed; the rest is for the teacher's eyes. ``key`` is what it was about when made, as
    it is kept for the next night; ``id`` is its own, whatever it is about.
    """

    name: str
    place: GroupKind
    placings: tuple[Placement, ...]
    key: str = ""
    id: str = ""

    @property
    def pupils(self) -> tuple[str, ...]:
        """Return the codes of the pupils, in order."""
        return tuple(placed.pupil for placed in self.placings)

    @property
    def ideas(self) -> tuple[IdeaHeld, ...]:
        """Return who has which idea, those of most pupils first: how the group's minutes may be split."""
        if self.place is not GroupKind.FAMILY:
            return ()
        held: dict[str, list[str]] = {}
        for one in self.placings:
            held.setdefault(one.idea, []).append(one.pupil)
        return tuple(
            IdeaHeld(idea, tuple(held[idea]))
            for idea in sorted(held, key=lambda idea: (not idea, -len(held[idea]), idea))
        )

    @property
    def families(self) -> tuple[Family, ...]:
        """Return the families of its ideas, and of what may be one where no idea is named."""
        if self.place is not GroupKind.FAMILY:
            return ()
        found = {
            family
            for one in self.placings
            for family in ((by_id(one.idea).family,) if one.idea else one.families)
        }
        return tuple(family for family in Family if family in found)

    @property
    def seat(self) -> Sat:
        """Return what is kept of the group for whoever sits in it."""
        return Sat(self.name, self.key, self.id)


def evidence_of(held: IdeaHeld, findings: Iterable[Finding]) -> frozenset[str]:
    """Return the labels of the answers that fit an idea, of those who have it."""
    return frozenset(
        label
        for found in findings
        if found.pupil in held.pupils
        for one in found.fittings
        if one.pattern == held.idea
        for label in one.evidence
    )


def key_of(place: GroupKind, placings: Iterable[Placement]) -> str:
    """Return what a group is about, as it is kept: its families, or its place.

    >>> key_of(GroupKind.SLIPS, ())
    'slips only'
    """
    families = Group("", place, tuple(placings)).families
    return AND.join(family.value for family in families) or place.value


def place_of(key: str) -> GroupKind:
    """Return the place of a key.

    >>> place_of("slips only"), place_of("regrouping + numerator")
    (<GroupKind.SLIPS: 'slips only'>, <GroupKind.FAMILY: 'answers that fit patterns of one family'>)
    """
    return next((kind for kind in GroupKind if kind.value == key), GroupKind.FAMILY)


def main_family(group: Group) -> Family | None:
    """Return the family that most of a group's ideas are of (of equal ones the first); None where none is."""
    counted = Counter(by_id(one.idea).family for one in group.placings if one.idea)
    return min(counted, key=lambda one: (-counted[one], list(Family).index(one)), default=None)


def in_order(groups: Iterable[Group]) -> tuple[Group, ...]:
    """Put groups in order: those the teacher meets, by family; slips, talks, all right, nothing written."""
    places = (
        GroupKind.FAMILY,
        GroupKind.SLIPS,
        GroupKind.OWN_IDEA,
        GroupKind.INTERVIEW,
        GroupKind.EXTENSION,
        GroupKind.ABSENT,
    )
    families = list(Family)
    return tuple(
        sorted(
            groups,
            key=lambda one: (
                places.index(one.place),
                [families.index(family) for family in one.families],
                one.pupils[:1],
            ),
        )
    )
