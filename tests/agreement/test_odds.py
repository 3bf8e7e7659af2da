"""Two roads to the odds: the marking's merged products, and Bayes' sentence written out in fractions.

The sentence knows four sorts of steady pupil: who follows listed patterns, who follows one only where a
whole has to be opened (the pattern, or an idea that writes the same there), who follows an idea that is not
listed, of which nothing is known but where it acts, and who follows one that is akin to a pattern.
"""

from collections import Counter
from fractions import Fraction
from math import prod

import pytest

from onewhole.marking.diagnosis.chances import (
    AKIN_BESIDE,
    AKIN_WRITES,
    CAREFUL,
    CARELESS,
    MEANS_RIGHT,
    MILLION,
    UNLISTED_WRITES,
)
from onewhole.marking.diagnosis.hypothesis import Hypothesis, Reliability
from onewhole.marking.diagnosis.prior import supposed
from onewhole.marking.diagnosis.reply import Reply, ReplyKind
from onewhole.marking.diagnosis.unlisted import ActsOn
from onewhole.marking.diagnosis.weighing import STEADY, UNLISTED, WAYS_BY_RELIABILITY, Rates
from onewhole.problems.needs import Operation
from tests.kit.answers import all_right, by_pattern
from tests.kit.odds import PAGE, known, one, weighed

ASKED, READY = known()


def _opens(at: int) -> bool:
    """Whether a whole has to be opened: something is taken away, and there are too few pieces."""
    needs = ASKED[at].needs
    return Operation.SUBTRACT in needs.operations and needs.regroupings > 0


def _acts(where: ActsOn, at: int) -> bool:
    """Whether an idea that is not listed acts, in words of our own."""
    needs = ASKED[at].needs
    return {
        ActsOn.EVERYWHERE: True,
        ActsOn.OPENING: _opens(at),
        ActsOn.TAKING: Operation.SUBTRACT in needs.operations,
        ActsOn.MAKING: Operation.ADD in needs.operations and needs.regroupings > 0,
        ActsOn.ADDING: Operation.ADD in needs.operations,
        ActsOn.WHOLE_FIRST: needs.whole_first,
        ActsOn.UNLIKE: needs.renaming,
    }[where]


def _unknown(at: int, given: Reply) -> int:
    """The chance of a reply under an idea of which nothing is known: shared out among all of its kind."""
    table = READY.chances[at]
    known = {each for row in (*table.meant.values(), *table.beside.values()) for each in row}
    of_a_kind = Counter(each.sort for each in known)
    shares = {sort: UNLISTED_WRITES[sort] // of_a_kind[sort] for sort in UNLISTED_WRITES if of_a_kind[sort]}
    if given.sort is ReplyKind.OTHER:
        return MILLION - sum(share * of_a_kind[sort] for sort, share in shares.items())
    return shares[given.sort]


def _akin(at: int, key: str, given: Reply) -> int:
    """The chance of a reply under an idea akin to a pattern: now the same, now close by, now anything."""
    table = READY.chances[at]
    same, near = table.meant[key].get(given, 0), table.beside[key].get(given, 0)
    rest = MILLION - AKIN_WRITES - AKIN_BESIDE
    mixed = AKIN_WRITES * Fraction(same) + AKIN_BESIDE * Fraction(near) + rest * Fraction(_unknown(at, given))
    return max(1, int(mixed / MILLION))


def _chance(hypothesis: Hypothesis, rates: Rates, at: int, given: Reply) -> int:
    """The chance of one reply under one way of working, as the sentence says it."""
    table = READY.chances[at]
    right = table.of(given, MEANS_RIGHT, rates.slip, rates.slips)
    if hypothesis.akin:
        if hypothesis.akin not in ASKED[at].shows:
            return right
        akin = _akin(at, hypothesis.akin, given)
        return max(1, (rates.back * right + (MILLION - rates.back) * akin) // MILLION)
    part = hypothesis.only or hypothesis.unlisted
    if part is not None and not _acts(part, at):
        return right
    if hypothesis.unlisted is not None and not hypothesis.like:
        return max(1, (rates.back * right + (MILLION - rates.back) * _unknown(at, given)) // MILLION)
    followed = (*hypothesis.patterns, hypothesis.like)
    acting = next((key for key in followed if key in ASKED[at].shows), None)
    if acting is None:
        return right
    meant = table.of(given, acting, rates.slip, rates.slips)
    return max(1, (rates.back * right + (MILLION - rates.back) * meant) // MILLION)


def _ways(hypothesis: Hypothesis) -> tuple[Rates, ...]:
    if not hypothesis.steady:
        return WAYS_BY_RELIABILITY[hypothesis.reliability]
    return UNLISTED if hypothesis.unlisted is not None and not hypothesis.like else STEADY


def _by_hand(cells: list[str]) -> tuple[dict[tuple[str, ...], Fraction], Fraction]:
    """Prior times likelihood over their sum, problem by problem: listed sets, and what is not listed."""
    [given] = weighed({"K01": cells}).replies
    weights = []
    for hypothesis, prior in zip(READY.hypotheses, supposed(READY.hypotheses), strict=True):
        ways = _ways(hypothesis)
        likely = Fraction(0)
        for rates in ways:
            chances = (
                _chance(hypothesis, rates, at, each) for at, each in enumerate(given) if each is not None
            )
            likely += Fraction(prod(chances), len(ways))
        weights.append(prior * likely)
    found: dict[tuple[str, ...], Fraction] = {}
    unlisted = Fraction(0)
    for hypothesis, weight in zip(READY.hypotheses, weights, strict=True):
        if hypothesis.unlisted is not None:
            unlisted += weight / sum(weights)
        else:
            found[hypothesis.ids] = found.get(hypothesis.ids, Fraction(0)) + weight / sum(weights)
    return found, unlisted


#: The larger number of pieces, whatever is asked: no pattern writes that.
LARGER = [
    *("3 4/6", "3 7/8", "3 2/3", "3 2/4", "4 3/8", "4 4/5"),
    *("5 6/8", "4 4/6", "4 3/4", "3 4/5", "3 5/12", "5 9/12"),
]


@pytest.mark.more("marking/diagnosis/test_finding.py")
def test_the_odds_are_those_of_bayes_to_the_last_digit() -> None:
    """For a steady pupil, one with two ideas, one all right, one outside, one with gaps."""
    steady = by_pattern("A01", PAGE)
    for cells in (
        steady,
        [*by_pattern("A10", PAGE)[:2], *steady[2:]],
        all_right(PAGE),
        LARGER,
        ["", "?", *by_pattern("A12", PAGE)[2:6], "5 2/8", "77", *[""] * 4],
    ):
        by_hand, unlisted = _by_hand(cells)
        assert sum(by_hand.values()) + unlisted == 1
        found = one(cells)
        assert found.unlisted == unlisted
        for listed in found.odds:
            assert listed.probability == by_hand[listed.patterns]


def test_both_roads_know_the_same_rates() -> None:
    """Four ways for a steady pupil, two for each reliability; a sound pupil's slips are careful ones."""
    assert len(STEADY) == len(UNLISTED) == 4
    assert [rates.slip for rates in STEADY] == [rates.slip for rates in UNLISTED]
    assert {len(ways) for ways in WAYS_BY_RELIABILITY.values()} == {2}
    assert all(rates.slips == CARELESS for rates in (*STEADY, *WAYS_BY_RELIABILITY[Reliability.SHAKY]))
    assert all(rates.slips == CAREFUL for rates in WAYS_BY_RELIABILITY[Reliability.SOUND])
