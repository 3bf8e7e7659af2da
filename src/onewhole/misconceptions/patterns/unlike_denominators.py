"""Adding and subtracting with unlike denominators.

The rules are described for fractions without wholes. Where there are wholes, they are added or taken rightly
and the rule is used on the fractions: that part is ours.
"""

from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source, coded
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
    on_unlike_parts,
    renames_by_adding,
    tops_by_own_bottom,
)
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.units_apart import UNITS_APART

_HALF_AND_TWO_THIRDS = "1/2 + 2/3", "7/6"
_QUARTERS_AND_SIXTHS = "3/4 + 1/6", "11/12"
_THIRDS_AND_QUARTERS = "2/3 + 1/4", "11/12"
_VINNER = "Vinner, Hershkowitz & Bruckheimer (1981), JRME"

UNLIKE_DENOMINATORS = (
    Pattern(
        id="B01",
        name="adds across",
        topic=Topic.UNLIKE,
        family=Family.DENOMINATOR,
        rule="The numerators are added and the denominators are added.",
        shows_when="always",
        thinking="It says plus, so I do plus on top and plus on the bottom.",
        ask="Is your answer more than each of the two numbers? Should it be?",
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
        rule="The smaller numerator is taken from the larger, and the smaller denominator from the larger.",
        shows_when="always",
        thinking="It says minus, so I do minus on top and minus on the bottom.",
        ask="Your answer is made of pieces. How big is one of them, and where did such pieces come from?",
        source=coded("Cai (1995), JRME Monograph", "58"),
        example=Example("3/4 - 1/6", "7/12", "2/2"),
        beside=REGROUP_FIRST.key,
        attempt=on_unlike_parts(tops_apart, bottoms_apart, taken=True),
    ),
    Pattern(
        id="B03",
        name="common denominator, old numerators",
        topic=Topic.UNLIKE,
        family=Family.NUMERATOR,
        rule="A common denominator is found, and the numerators are added as they were.",
        shows_when="always",
        thinking="I changed the bottoms to be the same. I may not have seen that the tops change too.",
        ask="Cut the pieces of the first number into the new, smaller ones. How many of those is it now?",
        source=Source(
            "reported in fraction error studies (Idris & Narayanan 2011 count errors of this step)"
        ),
        example=Example(*_QUARTERS_AND_SIXTHS, "4/12"),
        beside=UNITS_APART.key,
        attempt=on_unlike_parts(tops_added, common_bottom, taken=False),
    ),
    Pattern(
        id="B04",
        name="takes the larger denominator as it is",
        topic=Topic.UNLIKE,
        family=Family.NUMERATOR,
        rule="The numerators are added over the larger denominator.",
        shows_when="the denominators differ",
        thinking="Both need the same bottom, so I take the bigger one.",
        ask="Lay one piece of each number side by side. Can we count them as the same kind of piece?",
        source=Source(
            "Siegler et al. (2010), IES practice guide NCEE 2010-4039, recommendation 3 (misconceptions)",
            "rec. 3",
            note="the guide's own instance",
        ),
        example=Example("4/5 + 4/10", "6/5", "8/10"),
        beside=UNITS_APART.key,
        attempt=on_unlike_parts(tops_added, larger_bottom, taken=False),
    ),
    Pattern(
        id="B05",
        name="multiplies numerators, adds denominators",
        topic=Topic.UNLIKE,
        family=Family.OPERATION,
        rule="n1 x n2 over d1 + d2.",
        shows_when="always",
        thinking="I know some rules for fractions and may have mixed them.",
        ask="Is your answer more than each of the two numbers? Should it be?",
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
        thinking="The tops go with minus. I may not be sure what the bottoms do.",
        ask="What does the bottom number tell us about the pieces? Can pieces of two sizes be counted "
        "together?",
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
        thinking="4 and 4 more is 8, so I do the same on top: 3 and 4 more is 7.",
        ask="Show the fraction that you renamed, and cut each of its pieces alike. How many do you see now?",
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
        thinking="I know I must multiply the top. I may have taken the wrong number.",
        ask="Cut one piece of the first number into the new, smaller ones. How many does it make?",
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
        rule="The numerators are added over the denominator of the first number.",
        shows_when="the denominators differ",
        thinking="We started with thirds, so the answer is in thirds.",
        ask="Lay one piece of each number side by side. Can we count them as the same kind of piece?",
        source=COMMON,
        example=Example(*_THIRDS_AND_QUARTERS, "3/3"),
        beside=UNITS_APART.key,
        attempt=on_unlike_parts(tops_added, bottom_kept, taken=False),
    ),
    Pattern(
        id="B10",
        name="multiplied denominator, old numerators",
        topic=Topic.UNLIKE,
        family=Family.NUMERATOR,
        rule="The denominators are multiplied, and the numerators are added as they were.",
        shows_when="always",
        thinking="I changed the bottoms to be the same. I may not have seen that the tops change too.",
        ask="Cut the pieces of the first number into smaller ones, all the same. How many is it now?",
        source=COMMON,
        example=Example(*_QUARTERS_AND_SIXTHS, "4/24"),
        beside=UNITS_APART.key,
        attempt=on_unlike_parts(tops_added, bottoms_multiplied, taken=False),
    ),
)
