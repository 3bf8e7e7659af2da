"""Factors and multiples. No source was found: common practice."""

from functools import partial

from onewhole.misconceptions.asks.listing import CountedOnce, GoesInto, PairedWith
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.listing import first_missing, first_too_many, number, smallest_listed
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.listing import (
    factors_instead,
    multiples_instead,
    on_list,
    one_of_each_pair,
    without_the_ends,
    without_the_number,
)
from onewhole.statements.listing import ListSort

_listed = partial(Pattern, topic=Topic.LISTS, family=Family.OPERATION, source=COMMON)

LISTING = (
    _listed(
        id="X01",
        name="leaves out 1 and the number itself",
        rule="All factors are listed but 1 and the number itself.",
        shows_when="there is a factor besides 1 and the number itself",
        thinking=plain(RuleThought.ENDS_DO_NOT_COUNT),
        ask=filled(GoesInto, first_missing, number),
        example=Example("factors of 12", "1, 2, 3, 4, 6, 12", "2, 3, 4, 6"),
        attempt=on_list(ListSort.FACTORS, without_the_ends),
    ),
    _listed(
        id="X02",
        name="lists one number of each pair",
        rule="Of each pair that makes the number only the smaller one is listed.",
        shows_when="there are two factors or more",
        thinking=plain(RuleThought.ONE_OF_A_PAIR),
        ask=filled(PairedWith, smallest_listed, number),
        example=Example("factors of 12", "1, 2, 3, 4, 6, 12", "1, 2, 3"),
        attempt=on_list(ListSort.FACTORS, one_of_each_pair),
    ),
    _listed(
        id="X03",
        name="lists multiples for factors",
        rule="The first five multiples are listed where factors are asked for.",
        shows_when="factors are asked for",
        thinking=plain(RuleThought.FACTORS_COUNT_ON),
        ask=filled(GoesInto, first_too_many, number),
        example=Example("factors of 12", "1, 2, 3, 4, 6, 12", "12, 24, 36, 48, 60"),
        attempt=on_list(ListSort.FACTORS, multiples_instead),
    ),
    _listed(
        id="X04",
        name="begins with twice the number",
        rule="The number itself is not listed among its multiples.",
        shows_when="there are two multiples or more",
        thinking=plain(RuleThought.MULTIPLES_ARE_MORE),
        ask=filled(CountedOnce, number),
        example=Example("multiples of 7 to 30", "7, 14, 21, 28", "14, 21, 28"),
        attempt=on_list(ListSort.MULTIPLES, without_the_number),
    ),
    _listed(
        id="X05",
        name="lists factors for multiples",
        rule="Factors are listed where multiples are asked for.",
        shows_when="multiples are asked for",
        thinking=plain(RuleThought.MULTIPLES_GO_INTO),
        ask=filled(CountedOnce, number),
        example=Example("multiples of 6 to 30", "6, 12, 18, 24, 30", "1, 2, 3, 6"),
        attempt=on_list(ListSort.MULTIPLES, factors_instead),
    ),
)
