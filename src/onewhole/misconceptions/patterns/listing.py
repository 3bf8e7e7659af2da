"""Factors and multiples. No source was found: common practice."""

from functools import partial

from onewhole.misconceptions.asks.listing import CountedOnce, CountedTo, GoesInto, HowManyFactors, PairedWith
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.listing import (
    first_missing,
    first_too_many,
    multiple_and_factor,
    number,
    smallest_listed,
    step,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.listing import (
    factors_instead,
    last_digit_decides,
    multiple_of_it,
    multiples_instead,
    not_in_the_tables,
    odd_is_prime,
    on_list,
    on_word,
    one_is_prime,
    one_of_each_pair,
    without_the_ends,
    without_the_number,
)
from onewhole.statements.listing import ListSort

_listed = partial(Pattern, topic=Topic.LISTS, family=Family.OPERATION, source=COMMON)
_chosen = partial(Pattern, topic=Topic.PRIMES, family=Family.OPERATION, source=COMMON)

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
    _chosen(
        id="X06",
        name="calls odd numbers prime",
        rule="Every odd number but 1 is called prime, and every even one composite.",
        shows_when="the number is odd and composite, or it is 2",
        thinking=plain(RuleThought.ODD_IS_PRIME),
        ask=filled(HowManyFactors, number),
        example=Example("is 15 prime or composite", "composite", "prime"),
        attempt=on_word(odd_is_prime),
    ),
    _chosen(
        id="X07",
        name="calls 1 prime",
        rule="The number 1 is called prime.",
        shows_when="the number is 1",
        thinking=plain(RuleThought.ONE_IS_PRIME),
        ask=filled(HowManyFactors, number),
        example=Example("is 1 prime or composite", "neither", "prime"),
        attempt=on_word(one_is_prime),
    ),
    _chosen(
        id="X08",
        name="calls prime what is in no table",
        rule="An odd number that is no product of two numbers to 10 is called prime, unless it ends in 5.",
        shows_when="a composite number is odd, does not end in 5, and is in no table to 10",
        thinking=plain(RuleThought.NOT_IN_THE_TABLES),
        ask=filled(HowManyFactors, number),
        example=Example("is 51 prime or composite", "composite", "prime"),
        attempt=on_word(not_in_the_tables),
    ),
    _chosen(
        id="X09",
        name="takes factor and multiple for each other",
        rule="It is answered with the two numbers turned round.",
        shows_when="one number is a multiple of the other, and not the same",
        thinking=multiple_and_factor,
        ask=filled(CountedTo, step, number),
        example=Example("is 84 a multiple of 7", "yes", "no"),
        attempt=on_word(multiple_of_it),
    ),
    _chosen(
        id="X10",
        name="looks only at the last digit",
        rule="A number is called a multiple where its last digit is one.",
        shows_when="the last digit decides otherwise than the number",
        thinking=plain(RuleThought.ENDING_DECIDES),
        ask=filled(CountedTo, step, number),
        example=Example("is 26 a multiple of 3", "no", "yes"),
        attempt=on_word(last_digit_decides),
    ),
)
