"""Weighing hypotheses against the answers of one pupil: products of whole numbers, so the odds are exact."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from operator import mul

from onewhole.marking.chances import CARELESS, MEANS_RIGHT, MILLION, SCATTERED, Chances, Slips
from onewhole.marking.hypothesis import Footing, Hypothesis
from onewhole.marking.reply import Reply


@dataclass(frozen=True, slots=True)
class Rates:
    """How a pupil works, per million: answers that slip, and turns where a steady pattern is left for the right way.

    That bugs come and go within a child: VanLehn (1982), Lee and Corter (2011). The figures are our own
    assumption; each pupil is weighed under all of them, equally likely.
    """

    slip: int
    back: int = 0
    slips: Slips = CARELESS


#: Equally likely ways of working for each footing, and for a pupil with a steady pattern.
FOOTINGS: Mapping[Footing, tuple[Rates, ...]] = {
    Footing.SOUND: (Rates(20_000), Rates(80_000)),
    Footing.SHAKY: (Rates(200_000), Rates(350_000)),
    Footing.SCATTERED: (Rates(500_000, slips=SCATTERED), Rates(800_000, slips=SCATTERED)),
}
STEADY = (Rates(40_000, 20_000), Rates(40_000, 200_000), Rates(150_000, 50_000), Rates(150_000, 350_000))


#: Every hypothesis is weighed under so many ways of working; a footing's two count twice each.
WAYS = 4


def _ways(hypothesis: Hypothesis) -> tuple[Rates, ...]:
    return STEADY if hypothesis.steady else 2 * FOOTINGS[hypothesis.footing]


def column(hypotheses: Sequence[Hypothesis], table: Chances, given: Reply) -> tuple[int, ...]:
    """Return the chance per million of one reply under every hypothesis and way of working, one after another.

    A column is worked out once for a page and shared by all pupils who gave that reply.
    """
    right = {rates: table.of(given, MEANS_RIGHT, rates.slip, rates.slips) for rates in _every_way()}
    wrong = {
        (key, rates): table.of(given, key, rates.slip, rates.slips) for key in table.shows for rates in STEADY
    }
    found: list[int] = []
    for hypothesis in hypotheses:
        acting = [key for key in hypothesis.patterns if key in table.shows]
        for rates in _ways(hypothesis):
            if acting:
                meant = sum(wrong[key, rates] for key in acting) // len(acting)
                chance = (rates.back * right[rates] + (MILLION - rates.back) * meant) // MILLION
                found.append(max(1, chance))
            else:
                found.append(right[rates])
    return tuple(found)


def _every_way() -> tuple[Rates, ...]:
    return (*STEADY, *(rates for ways in FOOTINGS.values() for rates in ways))


def likelihoods(columns: Sequence[Sequence[int]], hypotheses: int) -> tuple[int, ...]:
    """Return how likely a pupil's replies are under each hypothesis, up to a factor shared by all.

    ``columns`` has one column for each problem that was answered; a reply that is missing says nothing either
    way. The order of the problems makes no difference: these are products.
    """
    products = [1] * (hypotheses * WAYS)
    for chances in columns:
        products = list(map(mul, products, chances))
    return tuple(sum(products[at : at + WAYS]) for at in range(0, len(products), WAYS))


def odds(priors: Sequence[int], likelihoods: Sequence[int]) -> tuple[Fraction, ...]:
    """Return the exact share of each hypothesis after the answers; they add up to 1.

    >>> odds((1, 1), (3, 1))
    (Fraction(3, 4), Fraction(1, 4))
    """
    weighed = [prior * likely for prior, likely in zip(priors, likelihoods, strict=True)]
    total = sum(weighed)
    return tuple(Fraction(weight, total) for weight in weighed)

