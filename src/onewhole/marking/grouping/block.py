"""Pupils who are seated together: those of one idea, as many as one group holds."""

from collections import Counter
from collections.abc import Mapping, Sequence

from msgspec import Struct

from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.diagnosis.notebook import Sat
from onewhole.marking.grouping.idea import fitted, may_sit_with, share_of
from onewhole.marking.grouping.placement import Placement
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family

#: Costs are hundredths: a pupil who certainly does not need a talk costs 100 in it.
HUNDRED = 100


class IdeaBlock(Struct, frozen=True):
    """Pupils whom no group parts: likely ones of one idea, or one pupil whose finding is still open.

    ``family`` is that of the ``idea`` (empty where an open finding names none). An open pupil may have a talk
    instead: ``talk`` is what that costs, ``here`` what sitting with the family costs, both from 0 to 100.
    """

    placings: tuple[Placement, ...]
    family: Family
    idea: str
    here: int = 0
    talk: int | None = None

    @property
    def pupils(self) -> tuple[str, ...]:
        """Return the codes of the pupils, in order."""
        return tuple(placed.pupil for placed in self.placings)


def blocks(
    placings: Sequence[Placement], findings: Mapping[str, Finding], before: Mapping[str, Sat], largest: int
) -> tuple[IdeaBlock, ...]:
    """Return the blocks of a class, in the order of families, ideas and codes.

    An idea that more pupils share than one group holds is cut into as few even parts as it can be; those who
    sat together ``before`` stay together where that comes out even.
    """
    ideas: dict[str, list[Placement]] = {}
    made = []
    for one in placings:
        if one.place is GroupKind.FAMILY:
            ideas.setdefault(one.idea, []).append(one)
    for idea, alike in ideas.items():
        parts = cut(alike, -(-len(alike) // largest), before)
        made += [IdeaBlock(part, by_id(idea).family, idea) for part in parts]
    made += [
        _open(one, findings[one.pupil], families[0], ideas)
        for one in placings
        if one.place is GroupKind.INTERVIEW and (families := may_sit_with(findings[one.pupil]))
    ]
    order = list(Family)
    return tuple(sorted(made, key=lambda one: (order.index(one.family), one.idea, one.pupils)))


def _open(
    one: Placement, found: Finding, family: Family, ideas: Mapping[str, Sequence[Placement]]
) -> IdeaBlock:
    """Return the block of a pupil whose finding is open: with the idea of others where it may be theirs."""
    named = sorted(
        (key for key in fitted(found) if by_id(key).family is family),
        key=lambda key: (-len(ideas.get(key, ())), key),
    )
    held = share_of(found.diagnosis, tuple(Family))
    here = HUNDRED - int(HUNDRED * share_of(found.diagnosis, (family,)))
    return IdeaBlock((one,), family, next(iter(named), ""), here, int(HUNDRED * held))


def cut(placings: Sequence[Placement], parts: int, sat: Mapping[str, Sat]) -> list[tuple[Placement, ...]]:
    """Cut into even parts, keeping together those who sat together."""
    row = sorted(placings, key=lambda one: one.pupil)
    sizes = [len(row) // parts + (at < len(row) % parts) for at in range(parts)] if row else []
    together = Counter(sat[one.pupil].group for one in row if one.pupil in sat)
    groups = sorted(together, key=lambda group: (-together[group], group))
    found: list[list[Placement]] = []
    for at, size in enumerate(sizes):
        core = [one for one in row if one.pupil in sat and groups[at:] and sat[one.pupil].group == groups[at]]
        found.append(core[:size])
    for part, size in zip(found, sizes, strict=True):
        seated = {one.pupil for each in found for one in each}
        waiting = [one for one in row if one.pupil not in seated]
        part.extend(waiting[: size - len(part)])
    return [tuple(sorted(part, key=lambda one: one.pupil)) for part in found]
