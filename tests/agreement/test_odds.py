"""Two roads to the odds: the marking's merged products, and Bayes' sentence written out in fractions."""

from fractions import Fraction
from math import prod

from onewhole.marking.diagnosis.chances import CARELESS, MEANS_RIGHT, MILLION
from onewhole.marking.diagnosis.hypothesis import Hypothesis, Reliability
from onewhole.marking.diagnosis.prior import supposed
from onewhole.marking.diagnosis.reply import Reply
from onewhole.marking.diagnosis.weighing import STEADY, WAYS_BY_RELIABILITY, Rates
from tests.kit.answers import all_right, by_pattern
from tests.kit.odds import PAGE, known, one, weighed

ASKED, READY = known()


def _chance(hypothesis: Hypothesis, rates: Rates, at: int, given: Reply) -> int:
    """The chance of one reply under one way of working, as the sentence says it."""
    table = READY.chances[at]
    right = table.of(given, MEANS_RIGHT, rates.slip, rates.slips)
    acting = next((key for key in hypothesis.patterns if key in ASKED[at].shows), None)
    if acting is None:
        return right
    meant = table.of(given, acting, rates.slip, rates.slips)
    return max(1, (rates.back * right + (MILLION - rates.back) * meant) // MILLION)


def _by_hand(cells: list[str]) -> dict[tuple[str, ...], Fraction]:
    """Prior times likelihood over their sum, hypothesis by hypothesis, problem by problem."""
    [given] = weighed({"K01": cells}).replies
    weights = []
    for hypothesis, prior in zip(READY.hypotheses, supposed(READY.hypotheses), strict=True):
        ways = STEADY if hypothesis.steady else WAYS_BY_RELIABILITY[hypothesis.reliability]
        likely = Fraction(0)
        for rates in ways:
            chances = (
                _chance(hypothesis, rates, at, each) for at, each in enumerate(given) if each is not None
            )
            likely += Fraction(prod(chances), len(ways))
        weights.append(prior * likely)
    found: dict[tuple[str, ...], Fraction] = {}
    for hypothesis, weight in zip(READY.hypotheses, weights, strict=True):
        found[hypothesis.ids] = found.get(hypothesis.ids, Fraction(0)) + weight / sum(weights)
    return found


def test_the_odds_are_those_of_bayes_to_the_last_digit() -> None:
    """For a steady pupil, one with two ideas, one all right and one with gaps: equal as fractions."""
    steady = by_pattern("A01", PAGE)
    for cells in (
        steady,
        [*by_pattern("A10", PAGE)[:2], *steady[2:]],
        all_right(PAGE),
        ["", "?", *by_pattern("A12", PAGE)[2:6], "5 2/8", "77", *[""] * 4],
    ):
        by_hand = _by_hand(cells)
        assert sum(by_hand.values()) == 1
        for listed in one(cells).odds:
            assert listed.probability == by_hand[listed.patterns]


def test_both_roads_know_the_same_rates() -> None:
    """Four ways for a steady pupil, two for each reliability, slips careless but for scattered answers."""
    assert len(STEADY) == 4
    assert {len(ways) for ways in WAYS_BY_RELIABILITY.values()} == {2}
    assert all(rates.slips == CARELESS for rates in (*STEADY, *WAYS_BY_RELIABILITY[Reliability.SOUND]))
