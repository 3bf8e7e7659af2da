"""Three numbers and more are added or taken away. No source was found: common practice."""

from functools import partial

from onewhole.misconceptions.asks.gaps import ComesTo, SaysToDo, UsedWhere
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.gaps import other_side
from onewhole.misconceptions.holes.parts import wrote
from onewhole.misconceptions.holes.several import last_number
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.gaps import first_taken_only, on_one_of_several_addends
from onewhole.misconceptions.wrong_steps.several import last_added, last_left_out, on_several

_worked = partial(Pattern, topic=Topic.SEVERAL, family=Family.OPERATION, source=COMMON)

SEVERAL_NUMBERS = (
    _worked(
        id="U01",
        name="leaves the last number out",
        rule="The numbers before the last one are worked, and the last one is left out.",
        shows_when="there are three numbers or more",
        thinking=plain(RuleThought.TWO_AND_DONE),
        ask=filled(UsedWhere, last_number),
        example=Example("2 1/4 + 1 3/4 + 3/4", "4 3/4", "4"),
        attempt=on_several(last_left_out),
    ),
    _worked(
        id="U02",
        name="adds the last number too",
        rule="The last number is added, though it is to be taken away.",
        shows_when="numbers are added and then one is taken away",
        thinking=plain(RuleThought.ADDS_THEM_UP),
        ask=filled(SaysToDo, last_number),
        example=Example("5 1/6 + 2 3/6 - 1 5/6", "5 5/6", "9 3/6"),
        attempt=on_several(last_added),
    ),
    _worked(
        id="U03",
        name="takes only one of the known numbers away",
        rule="Only the first of the numbers beside the gap is taken from the sum.",
        shows_when="one of three addends or more is missing",
        thinking=plain(RuleThought.ONE_TAKEN_OFF),
        ask=filled(ComesTo, wrote, other_side(0)),
        example=Example("2 + ? + 3 = 9", "4", "7"),
        attempt=on_one_of_several_addends(first_taken_only),
    ),
)
