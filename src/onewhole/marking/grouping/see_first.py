"""Whom to see first tomorrow, and why."""

from collections.abc import Mapping, Sequence

from msgspec import Struct

from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import MaybeOneIdea, SteadyNotOurs, WhyFirst, WrongEachItsWay
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.grouping.class_ideas import ClassIdea, class_ideas
from onewhole.marking.grouping.group import Group
from onewhole.marking.reading.answer import Written
from onewhole.marking.reading.mark import PupilMarks

#: So many talks fit into the first minutes of a morning; our own.
SEEN_FIRST = 5
#: Of them so many are for children whom only a talk helps, where there are so many; our own.
TALKS_AT_LEAST = 2


class SeeFirst(Struct, frozen=True):
    """A pupil to talk with, why, the problem to ask about, and what was written there."""

    pupil: str
    because: WhyFirst
    ask_about: str
    wrote: Written


def see_first(
    pupils: Sequence[PupilMarks],
    findings: Sequence[Finding],
    groups: Sequence[Group],
    *,
    most: int = SEEN_FIRST,
) -> tuple[SeeFirst, ...]:
    """Return whom to see first: one child for each idea of the class, then those whose answers say least.

    The ideas stand as the class has them, that of most pupils first; of each it is the child whose answers
    fit it most often: that talk tells what the others may be thinking. Then come the children without a
    steady pattern, the most wrong answers ahead: only a talk helps them, so up to ``TALKS_AT_LEAST`` of them
    have a place whatever the number of ideas. Source: our own.
    """
    written = {pupil.pupil: pupil for pupil in pupils}
    found = {one.pupil: one for one in findings}
    talks = talk_first(findings, groups)
    room = max(0, most - min(len(talks), TALKS_AT_LEAST))
    shown = [one for one in class_ideas(pupils, findings) if one.show]
    chosen = [_of_idea(one, found, written) for one in shown[:room]]
    chosen.extend(_talk(one, written[one.pupil]) for one in talks)
    return tuple(chosen[:most])


def talk_first(findings: Sequence[Finding], groups: Sequence[Group]) -> tuple[Finding, ...]:
    """Return those whom only a talk helps, the most wrong answers ahead."""
    place = {pupil: group.place for group in groups for pupil in group.pupils}
    alone = {GroupKind.INTERVIEW, GroupKind.OWN_IDEA}
    talks = [found for found in findings if place[found.pupil] in alone and found.wrong]
    return tuple(sorted(talks, key=lambda found: (-len(found.wrong), found.pupil)))


def _of_idea(idea: ClassIdea, found: Mapping[str, Finding], written: Mapping[str, PupilMarks]) -> SeeFirst:
    """Return the pupil whose answers fit an idea most often, with the least against it."""
    code = min(
        idea.pupils,
        key=lambda one: (-len(idea.fits[one]), idea.show not in idea.fits[one], len(found[one].against), one),
    )
    fits = idea.fits[code]
    return _first(MaybeOneIdea(fits), written[code], idea.show if idea.show in fits else fits[0])


def _talk(found: Finding, pupil: PupilMarks) -> SeeFirst:
    steady = found.status is Status.UNLISTED
    because = SteadyNotOurs(found.wrong) if steady else WrongEachItsWay(found.wrong)
    return _first(because, pupil, found.wrong[0])


def _first(because: WhyFirst, pupil: PupilMarks, label: str) -> SeeFirst:
    written = next(mark.written for mark in pupil.marks if mark.label == label)
    return SeeFirst(pupil.pupil, because, label, written)
