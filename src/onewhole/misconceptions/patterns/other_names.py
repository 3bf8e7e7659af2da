"""One number written another way: mixed numbers, simplest form, decimals.

Rules and sources are those of a second collection of error patterns (see :mod:`~.sum_columns`). What it calls
O01 to O04 and O07 are A24 to A28 here, and O12 and O13 are C01 and C03.
"""

from functools import partial

from onewhole.misconceptions.asks.comparing import WholesFrom
from onewhole.misconceptions.asks.naming import BackToPieces, LastDigitCalled, PiecesBefore, StillGoesInto
from onewhole.misconceptions.asks.pieces import CouldMakeOne, PiecesIn
from onewhole.misconceptions.asks.sizes import BelowOneWhole, FirstPlace
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.fractions import one_fraction, one_fraction_piece
from onewhole.misconceptions.holes.parts import (
    large,
    number_with_wholes,
    small,
    written_pieces,
    written_wholes,
    wrote,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.another_way import as_one_fraction
from onewhole.misconceptions.wrong_steps.other_names import (
    always_tenths,
    as_mixed,
    as_simplest,
    both_after_the_point,
    bottom_after_the_point,
    bottom_divided_only,
    decimal_as_fraction,
    digits_as_bottom,
    digits_split,
    halved_once,
    left_over_dropped,
    left_over_over_wholes,
    one_whole_out,
    top_times_wholes_and_bottom,
)
from onewhole.misconceptions.wrong_steps.pointed import fraction_as_decimal

_SLIDES = Source(
    "a teacher's public slides on why an answer is wrong (fractions)",
    provenance="read",
    note="the wrong answer itself was read (4 2/5 = 13/5; 8/12 = 4/6); the rule is our reading of it; not a "
    "study",
)
_MIXED = "17/5 = ?", "3 2/5"
_MORE = "a fraction of more than one whole is written as a mixed number"
_DECIMAL = "a fraction below one whole is written as a decimal"

_named = partial(Pattern, topic=Topic.OTHER_NAMES, source=COMMON)

OTHER_NAMES = (
    _named(
        id="O05",
        name="multiplies whole and numerator, adds the denominator",
        family=Family.CONVERSION,
        rule="w n/d is written (w x n + d)/d.",
        shows_when="a mixed number is turned into one fraction",
        thinking=plain(RuleThought.MULTIPLY_THEN_ADD),
        ask=filled(PiecesIn, number_with_wholes, large, small),
        source=_SLIDES,
        example=Example("4 2/5 = ?/5", "22", "13"),
        attempt=as_one_fraction(top_times_wholes_and_bottom),
    ),
    _named(
        id="O08",
        name="writes what is left over the number of wholes",
        family=Family.DENOMINATOR,
        rule="The wholes and what is left are right; the number of wholes is written as the denominator.",
        shows_when=f"{_MORE} and pieces are left over",
        thinking=plain(RuleThought.QUOTIENT_GOES_BELOW),
        ask=filled(PiecesBefore, one_fraction, wrote),
        example=Example(*_MIXED, "3 2/3"),
        attempt=as_mixed(left_over_over_wholes),
    ),
    _named(
        id="O09",
        name="splits the digits of the numerator",
        family=Family.PLACE_VALUE,
        rule="The first digit of the numerator is written as wholes, the rest over the denominator.",
        shows_when=f"{_MORE} and the numerator is of two digits or more",
        thinking=plain(RuleThought.FIRST_DIGIT_IS_WHOLES),
        ask=filled(WholesFrom, one_fraction, one_fraction_piece, large),
        example=Example(*_MIXED, "1 7/5"),
        attempt=as_mixed(digits_split),
    ),
    _named(
        id="O10",
        name="takes out one whole only",
        family=Family.FORM,
        rule="The amount is right; one whole is taken out and the rest stays as it is.",
        shows_when="a fraction of more than two wholes is written as a mixed number",
        thinking=plain(RuleThought.ONE_COMES_OUT),
        ask=filled(CouldMakeOne, large, small, written_pieces),
        example=Example(*_MIXED, "1 12/5"),
        attempt=as_mixed(one_whole_out),
        of_form=True,
    ),
    _named(
        id="O11",
        name="drops the pieces left over",
        family=Family.FORM,
        rule="The wholes are written and what is left over is dropped.",
        shows_when=f"{_MORE} and pieces are left over",
        thinking=plain(RuleThought.HOW_OFTEN_IT_GOES),
        ask=filled(BackToPieces, one_fraction, written_wholes, large, one_fraction_piece),
        example=Example(*_MIXED, "3"),
        attempt=as_mixed(left_over_dropped),
    ),
    _named(
        id="O15",
        name="halves once and stops",
        family=Family.FORM,
        rule="The amount is right; top and bottom are halved once, though more can be divided out.",
        shows_when="a fraction is simplified, both numbers are even, and more than 2 goes into both",
        thinking=plain(RuleThought.HALVED_BOTH),
        ask=filled(StillGoesInto, wrote),
        source=_SLIDES,
        example=Example("12/16 = ?", "3/4", "6/8"),
        attempt=as_simplest(halved_once),
        of_form=True,
    ),
    _named(
        id="O16",
        name="divides the denominator only",
        family=Family.EQUIVALENCE,
        rule="The denominator is divided by the greatest number that goes into both; the numerator stays.",
        shows_when="a fraction is simplified",
        thinking=plain(RuleThought.BOTTOM_MUST_SHRINK),
        ask=filled(BelowOneWhole, one_fraction, wrote),
        example=Example("12/16 = ?", "3/4", "12/4"),
        attempt=as_simplest(bottom_divided_only),
    ),
    _named(
        id="O18",
        name="numerator and denominator after the point",
        family=Family.PLACE_VALUE,
        rule="n/d is written 0.nd.",
        shows_when=_DECIMAL,
        thinking=plain(RuleThought.BOTH_AFTER_THE_POINT),
        ask=filled(FirstPlace, one_fraction, wrote),
        source=Source(
            "a public summary sheet on errors with decimals (1/4 written 0.4 or 1.4), after Sackur-Grisvard "
            "& Leonard (1985)",
            note="the sheet gives 0.4 and 1.4; 0.14 is the brother rule, from memory",
        ),
        example=Example("1/4 = ?", "0.25", "0.14"),
        attempt=fraction_as_decimal(both_after_the_point),
    ),
    _named(
        id="O19",
        name="denominator after the point",
        family=Family.PLACE_VALUE,
        rule="n/d is written 0.d.",
        shows_when=_DECIMAL,
        thinking=plain(RuleThought.BOTTOM_SAYS_WHICH),
        ask=filled(FirstPlace, one_fraction, wrote),
        source=Source(
            "Sackur-Grisvard & Leonard (1985) as cited on a public summary sheet: 1/4 = 0.4",
            provenance="read",
            note="second-hand",
        ),
        example=Example("1/4 = ?", "0.25", "0.4"),
        attempt=fraction_as_decimal(bottom_after_the_point),
    ),
    _named(
        id="O21",
        name="digits after the point as the denominator",
        family=Family.PLACE_VALUE,
        rule="One is written over the digits after the point.",
        shows_when="a decimal below one with tenths is written as a fraction",
        thinking=plain(RuleThought.DIGIT_IS_BELOW),
        ask=filled(LastDigitCalled, one_fraction),
        source=Source(
            "Steinle (1998), Hiebert (1983) as cited in a paper on decimals: 0.4 taken as 1/4",
            provenance="read",
            note="second-hand",
        ),
        example=Example("0.4 = ?", "4/10", "1/4"),
        attempt=decimal_as_fraction(digits_as_bottom),
    ),
    _named(
        id="O23",
        name="always writes tenths",
        family=Family.PLACE_VALUE,
        rule="The digits after the point are written over 10.",
        shows_when="a decimal below one with two places or more is written as a fraction",
        thinking=plain(RuleThought.DECIMALS_ARE_TENTHS),
        ask=filled(LastDigitCalled, one_fraction),
        example=Example("0.35 = ?", "35/100", "35/10"),
        attempt=decimal_as_fraction(always_tenths),
    ),
)
