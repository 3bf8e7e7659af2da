"""Comparing mixed numbers, decimals and whole numbers.

Rules and sources are those of a second collection of error patterns (see :mod:`~.sum_columns`).
"""

from functools import partial

from onewhole.misconceptions.asks.adding import FirstDigits, WholesOfEach
from onewhole.misconceptions.asks.comparing import (
    AllInOnePlace,
    AnythingAfter,
    BetweenWholes,
    HowManyIn,
    SameWholes,
    SignReadAloud,
    WholesFrom,
)
from onewhole.misconceptions.asks.sizes import OneSize, WhichPieces
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.fractions import (
    bottom_called_less,
    bottom_called_more,
    count_called_less,
    count_called_more,
    left,
    left_large,
    left_piece,
    left_wholes,
    right,
    right_piece,
    single_fraction,
    single_large,
    single_piece,
    smallest_unit,
    top_called_less,
    top_called_more,
)
from onewhole.misconceptions.holes.places import hundredth, longer, longer_place, longer_tenth, shorter
from onewhole.misconceptions.holes.thoughts import missing_or_further
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.thoughts.sizes import BiggerNumber, MoreDigits, MorePieces
from onewhole.misconceptions.wrong_steps.looked_at import (
    first_digit,
    fractions_first,
    larger_bottom_beside_wholes,
    larger_top_beside_wholes,
    longer_of_equals,
    longer_unless_zero,
    more_pieces_smaller,
    numbers_alone,
    on_sign_written,
    on_two_compared,
    point_left_out,
    sign_turned,
    smaller_digits,
    two_places_only,
    whole_part_wins,
    wholes_alone,
    zeros_left_out,
)

_PART = Source(
    "Stafylidou & Vosniadou (2004), Learning and Instruction 14, 503-518: a fraction as part of a whole is "
    "less than one",
    note="abstract read (200 students aged 10 to 16; three frameworks); this rule for mixed numbers is ours",
)
_ITEMS = Source(
    "notes to a national item bank (183 Year 4 children): larger numbers taken for the larger fraction; the "
    "same rule as C08 and C09 on mixed numbers",
    note="the notes on plain fractions were read, the form with mixed numbers is ours; Gomez & Dartnell "
    "(2019): half of about 500 children (abstract read)",
)
_MELBOURNE = Source(
    "Steinle & Stacey: summary of misconceptions about decimals, University of Melbourne",
    provenance="read",
    note="opening read: names column overflow, zero makes small, money thinking, equalizing length; about "
    "40% of Year 5 choose by length; the exact rules for zeros here are ours",
)
_SAME = "the wholes are the same"

_compared = partial(Pattern, topic=Topic.COMPARE, family=Family.COMPARISON)

COMPARING_MORE = (
    _compared(
        id="N01",
        name="looks at the wholes only",
        rule="Mixed numbers with the same whole part are called equal.",
        shows_when="the whole parts are the same and the fractions differ",
        thinking=plain(RuleThought.FRACTION_IS_EXTRA),
        ask=filled(SameWholes, left, right, left_wholes, left_large),
        source=_PART,
        example=Example("3 1/4 ? 3 3/4", "<", "="),
        attempt=on_two_compared(wholes_alone),
    ),
    _compared(
        id="N02",
        name="looks at the fractions first",
        rule="The number with the larger fraction beside its wholes is called larger, whatever the wholes.",
        shows_when="the whole parts differ",
        thinking=plain(RuleThought.FRACTION_DECIDES),
        ask=filled(BetweenWholes, left, right),
        source=Source(
            "a public national lesson plan: children may compare the fraction part before the whole part",
            provenance="read",
            note="stated as a common misconception; no count",
        ),
        example=Example("2 3/4 ? 5 1/4", "<", ">"),
        attempt=on_two_compared(fractions_first),
    ),
    _compared(
        id="N03",
        name="bigger denominator, bigger mixed number",
        rule="With the same wholes, the number with the larger denominator is called larger.",
        shows_when=f"{_SAME} and the denominators differ",
        thinking=filled(BiggerNumber, bottom_called_more, bottom_called_less),
        ask=filled(WhichPieces, left_piece, right_piece),
        source=_ITEMS,
        example=Example("2 1/8 ? 2 1/4", "<", ">"),
        attempt=on_two_compared(larger_bottom_beside_wholes),
    ),
    _compared(
        id="N04",
        name="looks at the numerators of mixed numbers only",
        rule="With the same wholes, the number with the larger numerator is called larger.",
        shows_when=f"{_SAME} and the numerators differ",
        thinking=filled(MorePieces, top_called_more, top_called_less),
        ask=filled(OneSize, left_piece, right_piece),
        source=_ITEMS,
        example=Example("2 3/8 ? 2 2/3", "<", ">"),
        attempt=on_two_compared(larger_top_beside_wholes),
    ),
    _compared(
        id="N05",
        name="a fraction is less than a whole",
        rule="A number with a whole part is called larger than any that is written as one fraction.",
        shows_when="one of the two is written as one fraction and the other with a whole part",
        thinking=plain(RuleThought.FRACTION_BELOW_ONE),
        ask=filled(WholesFrom, single_fraction, single_piece, single_large),
        source=_PART,
        example=Example("7/3 ? 2", ">", "<"),
        attempt=on_sign_written(whole_part_wins),
    ),
    _compared(
        id="N06",
        name="smaller numbers, larger fraction",
        rule="The fraction whose numerator and denominator are less together is called larger.",
        shows_when="both are written as fractions",
        thinking=plain(RuleThought.SMALL_IS_BIG),
        ask=missing_or_further,
        source=Source(
            "Gomez & Dartnell (2019), IJSME 17, 1233-1250: clusters opposite to 'larger components, larger "
            "fraction'; Gomez et al. (2014), 502 children",
            provenance="read",
            note="abstracts read; our rule (n + d) is one exact form of it",
        ),
        example=Example("5/6 ? 1/2", ">", "<"),
        attempt=on_two_compared(smaller_digits),
    ),
    _compared(
        id="N08",
        name="longer is larger, unless it begins with a zero",
        rule="If exactly one begins with a 0 after the point it is called smaller; else the digits after the "
        "point are compared as whole numbers.",
        shows_when=_SAME,
        thinking=plain(RuleThought.LONGER_UNLESS_ZERO),
        ask=filled(HowManyIn, left, right, longer_tenth),
        source=Source(
            "Sackur-Grisvard & Leonard (1985), Cognition and Instruction 2 (three wrong rules, grades 4 to "
            "7); Resnick et al. (1989), JRME: zero rule; Steinle & Stacey",
            provenance="read",
            note="abstract of 1985 and the Melbourne summary ('zero makes small') read; the wording of the "
            "third rule is from memory",
        ),
        example=Example("4.63 ? 4.8", "<", ">"),
        attempt=on_two_compared(longer_unless_zero),
    ),
    _compared(
        id="N09",
        name="zeros at the end count",
        rule="Of two equal decimals the longer is called larger.",
        shows_when="the two are equal and not equally long",
        thinking=filled(MoreDigits, longer, shorter),
        ask=filled(AllInOnePlace, left, right, longer_place),
        source=_MELBOURNE,
        example=Example("0.50 ? 0.5", "=", ">"),
        attempt=on_sign_written(longer_of_equals),
    ),
    _compared(
        id="N10",
        name="zeros after the point count for nothing",
        rule="Every 0 after the point is left out, then the numbers are compared.",
        shows_when=f"{_SAME} and a 0 stands after a point",
        thinking=plain(RuleThought.ZERO_IS_NOTHING),
        ask=filled(HowManyIn, left, right, longer_tenth),
        source=_MELBOURNE,
        example=Example("4.08 ? 4.8", "<", "="),
        attempt=on_two_compared(zeros_left_out),
    ),
    _compared(
        id="N11",
        name="looks at two places only",
        rule="Only tenths and hundredths are compared.",
        shows_when=f"{_SAME} and there is a third decimal place",
        thinking=plain(RuleThought.LIKE_MONEY),
        ask=filled(AnythingAfter, left, right, hundredth),
        source=_MELBOURNE,
        example=Example("4.452 ? 4.45", ">", "="),
        attempt=on_two_compared(two_places_only),
    ),
    _compared(
        id="N12",
        name="leaves out the point when comparing",
        rule="The digits are compared as whole numbers, without the point.",
        shows_when="the numbers of decimal places differ",
        thinking=plain(RuleThought.POINT_UNSEEN),
        ask=filled(WholesOfEach, left, right),
        source=Source(
            "a public set of labelled wrong answers to multiple-choice questions",
            provenance="read",
            note="the label was read ('the decimal point is not relevant'); no count for it",
        ),
        example=Example("0.134 ? 2.5", "<", ">"),
        attempt=on_two_compared(point_left_out),
    ),
    _compared(
        id="N13",
        name="reads the digits after the point as a denominator",
        rule="With the same wholes, larger digits after the point are called smaller.",
        shows_when=f"{_SAME} and the digits after neither point are all 0",
        thinking=plain(RuleThought.DIGITS_CUT_IT),
        ask=filled(AllInOnePlace, left, right, longer_place),
        source=Source(
            "Steinle (1998), Hiebert (1983) as cited in a paper on decimals: 0.4 taken as 1/4, so 0.4 larger "
            "than 0.5",
            provenance="read",
            note="second-hand",
        ),
        example=Example("0.4 ? 0.5", "<", ">"),
        attempt=on_two_compared(more_pieces_smaller),
    ),
    _compared(
        id="N14",
        name="lets the first digit decide",
        rule="The whole number with the larger first digit is called larger.",
        shows_when="the first digits differ",
        thinking=plain(RuleThought.BEGINS_BIGGER),
        ask=filled(FirstDigits, left, right),
        source=COMMON,
        example=Example("999 ? 1001", "<", ">"),
        attempt=on_two_compared(first_digit),
    ),
    _compared(
        id="N16",
        name="compares the numbers and not the units",
        rule="Of two measures in different units, the one with the larger first number is called larger.",
        shows_when="the larger units of the two differ",
        thinking=filled(BiggerNumber, count_called_more, count_called_less),
        ask=filled(AllInOnePlace, left, right, smallest_unit),
        source=COMMON,
        example=Example("2 ft ? 20 in", ">", "<"),
        attempt=on_two_compared(numbers_alone),
    ),
    _compared(
        id="N15",
        name="turns the sign around",
        family=Family.FORM,
        rule="The opposite of the right sign is written.",
        shows_when="the two are not equal",
        thinking=plain(RuleThought.SIGN_UNSURE),
        ask=filled(SignReadAloud, left, right),
        source=COMMON,
        example=Example("3/8 ? 5/8", "<", ">"),
        attempt=on_sign_written(sign_turned),
    ),
)
