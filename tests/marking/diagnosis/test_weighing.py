"""Weighing hypotheses: columns, products, odds."""

from fractions import Fraction
from math import prod

import pytest

from onewhole.marking.diagnosis.chances import CARELESS, MEANS_RIGHT, MILLION, Chances, as_line
from onewhole.marking.diagnosis.hypothesis import NO_PATTERN, Hypothesis, Reliability
from onewhole.marking.diagnosis.reply import RIGHT, Reply, ReplyKind
from onewhole.marking.diagnosis.weighing import (
    STEADY,
    WAYS,
    WAYS_BY_RELIABILITY,
    acting,
    column,
    likelihoods,
    weights,
)

WRONG = Reply(ReplyKind.WRITTEN, "wrong")
#: One problem on which one pattern shows, without anything beside.
TABLE = Chances(
    frozenset({"A01"}),
    frozenset({"A01"}),
    {MEANS_RIGHT: {RIGHT: MILLION}, "A01": {WRONG: MILLION}},
    {MEANS_RIGHT: {}, "A01": {}},
    {WRONG: MILLION},
)
A01, A10 = (Hypothesis(Reliability.SOUND, (key,)) for key in ("A01", "A10"))


def test_a_steady_pupil_writes_the_pattern_unless_turning_back_or_slipping() -> None:
    """The four ways, worked by hand: turn back with one share, slip with the other."""
    found = column((A01,), TABLE, WRONG)
    for rates, chance in zip(STEADY, found, strict=True):
        meant = Fraction(MILLION - rates.slip + rates.slip * CARELESS.once // MILLION, MILLION)
        back = Fraction(rates.slip * CARELESS.once // MILLION, MILLION)
        exact = meant * (MILLION - rates.back) + back * rates.back
        assert abs(chance - exact) <= 2


def test_where_the_pattern_cannot_show_a_steady_pupil_means_right() -> None:
    """A10 does not show here: its pupil answers as one who slips as often and has no pattern."""
    right = tuple(TABLE.of(RIGHT, MEANS_RIGHT, rates.slip, rates.slips) for rates in STEADY)
    assert column((A10,), TABLE, RIGHT) == right


def test_the_two_ways_of_a_footing_count_twice() -> None:
    """So that every hypothesis is weighed under four ways, equally likely."""
    found = column(NO_PATTERN, TABLE, RIGHT)
    assert len(found) == WAYS * len(NO_PATTERN)
    for at, reliability in enumerate(Reliability):
        assert len(WAYS_BY_RELIABILITY[reliability]) * 2 == WAYS
        assert found[WAYS * at : WAYS * at + 2] == found[WAYS * at + 2 : WAYS * at + 4]


def test_what_is_meant_may_be_given() -> None:
    """A column is the same whether what acts is worked out or known."""
    hypotheses = (*NO_PATTERN, A01, A10)
    known = acting(hypotheses, TABLE)
    assert known == (None, None, None, "A01", None)
    for given in (RIGHT, WRONG, as_line(["A01"])):
        assert column(hypotheses, TABLE, given, known) == column(hypotheses, TABLE, given)


def test_likelihoods_are_sums_over_ways_of_products_over_problems() -> None:
    """Against the sentence itself, and in any order of the columns."""
    columns = [column((A01, *NO_PATTERN), TABLE, given) for given in (RIGHT, WRONG, WRONG)]
    by_hand = tuple(
        sum(prod(one[WAYS * at + way] for one in columns) for way in range(WAYS)) for at in range(4)
    )
    assert likelihoods(columns, 4) == likelihoods(columns[::-1], 4) == by_hand
    assert likelihoods([], 2) == (WAYS, WAYS)


def test_weights_are_exact() -> None:
    """Priors times likelihoods, whole numbers of any length."""
    assert weights((2, 3), (5, 7)) == (10, 21)
    assert weights((1, 2, 3), (10**90, 7, 10**30)) == (10**90, 14, 3 * 10**30)


def test_rows_that_do_not_fit_are_refused() -> None:
    """As many priors as likelihoods."""
    with pytest.raises(ValueError, match="zip"):
        weights((1,), (1, 2))
