"""Make tomorrow's groups of a solution: the meetings, then those who are not met, with their reasons."""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence

from msgspec.structs import replace

from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import (
    AnotherIdea,
    KeptHere,
    LikelierThanNot,
    MeetingsUsedUp,
    MovedHere,
    TooFewAlike,
    TooManyAlike,
    WhyPlaced,
)
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.diagnosis.notebook import Sat
from onewhole.marking.grouping.block import IdeaBlock, cut
from onewhole.marking.grouping.group import Group, in_order, key_of, main_family
from onewhole.marking.grouping.group_settings import GroupSettings
from onewhole.marking.grouping.idea import may_sit_with
from onewhole.marking.grouping.placement import Placement
from onewhole.misconceptions.catalogue import by_id

#: Those who are not met: slips and talks are each one list, whoever is in it.
_LISTS = (GroupKind.SLIPS, GroupKind.OWN_IDEA, GroupKind.INTERVIEW, GroupKind.ABSENT)


def parted(
    everyone: Sequence[Placement],
    held: Iterable[Sequence[IdeaBlock]],
    findings: Mapping[str, Finding],
    settings: GroupSettings,
    before: Mapping[str, Sat],
) -> tuple[Group, ...]:
    """Return tomorrow's groups in order, without names: ``held`` are the meetings, in blocks.

    Pupils with all right go further in even groups of at most the largest size; slips, talks and those who
    wrote nothing are each together.
    """
    meetings = [
        tuple(
            sorted(
                (_sits(one, findings[one.pupil], block) for block in blocks for one in block.placings),
                key=lambda one: one.pupil,
            )
        )
        for blocks in held
    ]
    seated = {one.pupil for placings in meetings for one in placings}
    rest = [one for one in everyone if one.pupil not in seated]
    ahead = [one for one in rest if one.place is GroupKind.EXTENSION]
    further = cut(ahead, -(-len(ahead) // settings.sizes.largest), before)
    lists = [(kind, tuple(one for one in rest if one.place is kind)) for kind in _LISTS]
    made = [
        *((GroupKind.FAMILY, placings) for placings in meetings),
        *((GroupKind.EXTENSION, placings) for placings in further),
        *lists,
    ]
    return in_order(
        Group("", place, placings, key_of(place, placings)) for place, placings in made if placings
    )


def _sits(one: Placement, found: Finding, block: IdeaBlock) -> Placement:
    """Return the placing of a pupil in a meeting: one whose finding is open says why it is no talk."""
    if one.place is GroupKind.FAMILY:
        return one
    families = may_sit_with(found)
    because = (*one.because, LikelierThanNot(families))
    return replace(one, place=GroupKind.FAMILY, because=because, families=families, idea=block.idea)


def with_reasons(groups: Sequence[Group], settings: GroupSettings) -> tuple[Group, ...]:
    """Say of everyone who sits with another idea, or apart from others of the same one, why that is so."""
    ideas = Counter(one.idea for group in groups for one in group.placings if one.idea)
    families = Counter(by_id(idea).family for idea in ideas.elements())
    meetings = sum(group.place.meets for group in groups)

    def why(one: Placement, group: Group) -> tuple[WhyPlaced, ...]:
        if not one.idea or not group.place.meets or isinstance(one.because[0], MovedHere | KeptHere):
            return ()
        family = by_id(one.idea).family
        if family is not main_family(group):
            if families[family] < settings.sizes.smallest:
                return (TooFewAlike(families[family]),)
            used = meetings >= settings.meets
            return (MeetingsUsedUp(settings.meets),) if used else (AnotherIdea(),)
        apart = any(other.idea == one.idea for each in groups if each is not group for other in each.placings)
        if apart and ideas[one.idea] > settings.sizes.largest:
            return (TooManyAlike(ideas[one.idea]),)
        return ()

    return tuple(
        replace(
            group,
            placings=tuple(replace(one, because=(*one.because, *why(one, group))) for one in group.placings),
        )
        for group in groups
    )
