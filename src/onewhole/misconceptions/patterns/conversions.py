"""Measures written in another unit: the wrong operation, the wrong ratio, a part left out.

Rules and sources are those of a second collection of error patterns (see :mod:`~.sum_columns`). Its J14
asks for hours alone, which no problem of grade 4 does; here it shows where 90 min are to be written another
way.
"""

from functools import partial

from onewhole.misconceptions.asks.naming import PartOfLarger
from onewhole.misconceptions.asks.opening import HadBefore, HowManyMake, OneBesideOne
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.conversions import beside, larger, smaller
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.conversions import (
    added,
    after_a_point,
    converts,
    divided_on_the_way_down,
    side_by_side,
    small_left_out,
    times_hundred,
    times_on_the_way_up,
    times_ten,
    writes_two,
)

_LARGER_NUMBER = Source(
    "a teacher's public reflection on a conversion lesson: a larger unit taken to need a larger number",
    provenance="read",
    note="one child's words; not a study",
)
_AS_DECIMALS = Source(
    "errors from reading hours and minutes as a decimal number; same root as G01 (Thanheiser 2012)",
    note="Kamii & Russell (2012), JRME 43, 296-315, opening read: 126 children of grades 2 to 5 "
    "cannot join hours and minutes",
)
_DOWN = "a larger unit is written in a smaller one"
_TWO = "two units are written in the smaller one"
_FEET = "5 ft 3 in = ? in", "63 in"

_converted = partial(Pattern, topic=Topic.CONVERSIONS, family=Family.CONVERSION, source=COMMON)

CONVERSIONS = (
    _converted(
        id="J06",
        name="multiplies on the way up",
        rule="The number is multiplied by the ratio although the new unit is larger.",
        shows_when="a smaller unit is written in a larger one",
        thinking=plain(RuleThought.LARGER_UNIT_LARGER_NUMBER),
        ask=filled(OneBesideOne, larger, smaller),
        source=_LARGER_NUMBER,
        example=Example("36 in = ? ft", "3 ft", "432 ft"),
        attempt=converts(times_on_the_way_up),
    ),
    _converted(
        id="J07",
        name="divides on the way down",
        rule="The number is divided by the ratio although the new unit is smaller.",
        shows_when="a larger unit is written in a smaller one, and the ratio goes into the number evenly",
        thinking=plain(RuleThought.SMALLER_UNIT_SMALLER_NUMBER),
        ask=filled(OneBesideOne, larger, smaller),
        source=_LARGER_NUMBER,
        example=Example("36 ft = ? in", "432 in", "3 in"),
        attempt=converts(divided_on_the_way_down),
    ),
    _converted(
        id="J08",
        name="converts with ten",
        rule="The number is multiplied by 10.",
        shows_when=f"{_DOWN}, and not 10 make one",
        thinking=plain(RuleThought.ALL_IN_TENS),
        ask=filled(HowManyMake, larger, smaller),
        example=Example("3 ft = ? in", "36 in", "30 in"),
        attempt=converts(times_ten),
    ),
    _converted(
        id="J09",
        name="converts with a hundred",
        rule="The number is multiplied by 100.",
        shows_when=f"{_DOWN}, and not 100 make one",
        thinking=plain(RuleThought.HUNDRED_SMALL_ONES),
        ask=filled(HowManyMake, larger, smaller),
        source=_AS_DECIMALS,
        example=Example("3 h = ? min", "180 min", "300 min"),
        attempt=converts(times_hundred),
    ),
    _converted(
        id="J11",
        name="leaves out the smaller units that are there",
        rule="The larger unit is changed rightly, and the smaller ones beside it are not added.",
        shows_when=_TWO,
        thinking=plain(RuleThought.CHANGED_THE_LARGE_ONES),
        ask=filled(HadBefore, larger, smaller, beside),
        example=Example(*_FEET, "60 in"),
        attempt=converts(small_left_out),
    ),
    _converted(
        id="J12",
        name="adds without changing",
        rule="The two counts are added as they stand.",
        shows_when=_TWO,
        thinking=plain(RuleThought.TWO_COUNTS_ADDED),
        ask=filled(HowManyMake, larger, smaller),
        example=Example(*_FEET, "8 in"),
        attempt=converts(added),
    ),
    _converted(
        id="J13",
        name="writes the two counts side by side",
        family=Family.PLACE_VALUE,
        rule="The smaller unit's count is written after the larger one's.",
        shows_when=_TWO,
        thinking=plain(RuleThought.ONE_COUNT_AFTER_THE_OTHER),
        ask=filled(HowManyMake, larger, smaller),
        example=Example(*_FEET, "53 in"),
        attempt=converts(side_by_side),
    ),
    _converted(
        id="J14",
        name="writes the smaller unit after a point",
        family=Family.PLACE_VALUE,
        rule="The larger unit is right; what is over is written after a point, digits as they stand.",
        shows_when="a smaller unit is written in two, something is over, and not 10, 100 or 1,000 make one",
        thinking=plain(RuleThought.MINUTES_AFTER_THE_POINT),
        ask=filled(PartOfLarger, larger, smaller, beside),
        source=_AS_DECIMALS,
        example=Example("90 min = ?", "1 h 30 min", "1.30 h"),
        attempt=writes_two(after_a_point),
    ),
)
