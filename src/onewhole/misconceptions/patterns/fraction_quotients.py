"""Fractions and mixed numbers that are divided, and decimals and measures that are shared out.

Rules and sources of M are those of a second collection of error patterns (see :mod:`~.sum_columns`); V08 to
V10 are ours.
"""

from functools import partial

from onewhole.misconceptions.asks.products import SignBetween
from onewhole.misconceptions.asks.quotients import (
    GroupsMakeAgain,
    HowBigIsAGroup,
    HowManyFit,
    MoreOrLessThanAll,
    MoreOrLessThanOne,
    PiecesInAll,
    WhereTheRestWent,
    WhichIsShared,
    WhoGetsThePieces,
)
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.parts import asked
from onewhole.misconceptions.holes.quotients import (
    divisor,
    shared_number,
    small_pieces,
    written_quotient,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.quotients import (
    across_larger_first,
    both_turned,
    divides,
    divides_fractions,
    each_unit_alone,
    first_turned,
    larger_by_smaller,
    left_is_ten_smaller,
    makes_fraction,
    neither_turned,
    point_left_out,
    top_times_whole,
    tops_over_same_bottom,
    whole_over_bottom,
    wholes_only,
)

_WIDODO = Source(
    "Widodo & Ikhwanudin (2019), chapter on learners with mathematics learning disabilities; Ikhwanudin et "
    "al. (2019), IJLTER 18(3), 75-95",
    provenance="read",
    note="abstracts read: turning over is used wrongly; which fraction is turned is not said there",
)
_SLIDES = Source(
    "a teacher's public slides on why an answer is wrong (fractions)",
    provenance="read",
    note="the wrong answer itself was read (2/7 / 3/5 = 6/35); the rule is our reading of it; not a study",
)

_divided = partial(Pattern, topic=Topic.QUOTIENTS, source=COMMON)

FRACTION_QUOTIENTS = (
    _divided(
        id="M09",
        name="turns over the first fraction",
        family=Family.OPERATION,
        rule="d1 x n2 over n1 x d2.",
        shows_when="a fraction divided by a fraction",
        thinking=plain(RuleThought.TURNED_THE_FIRST),
        ask=filled(HowBigIsAGroup, asked),
        source=_WIDODO,
        example=Example("3/4 / 2/5", "1 7/8", "8/15"),
        attempt=divides_fractions(first_turned),
    ),
    _divided(
        id="M10",
        name="turns over both fractions",
        family=Family.OPERATION,
        rule="d1 x d2 over n1 x n2.",
        shows_when="a fraction divided by a fraction",
        thinking=plain(RuleThought.TURN_AND_TIMES),
        ask=filled(HowManyFit, shared_number, divisor),
        source=_WIDODO,
        example=Example("3/4 / 2/5", "1 7/8", "20/6"),
        attempt=divides_fractions(both_turned),
    ),
    _divided(
        id="M11",
        name="multiplies the fractions instead",
        family=Family.OPERATION,
        rule="n1 x n2 over d1 x d2.",
        shows_when="a fraction divided by a fraction",
        thinking=plain(RuleThought.TOP_BY_TOP),
        ask=filled(SignBetween, asked),
        source=_SLIDES,
        example=Example("2/7 / 3/5", "10/21", "6/35"),
        attempt=divides_fractions(neither_turned),
    ),
    _divided(
        id="M12",
        name="divides across, the larger by the smaller",
        family=Family.OPERATION,
        rule="The larger numerator by the smaller, over the larger denominator by the smaller.",
        shows_when="both come out even",
        thinking=plain(RuleThought.BIGGER_BY_SMALLER),
        ask=filled(WhichIsShared, asked),
        example=Example("2/9 / 4/3", "1/6", "2/3"),
        attempt=divides_fractions(across_larger_first),
    ),
    _divided(
        id="M13",
        name="divides the tops and keeps the bottom",
        family=Family.DENOMINATOR,
        rule="n1 by n2, over d.",
        shows_when="two fractions with the same denominator, and n1 comes out even",
        thinking=plain(RuleThought.PIECES_BY_PIECES),
        ask=filled(HowManyFit, shared_number, divisor),
        example=Example("6/8 / 2/8", "3", "3/8"),
        attempt=divides_fractions(tops_over_same_bottom),
    ),
    _divided(
        id="M14",
        name="puts the whole number over the denominator",
        family=Family.OPERATION,
        rule="a over d.",
        shows_when="a whole number is divided by a unit fraction",
        thinking=plain(RuleThought.DIVIDING_MAKES_SMALLER),
        ask=filled(PiecesInAll, divisor, shared_number),
        example=Example("3 / 1/4", "12", "3/4"),
        attempt=makes_fraction(whole_over_bottom),
    ),
    _divided(
        id="M15",
        name="multiplies the numerator by the whole number",
        family=Family.OPERATION,
        rule="n x a over d.",
        shows_when="a fraction is divided by a whole number",
        thinking=plain(RuleThought.WHOLE_GOES_WITH_TOP),
        ask=filled(MoreOrLessThanAll, shared_number, divisor),
        example=Example("1/3 / 4", "1/12", "4/3"),
        attempt=makes_fraction(top_times_whole),
    ),
    _divided(
        id="M17",
        name="divides the larger number by the smaller",
        family=Family.OPERATION,
        rule="b over a.",
        shows_when="a smaller whole number is divided by a larger one",
        thinking=plain(RuleThought.BIGGER_BY_SMALLER),
        ask=filled(MoreOrLessThanOne, shared_number, divisor),
        example=Example("3 / 4", "3/4", "4/3"),
        attempt=makes_fraction(larger_by_smaller),
    ),
    _divided(
        id="M18",
        name="shares the wholes only",
        family=Family.NUMERATOR,
        rule="w by a wholes; n/d is kept.",
        shows_when="a mixed number is divided by a whole number, and its wholes come out even",
        thinking=plain(RuleThought.WHOLES_CAN_BE_SHARED),
        ask=filled(WhoGetsThePieces, small_pieces),
        example=Example("6 3/4 / 3", "2 1/4", "2 3/4"),
        attempt=divides(wholes_only),
    ),
    _divided(
        id="V08",
        name="throws away what is left of a unit",
        family=Family.REGROUPING,
        rule="Each unit is shared by itself, and what is left of it is lost.",
        shows_when="a mixed number, a decimal or a measure, and a unit before the last leaves something",
        thinking=plain(RuleThought.EACH_UNIT_BY_ITSELF),
        ask=filled(WhereTheRestWent, shared_number),
        example=Example("5 ft 2 in / 2", "2 ft 7 in", "2 ft 1 in"),
        attempt=divides(each_unit_alone),
    ),
    _divided(
        id="V09",
        name="takes one large unit that is left for ten small ones",
        family=Family.REGROUPING,
        rule="What is left of a unit is worth ten of the next.",
        shows_when="a measure, and a unit before the last leaves something",
        thinking=plain(RuleThought.ONE_LEFT_IS_TEN),
        ask=filled(WhereTheRestWent, shared_number),
        example=Example("5 ft 2 in / 2", "2 ft 7 in", "2 ft 6 in"),
        attempt=divides(left_is_ten_smaller),
    ),
    _divided(
        id="V10",
        name="leaves out the point of the quotient",
        family=Family.PLACE_VALUE,
        rule="The digits are divided, without the point.",
        shows_when="a decimal is divided by a whole number and comes out even",
        thinking=plain(RuleThought.DIVIDED_AS_DIGITS),
        ask=filled(GroupsMakeAgain, divisor, written_quotient, shared_number),
        example=Example("5.2 / 4", "1.3", "13"),
        attempt=divides(point_left_out),
    ),
)
