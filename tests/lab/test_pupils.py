"""Invented classes come from their seed, and are as their rates say."""

from collections import Counter
from dataclasses import fields, replace
from math import sqrt

import pytest

from lab.pupils import ADDING, BESIDE, COLUMNS, SUBTRACTING, Kind, school_class, steady_pupils
from lab.rates import FREQUENT, OTHERWISE, USUAL, Rates
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family

MANY = 6000


def near(counted: int, wanted: float, of: int) -> bool:
    """Say whether a count is within four standard deviations of what is wanted."""
    return abs(counted - wanted * of) <= 4 * sqrt(of * wanted * (1 - wanted))


@pytest.mark.parametrize("rates", [USUAL, *OTHERWISE.values()])
def test_a_class_comes_from_its_seed(rates: Rates) -> None:
    """The same seed gives the same class, another seed another one."""
    assert school_class(rates, 25, "one") == school_class(rates, 25, "one")
    assert school_class(rates, 25, "one") != school_class(rates, 25, "two")


@pytest.mark.parametrize("rates", [USUAL, *OTHERWISE.values()], ids=["usual", *OTHERWISE])
def test_shares_come_out_as_set(rates: Rates) -> None:
    """Of many pupils, each kind has its share."""
    pupils = school_class(rates, MANY, "shares")
    kinds = Counter(pupil.kind for pupil in pupils)
    one = rates.subtracting + rates.adding
    wanted = {
        Kind.STEADY: one * (1 - rates.come_and_go),
        Kind.SWITCHING: one * rates.come_and_go,
        Kind.PAIRED: rates.paired,
        Kind.SHAKY: rates.shaky,
        Kind.SCATTERED: rates.scattered,
        Kind.IN_TURN: rates.in_turn,
        Kind.PARTLY: rates.partly,
        Kind.OUTSIDE: rates.outside,
    }
    wanted[Kind.SOUND] = 1 - sum(wanted.values())
    assert all(near(kinds[kind], share, MANY) for kind, share in wanted.items())


def test_each_pupil_works_at_rates_of_their_own() -> None:
    """Slips and turns back lie where the rates of the kind lie, and differ from pupil to pupil."""
    pupils = school_class(USUAL, MANY, "rates")
    spans = {Kind.SOUND: USUAL.slip, Kind.SHAKY: USUAL.slip_shaky, Kind.STEADY: USUAL.slip_steady}
    for kind, (low, high) in spans.items():
        slips = [pupil.slip for pupil in pupils if pupil.kind is kind]
        assert low <= min(slips) < (low + high) / 2 < max(slips) <= high
    backs = [pupil.back for pupil in pupils if pupil.kind is Kind.SWITCHING]
    assert USUAL.back_often[0] <= min(backs) < max(backs) <= USUAL.back_often[1]


def test_ideas_are_those_of_the_topic() -> None:
    """Nobody is steady in a fact slip or a mere form, and a pair is of two ideas that live together."""
    for key in (*SUBTRACTING, *ADDING, *COLUMNS):
        pattern = by_id(key)
        assert pattern.family is not Family.FACT
        assert not pattern.of_form
    pairs = [one.ideas for one in school_class(USUAL, MANY, "pairs") if one.kind is Kind.PAIRED]
    assert pairs
    assert all(second in BESIDE and first not in BESIDE for first, second in pairs)


def test_frequent_ideas_are_drawn_more_often() -> None:
    """Smaller from larger is met about nine times as often as an idea without a count of its own."""
    only = replace(USUAL, subtracting=1.0, adding=0.0, paired=0.0, shaky=0.0, scattered=0.0)
    drawn = Counter(one.ideas[0] for one in school_class(only, MANY, "ideas"))
    weights = {key: FREQUENT.get(key, 1) for key in SUBTRACTING}
    assert all(near(drawn[key], weight / sum(weights.values()), MANY) for key, weight in weights.items())


def test_steady_pupils_share_out_the_ideas() -> None:
    """Every idea has as many pupils as any other, as near as can be."""
    counts = Counter(one.ideas[0] for one in steady_pupils(USUAL, SUBTRACTING, 100, "even"))
    assert set(counts) == set(SUBTRACTING)
    assert max(counts.values()) - min(counts.values()) <= 1


@pytest.mark.parametrize("rates", [USUAL, *OTHERWISE.values()], ids=["usual", *OTHERWISE])
def test_rates_are_rates(rates: Rates) -> None:
    """Every rate lies between 0 and 1, and every span runs upwards."""
    for field in fields(rates):
        if field.name == "rules":
            continue
        rate = getattr(rates, field.name)
        low, high = rate if isinstance(rate, tuple) else (rate, rate)
        assert 0 <= low <= high <= 1
