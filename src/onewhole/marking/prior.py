"""What is supposed of a class before its answers are read, what is learnt from them, and how that is forgotten."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from fractions import Fraction

from onewhole.marking.hypothesis import Footing, Hypothesis

#: Shares per thousand of a class before anything is known. That 13 in 100 pupils of grades 2 to 6 had a
#: systematic error in subtracting, and 5 to 6 in adding: Cox (1974), ED 092 407 (abstract), for whole-number
#: columns; that it holds for mixed numbers, and how the others divide, is our own assumption.
STEADY_ONE = 130
STEADY_TWO = 20
FOOTING = {Footing.SOUND: 510, Footing.SHAKY: 210, Footing.SCATTERED: 130}

#: The supposed shares weigh as much as so many pupils whose answers were read; our own.
AS_PUPILS = 12
#: What was learnt from a class weighs half as much after so many days; our own. (Of pupils with a systematic
#: error, 23 in 100 still had one a year later: Cox 1974.)
HALF_LIFE_DAYS = 14
ROUNDS = 6
BILLION = 1_000_000_000


@dataclass(frozen=True, slots=True)
class Learnt:
    """What earlier nights of a class have shown: how many pupils' worth of evidence for each hypothesis.

    Counts are thousandths of a pupil, by :func:`key_of` of the hypothesis; ``on`` is the day of the last night.
    """

    counts: Mapping[str, int] = field(default_factory=dict)
    on: date | None = None

    def by(self, day: date) -> "Learnt":
        """Return what is left on a later day: half of it every 14 days. A day before ``on`` forgets nothing.

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


def key_of(hypothesis: Hypothesis) -> str:
    """Return the name under which evidence for a hypothesis is kept.

    >>> key_of(Hypothesis(Footing.SOUND, ("A01", "A10")))
    'A01 A10'
    """
    return " ".join(hypothesis.patterns) or hypothesis.footing.value


def supposed(hypotheses: Sequence[Hypothesis], learnt: Learnt) -> tuple[int, ...]:
    """Return the share of each hypothesis (per billion) before tonight's answers are read."""
    base = _base(hypotheses)
    known = [Fraction(learnt.counts.get(key_of(one), 0), 1000) for one in hypotheses]
    return _shares([AS_PUPILS * share + count for share, count in zip(base, known, strict=True)])


def from_class(
    hypotheses: Sequence[Hypothesis], likelihoods: Sequence[Sequence[int]], learnt: Learnt
) -> tuple[int, ...]:
    """Return the share of each hypothesis (per billion) learnt from the class itself.

    Empirical Bayes: the supposed shares, as so many pupils, and the class's own odds under the last shares,
    a few times over. The order of the pupils makes no difference. One pupil's own answers count among the
    class's, as they do in every such estimate.
    """
    base, known = _base(hypotheses), [Fraction(learnt.counts.get(key_of(one), 0), 1000) for one in hypotheses]
    priors = supposed(hypotheses, learnt)
    for _ in range(ROUNDS):
        counts = _counts(priors, likelihoods)
        priors = _shares(
            [AS_PUPILS * share + old + new for share, old, new in zip(base, known, counts, strict=True)]
        )
    return priors


def learn(
    learnt: Learnt,
    hypotheses: Sequence[Hypothesis],
    shares: Sequence[Sequence[Fraction]],
    day: date,
) -> Learnt:
    """Add a night's odds to what is known of a class, after forgetting up to that day."""
    faded = learnt.by(day)
    counts = dict(faded.counts)
    for at, hypothesis in enumerate(hypotheses):
        more = sum((row[at] for row in shares), Fraction(0))
        key = key_of(hypothesis)
        if total := counts.get(key, 0) + round(more * 1000):
            counts[key] = total
    return Learnt(counts, day)


def _base(hypotheses: Sequence[Hypothesis]) -> list[Fraction]:
    ones = sum(len(one.patterns) == 1 for one in hypotheses)
    twos = sum(len(one.patterns) == 2 for one in hypotheses)  # noqa: PLR2004 - a pair
    share = {0: Fraction(0), 1: Fraction(STEADY_ONE, ones or 1), 2: Fraction(STEADY_TWO, twos or 1)}
    raw = [share[len(one.patterns)] or Fraction(FOOTING[one.footing]) for one in hypotheses]
    return [part / sum(raw) for part in raw]


def _counts(priors: Sequence[int], likelihoods: Sequence[Sequence[int]]) -> list[Fraction]:
    """Return the expected number of pupils of each hypothesis, rounded to a billionth so that it stays small."""
    totals = [0] * len(priors)
    for row in likelihoods:
        weighed = [prior * likely for prior, likely in zip(priors, row, strict=True)]
        whole = sum(weighed)
        for at, weight in enumerate(weighed):
            totals[at] += weight * BILLION // whole
    return [Fraction(total, BILLION) for total in totals]


def _shares(weights: Sequence[Fraction]) -> tuple[int, ...]:
    whole = sum(weights)
    return tuple(max(1, round(weight * BILLION / whole)) for weight in weights)
