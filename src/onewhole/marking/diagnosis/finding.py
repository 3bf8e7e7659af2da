"""What the answers of one pupil may show: a set of patterns, narrowed over the problems.

A right answer on a problem that cannot show a pattern is no evidence about it.
"""

from collections.abc import Hashable, Mapping, Sequence
from fractions import Fraction
from types import MappingProxyType

from msgspec import Struct

from onewhole.findings.in_answer import Remark
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.diagnosis import Diagnosis, diagnose
from onewhole.marking.diagnosis.evidence import Speaks
from onewhole.marking.reading.expected import Expected, is_fact_slip
from onewhole.marking.reading.mark import ClassMarks, Mark, PupilMarks, Verdict

#: The caution shown with every finding.
CAUTION = "A pattern found in a few answers is a hint for a talk with the child, never a label."

#: So many exact fits on differently built problems make a pattern likely, where the odds say so too.
LIKELY_FROM = 2
#: With exact fits on recent nights so many times as many answers of tonight may speak against; our own.
TOLERATED = 2
#: From these odds on a set of patterns that some answer fits is possible; below, nothing is named. Set on
#: invented classes (docs/lab.md).
POSSIBLE_FROM = Fraction(1, 4)
#: From these odds on, and with so many answers that are wrong in more than a slip, a steady idea that is not
#: listed is the finding; our own.
UNLISTED_FROM, TWO = Fraction(1, 2), 2


class Fitting(Struct, frozen=True):
    """One pattern beside the answers of one pupil: the labels that fit it, and those that speak against it.

    ``against`` are problems on which the pattern would have shown, and something else was written.
    """

    pattern: str
    evidence: tuple[str, ...]
    against: tuple[str, ...]


class Finding(Struct, frozen=True):
    """What the answers of one pupil may show.

    ``fittings`` are the patterns that fit, in the order of their ids; where they are not alternatives but two
    that live together, the odds say so. ``wrong`` are the labels of all wrong answers, ``slips`` of those
    that may be a slip with a fact. ``diagnosis`` has the odds.
    """

    pupil: str
    status: Status
    fittings: tuple[Fitting, ...]
    wrong: tuple[str, ...]
    slips: tuple[str, ...]
    diagnosis: Diagnosis

    @property
    def patterns(self) -> tuple[str, ...]:
        """Return the ids of the patterns that fit."""
        return tuple(fitting.pattern for fitting in self.fittings)

    @property
    def evidence(self) -> tuple[str, ...]:
        """Return the labels of the answers that fit, in the order of the page."""
        return self._labels({label for fitting in self.fittings for label in fitting.evidence})

    @property
    def recorded(self) -> bool:
        """Say whether a dated record is kept of it: one answer that fits is a mark in the grid, no more."""
        return self.status is not Status.POSSIBLE or len(self.evidence) >= TWO

    @property
    def status_unnamed(self) -> Status:
        """Return what is said where no pattern is named."""
        return _unnamed(self.wrong, self.slips)

    @property
    def against(self) -> tuple[str, ...]:
        """Return the labels that speak against one of the patterns, in the order of the evidence of each."""
        return tuple(dict.fromkeys(label for fitting in self.fittings for label in fitting.against))

    def _labels(self, chosen: set[str]) -> tuple[str, ...]:
        return tuple(label for label in self.wrong if label in chosen)


def findings(
    marked: ClassMarks,
    diagnoses: Sequence[Diagnosis] | None = None,
    recent: Mapping[str, Mapping[str, int]] = MappingProxyType({}),
) -> tuple[Finding, ...]:
    """Return what the answers of each pupil may show, in the order of the pupils.

    ``diagnoses`` are those of the class, in the same order; they are worked out where they are not given.
    ``recent`` are the exact fits of recent nights by pupil and pattern.
    """
    known = diagnose(marked) if diagnoses is None else diagnoses
    return tuple(
        finding(marked.expected, pupil, one, recent.get(pupil.pupil, {}))
        for pupil, one in zip(marked.pupils, known, strict=True)
    )


def finding(
    expected: Sequence[Expected],
    pupil: PupilMarks,
    diagnosis: Diagnosis,
    recent: Mapping[str, int] = MappingProxyType({}),
) -> Finding:
    """Return what the answers of one pupil may show.

    *Likely*: the odds of one or two patterns reach the confidence asked for, and two or more answers are
    exactly what they write, on differently built problems (no twins), and fewer speak against them than for;
    the answers of a talk, and the exact fits of recent nights (``recent``, by pattern), count among them.
    *Possible*: an answer fits, and the odds are at least 1 in 4. *Steady, not listed*: a steady idea that no
    pattern describes is likelier than not, and two or more answers are wrong in more than slips; it stands
    before a possible pattern where it is the likelier one. *No steady pattern*: something is wrong, it is
    more than slips with facts, and nothing steady is possible. *None* otherwise. Which answers fit, and which
    speak against, is asked of the tables that the odds come from; a pattern with a fact slip beside it counts
    neither for nor against.

    Source: the rule is ours. Looking for the same kind of answer more than once, slips set apart: VanLehn
    (1982); many wrong rules are used once and dropped: Tatsuoka, ed. (1984), ED 257 665 (both abstracts).
    """
    wrong = tuple(mark.label for mark in pupil.marks if mark.verdict is Verdict.WRONG)
    slips = tuple(mark.label for mark in pupil.marks if _may_be_slip(mark))
    if diagnosis.confident and _twice(expected, pupil, diagnosis, recent):
        status = Status.LIKELY
    elif diagnosis.unlisted >= max(UNLISTED_FROM, diagnosis.together) and len(wrong) - len(slips) >= TWO:
        status = Status.UNLISTED
    elif diagnosis.labels(Speaks.FOR) and diagnosis.together >= POSSIBLE_FROM:
        status = Status.POSSIBLE
    else:
        status = _unnamed(wrong, slips)
    named = diagnosis.patterns if status in {Status.LIKELY, Status.POSSIBLE} else ()
    fittings = tuple(_fitting(pattern, diagnosis) for pattern in named)
    return Finding(pupil.pupil, status, fittings, wrong, slips, diagnosis)


def _unnamed(wrong: Sequence[str], slips: Sequence[str]) -> Status:
    return Status.UNSTEADY if len(wrong) > len(slips) else Status.NONE


def _twice(
    expected: Sequence[Expected], pupil: PupilMarks, diagnosis: Diagnosis, recent: Mapping[str, int]
) -> bool:
    """Say whether answers fit exactly on differently built problems, and fewer speak against than for.

    Answers of a talk and those of recent nights count as those of the page do; one that fits must stand on
    the page itself, and be exact where none of a recent night is. With fits of recent nights, twice as many
    of tonight may speak against.
    """
    exact = [asked for asked, one in zip(expected, diagnosis.evidence, strict=True) if one.exact]
    told = [asked.expected for asked, one in zip(pupil.asked, diagnosis.asked, strict=True) if one.exact]
    before = max((sum(recent.get(key, 0) for key in ids) for ids in diagnosis.alike), default=0)
    on_page = bool(exact) or (before > 0 and bool(diagnosis.labels(Speaks.FOR)))
    enough = _differently_built([*exact, *told]) + before >= LIKELY_FROM
    fits, against = diagnosis.speaking(Speaks.FOR), diagnosis.speaking(Speaks.AGAINST)
    fewer = against < fits or (before > 0 and against <= TOLERATED * fits)
    return on_page and enough and fewer


def _fitting(pattern: str, diagnosis: Diagnosis) -> Fitting:
    return Fitting(
        pattern,
        tuple(one.label for one in diagnosis.evidence if pattern in one.fits),
        tuple(one.label for one in diagnosis.evidence if pattern in one.against),
    )


def _may_be_slip(mark: Mark) -> bool:
    return mark.verdict is Verdict.WRONG and (
        Remark.MAY_BE_SLIP in mark.remarks or any(is_fact_slip(pattern) for pattern in mark.fits)
    )


def _differently_built(problems: Sequence[Expected]) -> int:
    builds: set[Hashable] = {asked.built for asked in problems}
    return len(builds)
