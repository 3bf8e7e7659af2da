"""Subtracting, like denominators: a fraction or a mixed number is taken from a whole number."""

from onewhole.misconceptions.asks.amounts import CanBeLeft
from onewhole.misconceptions.asks.opening import NoneThere, NotOpened
from onewhole.misconceptions.asks.sizes import SameAmount
from onewhole.misconceptions.bend import BentTry
from onewhole.misconceptions.filling import filled
from onewhole.misconceptions.holes.parts import (
    as_many_pieces,
    first,
    large,
    piece,
    rest_of_one,
    small,
    typed_first,
    typed_second,
    wrote,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source, coded
from onewhole.misconceptions.thoughts.opening import CompletesOne, NothingAbove, WholesStay
from onewhole.misconceptions.thoughts.pieces import SameKind
from onewhole.misconceptions.wrong_steps.apart import apart, less, second_if_none
from onewhole.misconceptions.wrong_steps.bent import When, bent, on_like_parts
from onewhole.misconceptions.wrong_steps.converting import converts, whole_as_pieces
from onewhole.misconceptions.wrong_steps.regrouping import Act, keeps_the_unit, nothing, regroups
from onewhole.misconceptions.wrong_steps.when import fraction_from_whole, no_pieces_on_top
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.to_fractions import TO_FRACTIONS


def _bent(when: When, **steps: Act) -> BentTry:
    return on_like_parts(bent(REGROUP_FIRST, steps), when, taken=True)


WHOLE_ON_TOP = (
    Pattern(
        id="A20",
        name="copies the fraction when there is none to take it from",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="The wholes are taken; there are no pieces in the first number, so the second fraction is "
        "written down.",
        shows_when="the first number is a whole number (n1 = 0)",
        thinking=filled(NothingAbove, piece),
        ask=filled(NoneThere, typed_first, small),
        source=Source("same rule as 0 - N = N (Brown & Burton 1978)"),
        example=Example("4 - 1 3/8", "2 5/8", "3 3/8"),
        attempt=_bent(no_pieces_on_top, regroup=nothing, unit_by_unit=apart(less, second_if_none)),
    ),
    Pattern(
        id="A21",
        name="opens a whole number's whole and still counts it",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="d pieces are made to take from, and no whole is given up for them.",
        shows_when="the first number is a whole number (n1 = 0)",
        thinking=filled(CompletesOne, piece, rest_of_one, large),
        ask=filled(NotOpened, first, large, small),
        source=coded(
            "same rule as the decimal error 20 - 7.70 = 13.30 in Broza & Ben-David Kolikant (2015), ZDM",
            "1101-1102",
        ),
        example=Example("4 - 1 3/8", "2 5/8", "3 5/8"),
        attempt=_bent(no_pieces_on_top, regroup=regroups(keeps_the_unit)),
    ),
    Pattern(
        id="A22",
        name="reads the whole number as that many pieces",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.WHOLES,
        rule="The whole number w1 is read as w1/d, and the smaller numerator is taken from the larger.",
        shows_when="a fraction is taken from a whole number (n1 = 0, w2 = 0)",
        thinking=filled(SameKind, typed_first, as_many_pieces),
        ask=filled(SameAmount, typed_first, as_many_pieces),
        source=coded(
            "Gutstein & Mack (1999), J. Mathematical Behavior (1 - 4/5 answered 3/5)",
            "445-446",
            "the IES practice guide (2010), rec. 3, gives 4 - 3/8 turned into 4/8 - 3/8 (memory)",
        ),
        example=Example("4 - 3/8", "3 5/8", "1/8"),
        attempt=on_like_parts(
            bent(TO_FRACTIONS, {"change": converts(whole_as_pieces)}), fraction_from_whole, taken=True
        ),
    ),
    Pattern(
        id="A23",
        name="takes a fraction from a whole number and keeps every whole",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="The pieces left of one opened whole are written beside all w1 wholes.",
        shows_when="a fraction is taken from a whole number (n1 = 0, w2 = 0)",
        thinking=filled(WholesStay, typed_second, typed_first),
        ask=filled(CanBeLeft, typed_first, typed_second, wrote),
        source=COMMON,
        example=Example("4 - 3/8", "3 5/8", "4 5/8"),
        attempt=_bent(fraction_from_whole, regroup=regroups(keeps_the_unit)),
    ),
)
