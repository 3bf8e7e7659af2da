"""What pupils may talk about together tomorrow, and how far each pupil is from needing it."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations

from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.diagnosis import Diagnosis
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.grouping.placement import Placement
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family

#: Costs are hundredths: a pupil who certainly does not need a conversation costs 100 in it.
HUNDRED = 100
#: From these odds on a pupil without a likely pattern may sit with a family; our own.
MAY_SIT = Fraction(1, 2)


@dataclass(frozen=True, slots=True)
class Conversation:
    """One conversation: a place, and for the place of families the one or two that it is about.

    >>> Conversation(GroupKind.FAMILY, (Family.NUMERATOR,)).key
    'numerator'
    """

    place: GroupKind
    families: tuple[Family, ...] = ()

    @property
    def key(self) -> str:
        """Return the key under which it is kept from night to night."""
        return " + ".join(family.value for family in self.families) or self.place.value


def conversations(placings: Sequence[Placement], findings: dict[str, Finding]) -> tuple[Conversation, ...]:
    """Return what some pupil may need: families alone and two by two, slips, a talk."""
    needed = {family for one in placings for family in may_need(one, findings[one.pupil])}
    families = [family for family in Family if family in needed]
    pairs = [Conversation(GroupKind.FAMILY, pair) for pair in combinations(families, 2)]
    places = {one.place for one in placings}
    others = [Conversation(place) for place in (GroupKind.SLIPS, GroupKind.INTERVIEW) if place in places]
    return (*(Conversation(GroupKind.FAMILY, (family,)) for family in families), *pairs, *others)


def may_need(placed: Placement, found: Finding) -> tuple[Family, ...]:
    """Return the families a pupil may sit with: of a likely pattern, or one that is likelier than not."""
    if placed.place is GroupKind.FAMILY:
        return placed.families
    if placed.place is GroupKind.SLIPS:
        return ()
    return tuple(family for family in Family if _share(found.diagnosis, (family,)) >= MAY_SIT)


def cost(placed: Placement, found: Finding, talk: Conversation) -> int | None:
    """Return how far a pupil is from needing a conversation, from 0 to 100; None where it cannot be.

    It is what is missing from the odds to certainty. Pupils with a likely pattern always sit with families,
    those with slips only by themselves; the others talk, or sit with a family that is likelier than not.
    """
    if placed.place is GroupKind.SLIPS or talk.place is GroupKind.SLIPS:
        return 0 if placed.place is talk.place else None
    if talk.place is GroupKind.INTERVIEW:
        families = {family for family in Family if _share(found.diagnosis, (family,))}
        held = _share(found.diagnosis, tuple(families))
        return None if placed.place is GroupKind.FAMILY else int(HUNDRED * held)
    if placed.place is GroupKind.FAMILY:
        own = not set(placed.families).isdisjoint(talk.families)
        held = found.diagnosis.together if own else _share(found.diagnosis, talk.families)
        return HUNDRED - int(HUNDRED * held)
    if set(may_need(placed, found)).isdisjoint(talk.families):
        return None
    return HUNDRED - int(HUNDRED * _share(found.diagnosis, talk.families))


def _share(diagnosis: Diagnosis, families: Sequence[Family]) -> Fraction:
    """Return the odds of all sets with a pattern of one of these families."""
    held = (
        one.probability
        for one in diagnosis.odds
        if any(by_id(key).family in families for key in one.patterns)
    )
    return sum(held, Fraction(0))
