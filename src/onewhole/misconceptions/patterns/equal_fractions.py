"""Equal fractions and simplifying: a number is missing in n/d = ?/new or n/d = new/?."""

from functools import partial

from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source, coded
from onewhole.misconceptions.wrong_steps.renaming import (
    adds_the_same,
    crosses_out_a_digit,
    divides_one_multiplies_other,
    divides_the_top_only,
    fills,
    multiplies_the_bottom_only,
    multiplies_the_top_only,
    subtracts_the_same,
)

_SAME_AMOUNT = "Show the first fraction with a strip. Does the second one cover the same part of it?"

_renamed = partial(Pattern, topic=Topic.EQUAL_AND_COMPARE, family=Family.EQUIVALENCE, ask=_SAME_AMOUNT)

EQUAL_FRACTIONS = (
    _renamed(
        id="C01",
        name="adds the same to top and bottom",
        rule="n/d is said to equal (n + k)/(d + k).",
        shows_when="numerator and denominator differ, and the given number is larger than the one it comes "
        "from",
        thinking="4 and 4 more is 8, so I add 4 on top too.",
        source=coded("Behr, Wachsmuth, Post & Lesh (1984), JRME", "331, 336"),
        example=Example("3/4 = ?/8", "6", "7"),
        attempt=fills(adds_the_same),
    ),
    _renamed(
        id="C02",
        name="multiplies the top only",
        rule="n/d is said to equal (n x k)/d.",
        shows_when="the new numerator is given and is a multiple of the old one",
        thinking="I make the top twice as big and the bottom may stay.",
        source=coded(
            "Bright, Behr, Post & Wachsmuth (1988), JRME (5/3 in twelfths marked as 16/3)", "219, 223"
        ),
        example=Example("2/3 = 4/?", "6", "3"),
        attempt=fills(multiplies_the_top_only),
    ),
    _renamed(
        id="C03",
        name="multiplies the bottom only",
        rule="n/d is said to equal n/(d x k).",
        shows_when="the new denominator is given and is a multiple of the old one",
        thinking="I change thirds into sixths; there are still 2 of them.",
        source=COMMON,
        example=Example("2/3 = ?/6", "4", "2"),
        attempt=fills(multiplies_the_bottom_only),
    ),
    _renamed(
        id="C04",
        name="divides the top only",
        rule="n/d is said to equal (n / k)/d.",
        shows_when="the new numerator is given and the old one is a multiple of it",
        thinking="I make the top smaller and the bottom may stay.",
        source=COMMON,
        example=Example("4/8 = 1/?", "2", "8"),
        attempt=fills(divides_the_top_only),
    ),
    _renamed(
        id="C05",
        name="divides the top and multiplies the bottom",
        rule="n/d is said to equal (n / k)/(d x k).",
        shows_when="k divides the numerator",
        thinking="Half the top, twice the bottom: it may seem to even out.",
        source=coded("Harvey (2012), Mathematics Education Research Journal", "503"),
        example=Example("18/20 = 9/?", "10", "40"),
        attempt=fills(divides_one_multiplies_other),
    ),
    _renamed(
        id="C06",
        name="subtracts the same from top and bottom",
        rule="n/d is said to equal (n - k)/(d - k).",
        shows_when="numerator and denominator differ, and the given number is smaller than the one it comes "
        "from",
        thinking="8 less 4 is 4, so I take 4 from the top too.",
        source=COMMON,
        example=Example("6/8 = ?/4", "3", "2"),
        attempt=fills(subtracts_the_same),
    ),
    _renamed(
        id="C07",
        name="crosses out a shared digit",
        rule="A digit that stands in top and bottom is crossed out of both.",
        shows_when="numerator and denominator have two digits or more and share one",
        thinking="There is a 2 in both, so I cross it out.",
        source=Source("handbooks of computation error patterns"),
        example=Example("12/24 = 1/?", "2", "4"),
        attempt=fills(crosses_out_a_digit),
    ),
)
