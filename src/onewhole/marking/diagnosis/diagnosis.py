"""What the answers of one pupil may show: the odds, the evidence problem by problem, what speaks against."""

from collections import Counter
from collections.abc import Mapping, Sequence
from fractions import Fraction
from functools import partial

from msgspec import Struct, field

from onewhole.marking.diagnosis.asked import TalkPage, talk
from onewhole.marking.diagnosis.evidence import Beside, Speaks, evidence
from onewhole.marking.diagnosis.history import Histories, History, Named
from onewhole.marking.diagnosis.likeliest_sets import (
    TOLD_APART,
    TOLD_APART_BY_NIGHTS,
    holding,
    likeliest_sets,
)
from onewhole.marking.diagnosis.prior import NOTHING, Learnt, counted, from_class
from onewhole.marking.diagnosis.tables import Replies, Tables, all_likelihoods, replies, tables, typed_lines
from onewhole.marking.diagnosis.weighing import weights
from onewhole.marking.reading.mark import ClassMarks

Patterns = tuple[str, ...]

#: From these odds on answers are said to fit; below, a talk with the child is the finding. A setting.
CONFIDENT = Fraction(9, 10)
#: Sets with smaller odds are not listed.
LISTED_FROM = Fraction(1, 200)


class Supposed(Struct, frozen=True):
    """A set of patterns (none, one or two) and the share of the odds that it has."""

    patterns: Patterns
    probability: Fraction


class Diagnosis(Struct, frozen=True):
    """What the answers of one pupil may show.

    ``odds`` are all sets of patterns with a share of at least 1 in 200, the likeliest first; the set without
    patterns stands for "no steady pattern" and is always there. They add up to at most 1, exactly. ``alike``
    are the best sets, which these answers cannot tell apart (:func:`~.likeliest_sets.likeliest_sets`);
    ``together`` is the share of all sets that hold one of them. ``confident`` says whether that reaches the
    odds from which answers are said to fit. ``evidence`` compares the best sets with the answers, problem by
    problem, and ``asked`` does so with the answers of a talk. ``unlisted`` is the share of a steady idea that
    no pattern describes. Of a pupil of whom no answer was read nothing is said.
    """

    pupil: str
    odds: tuple[Supposed, ...]
    alike: tuple[Patterns, ...]
    together: Fraction
    confident: bool
    evidence: tuple[Beside, ...]
    asked: tuple[Beside, ...] = ()
    unlisted: Fraction = Fraction(0)

    @property
    def patterns(self) -> Patterns:
        """Return the ids of every pattern in the sets that cannot be told apart, in order."""
        return tuple(sorted({key for patterns in self.alike for key in patterns}))

    def labels(self, speaks: Speaks) -> tuple[str, ...]:
        """Return the labels of the problems that speak for the best sets, against them, or neither way."""
        return tuple(one.label for one in self.evidence if one.speaks is speaks)

    def speaking(self, speaks: Speaks) -> int:
        """Return how many answers, those of a talk among them, speak so."""
        return sum(one.speaks is speaks for one in (*self.evidence, *self.asked))


class BeforeTalk(Struct, frozen=True):
    """What the page alone says of a pupil who was asked something since, and its weights."""

    diagnosis: Diagnosis
    weights: tuple[int, ...]


class Weighed(Struct, frozen=True):
    """A class weighed: the tables of its page, and for each pupil the replies, the weights and what they say.

    Weights belong to the hypotheses of the tables, up to a factor for each pupil; ``counts`` is what the
    night showed of the class (:func:`~.prior.counted`); ``confident`` are the odds asked for. ``talks`` are
    the talks with pupils, by code, and ``before`` what the page says of those pupils without them. ``after``
    has the history of each pupil who answered, tonight in it, where histories were given.
    """

    page: Tables
    replies: tuple[Replies, ...]
    weights: tuple[tuple[int, ...], ...]
    counts: Mapping[str, int]
    diagnoses: tuple[Diagnosis, ...]
    confident: Fraction = CONFIDENT
    talks: Mapping[str, TalkPage] = field(default_factory=dict)
    before: Mapping[str, BeforeTalk] = field(default_factory=dict)
    after: Mapping[str, History] = field(default_factory=dict)


def diagnose(
    marks: ClassMarks, learnt: Learnt = NOTHING, *, confident: Fraction = CONFIDENT
) -> tuple[Diagnosis, ...]:
    r"""Return what the answers of each pupil of a class may show, in the order of the pupils.

    >>> from onewhole.marking.reading.answers_table import read_answers
    >>> from onewhole.marking.reading.mark import mark_class
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_statement
    >>> typed = ("9 5/8 - 4 6/8", "8 1/6 - 3 5/6", "6 1/4 - 3 2/4")
    >>> asked = [Problem(str(at), read_statement(one), one) for at, one in enumerate(typed, start=1)]
    >>> [found] = diagnose(mark_class(read_answers("pupil,1,2,3\nK01,5 1/8,5 4/6,3 1/4", asked)))
    >>> found.patterns, found.confident
    (('A01',), True)
    """
    return weigh(marks, learnt, confident=confident).diagnoses


def weigh(
    marks: ClassMarks,
    learnt: Learnt = NOTHING,
    *,
    confident: Fraction = CONFIDENT,
    known: Tables | None = None,
    histories: Histories | None = None,
) -> Weighed:
    """Weigh every hypothesis against the answers of each pupil of a class.

    The odds are exact: products and sums of whole numbers. ``learnt`` is what earlier nights have shown of
    the class, ``histories`` what they have shown of each pupil; ``known`` are the tables of the page, where
    they were worked out before.
    """
    page = tables(marks.expected, typed_lines(marks)) if known is None else known
    given = tuple(replies(marks, pupil) for pupil in marks.pupils)
    alone = all_likelihoods(page, given)
    talks = {at: one for at, pupil in enumerate(marks.pupils) if (one := talk(page, pupil)) is not None}
    likely = tuple(
        talks[at].likelihoods(page, given[at]) if at in talks else row for at, row in enumerate(alone)
    )
    priors = from_class(page.hypotheses, likely, learnt)
    after: dict[str, History] = {}
    if histories:
        codes = [pupil.pupil for pupil in marks.pupils]
        expected = tuple(map(partial(histories.forecast, Named.of(page.hypotheses)), codes, priors))
        priors = tuple(one.priors() for one in expected)
        answered = zip(codes, expected, given, likely, strict=True)
        after = {code: one.after(row).rounded() for code, one, cells, row in answered if any(cells)}
    known_before = histories.of if histories else {}
    apart = [TOLD_APART_BY_NIGHTS if pupil.pupil in known_before else TOLD_APART for pupil in marks.pupils]
    weighed = tuple(map(weights, priors, likely))
    found = tuple(
        _diagnosis(marks, page, at, (row, shares), confident, asked=talks.get(at), apart=apart[at])
        for at, (row, shares) in enumerate(zip(given, weighed, strict=True))
    )
    before = {}
    for at in talks:
        row = weights(priors[at], alone[at])
        said = _diagnosis(marks, page, at, (given[at], row), confident, apart=apart[at])
        before[marks.pupils[at].pupil] = BeforeTalk(said, row)
    return Weighed(
        page,
        given,
        weighed,
        counted(page.hypotheses, priors, likely),
        found,
        confident,
        {marks.pupils[at].pupil: one for at, one in talks.items()},
        before,
        after,
    )


def _diagnosis(
    marks: ClassMarks,
    page: Tables,
    at: int,
    weighed: tuple[Replies, Sequence[int]],
    confident: Fraction,
    *,
    asked: TalkPage | None = None,
    apart: int,
) -> Diagnosis:
    pupil, (given, shares) = marks.pupils[at], weighed
    whole, every = (asked.joined(page), given + asked.given) if asked else (page, given)
    answered = any(one is not None for one in every)
    alike = likeliest_sets(whole, every, shares, confident, apart) if answered else ()
    together = Fraction(holding(page.hypotheses, alike, shares), sum(shares))
    return Diagnosis(
        pupil.pupil,
        _listed(page, shares) if answered else (),
        tuple(sorted({one.ids for one in alike})),
        together,
        bool(alike) and together >= confident,
        evidence(marks, page, pupil, given, alike),
        asked.evidence(alike) if asked else (),
        Fraction(_unlisted(page, shares), sum(shares)) if answered else Fraction(0),
    )


def _unlisted(page: Tables, shares: Sequence[int]) -> int:
    return sum(share for one, share in zip(page.hypotheses, shares, strict=True) if one.unlisted is not None)


def _listed(page: Tables, shares: Sequence[int]) -> tuple[Supposed, ...]:
    whole = sum(shares)
    none = sum(share for one, share in zip(page.hypotheses, shares, strict=True) if not one.steady)
    held: Counter[Patterns] = Counter({(): none})
    for one, share in zip(page.hypotheses, shares, strict=True):
        if one.patterns:
            held[one.patterns] += share
    least = -(-whole * LISTED_FROM.numerator // LISTED_FROM.denominator)
    found = [
        Supposed(tuple(sorted(patterns)), Fraction(share, whole))
        for patterns, share in held.items()
        if not patterns or share >= least
    ]
    return tuple(sorted(found, key=lambda one: (-one.probability, one.patterns)))
