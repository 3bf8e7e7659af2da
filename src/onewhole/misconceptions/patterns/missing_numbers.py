"""A number is missing in an equation.

Rules and sources are those of a second collection of error patterns (see :mod:`~.sum_columns`).
"""

from functools import partial

from onewhole.misconceptions.asks.gaps import (
    AreSidesEqual,
    CanBeTaken,
    ComesTo,
    HadBeforeGiving,
    WhatEachSideMakes,
)
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.gaps import beside_gap, other_side
from onewhole.misconceptions.holes.parts import wrote
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.gaps import (
    added,
    all_added,
    first_copied,
    on_missing_addend,
    on_missing_change,
    on_missing_start,
    on_two_sides,
    taken_away,
    worked_side,
)

_SIDES = "8 + 4 = ? + 5", "7"
_FALKNER = Source(
    "Falkner, Levi & Carpenter (1999): all 145 sixth graders wrote 12 or 17 for 8 + 4 = ? + 5",
    provenance="read",
    note="opening read",
)
_ON_TWO_SIDES = "two sums are equal and the first number of the second one is missing"

_filled_in = partial(Pattern, topic=Topic.MISSING, family=Family.OPERATION, source=COMMON)

MISSING_NUMBERS = (
    _filled_in(
        id="Q01",
        name="adds the numbers that are there",
        rule="The numbers beside the gap and the sum are added.",
        shows_when="an addend is missing",
        thinking=plain(RuleThought.PLUS_SO_ADD),
        ask=filled(ComesTo, wrote, other_side(0)),
        source=Source(
            "McNeil (2013), Child Development Perspectives: narrow practice with plus leads to adding what "
            "is seen",
            note="abstract read; the form with one gap is ours",
        ),
        example=Example("2 3/8 + ? = 5 1/8", "2 6/8", "7 4/8"),
        attempt=on_missing_addend(added),
    ),
    _filled_in(
        id="Q02",
        name="takes away what is there",
        rule="The smaller of the two known numbers is taken from the larger.",
        shows_when="the first number of a difference is missing",
        thinking=plain(RuleThought.MINUS_SO_TAKE),
        ask=filled(HadBeforeGiving, beside_gap, other_side(0)),
        example=Example("? - 2/8 = 3/8", "5/8", "1/8"),
        attempt=on_missing_start(taken_away),
    ),
    _filled_in(
        id="Q03",
        name="adds to undo taking away",
        rule="The first number and what is left are added.",
        shows_when="the second number of a difference is missing",
        thinking=plain(RuleThought.UNDO_MINUS),
        ask=filled(CanBeTaken, wrote, beside_gap),
        example=Example("9 - ? = 3 1/2", "5 1/2", "12 1/2"),
        attempt=on_missing_change(added),
    ),
    _filled_in(
        id="Q07",
        name="writes the answer next to the equals sign",
        rule="The first side is worked and its result stands in the gap.",
        shows_when=_ON_TWO_SIDES,
        thinking=plain(RuleThought.ANSWER_COMES_NEXT),
        ask=filled(WhatEachSideMakes, other_side(0), other_side(1), wrote, beside_gap),
        source=_FALKNER,
        example=Example(*_SIDES, "12"),
        attempt=on_two_sides(worked_side),
    ),
    _filled_in(
        id="Q08",
        name="adds all the numbers",
        rule="Every number that is there is added.",
        shows_when=_ON_TWO_SIDES,
        thinking=plain(RuleThought.ADDS_THEM_UP),
        ask=filled(AreSidesEqual, wrote, beside_gap),
        source=_FALKNER,
        example=Example(*_SIDES, "17"),
        attempt=on_two_sides(all_added),
    ),
    _filled_in(
        id="Q09",
        name="copies a number",
        rule="The first number stands in the gap again.",
        shows_when=f"{_ON_TWO_SIDES}, and the second numbers of both differ",
        thinking=plain(RuleThought.SAME_NUMBER_AGAIN),
        ask=filled(WhatEachSideMakes, other_side(0), other_side(1), wrote, beside_gap),
        source=Source(
            "strategy table of an open paper in Cognitive Development 62 (2022), PMC8982999: a number of the "
            "problem is copied",
            provenance="read",
            note="table read; calls add-to-equal, add-all and carry",
        ),
        example=Example(*_SIDES, "8"),
        attempt=on_two_sides(first_copied),
    ),
)
