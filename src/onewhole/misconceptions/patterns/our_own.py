"""Other names of numbers, measures and cents: patterns of our own. Common practice, no source."""

from functools import partial

from onewhole.misconceptions.asks.naming import MadeOf, StillMore
from onewhole.misconceptions.asks.opening import CrossedOff, HowManyMake
from onewhole.misconceptions.asks.sizes import BelowOneWhole
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.conversions import larger, larger_there, smaller
from onewhole.misconceptions.holes.fractions import one_fraction
from onewhole.misconceptions.holes.parts import large, small, wrote
from onewhole.misconceptions.holes.several import first_amount
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.cents import point_kept_as_cents
from onewhole.misconceptions.wrong_steps.conversions import (
    parted_at_a_hundred,
    parted_at_ten,
    rest_dropped,
    writes_two,
)
from onewhole.misconceptions.wrong_steps.opened_names import as_they_were, fills_a_name
from onewhole.misconceptions.wrong_steps.other_names import over_itself, under_one, whole_as_fraction

_TWO_UNITS = "26 in = ? ft ? in", "2 ft 2 in"
_THREE = "3 as a fraction", "3/1"

_seen = partial(Pattern, source=COMMON)

OUR_OWN = (
    _seen(
        id="V01",
        name="crosses off a whole and keeps the pieces as they were",
        topic=Topic.OTHER_NAMES,
        family=Family.REGROUPING,
        rule="w n/d is written (w - 1) n/d.",
        shows_when="a number is written with one whole opened",
        thinking=plain(RuleThought.WHOLE_IS_GONE),
        ask=filled(CrossedOff, large, small),
        example=Example("7 2/6 = 6 ?/6", "8", "2"),
        attempt=fills_a_name(as_they_were),
    ),
    _seen(
        id="V02",
        name="writes a whole number over itself",
        topic=Topic.OTHER_NAMES,
        family=Family.CONVERSION,
        rule="w is written w/w.",
        shows_when="a whole number of two or more is written as a fraction",
        thinking=plain(RuleThought.OVER_ITSELF),
        ask=filled(BelowOneWhole, one_fraction, wrote),
        example=Example(*_THREE, "3/3"),
        attempt=whole_as_fraction(over_itself),
    ),
    _seen(
        id="V03",
        name="writes a whole number under a one",
        topic=Topic.OTHER_NAMES,
        family=Family.CONVERSION,
        rule="w is written 1/w.",
        shows_when="a whole number of two or more is written as a fraction",
        thinking=plain(RuleThought.ONE_ON_TOP),
        ask=filled(BelowOneWhole, one_fraction, wrote),
        example=Example(*_THREE, "1/3"),
        attempt=whole_as_fraction(under_one),
    ),
    _seen(
        id="V04",
        name="makes a larger unit of every ten",
        topic=Topic.CONVERSIONS,
        family=Family.CONVERSION,
        rule="The tens are written as the larger unit, and the ones as the smaller one.",
        shows_when="fewer than 100 of a smaller unit are written in two, and not 10, 100 or 1,000 make one",
        thinking=plain(RuleThought.ALL_IN_TENS),
        ask=filled(HowManyMake, larger, smaller),
        source=Source(COMMON.text, note="the twin of G02 and J02"),
        example=Example(*_TWO_UNITS, "2 ft 6 in"),
        attempt=writes_two(parted_at_ten),
    ),
    _seen(
        id="V05",
        name="makes a larger unit of every hundred",
        topic=Topic.CONVERSIONS,
        family=Family.CONVERSION,
        rule="The hundreds are written as the larger unit, and what is over as the smaller one.",
        shows_when="100 or more of a smaller unit are written in two, and not 10, 100 or 1,000 make one",
        thinking=plain(RuleThought.HUNDRED_SMALL_ONES),
        ask=filled(HowManyMake, larger, smaller),
        source=Source(COMMON.text, note="the twin of G01 and J01"),
        example=Example("130 min = ? h ? min", "2 h 10 min", "1 h 30 min"),
        attempt=writes_two(parted_at_a_hundred),
    ),
    _seen(
        id="V06",
        name="drops what is over in the smaller unit",
        topic=Topic.CONVERSIONS,
        family=Family.FORM,
        rule="The larger unit is right, and what is over is dropped.",
        shows_when="a smaller unit is written in two, and something is over",
        thinking=plain(RuleThought.HOW_OFTEN_IT_GOES),
        ask=filled(MadeOf, one_fraction, larger_there, larger, smaller),
        source=Source(COMMON.text, note="the twin of O11"),
        example=Example(*_TWO_UNITS, "2 ft"),
        attempt=writes_two(rest_dropped),
    ),
    _seen(
        id="V07",
        name="writes dollars with a cent sign",
        topic=Topic.DECIMALS,
        family=Family.FORM,
        rule="A point is put before the last two digits, and the cent sign is kept.",
        shows_when="cents come to 100 or more",
        thinking=plain(RuleThought.POINT_AND_CENTS),
        ask=filled(StillMore, wrote, first_amount),
        example=Example("75¢ + 50¢", "125¢", "1.25¢"),
        attempt=point_kept_as_cents,
    ),
)
