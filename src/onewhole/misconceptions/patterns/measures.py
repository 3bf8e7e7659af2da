"""Measures in two units or three: the steps that go wrong with wholes and pieces, on another ladder."""

from functools import partial

from onewhole.misconceptions.asks.opening import EnoughToTake, HadBefore, HowManyMake, NoneThere, NotOpened
from onewhole.misconceptions.bend import BentTry
from onewhole.misconceptions.filling import filled
from onewhole.misconceptions.holes.parts import bottom, first, have, large, need, piece, small, typed_first
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source, coded
from onewhole.misconceptions.thoughts.opening import (
    AlwaysTenMore,
    HundredMore,
    InPlaceOf,
    LooksUnused,
    NothingAbove,
    TurnedAround,
)
from onewhole.misconceptions.wrong_steps.apart import apart, less, second_if_none, smaller_from_larger
from onewhole.misconceptions.wrong_steps.bent import When, bent, on_units
from onewhole.misconceptions.wrong_steps.regrouping import (
    Act,
    as_hundred,
    as_ten,
    drops_what_was_there,
    keeps_the_unit,
    nothing,
    regroups,
)
from onewhole.misconceptions.wrong_steps.when import counts, no_pieces_on_top, too_few_pieces
from onewhole.working.pair_state import PairState
from onewhole.working.strategies.regroup_first import REGROUP_FIRST

_FEET = "5 ft 3 in - 2 ft 8 in", "2 ft 7 in"
_TOO_FEW = "too few of the smaller unit to take from"


def _bent(when: When, **steps: Act) -> BentTry:
    """Return the attempt at a difference of measures in two units or more."""
    return on_units(bent(REGROUP_FIRST, steps), when, taken=True)


def _hours(state: PairState) -> bool:
    return too_few_pieces(state) and counts(state).d == 60


_taken = partial(Pattern, topic=Topic.MEASURES, family=Family.REGROUPING)


def _too_few_of_some(state: PairState) -> bool:
    return too_few_pieces(state) and counts(state).n1 > 0


MEASURES = (
    _taken(
        id="G01",
        name="an hour is regrouped as 100 minutes",
        rule="The hours are made one less, and 100 is added to the minutes.",
        shows_when="hours and minutes, and too few minutes to take from",
        thinking=filled(HundredMore, large, small),
        ask=filled(HowManyMake, large, small),
        source=coded("Thanheiser (2012), J. Mathematical Behavior", "231-232"),
        example=Example("7 h 8 min - 2 h 53 min", "4 h 15 min", "4 h 55 min"),
        attempt=_bent(_hours, regroup=regroups(as_hundred)),
    ),
    _taken(
        id="G02",
        name="a larger unit always gives ten",
        rule="The larger unit is made one less, and 10 is added to the smaller one.",
        shows_when=_TOO_FEW,
        thinking=filled(AlwaysTenMore, large),
        ask=filled(HowManyMake, large, small),
        source=Source(COMMON.text, note="the same answer as reading 5 ft 3 in as 5.3"),
        example=Example(*_FEET, "2 ft 5 in"),
        attempt=_bent(too_few_pieces, regroup=regroups(as_ten)),
    ),
    _taken(
        id="G03",
        name="takes the smaller count from the larger",
        rule="The largest unit is taken rightly; of each smaller unit the smaller count is taken from the "
        "larger.",
        shows_when=_TOO_FEW,
        thinking=filled(TurnedAround, have, need),
        ask=filled(EnoughToTake, first, small, need),
        source=COMMON,
        example=Example(*_FEET, "3 ft 5 in"),
        attempt=_bent(too_few_pieces, regroup=nothing, unit_by_unit=apart(less, smaller_from_larger)),
    ),
    _taken(
        id="G04",
        name="opens a larger unit and still counts it",
        rule="The smaller unit is right; the larger one is not made one less.",
        shows_when=_TOO_FEW,
        thinking=filled(LooksUnused, large, small),
        ask=filled(NotOpened, typed_first, large, small),
        source=COMMON,
        example=Example(*_FEET, "3 ft 7 in"),
        attempt=_bent(too_few_pieces, regroup=regroups(keeps_the_unit)),
    ),
    _taken(
        id="G05",
        name="drops the smaller units already there",
        rule="The larger unit is opened, and what was there of the smaller one is not joined to it.",
        shows_when=_TOO_FEW,
        thinking=filled(InPlaceOf, large, small, bottom, have),
        ask=filled(HadBefore, large, small, have),
        source=COMMON,
        example=Example(*_FEET, "2 ft 4 in"),
        attempt=_bent(_too_few_of_some, regroup=regroups(drops_what_was_there)),
    ),
    _taken(
        id="G06",
        name="copies the smaller unit when there is none to take it from",
        rule="The larger unit is taken; of the smaller one the second number's count is written down.",
        shows_when="none of the smaller unit in the first number",
        thinking=filled(NothingAbove, piece),
        ask=filled(NoneThere, typed_first, small),
        source=COMMON,
        example=Example("5 ft - 2 ft 8 in", "2 ft 4 in", "3 ft 8 in"),
        attempt=_bent(no_pieces_on_top, regroup=nothing, unit_by_unit=apart(less, second_if_none)),
    ),
)
