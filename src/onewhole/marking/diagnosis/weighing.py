"""Weighing hypotheses against the answers of one pupil: products of whole numbers, so the odds are exact."""

from collections.abc import Mapping, Sequence
from operator import mul

from msgspec import Struct

from onewhole.marking.diagnosis.chances import (
    CAREFUL,
    CARELESS,
    MEANS_RIGHT,
    MEANS_UNLISTED,
    MILLION,
    SCATTERED,
    Chances,
    Intention,
    Slips,
    akin_to,
)
from onewhole.marking.diagnosis.hypothesis import Hypothesis, Reliability
from onewhole.marking.diagnosis.reply import Reply


class Rates(Struct, frozen=True):
    """How a pupil works, per million: the rate of slips, and of right answers despite a steady pattern.

    That bugs come and go within a child: VanLehn (1982), ED 245 880 (abstract). The figures are our own
    assumption; each pupil is weighed under all of them, equally likely.
    """

    slip: int
    back: int = 0
    slips: Slips = CARELESS


#: Equally likely ways of working for each reliability, and for a pupil with a steady pattern; calibrated on
#: invented classes (docs/lab.md).
WAYS_BY_RELIABILITY: Mapping[Reliability, tuple[Rates, ...]] = {
    Reliability.SOUND: (Rates(20_000, slips=CAREFUL), Rates(80_000, slips=CAREFUL)),
    Reliability.SHAKY: (Rates(200_000), Rates(350_000)),
    Reliability.SCATTERED: (Rates(350_000, slips=SCATTERED), Rates(650_000, slips=SCATTERED)),
}
STEADY = (Rates(30_000, 20_000), Rates(30_000, 300_000), Rates(100_000, 20_000), Rates(100_000, 300_000))
#: The same for a pupil with a steady idea that no pattern describes: it is seldom left for the right way, for
#: one that comes and goes cannot be told from answers of no idea at all.
UNLISTED = (Rates(30_000, 20_000), Rates(30_000, 100_000), Rates(100_000, 20_000), Rates(100_000, 100_000))

#: Every hypothesis is weighed under so many ways of working; a reliability's two count twice each.
WAYS = 4


def acting(hypotheses: Sequence[Hypothesis], table: Chances) -> tuple[Intention | None, ...]:
    """Return which pattern each hypothesis follows here, or None for the right answer."""
    return tuple(_acting(one, table) for one in hypotheses)


def _acting(one: Hypothesis, table: Chances) -> Intention | None:
    if one.akin:
        return akin_to(one.akin) if one.akin in table.shows else None
    if one.unlisted is not None and not one.like:
        return MEANS_UNLISTED if one.unlisted in table.where else None
    part = one.only or one.unlisted
    if part is not None and part not in table.where:
        return None
    return one.acting(table.shows)


def column(
    hypotheses: Sequence[Hypothesis],
    table: Chances,
    given: Reply,
    meaning: Sequence[Intention | None] | None = None,
) -> tuple[int, ...]:
    """Return the chance per million of one reply under every hypothesis and way of working, one by one.

    A column is worked out once for a page and shared by all pupils who gave that reply. Where a steady
    pupil's pattern cannot show, the answer is meant to be right. ``meaning`` is what :func:`acting`
    returns, where it is known already.
    """
    meant = acting(hypotheses, table) if meaning is None else meaning
    right = _of_ways(table, given, MEANS_RIGHT, STEADY)
    steady: dict[Intention | None, list[int]] = {None: right}
    alike: dict[tuple[str, int, int], list[int]] = {}
    for key in set(meant):
        if key is not None:
            rests_on = table.rests_on(given, key)
            if rests_on not in alike:
                alike[rests_on] = _turning(table, given, key, right)
            steady[key] = alike[rests_on]
    reliabilities = {
        reliability: 2 * _of_ways(table, given, MEANS_RIGHT, ways)
        for reliability, ways in WAYS_BY_RELIABILITY.items()
    }
    found: list[int] = []
    for hypothesis, key in zip(hypotheses, meant, strict=True):
        follows = key is not None or hypothesis.steady
        found += steady[key] if follows else reliabilities[hypothesis.reliability]
    return tuple(found)


def _of_ways(table: Chances, given: Reply, key: Intention, ways: Sequence[Rates]) -> list[int]:
    """Return the chance for each way of working, looked up once for ways that slip alike.

    An idea that is not listed has no slips of its own: what it writes is spread wide enough.
    """
    if key not in table.meant:
        return [table.of(given, key, 0, CARELESS)] * len(ways)
    alike: dict[int, int] = {}
    for rates in ways:
        if rates.slip not in alike:
            alike[rates.slip] = table.of(given, key, rates.slip, rates.slips)
    return [alike[rates.slip] for rates in ways]


def _turning(table: Chances, given: Reply, key: Intention, right: Sequence[int]) -> list[int]:
    """Return the chances for a pupil who mostly follows an idea and sometimes works rightly."""
    ways = STEADY if key in table.meant else UNLISTED
    meant = _of_ways(table, given, key, ways)
    return [
        max(1, (rates.back * back + (MILLION - rates.back) * follows) // MILLION)
        for rates, back, follows in zip(ways, right, meant, strict=True)
    ]


def likelihoods(columns: Sequence[Sequence[int]], hypotheses: int) -> tuple[int, ...]:
    """Return how likely a pupil's replies are under each hypothesis, up to a factor shared by all.

    ``columns`` has one column for each problem that was answered; a reply that is missing says nothing either
    way. The order of the problems makes no difference: these are products.

    >>> likelihoods([(1, 2, 3, 4, 5, 5, 5, 5), (1, 1, 1, 1, 2, 2, 2, 2)], 2)
    (10, 40)
    """
    products: Sequence[int] = columns[0] if columns else [1] * (hypotheses * WAYS)
    for chances in columns[1:]:
        products = list(map(mul, products, chances))
    return tuple(map(sum, zip(*(products[way::WAYS] for way in range(WAYS)), strict=True)))


def weights(priors: Sequence[int], likelihoods: Sequence[int]) -> tuple[int, ...]:
    """Return the weight of each hypothesis after the answers, up to a factor shared by all."""
    return tuple(prior * likely for prior, likely in zip(priors, likelihoods, strict=True))
