"""What the answers of one pupil may show, with odds, the evidence problem by problem, and what speaks against."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from onewhole.marking.chances import Chances, chances
from onewhole.marking.hypothesis import NO_PATTERN, Hypothesis, hypotheses
from onewhole.marking.mark import ClassMarks, PupilMarks, Verdict
from onewhole.marking.prior import Learnt, from_class
from onewhole.marking.reply import Reply, reply
from onewhole.marking.weighing import column, likelihoods, odds
from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.catalogue import shows
from onewhole.misconceptions.slip import Slip
from onewhole.number.impossible import Impossible
from onewhole.number.quantity import Quantity
from onewhole.statements.statement import Relation

#: Odds below this are not listed.
LEAST = Fraction(1, 1000)
#: From these odds on answers are said to fit; below, a talk with the child is the finding. A setting.
CONFIDENT = Fraction(9, 10)


@dataclass(frozen=True, slots=True)
class Supposed:
    """A set of patterns (none, one or two) and the share of the odds that it has."""

    patterns: tuple[str, ...]
    probability: Fraction


@dataclass(frozen=True, slots=True)
class Beside:
    """One problem as evidence: what the supposed patterns would write beside what was written.

    ``would_write`` is None where they cannot show; then a right answer is no evidence against them.
    ``speaks`` is ``for``, ``against`` or ``neither``.
    """

    label: str
    would_write: tuple[Outcome, ...] | None
    written: str
    speaks: str


@dataclass(frozen=True, slots=True)
class Diagnosis:
    """What the answers of one pupil may show.

    ``odds`` are all sets of patterns with a share of at least one in a thousand, the likeliest first; the set
    without patterns stands for "no steady pattern". They add up to at most 1, exactly. ``alike`` are the sets
    that this page cannot tell from the likeliest one. ``confident`` says whether those together reach the
    odds from which answers are said to fit.
    """

    pupil: str
    odds: tuple[Supposed, ...]
    alike: tuple[tuple[str, ...], ...]
    together: Fraction
    confident: bool
    evidence: tuple[Beside, ...]

    @property
    def patterns(self) -> tuple[str, ...]:
        """Return the ids of every pattern in the sets that cannot be told apart, in order."""
        return tuple(sorted({key for patterns in self.alike for key in patterns}))


@dataclass(frozen=True, slots=True)
class Tables:
    """Everything about a page that is worked out once for a class."""

    hypotheses: tuple[Hypothesis, ...]
    chances: tuple[Chances, ...]
    slips: tuple[tuple[Slip, ...], ...]


def tables(marks: ClassMarks) -> Tables:
    """Work out the tables of a page."""
    slips = tuple(shows(asked.problem.statement) for asked in marks.expected)
    rows = tuple(chances(asked, found) for asked, found in zip(marks.expected, slips, strict=True))
    return Tables(hypotheses(marks.expected), rows, slips)


def replies(marks: ClassMarks, pupil: PupilMarks) -> tuple[Reply | None, ...]:
    """Return the kind of each reply of a pupil; None where nothing was written or it cannot be read."""
    return tuple(
        None if mark.verdict in {Verdict.BLANK, Verdict.UNREADABLE} else reply(asked, _outcome(mark.written.read))
        for asked, mark in zip(marks.expected, pupil.marks, strict=True)
    )


def diagnose(
    marks: ClassMarks, learnt: Learnt = Learnt(), *, confident: Fraction = CONFIDENT
) -> tuple[Diagnosis, ...]:
    """Return what the answers of each pupil of a class may show, in the order of the pupils."""
    page = tables(marks)
    given = [replies(marks, pupil) for pupil in marks.pupils]
    likely = _likelihoods(page, given)
    priors = from_class(page.hypotheses, likely, learnt)
    return tuple(
        _diagnosis(page, pupil, row, odds(priors, weights), confident)
        for pupil, row, weights in zip(marks.pupils, given, likely, strict=True)
    )


def _likelihoods(page: Tables, given: Sequence[Sequence[Reply | None]]) -> list[tuple[int, ...]]:
    known: dict[tuple[int, Reply], tuple[int, ...]] = {}
    rows = []
    for row in given:
        columns = []
        for at, one in enumerate(row):
            if one is not None:
                if (at, one) not in known:
                    known[at, one] = column(page.hypotheses, page.chances[at], one)
                columns.append(known[at, one])
        rows.append(likelihoods(columns, len(page.hypotheses)))
    return rows


def _diagnosis(
    page: Tables,
    pupil: PupilMarks,
    given: Sequence[Reply | None],
    shares: Sequence[Fraction],
    confident: Fraction,
) -> Diagnosis:
    pairs = tuple(zip(page.hypotheses, shares, strict=True))
    none = sum((share for one, share in pairs if one in NO_PATTERN), Fraction(0))
    found = [Supposed(one.patterns, share) for one, share in pairs if one.steady]
    ordered = sorted([Supposed((), none), *found], key=lambda one: (-one.probability, one.patterns))
    best = max(found, key=lambda one: (one.probability, -len(one.patterns)), default=Supposed((), none))
    answered = [table for table, reply in zip(page.chances, given, strict=True) if reply is not None]
    same = _signature(best.patterns, answered)
    alike = tuple(one for one in found if _signature(one.patterns, answered) == same)
    together = sum((one.probability for one in alike), Fraction(0))
    return Diagnosis(
        pupil.pupil,
        tuple(one for one in ordered if one.probability >= LEAST),
        tuple(one.patterns for one in alike),
        together,
        together >= confident,
        _evidence(page, pupil, given, best.patterns),
    )


def _signature(patterns: tuple[str, ...], answered: Sequence[Chances]) -> object:
    """Return what a page can see of a set of patterns: equal for sets that it cannot tell apart."""
    rows = []
    for table in answered:
        acting = [key for key in patterns if key in table.shows]
        rows.append(frozenset(tuple(sorted(table.meant[key].items(), key=repr)) for key in acting))
    return tuple(rows)


def _evidence(
    page: Tables, pupil: PupilMarks, given: Sequence[Reply | None], patterns: tuple[str, ...]
) -> tuple[Beside, ...]:
    found = []
    for mark, reply_, table, slips in zip(pupil.marks, given, page.chances, page.slips, strict=True):
        acting = tuple(slip for slip in slips if slip.pattern in patterns and slip.pattern in table.shows)
        would = tuple(dict.fromkeys(slip.wrote for slip in acting)) or None
        speaks = "neither"
        if acting and reply_ is not None:
            speaks = "for" if any(reply_ in table.meant[slip.pattern] for slip in acting) else "against"
        found.append(Beside(mark.label, would, mark.written.text, speaks))
    return tuple(found)


def _outcome(read: object) -> Outcome:
    """Return an answer that was read; only these are asked for."""
    if isinstance(read, Quantity | Impossible | Relation):
        return read
    msg = "a blank or unreadable cell has no reply"
    raise TypeError(msg)
