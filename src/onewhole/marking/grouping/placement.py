"""Where one pupil belongs tomorrow, and why: told with the labels of the answers it comes from."""

from dataclasses import dataclass

from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import (
    AllRight,
    FitsFamilies,
    LeftBlank,
    MaybeSlips,
    NoSteadyPattern,
    NothingWritten,
    NotReadable,
    OtherFormWanted,
    SpeaksAgainst,
    TooFewToTell,
    WhyPlaced,
    Wrong,
)
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.reading.mark import PupilMarks, Verdict
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family


@dataclass(frozen=True, slots=True)
class Placement:
    """Where one pupil belongs: ``because`` says why, with labels, for the teacher's eyes.

    ``families`` are those of the patterns that fit, where the place is a family.
    """

    pupil: str
    place: GroupKind
    because: tuple[WhyPlaced, ...]
    families: tuple[Family, ...] = ()


def placement(pupil: PupilMarks, found: Finding) -> Placement:
    """Place one pupil.

    The first that holds: nothing was written; all is right (in amount); a pattern is likely; every wrong
    answer may be a slip with a fact; otherwise a talk. What cannot be read decides nothing, and is named.
    Source of the rule: ours.
    """
    blank = _labels(pupil, Verdict.BLANK)
    unread = _labels(pupil, Verdict.UNREADABLE)
    right = _labels(pupil, Verdict.RIGHT) + _labels(pupil, Verdict.FORM)
    families: tuple[Family, ...] = ()
    said: list[WhyPlaced]
    if len(blank) == len(pupil.marks):
        return Placement(pupil.pupil, GroupKind.ABSENT, (NothingWritten(),))
    if right and not found.wrong and not blank:
        place, said = GroupKind.EXTENSION, _all_right(pupil, len(right))
    elif found.status is Status.LIKELY:
        families = tuple(dict.fromkeys(by_id(pattern).family for pattern in found.patterns))
        place, said = GroupKind.FAMILY, _fitting(found, families)
    elif found.wrong and set(found.wrong) == set(found.slips):
        place, said = GroupKind.SLIPS, [MaybeSlips(found.wrong)]
    else:
        place, said = GroupKind.INTERVIEW, _unsettled(found)
    if blank:
        said.append(LeftBlank(blank))
    if unread:
        said.append(NotReadable(unread))
    return Placement(pupil.pupil, place, tuple(said), families)


def _labels(pupil: PupilMarks, verdict: Verdict) -> tuple[str, ...]:
    return tuple(mark.label for mark in pupil.marks if mark.verdict is verdict)


def _all_right(pupil: PupilMarks, right: int) -> list[WhyPlaced]:
    other = _labels(pupil, Verdict.FORM)
    return [AllRight(right), *([OtherFormWanted(other)] if other else [])]


def _fitting(found: Finding, families: tuple[Family, ...]) -> list[WhyPlaced]:
    said: list[WhyPlaced] = [FitsFamilies(found.evidence, families)]
    return [*said, SpeaksAgainst(found.against)] if found.against else said


def _unsettled(found: Finding) -> list[WhyPlaced]:
    said: list[WhyPlaced] = [Wrong(found.wrong)] if found.wrong else []
    if found.status is Status.POSSIBLE:
        said.append(TooFewToTell(found.evidence))
    elif found.status is Status.UNSTEADY:
        said.append(NoSteadyPattern())
    return said
