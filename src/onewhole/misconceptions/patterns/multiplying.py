"""A whole number times a fraction or a mixed number."""

from functools import partial

from onewhole.misconceptions.asks.amounts import AllOfThem, WriteAsAdding
from onewhole.misconceptions.asks.pieces import CouldMakeOne
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.fractions import (
    multiplied,
    multiplied_bottom,
    multiplied_fraction,
    multiplied_large,
    multiplied_piece,
    multiplied_top,
    multiplied_wholes,
    times,
)
from onewhole.misconceptions.holes.parts import asked, written_pieces, wrote
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source, coded
from onewhole.misconceptions.thoughts.pieces import (
    AddedTimes,
    MultipliedFraction,
    MultipliedWholes,
    ThatIsTheAnswer,
    WhichIsMultiplied,
)
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.multiplying import (
    added_to_top,
    both_parts,
    bottom_only,
    every_number,
    fraction_only,
    multiplies,
    pieces_left,
    wholes_only,
)

_MIXED = "3 x 2 1/4", "6 3/4"

_times = partial(Pattern, topic=Topic.TIMES)

MULTIPLYING = (
    _times(
        id="D01",
        name="multiplies both parts",
        family=Family.DENOMINATOR,
        rule="k x n over k x d.",
        shows_when="k > 1",
        thinking=plain(RuleThought.TIMES_EVERYWHERE),
        ask=filled(AllOfThem, times, multiplied, multiplied_piece),
        source=coded("Cai (1995), JRME Monograph", "58"),
        example=Example("6 x 4/7", "24/7", "24/42"),
        attempt=multiplies(both_parts),
    ),
    _times(
        id="D02",
        name="multiplies the denominator only",
        family=Family.DENOMINATOR,
        rule="n over k x d.",
        shows_when="k > 1",
        thinking=filled(WhichIsMultiplied, times, multiplied_top, multiplied_bottom),
        ask=filled(AllOfThem, times, multiplied, multiplied_piece),
        source=COMMON,
        example=Example("3 x 2/5", "6/5", "2/15"),
        attempt=multiplies(bottom_only),
    ),
    _times(
        id="D03",
        name="adds the whole number to the numerator",
        family=Family.OPERATION,
        rule="k + n over d.",
        shows_when="k + n and k x n differ",
        thinking=filled(AddedTimes, times, multiplied_top),
        ask=filled(WriteAsAdding, asked, multiplied),
        source=coded("Sahin, Gokkurt & Soylu (2016), IJMEST", "545-546"),
        example=Example("3 x 2/7", "6/7", "5/7"),
        attempt=multiplies(added_to_top),
    ),
    _times(
        id="D04",
        name="multiplies the wholes only",
        family=Family.NUMERATOR,
        rule="k x w wholes; n/d is kept.",
        shows_when="k > 1 and there are pieces (n > 0)",
        thinking=filled(MultipliedWholes, times, multiplied_wholes),
        ask=filled(WriteAsAdding, asked, multiplied),
        source=COMMON,
        example=Example(*_MIXED, "6 1/4"),
        attempt=multiplies(wholes_only),
    ),
    _times(
        id="D05",
        name="multiplies every number it sees",
        family=Family.DENOMINATOR,
        rule="k x w wholes, k x n over k x d.",
        shows_when="k > 1 and there are wholes",
        thinking=plain(RuleThought.TIMES_EVERYWHERE),
        ask=filled(AllOfThem, times, multiplied, multiplied_piece),
        source=COMMON,
        example=Example(*_MIXED, "6 3/12"),
        attempt=multiplies(every_number),
    ),
    _times(
        id="D06",
        name="multiplies the fraction only",
        family=Family.WHOLES,
        rule="w wholes are kept, k x n over d.",
        shows_when="k > 1 and there are wholes (w > 0)",
        thinking=filled(MultipliedFraction, times, multiplied_fraction, multiplied_wholes),
        ask=filled(WriteAsAdding, asked, multiplied),
        source=COMMON,
        example=Example(*_MIXED, "2 3/4"),
        attempt=multiplies(fraction_only),
    ),
    _times(
        id="D07",
        name="a fraction of one or more is left",
        family=Family.FORM,
        rule="The amount is right; k x n >= d pieces are left as they are.",
        shows_when="the pieces fill a whole (k x n >= d)",
        thinking=filled(ThatIsTheAnswer, wrote),
        ask=filled(CouldMakeOne, multiplied_large, multiplied_piece, written_pieces),
        source=Source(COMMON.text, note="mark as right"),
        example=Example("3 x 2 2/4", "7 2/4", "6 6/4"),
        attempt=multiplies(pieces_left),
        of_form=True,
    ),
)
