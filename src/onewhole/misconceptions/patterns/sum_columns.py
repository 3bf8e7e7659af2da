"""Whole-number addition in columns: what becomes of a ten, and which digits stand under one another.

Rules and sources are those of a second collection of error patterns, put together from published lists and
teachers' pages; where no text was read that describes an error, its source says so.
"""

from functools import partial

from onewhole.misconceptions.asks.adding import (
    CarriedBefore,
    FirstAndLast,
    FirstDigits,
    HandedOn,
    HowManyOfEach,
    HowOftenCarried,
    MakeTogether,
    TenAreOneOf,
    TenMade,
    WhichColumnGets,
    WhichDigitSays,
    ZeroInTheColumn,
)
from onewhole.misconceptions.asks.amounts import AboutHowBig, MoreOrLess
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.parts import asked, typed_first, typed_second, wrote
from onewhole.misconceptions.holes.sums import (
    at_the_ones,
    carries,
    carries_again,
    carries_nothing,
    carries_over_a_blank,
    column_total,
    makes_ten,
    makes_ten_anywhere,
    of_many_digits,
    of_one_digit,
    place_after,
    sum_place,
    zero_and_digit,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.sums import (
    all_digits,
    always_one,
    carry_forgotten,
    carry_once,
    carry_twice,
    from_the_left,
    in_digits,
    left_end_left_out,
    no_carry_over_a_blank,
    on_whole_sums,
    one_digit_to_every_column,
    side_by_side,
    ten_written_ones_carried,
    two_to_the_left,
    under_the_left_edge,
    whole_columns,
    zero_makes_nothing,
)
from onewhole.working.strategies.columns import COLUMNS

COX = Source(
    "Cox (1974), ED 092 407: systematic errors in the four written operations, 744 children of grades 2 to 6",
    note="abstract read (five to six percent of children make a systematic error in adding); its tables of "
    "single errors were not reachable, the link to this rule is from memory",
)
_BROWN_BURTON = Source(
    "Brown & Burton (1978), Cognitive Science 2, 155-192 (report ED 159 036)",
    note="abstract and opening read; this rule as one of the published or near-published bugs is from memory",
)
_TEN_MADE = "a column other than the left-most makes ten or more"
_FULL = "478 + 256", "734"

_added = partial(
    Pattern,
    topic=Topic.SUM_COLUMNS,
    family=Family.REGROUPING,
    source=_BROWN_BURTON,
    beside=COLUMNS.key,
)

SUM_COLUMNS = (
    _added(
        id="H01",
        name="forgets to carry",
        rule="Each column's sum is written without its ten and nothing is carried; the left-most column is "
        "written in full.",
        shows_when=_TEN_MADE,
        thinking=plain(RuleThought.EACH_COLUMN_APART),
        ask=filled(MakeTogether, typed_first, typed_second, sum_place(makes_ten)),
        source=COX,
        example=Example(*_FULL, "624"),
        attempt=on_whole_sums(in_digits(carry_forgotten), show=True),
    ),
    _added(
        id="H02",
        name="writes every column's sum in full",
        family=Family.PLACE_VALUE,
        rule="What each column makes is written in full, side by side.",
        shows_when=_TEN_MADE,
        thinking=plain(RuleThought.WRITTEN_UNDERNEATH),
        ask=filled(AboutHowBig, asked, wrote),
        example=Example(*_FULL, "61214"),
        attempt=on_whole_sums(side_by_side(whole_columns), show=True),
    ),
    _added(
        id="H03",
        name="always carries one",
        rule="1 is added to every column left of the ones, needed or not.",
        shows_when="a column left of the ones gets a carry that it should not have",
        thinking=plain(RuleThought.ALWAYS_A_ONE),
        ask=filled(TenMade, asked, sum_place(carries_nothing), place_after(carries_nothing)),
        example=Example("423 + 315", "738", "848"),
        attempt=on_whole_sums(in_digits(always_one)),
    ),
    _added(
        id="H04",
        name="carries into the wrong column",
        family=Family.PLACE_VALUE,
        rule="The ten of a column is added two columns to its left; past the left end it is written there.",
        shows_when=_TEN_MADE,
        thinking=plain(RuleThought.ONE_GOES_TO_THE_FRONT),
        ask=filled(TenAreOneOf, sum_place(makes_ten)),
        source=COMMON,
        example=Example(*_FULL, "1724"),
        attempt=on_whole_sums(in_digits(two_to_the_left), show=True),
    ),
    _added(
        id="H05",
        name="writes the ten and carries the ones",
        family=Family.PLACE_VALUE,
        rule="Of a column that makes ten or more the tens digit is written and the ones digit is carried; "
        "the left-most column is written in full.",
        shows_when=_TEN_MADE,
        thinking=plain(RuleThought.FIRST_WRITTEN_SECOND_CARRIED),
        ask=filled(WhichDigitSays, sum_place(makes_ten), column_total(makes_ten)),
        source=Source(
            "a public help page for teachers of written arithmetic (name withheld)",
            provenance="read",
            note="the page describes exactly this error with an example; no count, no study behind it",
        ),
        example=Example(*_FULL, "1211"),
        attempt=on_whole_sums(in_digits(ten_written_ones_carried), show=True),
    ),
    _added(
        id="H06",
        name="lines the numbers up on the left",
        family=Family.PLACE_VALUE,
        rule="The shorter number is moved to the left edge, as if zeros stood to its right, and added there.",
        shows_when="the two numbers are not equally long",
        thinking=plain(RuleThought.LEFT_UNDER_LEFT),
        ask=filled(FirstDigits, typed_first, typed_second),
        source=COMMON,
        example=Example("345 + 27", "372", "615"),
        attempt=on_whole_sums(under_the_left_edge),
    ),
    _added(
        id="H07",
        name="adds the carry twice",
        rule="Every carry is counted twice in the column that gets it.",
        shows_when="there is something to carry",
        thinking=plain(RuleThought.ABOVE_AND_IN_MIND),
        ask=filled(HowOftenCarried, place_after(carries), sum_place(carries)),
        example=Example(*_FULL, "844"),
        attempt=on_whole_sums(in_digits(carry_twice), show=True),
    ),
    _added(
        id="H08",
        name="a zero makes the column nothing",
        family=Family.NUMERATOR,
        rule="In a column with a 0 a 0 is written; what is carried into it is lost, and nothing goes on.",
        shows_when="a written 0 stands over or under a digit",
        thinking=plain(RuleThought.ZERO_GIVES_ZERO),
        ask=filled(ZeroInTheColumn, asked, sum_place(zero_and_digit)),
        source=COMMON,
        example=Example("308 + 451", "759", "709"),
        attempt=on_whole_sums(in_digits(zero_makes_nothing)),
    ),
    _added(
        id="H09",
        name="carries once only",
        rule="The first carry is added, and every later one is forgotten.",
        shows_when="there is something to carry twice",
        thinking=plain(RuleThought.CARRIES_ONCE),
        ask=filled(CarriedBefore, sum_place(carries), sum_place(carries_again)),
        source=Source(
            "Beyoglu & Koetterheinrich (2010), Tenbergen & Transchel (2010): bachelor theses on carrying, as "
            "shown on a German university's page for teachers",
            provenance="read",
            note="the child's answer 876 + 145 = 921 was read; that the second carry is forgotten is our "
            "reading of it",
        ),
        example=Example("876 + 145", "1021", "921"),
        attempt=on_whole_sums(in_digits(carry_once), show=True),
    ),
    _added(
        id="H10",
        name="leaves out the ten at the left end",
        rule="The sum is right, and its new left-most digit is not written.",
        shows_when="the sum is one digit longer than the longer number",
        thinking=plain(RuleThought.NO_COLUMN_LEFT),
        ask=filled(MoreOrLess, asked, typed_second),
        source=COMMON,
        example=Example("478 + 756", "1234", "234"),
        attempt=on_whole_sums(left_end_left_out),
    ),
    _added(
        id="H11",
        name="adds all the digits",
        family=Family.PLACE_VALUE,
        rule="Every digit that is seen is added, as if each counted ones.",
        shows_when="a number is of two digits or more",
        thinking=plain(RuleThought.ALL_PUT_TOGETHER),
        ask=filled(FirstAndLast, of_many_digits),
        source=COMMON,
        example=Example("47 + 25", "72", "18"),
        attempt=on_whole_sums(all_digits),
    ),
    _added(
        id="H12",
        name="works from the left",
        rule="The columns are added from the left, the ten of each is carried to the column on its right, "
        "and the ones are written in full.",
        shows_when="a column other than that of the ones makes ten or more",
        thinking=plain(RuleThought.LEFT_TO_RIGHT),
        ask=filled(WhichColumnGets, sum_place(makes_ten_anywhere)),
        source=Source(
            "Buswell & John (1926), Diagnostic Studies in Arithmetic",
            note="not reachable; the habit is remembered from handbooks that restate its list",
        ),
        example=Example("437 + 284", "721", "6112"),
        attempt=on_whole_sums(side_by_side(from_the_left), show=True),
    ),
    _added(
        id="H13",
        name="adds the one digit to every column",
        family=Family.PLACE_VALUE,
        rule="The number of one digit is added in every column of the other, with ordinary carrying.",
        shows_when="a number of one digit is added to one of more digits",
        thinking=plain(RuleThought.ADDED_TO_ALL_ABOVE),
        ask=filled(HowManyOfEach, of_one_digit, sum_place(at_the_ones), place_after(at_the_ones)),
        source=Source(
            "a student teacher's public essay on error patterns",
            provenance="read",
            note="described in words only; not a study",
        ),
        example=Example("46 + 3", "49", "79"),
        attempt=on_whole_sums(one_digit_to_every_column),
    ),
    _added(
        id="H14",
        name="does not carry over a blank",
        rule="A carry that comes into a column with no digit of the shorter number in it is not added.",
        shows_when="a carry reaches a column in which a digit stands alone",
        thinking=plain(RuleThought.ONLY_ONE_DIGIT),
        ask=filled(HandedOn, sum_place(carries_over_a_blank), place_after(carries_over_a_blank)),
        example=Example("478 + 56", "534", "434"),
        attempt=on_whole_sums(in_digits(no_carry_over_a_blank), show=True),
    ),
)
