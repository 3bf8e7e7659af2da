"""Adding and subtracting with unlike denominators.

The rules are described for fractions without wholes. Where there are wholes, they are added or taken rightly
and the rule is used on the fractions: that part is ours.
"""

from onewhole.misconceptions.asks.amounts import CanBeLeft, MoreOrLess, MoreThanEach
from onewhole.misconceptions.asks.pieces import CutIntoSmaller
from onewhole.misconceptions.asks.sizes import CountTogether, SameAmount
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.fractions import (
    after_renaming,
    before_renaming,
    common_piece,
    first_fraction,
    first_over_turned,
    larger_of_bottoms,
    left,
    left_piece,
    product_piece,
    right,
    right_piece,
    to_be_cut,
)
from onewhole.misconceptions.holes.parts import asked, wrote
from onewhole.misconceptions.holes.thoughts import bottoms_counted, more_than_each_or_left, same_step_renaming
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, WRONG_OPERATION, Source, coded
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.thoughts.sizes import BiggerBottom, StartedWith, TurnedOver
from onewhole.misconceptions.wrong_steps.across import (
    denominator_one_off,
    first_turned_over,
    signed_across,
)
from onewhole.misconceptions.wrong_steps.cutting import (
    bottom_kept,
    bottoms_added,
    bottoms_apart,
    bottoms_multiplied,
    tops_added,
    tops_apart,
    tops_multiplied,
)
from onewhole.misconceptions.wrong_steps.unlike import (
    common_bottom,
    larger_bottom,
    old_tops_over,
    on_unlike_parts,
    renames_by_adding,
    takes_instead,
    tops_by_own_bottom,
)
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.units_apart import UNITS_APART

_HALF_AND_TWO_THIRDS = "1/2 + 2/3", "7/6"
_QUARTERS_AND_SIXTHS = "3/4 + 1/6", "11/12"
_THIRDS_AND_QUARTERS = "2/3 + 1/4", "11/12"
_PUPILS = "pupils' own answers in Siegler, Thompson & Schneider (2011), Cognitive Psychology 62, open data"
_VINNER = "Vinner, Hershkowitz & Bruckheimer (1981), JRME"

UNLIKE_DENOMINATORS = (
    Pattern(
        id="B01",
        name="adds across",
        topic=Topic.UNLIKE,
        family=Family.DENOMINATOR,
        rule="The numerators are added and the denominators are added.",
        shows_when="always",
        thinking=plain(RuleThought.PLUS_TOP_AND_BOTTOM),
        ask=filled(MoreThanEach, left, right, wrote),
        source=coded(_VINNER, "71-72", "also Depaepe et al. (2018), p. 197 (2/3 + 3/5 = 5/8)"),
        example=Example(*_HALF_AND_TWO_THIRDS, "3/5"),
        beside=UNITS_APART.key,
        attempt=on_unlike_parts(tops_added, bottoms_added, taken=False),
    ),
    Pattern(
        id="B02",
        name="subtracts across",
        topic=Topic.UNLIKE,
        family=Family.DENOMINATOR,
        rule="The smaller numerator is taken from the larger, and the smaller denominator from the larger, "
        "or each as it stands, with minus signs (-1/-2).",
        shows_when="always",
        thinking=plain(RuleThought.MINUS_TOP_AND_BOTTOM),
        ask=filled(CanBeLeft, left, right, wrote),
        source=coded("Cai (1995), JRME Monograph", "58", "the answers with minus signs are ours"),
        example=Example("3/4 - 1/6", "7/12", "2/2"),
        beside=REGROUP_FIRST.key,
        attempt=on_unlike_parts(tops_apart, bottoms_apart, taken=True, also=signed_across),
    ),
    Pattern(
        id="B03",
        name="common denominator, old numerators",
        topic=Topic.UNLIKE,
        family=Family.NUMERATOR,
        rule="A common denominator is found, and the numerators are added as they were, or the smaller is "
        "taken from the larger.",
        shows_when="always",
        thinking=plain(RuleThought.ONLY_THE_BOTTOMS),
        ask=filled(CutIntoSmaller, to_be_cut, common_piece),
        source=Source(
            "reported in fraction error studies (Idris & Narayanan 2011 count errors of this step)",
            note=f"taking away: {_PUPILS}, who wrote 2/10 for 3/5 - 1/2",
        ),
        example=Example(*_QUARTERS_AND_SIXTHS, "4/12"),
        beside=UNITS_APART.key,
        attempt=old_tops_over(common_bottom),
    ),
    Pattern(
        id="B04",
        name="takes the larger denominator as it is",
        topic=Topic.UNLIKE,
        family=Family.NUMERATOR,
        rule="The numerators are added, or the smaller is taken from the larger, over the larger "
        "denominator.",
        shows_when="the denominators differ",
        thinking=filled(BiggerBottom, larger_of_bottoms),
        ask=filled(CountTogether, left_piece, right_piece),
        source=Source(
            "Siegler et al. (2010), IES practice guide NCEE 2010-4039, recommendation 3 (misconceptions)",
            "rec. 3",
            note="the guide's own instance; taking away is ours",
        ),
        example=Example("4/5 + 4/10", "6/5", "8/10"),
        beside=UNITS_APART.key,
        attempt=old_tops_over(larger_bottom),
    ),
    Pattern(
        id="B05",
        name="multiplies numerators, adds denominators",
        topic=Topic.UNLIKE,
        family=Family.OPERATION,
        rule="n1 x n2 over d1 + d2.",
        shows_when="always",
        thinking=plain(RuleThought.RULES_MIXED),
        ask=filled(MoreThanEach, left, right, wrote),
        source=coded(_VINNER, "71-72"),
        example=Example(*_HALF_AND_TWO_THIRDS, "2/5"),
        beside=UNITS_APART.key,
        attempt=on_unlike_parts(tops_multiplied, bottoms_added, taken=False),
    ),
    Pattern(
        id="B06",
        name="subtracts numerators, adds denominators",
        topic=Topic.UNLIKE,
        family=Family.DENOMINATOR,
        rule="The smaller numerator is taken from the larger, over d1 + d2.",
        shows_when="always",
        thinking=plain(RuleThought.UNSURE_OF_THE_BOTTOMS),
        ask=filled(CountTogether, left_piece, right_piece),
        source=coded("Cramer, Post & delMas (2002), JRME", "134-137"),
        example=Example("11/12 - 4/6", "1/4", "7/18"),
        beside=REGROUP_FIRST.key,
        attempt=on_unlike_parts(tops_apart, bottoms_added, taken=True),
    ),
    Pattern(
        id="B07",
        name="renames by adding the same to top and bottom",
        topic=Topic.UNLIKE,
        family=Family.NUMERATOR,
        rule="Each fraction is moved to the larger denominator by adding the same to top and bottom; then "
        "both are added.",
        shows_when="the denominators differ",
        thinking=same_step_renaming,
        ask=filled(SameAmount, before_renaming, after_renaming),
        source=coded(
            "Behr, Wachsmuth, Post & Lesh (1984), JRME (3/4 said to equal 7/8)",
            "331, 336",
            "the addition is ours",
        ),
        example=Example("3/4 + 1/8", "7/8", "8/8"),
        beside=UNITS_APART.key,
        attempt=renames_by_adding,
    ),
    Pattern(
        id="B08",
        name="multiplies each numerator by its own denominator",
        topic=Topic.UNLIKE,
        family=Family.NUMERATOR,
        rule="n1 x d1 + n2 x d2 over d1 x d2: the numerator's own denominator is used in place of the other "
        "one.",
        shows_when="the numerators differ (n1 <> n2)",
        thinking=plain(RuleThought.WRONG_FACTOR),
        ask=filled(CutIntoSmaller, first_fraction, product_piece),
        source=COMMON,
        example=Example(*_THIRDS_AND_QUARTERS, "10/12"),
        beside=UNITS_APART.key,
        attempt=on_unlike_parts(tops_by_own_bottom, bottoms_multiplied, taken=False, tops_differ=True),
    ),
    Pattern(
        id="B09",
        name="keeps the first denominator",
        topic=Topic.UNLIKE,
        family=Family.DENOMINATOR,
        rule="The numerators are added, or the smaller is taken from the larger, over the denominator of the "
        "first number.",
        shows_when="the denominators differ",
        thinking=filled(StartedWith, left_piece),
        ask=filled(CountTogether, left_piece, right_piece),
        source=COMMON,
        example=Example(*_THIRDS_AND_QUARTERS, "3/3"),
        beside=UNITS_APART.key,
        attempt=old_tops_over(bottom_kept),
    ),
    Pattern(
        id="B10",
        name="multiplied denominator, old numerators",
        topic=Topic.UNLIKE,
        family=Family.NUMERATOR,
        rule="The denominators are multiplied, and the numerators are added as they were, or the smaller is "
        "taken from the larger.",
        shows_when="always",
        thinking=plain(RuleThought.ONLY_THE_BOTTOMS),
        ask=filled(CutIntoSmaller, first_fraction, product_piece),
        source=COMMON,
        example=Example(*_QUARTERS_AND_SIXTHS, "4/24"),
        beside=UNITS_APART.key,
        attempt=old_tops_over(bottoms_multiplied),
    ),
    Pattern(
        id="B11",
        name="takes away instead of adding",
        topic=Topic.UNLIKE,
        family=Family.OPERATION,
        rule="Both are cut into pieces of one size, and the smaller number is taken from the larger.",
        shows_when="two numbers with unlike denominators are to be added",
        thinking=plain(RuleThought.STILL_TAKING),
        ask=filled(MoreOrLess, asked, left),
        source=Source(f"{WRONG_OPERATION}; that only the sign is exchanged is ours"),
        example=Example(*_HALF_AND_TWO_THIRDS, "1/6"),
        beside=UNITS_APART.key,
        attempt=takes_instead,
    ),
    Pattern(
        id="B12",
        name="turns the first fraction over, then works across",
        topic=Topic.UNLIKE,
        family=Family.OPERATION,
        rule="d1/n1 in place of n1/d1; then the numerators are added and the denominators are added, or the "
        "smaller is taken from the larger.",
        shows_when="both numbers are fractions without wholes, also with like denominators",
        thinking=filled(TurnedOver, first_fraction, first_over_turned),
        ask=filled(SameAmount, first_fraction, first_over_turned),
        source=Source(
            _PUPILS,
            provenance="read",
            note="6/5 for 3/5 + 1/2, 7/8 for 3/5 + 2/5, 4 for 3/5 - 1/2 and 3/2 for 3/5 - 2/5, one pupil "
            "each; coded there as turning over",
        ),
        example=Example("3/5 + 1/2", "11/10", "6/5"),
        beside=UNITS_APART.key,
        attempt=first_turned_over,
    ),
    Pattern(
        id="B13",
        name="works across, with one fact off in the denominator",
        topic=Topic.UNLIKE,
        family=Family.DENOMINATOR,
        rule="The numerators are added and the denominators are added, or the smaller is taken from the "
        "larger; the new denominator is one too few or one too many.",
        shows_when="both numbers are fractions without wholes; taking away, with unlike denominators",
        thinking=bottoms_counted,
        ask=more_than_each_or_left,
        source=Source(
            _PUPILS, provenance="read", note="4/6 and 4/8 for 3/5 + 1/2, one pupil each; the rule is ours"
        ),
        example=Example("3/5 + 1/2", "11/10", "4/6"),
        beside=UNITS_APART.key,
        attempt=denominator_one_off,
        fact_off=True,
    ),
)
