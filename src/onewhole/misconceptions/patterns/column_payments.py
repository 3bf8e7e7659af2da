"""Whole-number subtraction in columns: a ten is opened, and the wrong digit pays for it or none does.

The names "borrow from zero", "borrow across zero" and "stops borrow at zero" are used for different rules by
different authors; go by the rule.
"""

from functools import partial

from onewhole.misconceptions.asks.columns import (
    LeftAfterTrade,
    OneAndTenMore,
    TenMoreFrom,
    TradedFor,
    ZeroToTrade,
)
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.parts import typed_first
from onewhole.misconceptions.holes.places import (
    digit_below,
    next_place,
    opened_place,
    place,
    short,
    short_again,
    short_beside_zero,
    short_with_one,
    zero_over_digit,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.columns import JustEnough, MakesItTen, TenUnseen
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.column_answers import (
    blank_zero_becomes_one,
    far_left_pays,
    goes_up_where_short,
    just_enough,
    nobody_pays,
    nobody_pays_for_the_zeros,
    not_over_a_blank,
    one_becomes_ten,
    pays_once,
    skips_zero_over_zero,
    skips_zeros,
    stops_at_zero,
    zero_becomes_nine_and_stops,
    zero_read_as_ten,
    zero_stays_ten,
    zeros_become_nines,
)
from onewhole.misconceptions.wrong_steps.columns import in_columns, opens
from onewhole.working.strategies.columns import COLUMNS

RESTATED = "definition and example also seen in an open program that restates the published table"
GLOSSARY = Source(
    "VanLehn (1990), Mind Bugs, bug glossary; Burton (1982) in Sleeman & Brown, Intelligent Tutoring Systems"
)
BROWN_BURTON = "Brown & Burton (1978), Cognitive Science 2, 155-192; VanLehn (1990), Mind Bugs, bug glossary"


_paid_wrongly = partial(
    Pattern,
    topic=Topic.COLUMNS,
    family=Family.REGROUPING,
    source=GLOSSARY,
    beside=COLUMNS.key,
)

COLUMN_PAYMENTS = (
    _paid_wrongly(
        id="E02",
        name="adds ten and takes nothing away",
        rule="Ten is added to the column, and no column to the left changes.",
        shows_when="a column must be regrouped",
        thinking=filled(TenUnseen, next_place(short), place(short)),
        ask=filled(TenMoreFrom, typed_first, place(short)),
        example=Example("143 - 28", "115", "125"),
        attempt=in_columns(opens(nobody_pays)),
        source=Source(
            BROWN_BURTON,
            provenance="read",
            note=f"{RESTATED}; Raghubar et al. (2009): 8%, 8%, 18%, 12% of four groups (research note)",
        ),
    ),
    _paid_wrongly(
        id="E03",
        name="a zero becomes nine and the trading stops",
        rule="When the digit to trade from is 0 it becomes 9, and no digit further left changes.",
        shows_when="regrouping meets a 0",
        thinking=plain(RuleThought.ZERO_TURNS_INTO_NINE),
        example=Example("1300 - 522", "778", "878"),
        attempt=in_columns(opens(zero_becomes_nine_and_stops)),
        ask=filled(ZeroToTrade, typed_first, next_place(short_beside_zero)),
        source=Source(BROWN_BURTON, provenance="read", note=RESTATED),
    ),
    _paid_wrongly(
        id="E04",
        name="skips the zero",
        rule="Zeros are passed over and stay 0; the next digit that is not 0 is made one less.",
        shows_when="regrouping meets a 0",
        thinking=plain(RuleThought.SKIPS_THE_ZERO),
        example=Example("904 - 7", "897", "807"),
        attempt=in_columns(opens(skips_zeros)),
        ask=filled(ZeroToTrade, typed_first, next_place(short_beside_zero)),
        source=Source(
            GLOSSARY.text,
            note="Raghubar et al. (2009): 7%, 6%, 16%, 20% of four groups (through a research note)",
        ),
    ),
    _paid_wrongly(
        id="E05",
        name="stops at the zero",
        rule="Ten is added to the column; a 0 to trade from, and all to its left, stays as it is.",
        shows_when="regrouping meets a 0",
        thinking=plain(RuleThought.NOTHING_TO_TAKE_FROM_ZERO),
        example=Example("207 - 169", "38", "48"),
        attempt=in_columns(opens(stops_at_zero)),
        ask=filled(ZeroToTrade, typed_first, next_place(short_beside_zero)),
    ),
    _paid_wrongly(
        id="E06",
        name="zeros become nines and nobody pays",
        rule="Each 0 on the way becomes 9, and the first digit behind them that is not 0 is not made less.",
        shows_when="regrouping meets zeros (with one 0 it writes the same as E03)",
        thinking=plain(RuleThought.FORGOT_WHERE_IT_BEGAN),
        example=Example("3006 - 1807", "1199", "2199"),
        attempt=in_columns(opens(zeros_become_nines)),
        ask=filled(ZeroToTrade, typed_first, next_place(short_beside_zero)),
    ),
    _paid_wrongly(
        id="E07",
        name="a zero becomes ten and stays ten",
        rule="The 0 gets ten from its left neighbour and is not made 9 when it gives one on.",
        shows_when="regrouping meets a 0",
        thinking=plain(RuleThought.ZERO_IS_TEN),
        example=Example("506 - 318", "188", "198"),
        attempt=in_columns(opens(zero_stays_ten)),
        ask=filled(ZeroToTrade, typed_first, next_place(short_beside_zero)),
    ),
    _paid_wrongly(
        id="E12",
        name="a 1 that is regrouped becomes ten",
        rule="When the column that gets ten holds a 1, it is read as 10, not 11.",
        shows_when="1 on top, in a column that must be regrouped",
        thinking=plain(RuleThought.ONE_IN_FRONT),
        example=Example("71 - 38", "33", "32"),
        attempt=in_columns(one_becomes_ten),
        ask=filled(OneAndTenMore, place(short_with_one)),
    ),
    _paid_wrongly(
        id="E18",
        name="always trades from the far left",
        rule="The left-most digit is made one less, whichever column is regrouped.",
        shows_when="three or more digits, and the ones must be regrouped",
        thinking=plain(RuleThought.STARTS_AT_THE_FRONT),
        ask=filled(TenMoreFrom, typed_first, place(short)),
        example=Example("733 - 216", "517", "427"),
        attempt=in_columns(opens(far_left_pays)),
    ),
    _paid_wrongly(
        id="E19",
        name="pays the first time only",
        rule="The first regrouping is paid for, the later ones are not.",
        shows_when="two columns must be regrouped",
        thinking=plain(RuleThought.CROSSED_ONE_OUT),
        ask=filled(TenMoreFrom, typed_first, place(short_again)),
        example=Example("535 - 278", "257", "357"),
        attempt=in_columns(opens(pays_once)),
    ),
    _paid_wrongly(
        id="E20",
        name="does not pay where nothing stands below",
        rule="A digit with nothing below it is not made one less.",
        shows_when="the bottom number is shorter",
        thinking=plain(RuleThought.COPIES_THE_DIGIT),
        ask=filled(TenMoreFrom, typed_first, place(short)),
        example=Example("347 - 9", "338", "348"),
        attempt=in_columns(opens(not_over_a_blank)),
    ),
    _paid_wrongly(
        id="E24",
        name="the neighbour goes up, not down",
        rule="A digit to trade from that is itself too small is made one more.",
        shows_when="two columns in a row must be regrouped",
        thinking=plain(RuleThought.ADDS_TO_THE_NEIGHBOR),
        ask=filled(TenMoreFrom, typed_first, place(short)),
        example=Example("833 - 277", "556", "576"),
        attempt=in_columns(opens(goes_up_where_short)),
    ),
    _paid_wrongly(
        id="E25",
        name="a zero with nothing below becomes one",
        rule="A 0 to trade from, with nothing below it, becomes 1.",
        shows_when="regrouping meets a 0 with nothing below it",
        thinking=plain(RuleThought.ZERO_MUST_CHANGE),
        example=Example("402 - 6", "396", "416"),
        attempt=in_columns(opens(blank_zero_becomes_one)),
        ask=filled(ZeroToTrade, typed_first, next_place(short_beside_zero)),
    ),
    _paid_wrongly(
        id="E26",
        name="takes just enough",
        rule="The next digit is made less by what is missing, and only that much arrives.",
        shows_when="a column must be regrouped",
        thinking=filled(JustEnough, next_place(short), place(short)),
        example=Example("86 - 29", "57", "30"),
        attempt=in_columns(just_enough),
        ask=filled(TradedFor, next_place(short), place(short)),
    ),
    _paid_wrongly(
        id="E29",
        name="skips a zero that stands over a zero",
        rule="As in skipping the zero, but only for a 0 with a 0 below it.",
        shows_when="regrouping meets a 0 over a 0",
        thinking=plain(RuleThought.ZERO_FROM_ZERO),
        example=Example("802 - 304", "498", "408"),
        attempt=in_columns(opens(skips_zero_over_zero)),
        ask=filled(ZeroToTrade, typed_first, next_place(short_beside_zero)),
    ),
    _paid_wrongly(
        id="E30",
        name="a zero on top is read as ten",
        rule="A 0 on top is read as 10 and nothing is paid for it; other regrouping is right.",
        shows_when="0 over a digit",
        thinking=filled(MakesItTen, digit_below(zero_over_digit)),
        ask=filled(TenMoreFrom, typed_first, place(zero_over_digit)),
        example=Example("40 - 27", "13", "23"),
        attempt=in_columns(zero_read_as_ten),
    ),
    _paid_wrongly(
        id="E31",
        name="regroups and still counts the ten",
        rule="Columns are regrouped, zeros on the way become 9; the digit that was opened is not made less.",
        shows_when="a column must be regrouped (without a 0 on the way it writes the same as E02)",
        thinking=plain(RuleThought.STILL_THERE),
        ask=filled(LeftAfterTrade, typed_first, opened_place(short)),
        example=Example("403 - 158", "245", "345"),
        attempt=in_columns(opens(nobody_pays_for_the_zeros)),
        source=COMMON,
    ),
)
