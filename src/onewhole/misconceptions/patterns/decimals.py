"""Decimals: subtracting, adding, comparing, and a fraction written as a decimal."""

from functools import partial

from onewhole.misconceptions.asks.columns import TradeToGetMore
from onewhole.misconceptions.asks.opening import NoneThere, OnesAfterTrading
from onewhole.misconceptions.asks.sizes import BelowOneWhole, FirstPlace, LastDigits, WhichIsFurther
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.fractions import one_fraction, top_of_one_fraction
from onewhole.misconceptions.holes.parts import typed_first, typed_second, wrote
from onewhole.misconceptions.holes.places import (
    before_point,
    digit_above,
    digit_below,
    first_after_point,
    first_decimal,
    first_digits,
    first_ones,
    largest_to_take,
    longer,
    longer_place,
    place,
    second_after_point,
    second_decimal,
    second_digits,
    second_ones,
    short,
    shorter,
    shorter_place,
    tenths_or_last_digits,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source, coded
from onewhole.misconceptions.thoughts.opening import NothingAfterPoint, OneUsed, TurnedAround
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.thoughts.sizes import (
    MoreDigits,
    SmallerPlaces,
    TopAfterPoint,
    TwoAdditions,
    TwoSubtractions,
)
from onewhole.misconceptions.wrong_steps.orders import by_more_digits, on_decimals_compared
from onewhole.misconceptions.wrong_steps.pointed import (
    around_the_point,
    digits_copied,
    fraction_as_decimal,
    larger_less_smaller,
    lined_up_on_the_right,
    nothing_carried_over_the_point,
    on_decimals,
    point_as_wall,
    top_after_the_point,
    whole_not_reduced,
)
from onewhole.working.strategies.columns import COLUMNS

_NOTE = "second-hand"

_taken = partial(Pattern, topic=Topic.DECIMALS, family=Family.REGROUPING)
_written = partial(Pattern, topic=Topic.DECIMALS, family=Family.EQUIVALENCE)
_compared = partial(Pattern, topic=Topic.DECIMALS, family=Family.COMPARISON)

DECIMALS = (
    _taken(
        id="F01",
        name="the point as a wall",
        rule="The numbers before the point and the digits after it are subtracted as two separate whole "
        "numbers.",
        shows_when="the numbers of decimal places differ",
        thinking=filled(TwoSubtractions, first_ones, second_ones, first_digits, second_digits),
        ask=filled(WhichIsFurther, first_after_point, second_after_point),
        source=coded("Thompson (1992), JRME", "135, 139"),
        example=Example("7.31 - 6.4", "0.91", "1.27"),
        beside=COLUMNS.key,
        attempt=on_decimals(point_as_wall, taken=True),
    ),
    _taken(
        id="F02",
        name="lines the digits up on the right",
        family=Family.PLACE_VALUE,
        rule="The digits are subtracted as whole numbers, right under right, and the point is put back.",
        shows_when="the numbers of decimal places differ",
        thinking=plain(RuleThought.RIGHT_UNDER_RIGHT),
        ask=filled(LastDigits, typed_first, typed_second),
        source=Source(
            "Hiebert & Wearne (1985), as cited in an item-design note", provenance="read", note=_NOTE
        ),
        example=Example("4.7 - 0.24", "4.46", "0.23"),
        beside=COLUMNS.key,
        attempt=on_decimals(lined_up_on_the_right, taken=True),
    ),
    _taken(
        id="F03",
        name="copies the digits after the point",
        rule="The wholes are subtracted, and the decimal digits of the second number are written down.",
        shows_when="the first number is a whole number",
        thinking=filled(NothingAfterPoint, typed_first, typed_second),
        ask=filled(NoneThere, typed_first, largest_to_take),
        source=COMMON,
        example=Example("20 - 7.70", "12.30", "13.70"),
        beside=COLUMNS.key,
        attempt=on_decimals(digits_copied, taken=True),
    ),
    _taken(
        id="F04",
        name="takes the smaller digit from the larger in each column",
        rule="With zeros filled in, the smaller digit is taken from the larger in every column.",
        shows_when="a column must be regrouped",
        thinking=filled(TurnedAround, digit_above(short), digit_below(short)),
        ask=filled(TradeToGetMore, typed_first, place(short), digit_below(short)),
        source=Source(
            "Brown & VanLehn (1980); Resnick et al. (1989), as cited in an item-design note",
            provenance="read",
            note=_NOTE,
        ),
        example=Example("3.00 - 0.45", "2.55", "3.45"),
        beside=COLUMNS.key,
        attempt=on_decimals(larger_less_smaller, taken=True),
    ),
    _taken(
        id="F05",
        name="opens a whole and still counts it",
        rule="The part after the point is right; the wholes are not made one less.",
        shows_when="a whole must be regrouped",
        thinking=filled(OneUsed, before_point, place(short)),
        ask=filled(OnesAfterTrading, first_ones, before_point, place(short)),
        source=coded("Broza & Ben-David Kolikant (2015), ZDM", "1101-1102"),
        example=Example("20 - 7.70", "12.30", "13.30"),
        beside=COLUMNS.key,
        attempt=on_decimals(whole_not_reduced, taken=True),
    ),
    _compared(
        id="F06",
        name="longer is larger",
        rule="The number with more decimal digits is called larger.",
        shows_when="the numbers of decimal places differ",
        thinking=filled(MoreDigits, longer, shorter),
        ask=filled(WhichIsFurther, first_decimal, second_decimal),
        source=coded(
            "Lachance & Confrey (2002), J. Mathematical Behavior; Irwin (2001), JRME", "517-518; 401-406"
        ),
        example=Example("0.134 ? 0.2", "<", ">"),
        attempt=on_decimals_compared(by_more_digits),
    ),
    _compared(
        id="F07",
        name="shorter is larger",
        rule="The number with fewer decimal digits is called larger.",
        shows_when="the numbers of decimal places differ",
        thinking=filled(SmallerPlaces, longer_place, shorter_place, longer),
        ask=filled(WhichIsFurther, first_decimal, second_decimal),
        source=coded("Resnick et al. (1989), JRME", "9, 13, 21, 25"),
        example=Example("1.35 ? 1.2", ">", "<"),
        attempt=on_decimals_compared(lambda digits: -by_more_digits(digits)),
    ),
    _written(
        id="F08",
        name="numerator and denominator around the point",
        rule="n/d is written n.d.",
        shows_when="a fraction below one whole is written as a decimal",
        thinking=plain(RuleThought.TWO_NUMBERS_AND_A_SIGN),
        ask=filled(BelowOneWhole, one_fraction, wrote),
        source=coded("Resnick et al. (1989), JRME", "23"),
        example=Example("3/4 = ?", "0.75", "3.4"),
        attempt=fraction_as_decimal(around_the_point),
    ),
    _written(
        id="F09",
        name="numerator after the point",
        rule="n/d is written 0.n.",
        shows_when="a fraction below one whole is written as a decimal, and the pieces are not tenths "
        "(d <> 10)",
        thinking=filled(TopAfterPoint, top_of_one_fraction),
        ask=filled(FirstPlace, one_fraction, wrote),
        source=coded("Resnick et al. (1989), JRME", "23"),
        example=Example("3/100 = ?", "0.03", "0.3"),
        attempt=fraction_as_decimal(top_after_the_point),
    ),
    _taken(
        id="F10",
        name="no regrouping over the point",
        rule="Before and after the point the digits are added as two separate whole numbers.",
        shows_when="there are ten tenths or more in all, or the numbers of decimal places differ",
        thinking=filled(TwoAdditions, first_digits, second_digits),
        ask=tenths_or_last_digits,
        source=COMMON,
        example=Example("0.8 + 0.4", "1.2", "0.12"),
        beside=COLUMNS.key,
        attempt=on_decimals(nothing_carried_over_the_point, taken=False),
    ),
    _taken(
        id="F11",
        name="lines the digits of a sum up on the right",
        family=Family.PLACE_VALUE,
        rule="The digits are added as whole numbers, right under right, and the point is put back.",
        shows_when="the numbers of decimal places differ",
        thinking=plain(RuleThought.RIGHT_UNDER_RIGHT),
        ask=filled(LastDigits, typed_first, typed_second),
        source=coded(
            "Wearne & Hiebert (1988), JRME",
            "378, 380",
            "seen with a whole number; that two decimals of different length go the same way is ours",
        ),
        example=Example("5 + 0.3", "5.3", "0.8"),
        beside=COLUMNS.key,
        attempt=on_decimals(lined_up_on_the_right, taken=False),
    ),
)
