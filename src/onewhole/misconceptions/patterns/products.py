"""Whole numbers that are multiplied in columns.

Rules and sources are those of a second collection of error patterns (see :mod:`~.sum_columns`). What it
leaves open is ours: with a multiplier of two digits or more a rule about one digit is met in every row, and
where the second number has more digits, the first one is the multiplier.
"""

from functools import partial

from onewhole.misconceptions.asks.amounts import AboutHowBig
from onewhole.misconceptions.asks.products import (
    CutInFour,
    GroupsOfNothing,
    LittleNumber,
    RowWorth,
    SignBetween,
    TensInGroups,
    TenTimes,
    WhenIsItJoined,
    WhereAreItsTens,
    WhichDigitIsWritten,
)
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.parts import asked, wrote
from onewhole.misconceptions.holes.products import (
    digit_beside,
    digit_that_makes_ten,
    its_multiplier,
    multiplier,
    multiplier_count,
    on_top,
    other_than_zero,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.products import (
    added,
    by_rows,
    carry_first,
    carry_lost_at_zero,
    carry_times_tens,
    columns,
    end_zeros_left_out,
    every_digit_in_full,
    matching_parts,
    on_products,
    one_digit,
    ones_multiplied,
    rightly,
    rows_not_moved,
    straight_down,
    tens_written,
    without_carry,
    zero_is_nothing_done,
    zeros_left_out,
)

_COX = Source(
    "handbooks of computation error patterns; Cox (1974)",
    note="Cox: abstract read; that this rule is among its errors is from memory",
)
_BOOTH = Source(
    "Booth and students (1985), Teaching and Learning 6(2), 60-65: 170 Primary 4 children, items 7 x 0, "
    "35 x 4, 304 x 2, 45 x 34",
    note="opening and items read, its table of errors was not reachable; that this error is in it is from "
    "memory",
)
_HELP_PAGE = Source(
    "a public help page for teachers of written arithmetic (name withheld)",
    provenance="read",
    note="the error is described there with an example; no count, no study behind it",
)
_EXERCISE = Source(
    "an exercise of a textbook for teachers (which error is it?), as quoted on a public page",
    provenance="read",
    note="the error is described there in words; no count",
)

_multiplied = partial(Pattern, topic=Topic.PRODUCTS, source=COMMON)

PRODUCTS = (
    _multiplied(
        id="K01",
        name="forgets what is carried in multiplying",
        family=Family.REGROUPING,
        rule="Each digit's product is written without its tens; the left-most one in full.",
        shows_when="a digit other than the left-most makes ten or more",
        thinking=plain(RuleThought.LITTLE_NUMBER_IS_A_NOTE),
        ask=filled(WhereAreItsTens, digit_that_makes_ten, its_multiplier),
        source=_COX,
        example=Example("47 x 6", "282", "242"),
        attempt=by_rows(columns(without_carry)),
    ),
    _multiplied(
        id="K02",
        name="adds what is carried before multiplying",
        family=Family.REGROUPING,
        rule="What is carried is added to the next digit, and that is multiplied.",
        shows_when="something is carried",
        thinking=plain(RuleThought.CARRY_JOINS_FIRST),
        ask=filled(WhenIsItJoined, digit_beside, its_multiplier),
        source=_BOOTH,
        example=Example("47 x 6", "282", "482"),
        attempt=by_rows(columns(carry_first)),
    ),
    _multiplied(
        id="K03",
        name="writes in full what every digit makes",
        family=Family.PLACE_VALUE,
        rule="What every digit makes is written in full, side by side.",
        shows_when="the multiplier is of one digit, and a digit other than the left-most makes ten or more",
        thinking=plain(RuleThought.EACH_DIGIT_IN_FULL),
        ask=filled(AboutHowBig, asked, wrote),
        example=Example("47 x 6", "282", "2442"),
        attempt=one_digit(every_digit_in_full),
    ),
    _multiplied(
        id="K04",
        name="writes the tens and carries the ones in multiplying",
        family=Family.PLACE_VALUE,
        rule="Of a product of ten or more its tens are written and its ones are carried; the left-most is "
        "written in full.",
        shows_when="the multiplier is of one digit, and a digit other than the left-most makes ten or more",
        thinking=plain(RuleThought.FIRST_WRITTEN_SECOND_CARRIED),
        ask=filled(WhichDigitIsWritten, digit_that_makes_ten, its_multiplier),
        source=_HELP_PAGE,
        example=Example("47 x 6", "282", "264"),
        attempt=one_digit(columns(rightly, keeps=tens_written)),
    ),
    _multiplied(
        id="K05",
        name="multiplies the ones only",
        family=Family.OPERATION,
        rule="The ones are multiplied, and the other digits are kept.",
        shows_when="the multiplier is of one digit and the other number of more",
        thinking=plain(RuleThought.UNDER_THE_ONES_FOR_THE_ONES),
        ask=filled(TensInGroups, multiplier_count, on_top),
        source=_EXERCISE,
        example=Example("47 x 6", "282", "82"),
        attempt=on_products(ones_multiplied),
    ),
    _multiplied(
        id="K06",
        name="multiplies what is carried by the tens",
        family=Family.OPERATION,
        rule="The ones are written; what is carried is multiplied by the tens.",
        shows_when="a number of two digits times one digit, and its ones make ten or more",
        thinking=plain(RuleThought.NUMBER_OVER_THE_TENS),
        ask=filled(LittleNumber, multiplier_count),
        source=_EXERCISE,
        example=Example("63 x 8", "504", "124"),
        attempt=on_products(carry_times_tens),
    ),
    _multiplied(
        id="K07",
        name="writes every row at the right edge",
        family=Family.PLACE_VALUE,
        rule="Every row is written in the place of the ones, and the rows are added.",
        shows_when="the multiplier is of two digits or more",
        thinking=plain(RuleThought.ROWS_AT_THE_RIGHT_EDGE),
        ask=filled(RowWorth, multiplier),
        source=_COX,
        example=Example("24 x 36", "864", "216"),
        attempt=on_products(rows_not_moved),
    ),
    _multiplied(
        id="K08",
        name="multiplies only the digits straight above each other",
        family=Family.OPERATION,
        rule="In each column digit times digit, with carrying.",
        shows_when="both numbers have as many digits, two or more",
        thinking=plain(RuleThought.LIKE_ADDING),
        ask=filled(TenTimes, on_top, wrote),
        source=_EXERCISE,
        example=Example("24 x 36", "864", "84"),
        attempt=on_products(straight_down),
    ),
    _multiplied(
        id="K09",
        name="multiplies tens by tens and ones by ones",
        family=Family.OPERATION,
        rule="Tens are multiplied by tens and ones by ones, and both are added.",
        shows_when="both numbers have two digits",
        thinking=plain(RuleThought.PARTS_THAT_MATCH),
        ask=filled(CutInFour, asked),
        example=Example("24 x 36", "864", "624"),
        attempt=on_products(matching_parts),
    ),
    _multiplied(
        id="K10",
        name="takes a number times zero for that number",
        family=Family.FACT,
        rule="A digit times 0 is said to be that digit.",
        shows_when="a digit is 0",
        thinking=plain(RuleThought.ZERO_CHANGES_NOTHING),
        ask=filled(GroupsOfNothing, other_than_zero),
        source=_BOOTH,
        example=Example("407 x 8", "3256", "3336"),
        attempt=by_rows(columns(zero_is_nothing_done)),
    ),
    _multiplied(
        id="K11",
        name="leaves out the zeros of a number",
        family=Family.PLACE_VALUE,
        rule="The zeros of the number on top are left out, and the rest is multiplied.",
        shows_when="a 0 stands inside the number on top",
        thinking=plain(RuleThought.ZERO_NOT_WRITTEN),
        ask=filled(AboutHowBig, asked, wrote),
        source=_HELP_PAGE,
        example=Example("407 x 8", "3256", "376"),
        attempt=on_products(zeros_left_out),
    ),
    _multiplied(
        id="K12",
        name="leaves out a zero at the end",
        family=Family.PLACE_VALUE,
        rule="The zeros at the end of both numbers are left out and not put back.",
        shows_when="a number ends in 0",
        thinking=plain(RuleThought.ZERO_NOT_WRITTEN),
        ask=filled(AboutHowBig, asked, wrote),
        example=Example("24 x 30", "720", "72"),
        attempt=on_products(end_zeros_left_out),
    ),
    _multiplied(
        id="K13",
        name="loses what is carried to a zero",
        family=Family.REGROUPING,
        rule="A 0 makes 0, and what is carried to it is lost.",
        shows_when="something is carried to a 0",
        thinking=plain(RuleThought.ZERO_TIMES_IS_ZERO),
        ask=filled(WhereAreItsTens, digit_that_makes_ten, its_multiplier),
        example=Example("407 x 8", "3256", "3206"),
        attempt=by_rows(columns(carry_lost_at_zero)),
    ),
    _multiplied(
        id="K15",
        name="adds instead of multiplying",
        family=Family.OPERATION,
        rule="The numbers are added.",
        shows_when="always",
        thinking=plain(RuleThought.SIGN_READ_AS_PLUS),
        ask=filled(SignBetween, asked),
        source=_COX,
        example=Example("24 x 36", "864", "60"),
        attempt=on_products(added),
    ),
)
