"""Where one pupil belongs tomorrow, and why: told with the labels of the answers it comes from."""

from collections.abc import Sequence

from msgspec import Struct

from onewhole.findings.attendance import PaperWord
from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import (
    AllRight,
    FitsIdea,
    LeftBlank,
    MaybeSlips,
    MayFit,
    NoPaper,
    NoSteadyPattern,
    NothingWritten,
    NotReadable,
    NotToldApart,
    OtherFormWanted,
    SpeaksAgainst,
    SteadyNotOurs,
    WhyPlaced,
    Wrong,
)
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.diagnosis.notebook import Stay
from onewhole.marking.grouping.idea import fitted, shared_ideas
from onewhole.marking.reading.mark import PupilMarks, Verdict
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family

#: With all right, one problem in so many may be left blank without a word about it; our own.
FEW_BLANKS = 4
#: So many slips are few, and so are one in so many of the answers; our own.
FEW_SLIPS, ONE_IN = 2, 4


class Placement(Struct, frozen=True):
    """Where one pupil belongs: ``because`` says why, with labels, for the teacher's eyes.

    ``families`` are those of the patterns that fit, where the place is a family, and ``idea`` the id of the
    pattern that most others share. ``stays`` says whether the teacher put the pupil there, and for how long.
    """

    pupil: str
    place: GroupKind
    because: tuple[WhyPlaced, ...]
    families: tuple[Family, ...] = ()
    idea: str = ""
    stays: Stay = Stay.FREE


def placements(pupils: Sequence[PupilMarks], findings: Sequence[Finding]) -> tuple[Placement, ...]:
    """Return where each pupil belongs, in the order of their codes."""
    by_pupil = {found.pupil: found for found in findings}
    ideas = shared_ideas(findings)
    return tuple(
        sorted(
            (placement(one, by_pupil[one.pupil], ideas.get(one.pupil, "")) for one in pupils),
            key=lambda one: one.pupil,
        )
    )


def placement(pupil: PupilMarks, found: Finding, idea: str = "") -> Placement:
    """Place one pupil; ``idea`` is the likely pattern that most others share (left out: the first).

    The first that holds: nothing was written; all is right (in amount) and little is blank; a pattern is
    likely; all that was written is right, or every wrong answer may be a slip and they are few: a word at the
    desk; it is steady and no pattern that is listed; otherwise a talk. What cannot be read decides nothing,
    and is named.
    Source of the rule: ours.
    """
    blank = _labels(pupil, Verdict.BLANK)
    unread = _labels(pupil, Verdict.UNREADABLE)
    right = _labels(pupil, Verdict.RIGHT) + _labels(pupil, Verdict.FORM)
    families: tuple[Family, ...] = ()
    lead = ""
    said: list[WhyPlaced]
    written = len(pupil.marks) - len(blank)
    if not written:
        because = NothingWritten() if pupil.paper is PaperWord.HERE else NoPaper(pupil.paper)
        return Placement(pupil.pupil, GroupKind.ABSENT, (because,))
    if right and not found.wrong and len(blank) * FEW_BLANKS <= len(pupil.marks):
        place, said = GroupKind.EXTENSION, _all_right(pupil, len(right))
    elif right and not found.wrong and len(blank) <= len(right):
        place, said = GroupKind.SLIPS, _all_right(pupil, len(right))
    elif found.status is Status.LIKELY:
        lead = idea or fitted(found)[0]
        families = tuple(dict.fromkeys(by_id(pattern).family for pattern in (lead, *found.patterns)))
        place, said = GroupKind.FAMILY, _fitting(found, lead)
    elif found.wrong and set(found.wrong) == set(found.slips) and are_few(len(found.wrong), written):
        place, said = GroupKind.SLIPS, [MaybeSlips(found.wrong)]
    elif found.status is Status.UNLISTED and found.wrong:
        place, said = GroupKind.OWN_IDEA, [SteadyNotOurs(found.wrong)]
    else:
        place, said = GroupKind.INTERVIEW, _unsettled(found)
    if blank:
        said.append(LeftBlank(blank))
    if unread:
        said.append(NotReadable(unread))
    return Placement(pupil.pupil, place, tuple(said), families, lead)


def are_few(slips: int, written: int) -> bool:
    """Say whether so many of the answers written, each one step beside right, are as few as slips are.

    Five of ten that are all one too many are hardly slips, whatever else they are.

    >>> are_few(2, 3), are_few(5, 20), are_few(5, 10)
    (True, True, False)
    """
    return slips <= FEW_SLIPS or slips * ONE_IN <= written


def _labels(pupil: PupilMarks, verdict: Verdict) -> tuple[str, ...]:
    return tuple(mark.label for mark in pupil.marks if mark.verdict is verdict)


def _all_right(pupil: PupilMarks, right: int) -> list[WhyPlaced]:
    other = _labels(pupil, Verdict.FORM)
    return [AllRight(right), *([OtherFormWanted(other)] if other else [])]


def _fitting(found: Finding, idea: str) -> list[WhyPlaced]:
    """Say which answers fit the idea, what else lives beside it, and what the answers do not tell from it."""
    fits = {one.pattern: one.evidence for one in found.fittings}
    beside = {key for one in found.diagnosis.alike if idea in one for key in one} - {idea}
    apart = tuple(key for key in found.patterns if key != idea and key not in beside)
    said: list[WhyPlaced] = [FitsIdea(fits[key], key) for key in (idea, *sorted(beside)) if fits.get(key)]
    if apart:
        said.append(NotToldApart(apart))
    return [*said, SpeaksAgainst(found.against)] if found.against else said


def _unsettled(found: Finding) -> list[WhyPlaced]:
    said: list[WhyPlaced] = [Wrong(found.wrong)] if found.wrong else []
    if found.status is Status.POSSIBLE:
        said.append(MayFit(found.evidence))
    elif found.status is Status.UNSTEADY and len(found.wrong) > 1:
        said.append(NoSteadyPattern())
    return said
