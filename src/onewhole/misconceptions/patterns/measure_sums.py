"""Measures in two or three units that are added: what becomes of smaller units that make a larger one.

Rules and sources are those of a second collection of error patterns (see :mod:`~.sum_columns`).
"""

from functools import partial

from onewhole.misconceptions.asks.opening import HowManyMake
from onewhole.misconceptions.asks.pieces import CouldMakeOne, StillLoose, WhereIsTheWhole
from onewhole.misconceptions.bend import BentTry
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.parts import bottom, large, pieces, small, written_pieces, wrote
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.pieces import CarriesTen, EnoughForOne, ThatIsTheAnswer, WholeLeftOut
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.bent import When, bent, on_units
from onewhole.misconceptions.wrong_steps.regrouping import Act
from onewhole.misconceptions.wrong_steps.when import counts, pieces_fill_a_whole
from onewhole.misconceptions.wrong_steps.writing import (
    as_it_comes,
    carries,
    drops_the_new_whole,
    keeps_the_pieces,
    large_of_a_hundred,
    whole_of_ten,
)
from onewhole.working.pair_state import PairState
from onewhole.working.strategies.units_apart import UNITS_APART

_TIME = "1 h 50 min + 20 min", "2 h 10 min"
_FILLED = "the smaller units make one larger unit or more"
_TENS = (12, 16)


def _bent(when: When, act: Act) -> BentTry:
    return on_units(bent(UNITS_APART, {"usual_form": act}), when, taken=False)


def _hundred(state: PairState) -> bool:
    c = counts(state)
    return c.n1 + c.n2 >= 100 > c.d


def _ten(state: PairState) -> bool:
    c = counts(state)
    return c.n1 + c.n2 >= 10 and c.d in _TENS


_added = partial(Pattern, topic=Topic.MEASURES, family=Family.REGROUPING, source=COMMON)

MEASURE_SUMS = (
    _added(
        id="J01",
        name="carries at a hundred",
        rule="Of every hundred smaller units one larger unit is made; fewer than a hundred stay as they are.",
        shows_when="there are a hundred of the smaller unit or more in all, and it takes fewer to make one "
        "larger unit",
        thinking=plain(RuleThought.DOLLARS_AND_CENTS),
        ask=filled(HowManyMake, large, small),
        source=Source(
            "errors from reading hours and minutes as a decimal number; same root as G01 (Thanheiser 2012)",
            note="Kamii & Russell (2012), JRME 43, 296-315, opening read: 126 children of grades 2 to 5 "
            "cannot join hours and minutes",
        ),
        example=Example("1 h 50 min + 2 h 55 min", "4 h 45 min", "4 h 5 min"),
        attempt=_bent(_hundred, carries(large_of_a_hundred)),
    ),
    _added(
        id="J02",
        name="carries at ten",
        rule="Where the smaller units make ten or more, one larger unit is carried and 10 smaller ones are "
        "taken off.",
        shows_when="there are ten of the smaller unit or more in all, and 12 or 16 make one larger unit",
        thinking=filled(CarriesTen, small, pieces),
        ask=filled(HowManyMake, large, small),
        source=Source(COMMON.text, note="the adding twin of G02"),
        example=Example("5 ft 8 in + 2 ft 7 in", "8 ft 3 in", "8 ft 5 in"),
        attempt=_bent(_ten, carries(whole_of_ten)),
    ),
    _added(
        id="J03",
        name="leaves the smaller units as they come",
        family=Family.FORM,
        rule="The amount is right; smaller units that make a larger one or more are left as they are.",
        shows_when=_FILLED,
        thinking=filled(ThatIsTheAnswer, wrote),
        ask=filled(CouldMakeOne, large, small, written_pieces),
        source=Source(
            "a public teacher's page (2009): 1 min 30 s and 40 s written 1 min 70 s",
            provenance="read",
            note="right in value; a page, not a study",
        ),
        example=Example(*_TIME, "1 h 70 min"),
        attempt=_bent(pieces_fill_a_whole, as_it_comes),
        of_form=True,
    ),
    _added(
        id="J04",
        name="makes a larger unit and loses it",
        rule="The full smaller units are taken off, and nothing is added to the larger ones.",
        shows_when=_FILLED,
        thinking=filled(WholeLeftOut, small, bottom, pieces, large),
        ask=filled(WhereIsTheWhole, large, small, pieces, wrote),
        example=Example(*_TIME, "1 h 10 min"),
        attempt=_bent(pieces_fill_a_whole, carries(drops_the_new_whole)),
    ),
    _added(
        id="J05",
        name="carries and keeps the smaller units too",
        rule="One larger unit is added, and the smaller ones stay as they are.",
        shows_when=_FILLED,
        thinking=filled(EnoughForOne, small, pieces, large),
        ask=filled(StillLoose, large, small, pieces),
        example=Example(*_TIME, "2 h 70 min"),
        attempt=_bent(pieces_fill_a_whole, carries(keeps_the_pieces)),
    ),
)
