"""When a reason for a pupil's place is true: one predicate each, from marks, findings and groups alone."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import assert_never

from onewhole.findings.attendance import PaperWord
from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import (
    AllRight,
    AnotherIdea,
    FindingSetAside,
    FitsIdea,
    KeptHere,
    LeftBlank,
    LikelierThanNot,
    MaybeSlips,
    MayFit,
    MeetingsUsedUp,
    MovedHere,
    NoPaper,
    NoSteadyPattern,
    NothingWritten,
    NotReadable,
    NotToldApart,
    OtherFormWanted,
    SpeaksAgainst,
    SteadyNotOurs,
    TooFewAlike,
    TooManyAlike,
    WhyPlaced,
    Wrong,
)
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.group_settings import GroupSettings
from onewhole.marking.grouping.placement import Placement
from onewhole.marking.reading.answer import Blank, Unreadable
from onewhole.marking.reading.expected import Expected
from onewhole.marking.reading.mark import Mark, PupilMarks, Verdict
from onewhole.misconceptions.attempt import answer_claim
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family


@dataclass(frozen=True, slots=True)
class Place:
    """One pupil's place: the marks, the finding, the group and all groups; ``said`` by the answers alone."""

    marks: PupilMarks
    found: Finding
    placing: Placement
    group: Group
    groups: Sequence[Group]
    said: Sequence[Group]
    settings: GroupSettings
    asked: Sequence[Expected]
    put: frozenset[str] = frozenset()

    def labels(self, *verdicts: Verdict) -> tuple[str, ...]:
        """Return the labels of the answers with these verdicts."""
        return tuple(mark.label for mark in self.marks.marks if mark.verdict in verdicts)

    def alike(self, holds: Callable[[str], bool]) -> int:
        """Count the pupils of all groups with an idea of which this holds."""
        return sum(holds(one.idea) for group in self.groups for one in group.placings if one.idea)


def _is_blank(at: Place) -> bool:
    return set(at.labels(Verdict.BLANK)) == {mark.label for mark in at.marks.marks}


def is_true(why: WhyPlaced, at: Place) -> bool:
    """Say whether a reason is true of a pupil's place."""
    match why:
        case NothingWritten():
            return _is_blank(at) and at.marks.paper is PaperWord.HERE
        case NoPaper(word):
            return _is_blank(at) and word is at.marks.paper is not PaperWord.HERE
        case AllRight(count):
            right = at.labels(Verdict.RIGHT, Verdict.FORM)
            return count == len(right) > 0 and not at.labels(Verdict.WRONG)
        case OtherFormWanted(labels):
            return bool(labels) and labels == at.labels(Verdict.FORM)
        case Wrong(labels) | SteadyNotOurs(labels):
            steady = at.found.status is Status.UNLISTED
            return labels == at.labels(Verdict.WRONG) != () and steady is isinstance(why, SteadyNotOurs)
        case LeftBlank(labels):
            return labels == at.labels(Verdict.BLANK) != ()
        case NotReadable(labels):
            return labels == at.labels(Verdict.UNREADABLE) != ()
        case MaybeSlips(labels):
            return labels == at.labels(Verdict.WRONG) != () and set(labels) == set(at.found.slips)
        case NoSteadyPattern():
            return at.found.status is Status.UNSTEADY and bool(at.labels(Verdict.WRONG))
        case FitsIdea() | NotToldApart() | SpeaksAgainst() | MayFit() | LikelierThanNot():
            return _is_found(why, at)
        case TooFewAlike() | TooManyAlike() | MeetingsUsedUp() | AnotherIdea():
            return _is_grouped(why, at)
        case MovedHere(name, because):
            return at.marks.pupil in at.put and _was(name, because, at)
        case KeptHere(name, because):
            return at.marks.pupil not in at.put and _was(name, because, at)
        case FindingSetAside():
            return at.found.status in {Status.UNSTEADY, Status.NONE}
        case _:
            assert_never(why)


def _is_found(why: FitsIdea | NotToldApart | SpeaksAgainst | MayFit | LikelierThanNot, at: Place) -> bool:
    """Say whether what is told of a finding is in it, and every answer named does what is said of it."""
    marks = {mark.label: mark for mark in at.marks.marks}
    match why:
        case FitsIdea(labels, idea):
            likely = at.found.status is Status.LIKELY and idea in at.found.patterns
            return likely and bool(labels) and all(_fits(idea, marks[label], at) for label in labels)
        case NotToldApart(ideas):
            alike = at.found.diagnosis.alike
            apart = all(not {at.placing.idea, idea} <= set(one) for one in alike for idea in ideas)
            return bool(ideas) and apart and set(ideas) <= set(at.found.patterns) - {at.placing.idea}
        case SpeaksAgainst(labels):
            return bool(labels) and all(marks[label].verdict is not Verdict.BLANK for label in labels)
        case MayFit(labels):
            may = at.found.status is Status.POSSIBLE
            return (
                may
                and bool(labels)
                and all(any(_fits(idea, marks[label], at) for idea in at.found.patterns) for label in labels)
            )
        case LikelierThanNot(families):
            return bool(families) and all(_share(at.found, family) * 2 >= 1 for family in families)
        case _:
            assert_never(why)


def _is_grouped(why: TooFewAlike | TooManyAlike | MeetingsUsedUp | AnotherIdea, at: Place) -> bool:
    """Say whether what is told of a group is so, counted in the groups themselves."""
    own = at.placing.idea
    if not own:
        return False
    ideas = [one.idea for one in at.group.placings if one.idea]
    most = max(sum(by_id(idea).family is family for idea in ideas) for family in Family)
    family = by_id(own).family
    several = len({by_id(idea).family for idea in ideas}) > 1
    fewer = sum(by_id(idea).family is family for idea in ideas) <= most
    match why:
        case TooFewAlike(count):
            alike = at.alike(lambda idea: by_id(idea).family is family)
            return count == alike < at.settings.sizes.smallest and several and fewer
        case TooManyAlike(count):
            others = [one.idea for group in at.groups if group is not at.group for one in group.placings]
            return count == at.alike(lambda idea: idea == own) > at.settings.sizes.largest and own in others
        case MeetingsUsedUp(meets):
            met = sum(group.place is GroupKind.FAMILY for group in at.groups)
            return meets == at.settings.meets <= met and several and fewer
        case AnotherIdea():
            return several and fewer
        case _:
            assert_never(why)


def _was(name: str, because: Sequence[WhyPlaced], at: Place) -> bool:
    """Say whether the answers alone seat the pupil in the group of that name, for reasons that are true."""
    said = next(group for group in at.said if at.marks.pupil in group.pupils)
    rest = all(is_true(one, at) for one in because if not isinstance(one, MovedHere | KeptHere))
    return said.name == name != at.group.name and rest


def _fits(idea: str, mark: Mark, at: Place) -> bool:
    """Say whether an answer is what a pattern writes, worked out anew: the same amount, or named so."""
    problem = next(asked.problem for asked in at.asked if asked.problem.label == mark.label)
    slip, read = by_id(idea).slip(problem.statement), mark.written.read
    if idea in mark.patterns:
        return True
    if slip is None or isinstance(read, Blank | Unreadable):
        return False
    return answer_claim(slip.wrote) == answer_claim(read)


def _share(found: Finding, family: Family) -> float:
    return float(
        sum(
            one.probability
            for one in found.diagnosis.odds
            if any(by_id(key).family is family for key in one.patterns)
        )
    )
