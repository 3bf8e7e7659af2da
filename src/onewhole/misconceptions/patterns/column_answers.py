"""Whole-number subtraction in columns: a column is answered wrongly."""

from functools import partial

from onewhole.misconceptions.asks.amounts import MoreOrLess
from onewhole.misconceptions.asks.columns import (
    AnyToTake,
    FrontDigit,
    InThisColumn,
    NothingBelow,
    WhereDidItGo,
    WhichColumnIsShort,
    ZeroToTrade,
)
from onewhole.misconceptions.attempt import Attempt, finished, wrongly
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.parts import asked, typed_first, typed_second, wrote
from onewhole.misconceptions.holes.places import (
    digit_above,
    digit_below,
    digit_over_zero,
    equal_digits,
    front_place,
    next_place,
    over_a_blank,
    place,
    short,
    short_beside_zero,
    zero_over_digit,
)
from onewhole.misconceptions.pair import pair_of
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.patterns.column_payments import BROWN_BURTON, GLOSSARY, RESTATED
from onewhole.misconceptions.source import Source, coded
from onewhole.misconceptions.thoughts.columns import (
    DigitComesDown,
    SameDigits,
    SmallOnesStay,
    StillTooFew,
    TopDigitStays,
)
from onewhole.misconceptions.thoughts.opening import CrossedThenTurned, TurnedAround
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.apart import adds_instead
from onewhole.misconceptions.wrong_steps.column_answers import (
    bottom_digit,
    equal_digits_stay,
    if_short,
    larger_less_smaller,
    larger_less_smaller_at_a_zero,
    leading_one_left_out,
    not_over_a_blank,
    one_less_over_each_blank,
    stutters,
    top_digit,
    zero,
    zero_over_zero_below,
    zero_top,
)
from onewhole.misconceptions.wrong_steps.columns import in_columns, opens
from onewhole.misconceptions.wrong_steps.one_unit import in_one_unit
from onewhole.number.ladder import Style, joined
from onewhole.number.quantity import whole
from onewhole.statements.statement import Statement
from onewhole.working.strategies.columns import COLUMNS


def adds(statement: Statement) -> Attempt | None:
    """Add where the sign says to take away."""
    pair = pair_of(statement)
    if pair is None or not pair.taken or pair.styles != {Style.PLACES}:
        return None
    state = adds_instead(pair.state(joined(pair.first.ladder, pair.second.ladder)))
    found = whole(state.first.parts + state.second.parts)
    return finished(pair.asked, wrongly(state.now(result=found), found))


_answered_wrongly = partial(Pattern, topic=Topic.COLUMNS, source=GLOSSARY, beside=COLUMNS.key)

COLUMN_ANSWERS = (
    _answered_wrongly(
        id="E01",
        name="takes the smaller digit from the larger",
        family=Family.REGROUPING,
        rule="In every column the smaller digit is taken from the larger, whichever is on top.",
        shows_when="some digit on top is smaller than the one below",
        thinking=filled(TurnedAround, digit_above(short), digit_below(short)),
        ask=filled(WhichColumnIsShort, typed_first),
        example=Example("703 - 245", "458", "542"),
        attempt=in_columns(larger_less_smaller),
        source=coded(
            "Ben-Yehuda et al. (2005), JRME; Brown & Burton (1978)",
            "209, 234-235, 247",
            "Raghubar et al. (2009), grades 3-4, n = 291: 9% of children without difficulty, 25% and 31% of "
            "two groups with mathematics difficulty (through a research note that had the article open)",
        ),
    ),
    _answered_wrongly(
        id="E08",
        name="zero take away a number is that number",
        family=Family.NUMERATOR,
        rule="In a column with 0 on top the bottom digit is written.",
        shows_when="0 over a digit",
        thinking=filled(DigitComesDown, digit_below(zero_over_digit)),
        ask=filled(InThisColumn, asked, place(zero_over_digit)),
        example=Example("140 - 21", "119", "121"),
        attempt=in_columns(zero_top(bottom_digit)),
        source=Source(BROWN_BURTON, provenance="read", note=RESTATED),
    ),
    _answered_wrongly(
        id="E09",
        name="zero take away a number is zero",
        family=Family.NUMERATOR,
        rule="In a column with 0 on top a 0 is written.",
        shows_when="0 over a digit",
        thinking=plain(RuleThought.NOTHING_STAYS_NOTHING),
        ask=filled(InThisColumn, asked, place(zero_over_digit)),
        example=Example("140 - 21", "119", "120"),
        attempt=in_columns(zero_top(zero)),
        source=Source(BROWN_BURTON),
    ),
    _answered_wrongly(
        id="E10",
        name="a number take away zero is zero",
        family=Family.NUMERATOR,
        rule="In a column with a 0 written below a 0 is written.",
        shows_when="a digit over 0",
        thinking=plain(RuleThought.ZERO_GIVES_ZERO),
        ask=filled(InThisColumn, asked, place(digit_over_zero)),
        example=Example("57 - 20", "37", "30"),
        attempt=in_columns(zero_over_zero_below),
    ),
    _answered_wrongly(
        id="E11",
        name="a number take away itself stays",
        family=Family.FACT,
        rule="In a column with equal digits that digit is written.",
        shows_when="equal digits",
        thinking=filled(SameDigits, digit_above(equal_digits)),
        ask=filled(InThisColumn, asked, place(equal_digits)),
        example=Example("83 - 23", "60", "63"),
        attempt=in_columns(equal_digits_stay),
    ),
    _answered_wrongly(
        id="E13",
        name="writes zero where there are too few",
        family=Family.REGROUPING,
        rule="A column that must be regrouped is answered 0, and nothing is paid.",
        shows_when="a column must be regrouped",
        thinking=plain(RuleThought.ALL_USED_UP),
        ask=filled(WhichColumnIsShort, typed_first),
        example=Example("42 - 16", "26", "30"),
        attempt=in_columns(if_short(zero)),
    ),
    _answered_wrongly(
        id="E14",
        name="writes the top digit where there are too few",
        family=Family.REGROUPING,
        rule="A column that must be regrouped is answered with its top digit, and nothing is paid.",
        shows_when="a column must be regrouped",
        thinking=filled(TopDigitStays, digit_above(short), digit_below(short)),
        ask=filled(WhichColumnIsShort, typed_first),
        example=Example("42 - 16", "26", "32"),
        attempt=in_columns(if_short(top_digit)),
        source=Source("repair family of Brown & VanLehn (1980), Cognitive Science 4"),
    ),
    _answered_wrongly(
        id="E15",
        name="pays, then takes the smaller digit from the larger",
        family=Family.REGROUPING,
        rule="The digit to trade from is made one less, but the column is answered larger less smaller.",
        shows_when="a column must be regrouped",
        thinking=filled(CrossedThenTurned, next_place(short), digit_above(short), digit_below(short)),
        ask=filled(WhereDidItGo, next_place(short)),
        example=Example("73 - 24", "49", "41"),
        attempt=in_columns(if_short(larger_less_smaller, paid=True)),
    ),
    _answered_wrongly(
        id="E16",
        name="pays, then writes zero",
        family=Family.REGROUPING,
        rule="The digit to trade from is made one less, and the column is answered 0.",
        shows_when="a column must be regrouped",
        thinking=filled(StillTooFew, next_place(short), digit_above(short), digit_below(short)),
        ask=filled(WhereDidItGo, next_place(short)),
        example=Example("65 - 48", "17", "10"),
        attempt=in_columns(if_short(zero, paid=True)),
    ),
    _answered_wrongly(
        id="E17",
        name="pays, then writes the top digit",
        family=Family.REGROUPING,
        rule="The digit to trade from is made one less, and the column is answered with its top digit.",
        shows_when="a column must be regrouped",
        thinking=filled(SmallOnesStay, next_place(short), place(short)),
        ask=filled(WhereDidItGo, next_place(short)),
        example=Example("65 - 48", "17", "15"),
        attempt=in_columns(if_short(top_digit, paid=True)),
    ),
    _answered_wrongly(
        id="E21",
        name="takes one from each digit with nothing below",
        family=Family.WHOLES,
        rule="Every top digit with nothing below it is made one less, needed or not.",
        shows_when="the bottom number is shorter",
        thinking=plain(RuleThought.ONE_AWAY_EACH_TIME),
        ask=filled(NothingBelow, typed_first, place(over_a_blank)),
        example=Example("548 - 2", "546", "436"),
        attempt=in_columns(opens(not_over_a_blank), one_less_over_each_blank),
    ),
    _answered_wrongly(
        id="E22",
        name="takes the last digit again and again",
        family=Family.WHOLES,
        rule="The left-most digit below is taken again from every digit with nothing below it.",
        shows_when="the bottom number is shorter",
        thinking=plain(RuleThought.SOMETHING_EVERYWHERE),
        ask=filled(AnyToTake, typed_second, place(over_a_blank)),
        example=Example("4369 - 22", "4347", "2147"),
        attempt=in_columns(opens(), stutters),
    ),
    _answered_wrongly(
        id="E23",
        name="leaves out a leading one",
        family=Family.WHOLES,
        rule="A 1 at the far left with nothing below it is not copied down.",
        shows_when="a leading 1 with nothing below it",
        thinking=plain(RuleThought.FINISHED_ALREADY),
        ask=filled(FrontDigit, typed_first, front_place, wrote),
        example=Example("143 - 22", "121", "21"),
        attempt=in_columns(leading_one_left_out),
    ),
    _answered_wrongly(
        id="E27",
        name="smaller from larger next to a zero",
        family=Family.REGROUPING,
        rule="Only where the digit to trade from is 0, the smaller digit is taken from the larger and "
        "nothing is paid.",
        shows_when="regrouping meets a 0",
        thinking=plain(RuleThought.TURNS_AROUND_AT_ZERO),
        ask=filled(ZeroToTrade, typed_first, next_place(short_beside_zero)),
        example=Example("306 - 8", "298", "302"),
        attempt=in_columns(larger_less_smaller_at_a_zero),
    ),
    _answered_wrongly(
        id="E28",
        name="adds instead",
        family=Family.OPERATION,
        rule="The two numbers are added.",
        shows_when="always",
        thinking=plain(RuleThought.STILL_ADDING),
        ask=filled(MoreOrLess, asked, typed_first),
        example=Example("32 - 15", "17", "47"),
        attempt=in_one_unit(adds),
    ),
)
