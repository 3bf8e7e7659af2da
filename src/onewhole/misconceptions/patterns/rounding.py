"""Rounding by a wrong rule.

Rules and sources are those of a second collection of error patterns (see :mod:`~.sum_columns`). Its R10,
exactly half goes down, is no pattern here: of a number exactly halfway either neighbor is right
(docs/decisions/0039).
"""

from functools import partial

from onewhole.misconceptions.asks.rounding import (
    BetweenWhich,
    DigitBeside,
    DigitInPlace,
    HowFarFromEach,
    NearerThanThat,
    NearTheNumber,
    OneYouCountBy,
)
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.parts import wrote
from onewhole.misconceptions.holes.rounding import (
    high_neighbor,
    low_neighbor,
    rounded_number,
    rounded_unit,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.rounding import (
    always_down,
    always_up,
    by_the_last_digit,
    in_a_chain,
    one_place_too_large,
    one_place_too_small,
    one_taken_off,
    rounded_by,
    tail_kept,
    zeros_left_off,
)

_UP = "round 3472 to the nearest hundred", "3500"

_FAR = "two smaller places or more stand to the right of the one that is rounded to"

_rounds = partial(Pattern, topic=Topic.ROUND, family=Family.PLACE_VALUE, source=COMMON)

ROUNDING = (
    _rounds(
        id="R01",
        name="always rounds down",
        rule="The smaller neighbor is written, although the larger one is nearer.",
        shows_when="a number is rounded and lies past halfway",
        thinking=plain(RuleThought.ROUNDING_CUTS_OFF),
        ask=filled(BetweenWhich, rounded_number, rounded_unit),
        example=Example(*_UP, "3400"),
        attempt=rounded_by(always_down),
    ),
    _rounds(
        id="R02",
        name="always rounds up",
        rule="The larger neighbor is written, although the smaller one is nearer.",
        shows_when="a number is rounded and does not reach halfway",
        thinking=plain(RuleThought.ROUNDING_IS_UP),
        ask=filled(BetweenWhich, rounded_number, rounded_unit),
        example=Example("round 3431 to the nearest hundred", "3400", "3500"),
        attempt=rounded_by(always_up),
    ),
    _rounds(
        id="R03",
        name="rounds in a chain",
        rule="The number is rounded to the smallest place, that to the next place, and so on.",
        shows_when="an earlier rounding lifts the digit that decides to 5",
        thinking=plain(RuleThought.ONE_PLACE_AFTER_ANOTHER),
        ask=filled(HowFarFromEach, rounded_number, low_neighbor, high_neighbor),
        source=Source(
            "a public question-and-answer page (2015): rounding in steps as a common mistake",
            provenance="read",
            note="not a study",
        ),
        example=Example("round 3446 to the nearest hundred", "3400", "3500"),
        attempt=rounded_by(in_a_chain),
    ),
    _rounds(
        id="R04",
        name="rounds one place too small",
        rule="The number is rounded to the place on the right of the one that is asked for.",
        shows_when=_FAR,
        thinking=plain(RuleThought.COUNTED_FROM_THE_WRONG_END),
        ask=filled(DigitInPlace, rounded_number, rounded_unit),
        source=Source(
            "a public teacher's page (2012): 74,580 to the nearest ten thousand answered 75,000",
            provenance="read",
            note="the answer itself was read; not a study",
        ),
        example=Example("round 74580 to the nearest ten thousand", "70000", "75000"),
        attempt=rounded_by(one_place_too_small),
    ),
    _rounds(
        id="R05",
        name="rounds one place too large",
        rule="The number is rounded to the place on the left of the one that is asked for.",
        shows_when="there is a digit in that place",
        thinking=plain(RuleThought.FIRST_DIGIT_IS_KEPT),
        ask=filled(DigitInPlace, rounded_number, rounded_unit),
        source=Source(
            "a public set of labelled wrong answers to multiple-choice questions (“rounds too much”)",
            provenance="read",
            note="the label was read; no count for it",
        ),
        example=Example(*_UP, "3000"),
        attempt=rounded_by(one_place_too_large),
    ),
    _rounds(
        id="R06",
        name="rounds the digit and keeps the tail",
        rule="The place is rounded, and the digits after it stay.",
        shows_when="something stands to the right of the place",
        thinking=plain(RuleThought.DIGIT_GOES_UP_ONLY),
        ask=filled(OneYouCountBy, wrote, rounded_unit),
        example=Example(*_UP, "3572"),
        attempt=rounded_by(tail_kept),
    ),
    _rounds(
        id="R07",
        name="lets the last digit decide",
        rule="The larger neighbor is written where the last digit is 5 or more, and else the smaller one.",
        shows_when=_FAR,
        thinking=plain(RuleThought.LAST_DIGIT_DECIDES),
        ask=filled(DigitBeside, rounded_number, rounded_unit),
        example=Example("round 3428 to the nearest hundred", "3400", "3500"),
        attempt=rounded_by(by_the_last_digit),
    ),
    _rounds(
        id="R08",
        name="leaves the zeros off",
        rule="The number is rounded rightly and written without its zeros.",
        shows_when="a whole number is rounded to tens or a larger place",
        thinking=plain(RuleThought.REST_GOES_AWAY),
        ask=filled(NearTheNumber, wrote, rounded_number),
        example=Example(*_UP, "35"),
        attempt=rounded_by(zeros_left_off),
    ),
    _rounds(
        id="R09",
        name="takes one off when rounding down",
        rule="One less than the smaller neighbor is written in the place, although that neighbor is nearest.",
        shows_when="a number is rounded and does not reach halfway",
        thinking=plain(RuleThought.DOWN_TAKES_ONE_OFF),
        ask=filled(NearerThanThat, rounded_number, wrote, rounded_unit),
        example=Example("round 3432 to the nearest hundred", "3400", "3300"),
        attempt=rounded_by(one_taken_off),
    ),
)
