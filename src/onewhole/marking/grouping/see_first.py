"""Whom to see first tomorrow, and why."""

from collections.abc import Sequence
from dataclasses import dataclass

from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import MaybeOneIdea, SteadyNotOurs, WhyFirst, WrongEachItsWay
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.grouping.group import Group
from onewhole.marking.reading.answer import Written
from onewhole.marking.reading.mark import PupilMarks

#: So many talks fit into the first minutes of a morning; our own.
SEEN_FIRST = 5


@dataclass(frozen=True, slots=True)
class SeeFirst:
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
    """Return whom to see first: those whose answers say least, then those with the most evidence.

    A child without a steady pattern is helped by a talk and by nothing else, so such children come first,
    the most wrong answers ahead; then, for each idea, the child whose answers fit it most often: that talk
    tells what the others of the group may be thinking. Source: our own.
    """
    place = {pupil: group.place for group in groups for pupil in group.pupils}
    alone = {GroupKind.INTERVIEW, GroupKind.OWN_IDEA}
    talks = [found for found in findings if place[found.pupil] in alone and found.wrong]
    steady = [found for found in findings if found.status is Status.LIKELY]
    talks.sort(key=lambda found: (-len(found.wrong), found.pupil))
    steady.sort(key=lambda found: (-len(found.evidence), len(found.against), found.pupil))
    ideas = {found.patterns: found for found in reversed(steady)}
    steady = [found for found in steady if ideas[found.patterns] is found]
    written = {pupil.pupil: pupil for pupil in pupils}
    chosen = [_talk(found, written[found.pupil]) for found in talks]
    chosen.extend(_steady(found, written[found.pupil]) for found in steady)
    return tuple(chosen[:most])


def _talk(found: Finding, pupil: PupilMarks) -> SeeFirst:
    steady = found.status is Status.UNLISTED
    return _first(SteadyNotOurs(found.wrong) if steady else WrongEachItsWay(found.wrong), pupil)


def _steady(found: Finding, pupil: PupilMarks) -> SeeFirst:
    return _first(MaybeOneIdea(found.evidence), pupil)


def _first(because: WhyFirst, pupil: PupilMarks) -> SeeFirst:
    label = because.labels[0]
    written = next(mark.written for mark in pupil.marks if mark.label == label)
    return SeeFirst(pupil.pupil, because, label, written)
