"""Whole numbers that are divided, with and without a remainder.

Rules and sources are those of a second collection of error patterns (see :mod:`~.sum_columns`).
"""

from functools import partial

from onewhole.misconceptions.asks.quotients import (
    AllUsedUp,
    DigitNotUsed,
    FirstBlocks,
    GroupsMakeAgain,
    LargerThanAll,
    LeftAmongHowMany,
    OneMoreGroup,
    TensOfAll,
    WhereTheRestWent,
)
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.quotients import (
    divisor,
    left_over,
    shared_number,
    written_quotient,
    written_remainder,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.quotients import (
    digits_turned_round,
    inner_zeros_skipped,
    last_digit_not_used,
    left_thrown_away,
    one_group_too_few,
    quotient_zeros_left_out,
    remainder_behind_point,
    remainder_dropped,
    shares_wholes,
    smaller_into_larger,
    two_digits_at_once,
)

_LEARNER = Source(
    "a public question-and-answer page: a learner writes 3465 for 34065",
    provenance="read",
    note="one learner, 2001; that zero errors are named in every handbook is from memory",
)
_NOCHE = Source(
    "Noche: systematic errors in arithmetic of 125 college students, journal paper (19 / 2 answered 9.1)",
    provenance="read",
    note="opening read; older learners",
)
_GERSTER = Source(
    "Gerster (1982), Schuelerfehler bei schriftlichen Rechenverfahren",
    note="only its entry in a catalogue was read",
)
_BROWN = Source(
    "Brown & Burton (1978), Cognitive Science 2, 155-192 (report ED 159 036)",
    note="abstract and opening read; that this rule is among its bugs is from memory",
)
_ARBOGAST = Source(
    "Arbogast & Duerwald (2011): bachelor thesis on written division in grade 5, as shown on a German "
    "university's teacher page; Gerster (1982) behind it",
    provenance="read",
    note="the answer 1211 : 7 = 1613 was read; the rule that makes it is ours",
)
_ARTICLE = Source(
    "a public article on children's mistakes in long division: a digit not brought down gives twelve "
    "remainder six for 123 remainder 10",
    provenance="read",
    note="not a study",
)

_divided = partial(Pattern, topic=Topic.QUOTIENTS, source=COMMON)

QUOTIENTS = (
    _divided(
        id="L01",
        name="leaves out a zero of the quotient",
        family=Family.PLACE_VALUE,
        rule="The right quotient without its zeros.",
        shows_when="a 0 stands in the quotient",
        thinking=plain(RuleThought.NOT_GOING_IS_NOTHING),
        ask=filled(GroupsMakeAgain, divisor, written_quotient, shared_number),
        source=_LEARNER,
        example=Example("824 / 4", "206", "26"),
        attempt=shares_wholes(quotient_zeros_left_out),
    ),
    _divided(
        id="L02",
        name="drops the remainder",
        family=Family.FORM,
        rule="The quotient alone.",
        shows_when="a remainder is left",
        thinking=plain(RuleThought.THAT_IS_HOW_OFTEN),
        ask=filled(AllUsedUp, written_quotient, divisor, shared_number),
        example=Example("87 / 4", "21 r 3", "21"),
        attempt=shares_wholes(remainder_dropped),
    ),
    _divided(
        id="L03",
        name="writes the remainder behind a point",
        family=Family.PLACE_VALUE,
        rule="The quotient, a point, the remainder.",
        shows_when="a remainder is left",
        thinking=plain(RuleThought.LEFT_BEHIND_THE_POINT),
        ask=filled(LeftAmongHowMany, left_over),
        source=_NOCHE,
        example=Example("87 / 4", "21 r 3", "21.3"),
        attempt=shares_wholes(remainder_behind_point),
    ),
    _divided(
        id="L04",
        name="turns the digits of the quotient round",
        family=Family.PLACE_VALUE,
        rule="The digits of the right quotient in reverse order; the remainder is kept.",
        shows_when="the quotient is of two digits or more",
        thinking=plain(RuleThought.FROM_THE_RIGHT),
        ask=filled(GroupsMakeAgain, divisor, written_quotient, shared_number),
        source=_GERSTER,
        example=Example("84 / 3", "28", "82"),
        attempt=shares_wholes(digits_turned_round),
    ),
    _divided(
        id="L05",
        name="divides the larger by the smaller, digit by digit",
        family=Family.OPERATION,
        rule="Each digit against the divisor: the larger by the smaller, without what is left; 0 gives 0.",
        shows_when="the divisor is of one digit and the number of more",
        thinking=plain(RuleThought.BIGGER_BY_SMALLER),
        ask=filled(FirstBlocks, divisor, shared_number),
        source=_BROWN,
        example=Example("246 / 4", "61 r 2", "211"),
        attempt=shares_wholes(smaller_into_larger),
    ),
    _divided(
        id="L06",
        name="throws away what is left of a digit",
        family=Family.REGROUPING,
        rule="Each digit by the divisor without what is left; nothing is handed on.",
        shows_when="the divisor is of one digit and the number of more",
        thinking=plain(RuleThought.EACH_DIGIT_BY_ITSELF),
        ask=filled(WhereTheRestWent, shared_number),
        example=Example("74 / 2", "37", "32"),
        attempt=shares_wholes(left_thrown_away),
    ),
    _divided(
        id="L07",
        name="leaves a remainder as large as the divisor or larger",
        family=Family.FORM,
        rule="The quotient is 1 too small, the remainder larger by the divisor.",
        shows_when="the quotient is 2 or more",
        thinking=plain(RuleThought.REST_IS_REMAINDER),
        ask=filled(OneMoreGroup, written_remainder, divisor),
        example=Example("87 / 4", "21 r 3", "20 r 7"),
        attempt=shares_wholes(one_group_too_few),
        of_form=True,
    ),
    _divided(
        id="L08",
        name="writes two digits at once in the quotient",
        family=Family.PLACE_VALUE,
        rule="The last digit but one of the quotient is 1 too small; the last step gives ten or more, "
        "written in full.",
        shows_when="the last digit but one of the quotient is not 0",
        thinking=plain(RuleThought.WRITTEN_AS_IT_GOES),
        ask=filled(LargerThanAll, shared_number, written_quotient),
        source=_ARBOGAST,
        example=Example("1211 / 7", "173", "1613"),
        attempt=shares_wholes(two_digits_at_once),
    ),
    _divided(
        id="L11",
        name="does not bring the last digit down",
        family=Family.OPERATION,
        rule="The number without its last digit is divided.",
        shows_when="the quotient is 10 or more",
        thinking=plain(RuleThought.RAN_OUT_OF_STEPS),
        ask=filled(DigitNotUsed, shared_number),
        source=_ARTICLE,
        example=Example("95 / 4", "23 r 3", "2 r 1"),
        attempt=shares_wholes(last_digit_not_used),
    ),
    _divided(
        id="L12",
        name="skips a zero inside the number",
        family=Family.PLACE_VALUE,
        rule="The zeros inside the number are left out, and the rest is divided.",
        shows_when="a 0 stands inside the number",
        thinking=plain(RuleThought.ZERO_SO_GO_ON),
        ask=filled(TensOfAll, shared_number),
        source=_LEARNER,
        example=Example("705 / 5", "141", "15"),
        attempt=shares_wholes(inner_zeros_skipped),
    ),
)
