"""Equal fractions and simplifying: a number is missing in n/d = ?/new or n/d = new/?."""

from functools import partial

from onewhole.misconceptions.asks.sizes import SameAmount
from onewhole.misconceptions.filling import filled
from onewhole.misconceptions.holes.fractions import (
    found_part,
    from_part,
    known_bottom,
    known_fraction,
    known_piece,
    known_top,
    other_part,
    said_bottom,
    said_fraction,
    said_piece,
    said_top,
    shared_digit,
    to_part,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source, coded
from onewhole.misconceptions.thoughts.sizes import CrossesOut, EvensOut, OneChanges, SameStep, StillSoMany
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

_renamed = partial(Pattern, topic=Topic.EQUAL_AND_COMPARE, family=Family.EQUIVALENCE)

EQUAL_FRACTIONS = (
    _renamed(
        id="C01",
        name="adds the same to top and bottom",
        rule="n/d is said to equal (n + k)/(d + k).",
        shows_when="numerator and denominator differ, and the given number is larger than the one it comes "
        "from",
        thinking=filled(SameStep, from_part, to_part, other_part, found_part),
        ask=filled(SameAmount, known_fraction, said_fraction),
        source=coded("Behr, Wachsmuth, Post & Lesh (1984), JRME", "331, 336"),
        example=Example("3/4 = ?/8", "6", "7"),
        attempt=fills(adds_the_same),
    ),
    _renamed(
        id="C02",
        name="multiplies the top only",
        rule="n/d is said to equal (n x k)/d.",
        shows_when="the new numerator is given and is a multiple of the old one",
        thinking=filled(OneChanges, known_top, said_top, known_bottom),
        ask=filled(SameAmount, known_fraction, said_fraction),
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
        thinking=filled(StillSoMany, known_piece, said_piece, known_top),
        ask=filled(SameAmount, known_fraction, said_fraction),
        source=COMMON,
        example=Example("2/3 = ?/6", "4", "2"),
        attempt=fills(multiplies_the_bottom_only),
    ),
    _renamed(
        id="C04",
        name="divides the top only",
        rule="n/d is said to equal (n / k)/d.",
        shows_when="the new numerator is given and the old one is a multiple of it",
        thinking=filled(OneChanges, known_top, said_top, known_bottom),
        ask=filled(SameAmount, known_fraction, said_fraction),
        source=COMMON,
        example=Example("4/8 = 1/?", "2", "8"),
        attempt=fills(divides_the_top_only),
    ),
    _renamed(
        id="C05",
        name="divides the top and multiplies the bottom",
        rule="n/d is said to equal (n / k)/(d x k).",
        shows_when="k divides the numerator",
        thinking=filled(EvensOut, known_top, said_top, known_bottom, said_bottom),
        ask=filled(SameAmount, known_fraction, said_fraction),
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
        thinking=filled(SameStep, from_part, to_part, other_part, found_part),
        ask=filled(SameAmount, known_fraction, said_fraction),
        source=COMMON,
        example=Example("6/8 = ?/4", "3", "2"),
        attempt=fills(subtracts_the_same),
    ),
    _renamed(
        id="C07",
        name="crosses out a shared digit",
        rule="A digit that stands in top and bottom is crossed out of both.",
        shows_when="numerator and denominator have two digits or more and share one",
        thinking=filled(CrossesOut, shared_digit),
        ask=filled(SameAmount, known_fraction, said_fraction),
        source=Source("handbooks of computation error patterns"),
        example=Example("12/24 = 1/?", "2", "4"),
        attempt=fills(crosses_out_a_digit),
    ),
)
