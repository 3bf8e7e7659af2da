"""Comparing fractions."""

from functools import partial

from onewhole.misconceptions.asks.sizes import (
    EnoughOfThem,
    HowMuchMissing,
    OneSize,
    WhichIsLonger,
    WhichPieces,
)
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.fractions import (
    bigger_piece,
    bottom_called_less,
    bottom_called_more,
    called_less,
    called_more,
    left,
    left_piece,
    right,
    right_piece,
    smaller_piece,
    top_called_less,
    top_called_more,
)
from onewhole.misconceptions.holes.thoughts import gaps
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, coded
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.thoughts.sizes import BiggerDigits, BiggerNumber, BiggerPiecesWin, MorePieces
from onewhole.misconceptions.wrong_steps.orders import (
    larger_bottom,
    larger_digits,
    larger_top,
    on_fractions_compared,
    smaller_bottom,
    smaller_gap,
    smaller_top,
)

_DIFFER = "the denominators differ"

_compared = partial(Pattern, topic=Topic.EQUAL_AND_COMPARE, family=Family.COMPARISON)

COMPARING = (
    _compared(
        id="C08",
        name="bigger denominator, bigger fraction",
        rule="The fraction with the larger denominator is called larger.",
        shows_when=_DIFFER,
        thinking=filled(BiggerNumber, bottom_called_more, bottom_called_less),
        ask=filled(WhichPieces, left_piece, right_piece),
        source=coded(
            "Hunting (1983), JRME; Mack (1990), JRME; Post et al. (1985), JRME",
            "194; 21-22; 23-24",
        ),
        example=Example("1/8 ? 1/4", "<", ">"),
        attempt=on_fractions_compared(larger_bottom),
    ),
    _compared(
        id="C09",
        name="looks at the numerators only",
        rule="The fraction with the larger numerator is called larger.",
        shows_when=_DIFFER,
        thinking=filled(MorePieces, top_called_more, top_called_less),
        ask=filled(OneSize, left_piece, right_piece),
        source=COMMON,
        example=Example("3/8 ? 2/3", "<", ">"),
        attempt=on_fractions_compared(larger_top),
    ),
    _compared(
        id="C10",
        name="smaller denominator, always bigger",
        rule="The fraction with the smaller denominator is called larger, whatever the numerators are.",
        shows_when=_DIFFER,
        thinking=filled(BiggerPiecesWin, bigger_piece, smaller_piece),
        ask=filled(EnoughOfThem, bigger_piece, left, right),
        source=coded("Peck & Jencks (1981), JRME", "343"),
        example=Example("2/5 ? 3/7", "<", ">"),
        attempt=on_fractions_compared(smaller_bottom),
    ),
    _compared(
        id="C11",
        name="looks at the gap",
        rule="The fraction with fewer pieces missing to a whole is called larger; equal gaps are called "
        "equal.",
        shows_when="neither fraction is more than a whole",
        thinking=gaps,
        ask=filled(HowMuchMissing, left, right),
        source=coded(
            "Cramer, Post & delMas (2002), JRME; Zazkis & Chernoff (2008), ESM",
            "130-133; 202-204",
        ),
        example=Example("4/5 ? 11/12", "<", "="),
        attempt=on_fractions_compared(smaller_gap),
    ),
    _compared(
        id="C12",
        name="more pieces must be smaller",
        rule="With the same denominator, the fraction with the larger numerator is called smaller.",
        shows_when="the denominators are the same",
        thinking=plain(RuleThought.BIGGER_IS_SMALLER),
        ask=filled(WhichIsLonger, left, right),
        source=coded("Behr, Wachsmuth, Post & Lesh (1984), JRME", "330"),
        example=Example("9/13 ? 4/13", ">", "<"),
        attempt=on_fractions_compared(smaller_top),
    ),
    _compared(
        id="C13",
        name="bigger digits, bigger fraction",
        rule="The fraction whose numerator and denominator are more together is called larger.",
        shows_when="always",
        thinking=filled(BiggerDigits, called_more, called_less),
        ask=filled(WhichIsLonger, left, right),
        source=coded("Gomez et al. (2015), ZDM", "803-804"),
        example=Example("5/6 ? 8/19", ">", "<"),
        attempt=on_fractions_compared(larger_digits),
    ),
)
