"""The prior of a class: what is assumed before its answers, what they add, how that decays."""

from collections.abc import Mapping, Sequence
from datetime import date
from enum import Enum
from fractions import Fraction

from msgspec import Struct, field

from onewhole.marking.diagnosis.hypothesis import Done, Hypothesis, Reliability
from onewhole.marking.diagnosis.weighing import weights
from onewhole.problems.traps import is_core

#: Prior: of a thousand pupils so many have one steady pattern in subtraction, and in the other operations.
#: That 13 in 100 pupils of grades 2 to 6 had a systematic error in subtracting, and 5 to 6 in adding,
#: multiplying and dividing: Cox (1974), ED 092 407 (abstract), for columns of whole numbers. That it holds
#: for mixed numbers that are added or taken away is our own assumption, and so is how many have two.
STEADY_TAKING, STEADY_COUNTED, STEADY_TWO = 130, 55, 20
#: Where nothing is worked out (numbers are compared, put in order, rounded, written in other units or forms,
#: or listed), where a fraction, a decimal or a measure is multiplied or divided, and where there are several
#: steps, Cox counted nothing. That it is as many as in subtracting is our own assumption; where decimals are
#: compared it is more (about 40 in 100 of Year 5 choose by length: Steinle & Stacey, summary, University of
#: Melbourne).
STEADY_OTHER = 130
#: So many have a steady idea that no pattern describes; set on invented classes (docs/lab.md).
STEADY_UNLISTED, STEADY_AKIN, STEADY_PARTLY, STEADY_LIKE = 25, 6, 2, 10
#: The others, by their reliability; our own assumption.
RELIABILITY = {Reliability.SOUND: 510, Reliability.SHAKY: 210, Reliability.SCATTERED: 130}
#: A pattern about regrouping or the pieces, one unit after another, has so many times the prior of another
#: one; our own. In columns those are the errors that were counted most (Raghubar et al. 2009, n = 291;
#: Vermeulen et al. 2020, 264 pupils; both through a research note).
CORE = 3

#: The strength of the prior, in pupils whose answers were read; our own.
AS_PUPILS = 12
#: The half-life, in days, of what was learnt from a class; our own. (Of pupils with a systematic error, 23 in
#: 100 still had one a year later: Cox 1974.)
HALF_LIFE_DAYS = 14
BILLION = 1_000_000_000
THOUSAND = 1000


class Learnt(Struct, frozen=True):
    """What earlier nights of a class have shown: how many pupils' worth of evidence for each hypothesis.

    Counts are thousandths of a pupil, by :func:`key_of` of the hypothesis; ``on`` is the day of the last
    night.
    """

    counts: Mapping[str, int] = field(default_factory=dict)
    on: date | None = None

    def by(self, day: date) -> "Learnt":
        """Return what is left on a later day, with a half-life of 14 days; all of it on a day before ``on``.

        >>> Learnt({"A01": 2000}, date(2026, 11, 10)).by(date(2026, 11, 24)).counts
        {'A01': 1000}
        """
        if self.on is None or day <= self.on:
            return self
        halves, rest = divmod((day - self.on).days, HALF_LIFE_DAYS)
        faded = {
            key: (count >> halves) * (2 * HALF_LIFE_DAYS - rest) // (2 * HALF_LIFE_DAYS)
            for key, count in self.counts.items()
        }
        return Learnt({key: count for key, count in faded.items() if count}, day)

    def and_night(self, counts: Mapping[str, int], day: date) -> "Learnt":
        """Add what a night showed to what is left of earlier ones.

        >>> Learnt({"A01": 2000}, date(2026, 11, 10)).and_night({"A01": 500}, date(2026, 11, 24)).counts
        {'A01': 1500}
        """
        found = dict(self.by(day).counts)
        for key, count in counts.items():
            found[key] = found.get(key, 0) + count
        return Learnt(found, day if self.on is None else max(day, self.on))

    def plus(self, other: "Learnt") -> "Learnt":
        """Return this with what is known from elsewhere, as it stands: it does not fade with this one.

        >>> Learnt({"A01": 2000}, date(2026, 11, 10)).plus(Learnt({"A01": 500, "A02": 3})).counts
        {'A01': 2500, 'A02': 3}
        """
        keys = dict.fromkeys((*self.counts, *other.counts))
        return Learnt({key: self.counts.get(key, 0) + other.counts.get(key, 0) for key in keys}, self.on)


NOTHING = Learnt()


def key_of(hypothesis: Hypothesis) -> str:
    """Return the name under which evidence for a hypothesis is kept.

    >>> key_of(Hypothesis(Reliability.SOUND, ("A10", "A01")))
    'A01 A10'
    """
    if hypothesis.unlisted is not None:
        kind = "akin" if hypothesis.akin else hypothesis.unlisted.value
        return "-".join(filter(None, ("unlisted", kind, hypothesis.like or hypothesis.akin)))
    if hypothesis.only is not None:
        return f"{hypothesis.patterns[0]}-{hypothesis.only.value}"
    return " ".join(hypothesis.ids) or hypothesis.reliability.value


def supposed(hypotheses: Sequence[Hypothesis], learnt: Learnt = NOTHING) -> tuple[int, ...]:
    """Return the prior of each hypothesis before tonight's answers, in billionths of a pupil.

    The assumed shares count as 12 pupils, and what was learnt on earlier nights is added to them.
    """
    raw = _raw(hypotheses)
    whole = sum(raw)
    return tuple(
        max(
            1,
            round(AS_PUPILS * BILLION * share / whole)
            + learnt.counts.get(key_of(one), 0) * BILLION // THOUSAND,
        )
        for one, share in zip(hypotheses, raw, strict=True)
    )


def from_class(
    hypotheses: Sequence[Hypothesis], likelihoods: Sequence[Sequence[int]], learnt: Learnt = NOTHING
) -> tuple[tuple[int, ...], ...]:
    """Return for each pupil the prior of each hypothesis, learnt from the others of the class.

    Empirical Bayes in one step: the prior, plus the posterior odds of every other pupil under it. A pupil's
    own answers are left out, so that nobody's answers count twice. The order of the pupils makes no
    difference, and a pupil's own answers do not change that pupil's prior.
    """
    base = supposed(hypotheses, learnt)
    own = [_shares(base, row) for row in likelihoods]
    whole = [
        start + (sum(column) if _is_learnt(one) else 0)
        for one, start, column in zip(hypotheses, base, zip(*own, strict=True), strict=True)
    ]
    return tuple(
        tuple(
            every - (mine if _is_learnt(one) else 0)
            for one, every, mine in zip(hypotheses, whole, row, strict=True)
        )
        for row in own
    )


def _is_learnt(one: Hypothesis) -> bool:
    """Say whether a class teaches it: not what is not listed, nor a pattern on some problems only."""
    return one.unlisted is None and one.only is None


def counted(
    hypotheses: Sequence[Hypothesis], priors: Sequence[Sequence[int]], likelihoods: Sequence[Sequence[int]]
) -> dict[str, int]:
    """Return what a night showed: the odds of all pupils by hypothesis, in thousandths of a pupil."""
    rows = [_shares(prior, row) for prior, row in zip(priors, likelihoods, strict=True)]
    found: dict[str, int] = {}
    for one, column in zip(hypotheses, zip(*rows, strict=True), strict=True):
        if _is_learnt(one) and (total := sum(column) * THOUSAND // BILLION):
            found[key_of(one)] = total
    return found


def _raw(hypotheses: Sequence[Hypothesis]) -> list[Fraction]:
    """Return the assumed shares in thousandths; they need not add up to a thousand."""
    worth = [
        CORE if any(map(is_core, filter(None, (*one.patterns, one.like, one.akin)))) else 1
        for one in hypotheses
    ]
    wholes: dict[_Sort, int] = {}
    for one, share in zip(hypotheses, worth, strict=True):
        wholes[_sort(one)] = wholes.get(_sort(one), 0) + share
    every = {
        _Sort.NONE: 0,
        _Sort.UNLISTED: STEADY_UNLISTED,
        _Sort.LIKE: STEADY_LIKE,
        _Sort.AKIN: STEADY_AKIN,
        _Sort.PARTLY: STEADY_PARTLY,
        _Sort.TAKING: STEADY_TAKING,
        _Sort.COUNTED: STEADY_COUNTED,
        _Sort.OTHER: STEADY_OTHER,
        _Sort.TWO: STEADY_TWO,
    }
    return [
        Fraction(every[_sort(one)] * share, wholes[_sort(one)])
        if one.steady
        else Fraction(RELIABILITY[one.reliability])
        for one, share in zip(hypotheses, worth, strict=True)
    ]


class _Sort(Enum):
    """The sorts of hypothesis, each with a share of its own."""

    NONE = "none"
    TAKING = "one in taking away"
    COUNTED = "one in adding, or in multiplying or dividing whole numbers"
    OTHER = "one in other problems"
    TWO = "two"
    PARTLY = "one on some problems only"
    UNLISTED = "one that is not listed"
    LIKE = "one that is not listed, and writes as a pattern does"
    AKIN = "one that is not listed, and is akin to a pattern"


_OF_ONE = {Done.TAKING: _Sort.TAKING, Done.ADDING_OR_TIMES: _Sort.COUNTED, Done.OTHER: _Sort.OTHER}


def _sort(one: Hypothesis) -> _Sort:
    if one.unlisted is not None:
        if one.akin:
            return _Sort.AKIN
        return _Sort.LIKE if one.like else _Sort.UNLISTED
    if one.only is not None:
        return _Sort.PARTLY
    match len(one.patterns):
        case 0:
            return _Sort.NONE
        case 1:
            return _OF_ONE[one.done]
        case _:
            return _Sort.TWO


def _shares(priors: Sequence[int], likelihoods: Sequence[int]) -> list[int]:
    """Return the odds in billionths of a pupil, rounded down; empty where no answer gives information."""
    if len(set(likelihoods)) == 1:
        return [0] * len(likelihoods)
    weighed = weights(priors, likelihoods)
    whole = sum(weighed)
    return [weight * BILLION // whole for weight in weighed]
