"""Decimals that are added: what becomes of a ten at the point, and what stands under what.

Rules and sources are those of a second collection of error patterns (see :mod:`~.sum_columns`).
"""

from functools import partial

from onewhole.misconceptions.asks.adding import AsManyPlaces, MakeTogether, WholesOfEach
from onewhole.misconceptions.asks.amounts import AboutHowBig, MoreOrLess
from onewhole.misconceptions.asks.pieces import TenthsInAll
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.parts import asked, typed_first, typed_second, wrote
from onewhole.misconceptions.holes.places import before_point, tenth
from onewhole.misconceptions.holes.sums import makes_ten, sum_place
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.patterns.sum_columns import COX
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.pointed import on_decimals
from onewhole.misconceptions.wrong_steps.pointed_sums import (
    columns_without_carry,
    lost_at_the_point,
    no_point,
    places_of_both,
    whole_number_as_tenths,
    whole_numbers_after_the_point,
)
from onewhole.working.strategies.columns import COLUMNS

_FULL = "3.7 + 2.5", "6.2"

_added = partial(Pattern, topic=Topic.DECIMALS, family=Family.PLACE_VALUE, source=COMMON, beside=COLUMNS.key)

DECIMAL_SUMS = (
    _added(
        id="I02",
        name="loses the carry at the point",
        family=Family.REGROUPING,
        rule="The parts after the point are added and what goes over one whole is dropped; the wholes are "
        "added apart.",
        shows_when="the parts after the point make one whole or more",
        thinking=plain(RuleThought.POINT_KEEPS_APART),
        ask=filled(TenthsInAll, tenth, before_point),
        example=Example(*_FULL, "5.2"),
        attempt=on_decimals(lost_at_the_point, taken=False),
    ),
    _added(
        id="I03",
        name="forgets to carry in every column",
        family=Family.REGROUPING,
        rule="With the points in line each column's sum is written without its ten and nothing is carried; "
        "the left-most column is written in full.",
        shows_when="a column other than the left-most makes ten or more",
        thinking=plain(RuleThought.EACH_COLUMN_APART),
        ask=filled(MakeTogether, typed_first, typed_second, sum_place(makes_ten)),
        source=COX,
        example=Example("3.76 + 2.58", "6.34", "5.24"),
        attempt=on_decimals(columns_without_carry, taken=False),
    ),
    _added(
        id="I04",
        name="counts the places of both numbers",
        rule="The digits are added rightly, and as many places are marked off as both numbers have together.",
        shows_when="both numbers have decimal places",
        thinking=plain(RuleThought.COUNTS_PLACES),
        ask=filled(MoreOrLess, asked, typed_first),
        example=Example("0.3 + 0.4", "0.7", "0.07"),
        attempt=on_decimals(places_of_both, taken=False),
    ),
    _added(
        id="I05",
        name="lines up the digits after the point on the right",
        rule="The digits after the point are added as whole numbers; what fills the places of the longer "
        "number is carried over the point.",
        shows_when="the numbers of decimal places differ",
        thinking=plain(RuleThought.WHOLE_NUMBERS_AFTER),
        ask=filled(AsManyPlaces, typed_first, typed_second),
        source=Source(
            "a public summary sheet on errors with decimals (4.15 + 0.1 = 4.16), after Bell, Swan & Taylor "
            "(1981)",
            provenance="read",
            note="second-hand; first page read",
        ),
        example=Example("0.45 + 0.3", "0.75", "0.48"),
        attempt=on_decimals(whole_numbers_after_the_point, taken=False),
    ),
    _added(
        id="I06",
        name="adds the whole number in the tenths",
        rule="The whole number is added in the column of the tenths.",
        shows_when="one number is whole and the other is not",
        thinking=plain(RuleThought.FIRST_FREE_DIGIT),
        ask=filled(WholesOfEach, typed_first, typed_second),
        example=Example("3 + 4.25", "7.25", "4.55"),
        attempt=on_decimals(whole_number_as_tenths, taken=False),
    ),
    _added(
        id="I07",
        name="leaves out the point",
        rule="The digits of the sum are right, and no point is written.",
        shows_when="a number is written with a point",
        thinking=plain(RuleThought.POINT_NOT_ADDED),
        ask=filled(AboutHowBig, asked, wrote),
        example=Example(*_FULL, "62"),
        attempt=on_decimals(no_point, taken=False),
    ),
)
