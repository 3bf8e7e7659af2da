"""Whole-number subtraction in columns: a ten is opened, and the wrong digit pays for it or none does.

The names "borrow from zero", "borrow across zero" and "stops borrow at zero" are used for different rules by
different authors; go by the rule.
"""

from functools import partial

from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import Source
from onewhole.misconceptions.wrong_steps.column_answers import (
    blank_zero_becomes_one,
    far_left_pays,
    goes_up_where_short,
    just_enough,
    nobody_pays,
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
from onewhole.working.strategies.regroup_first import REGROUP_FIRST

RESTATED = "definition and example also seen in an open program that restates the published table"
GLOSSARY = Source(
    "VanLehn (1990), Mind Bugs, bug glossary; Burton (1982) in Sleeman & Brown, Intelligent Tutoring Systems"
)
BROWN_BURTON = "Brown & Burton (1978), Cognitive Science 2, 155-192; VanLehn (1990), Mind Bugs, bug glossary"
_WHO_PAYS = "Build the top number with blocks. You need ten more in this column: where do they come from?"
_ZERO = "There is a zero where you want to trade. Where can you get one? Build it and show me each trade."


_paid_wrongly = partial(
    Pattern,
    topic=Topic.COLUMNS,
    family=Family.REGROUPING,
    ask=_WHO_PAYS,
    source=GLOSSARY,
    beside=REGROUP_FIRST.key,
)

COLUMN_PAYMENTS = (
    _paid_wrongly(
        id="E02",
        name="adds ten and takes nothing away",
        rule="Ten is added to the column, and no column to the left changes.",
        shows_when="a column must be regrouped",
        thinking="I write a small 1 to get more. I may not see that a ten was used.",
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
        thinking="When I trade from a 0 it turns into a 9.",
        example=Example("1300 - 522", "778", "878"),
        attempt=in_columns(opens(zero_becomes_nine_and_stops)),
        ask=_ZERO,
        source=Source(BROWN_BURTON, provenance="read", note=RESTATED),
    ),
    _paid_wrongly(
        id="E04",
        name="skips the zero",
        rule="Zeros are passed over and stay 0; the next digit that is not 0 is made one less.",
        shows_when="regrouping meets a 0",
        thinking="I can't take from 0, so I take from the next one.",
        example=Example("904 - 7", "897", "807"),
        attempt=in_columns(opens(skips_zeros)),
        ask=_ZERO,
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
        thinking="There is nothing to take from 0, so nothing changes there.",
        example=Example("207 - 169", "38", "48"),
        attempt=in_columns(opens(stops_at_zero)),
        ask=_ZERO,
    ),
    _paid_wrongly(
        id="E06",
        name="zeros become nines and nobody pays",
        rule="Each 0 on the way becomes 9, and the first digit behind them that is not 0 is not made less.",
        shows_when="regrouping meets zeros (with one 0 it writes the same as E03)",
        thinking="Zeros turn into nines. I may have forgotten where the trade began.",
        example=Example("3006 - 1807", "1199", "2199"),
        attempt=in_columns(opens(zeros_become_nines)),
        ask=_ZERO,
    ),
    _paid_wrongly(
        id="E07",
        name="a zero becomes ten and stays ten",
        rule="The 0 gets ten from its left neighbour and is not made 9 when it gives one on.",
        shows_when="regrouping meets a 0",
        thinking="The 0 is a 10 now. I may not see that it gave one away again.",
        example=Example("506 - 318", "188", "198"),
        attempt=in_columns(opens(zero_stays_ten)),
        ask=_ZERO,
    ),
    _paid_wrongly(
        id="E12",
        name="a 1 that is regrouped becomes ten",
        rule="When the column that gets ten holds a 1, it is read as 10, not 11.",
        shows_when="1 on top, in a column that must be regrouped",
        thinking="I write a 1 in front. There is a 1 already, so it may look like ten.",
        example=Example("71 - 38", "33", "32"),
        attempt=in_columns(one_becomes_ten),
        ask="You had one in this column and got ten more. How many are there now?",
    ),
    _paid_wrongly(
        id="E18",
        name="always trades from the far left",
        rule="The left-most digit is made one less, whichever column is regrouped.",
        shows_when="three or more digits, and the ones must be regrouped",
        thinking="I start at the front of the number when I need more.",
        example=Example("733 - 216", "517", "427"),
        attempt=in_columns(opens(far_left_pays)),
    ),
    _paid_wrongly(
        id="E19",
        name="pays the first time only",
        rule="The first regrouping is paid for, the later ones are not.",
        shows_when="two columns must be regrouped",
        thinking="I crossed one out already.",
        example=Example("535 - 278", "257", "357"),
        attempt=in_columns(opens(pays_once)),
    ),
    _paid_wrongly(
        id="E20",
        name="does not pay where nothing stands below",
        rule="A digit with nothing below it is not made one less.",
        shows_when="the bottom number is shorter",
        thinking="Nothing is taken there, so I just copy the digit.",
        example=Example("347 - 9", "338", "348"),
        attempt=in_columns(opens(not_over_a_blank)),
    ),
    _paid_wrongly(
        id="E24",
        name="the neighbour goes up, not down",
        rule="A digit to trade from that is itself too small is made one more.",
        shows_when="two columns in a row must be regrouped",
        thinking="That column needs more too, so I add to it.",
        example=Example("833 - 277", "556", "576"),
        attempt=in_columns(opens(goes_up_where_short)),
    ),
    _paid_wrongly(
        id="E25",
        name="a zero with nothing below becomes one",
        rule="A 0 to trade from, with nothing below it, becomes 1.",
        shows_when="regrouping meets a 0 with nothing below it",
        thinking="I must change the 0, and it can't go down.",
        example=Example("402 - 6", "396", "416"),
        attempt=in_columns(opens(blank_zero_becomes_one)),
        ask=_ZERO,
    ),
    _paid_wrongly(
        id="E26",
        name="takes just enough",
        rule="The next digit is made less by what is missing, and only that much arrives.",
        shows_when="a column must be regrouped",
        thinking="I need 3 more, so I take 3 from the tens.",
        example=Example("86 - 29", "57", "30"),
        attempt=in_columns(just_enough),
        ask="Take one block of the next column. If you trade it for smaller ones, how many do you get?",
    ),
    _paid_wrongly(
        id="E29",
        name="skips a zero that stands over a zero",
        rule="As in skipping the zero, but only for a 0 with a 0 below it.",
        shows_when="regrouping meets a 0 over a 0",
        thinking="0 take away 0 is 0, so I leave that column alone.",
        example=Example("802 - 304", "498", "408"),
        attempt=in_columns(opens(skips_zero_over_zero)),
        ask=_ZERO,
    ),
    _paid_wrongly(
        id="E30",
        name="a zero on top is read as ten",
        rule="A 0 on top is read as 10 and nothing is paid for it; other regrouping is right.",
        shows_when="0 over a digit",
        thinking="I can't take 7 from 0, so I make it 10.",
        example=Example("40 - 27", "13", "23"),
        attempt=in_columns(zero_read_as_ten),
    ),
)
