"""Several steps: the usual order, brackets, and the last step.

That the plus or minus in front of a number is lost on children, so that 10 - 3 + 2 is worked as 10 less the
sum, is from memory of Linchevski & Herscovics (1996). That children of grade 4 and above work from left to
right whatever the signs say is common practice; no source was read.
"""

from functools import partial

from onewhole.misconceptions.asks.steps import WhatBracketsSay, WhatIsLeftToDo, WhichFirst
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.steps import asked, first_part
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.steps import (
    added_before_taken,
    first_step_only,
    from_left_to_right,
    in_order,
    times_before_divided,
    without_the_brackets,
)

_worked = partial(Pattern, topic=Topic.STEPS, family=Family.OPERATION, source=COMMON)

#: A term loses its minus sign.
DETACHED = Source("Linchevski & Herscovics (1996), Educational Studies in Mathematics 30, 39-65")

SEVERAL_STEPS = (
    _worked(
        id="W01",
        name="works from left to right whatever the signs say",
        rule="Every sign is worked in the order in which it stands.",
        shows_when="a sum or a difference stands before a product or a quotient",
        thinking=plain(RuleThought.READS_LEFT_TO_RIGHT),
        ask=filled(WhichFirst, asked),
        example=Example("4 + 3 x 7", "25", "49"),
        attempt=in_order(from_left_to_right),
    ),
    _worked(
        id="W02",
        name="does not heed the brackets",
        rule="The brackets are left out, and the rest is worked in the usual order.",
        shows_when="there are brackets that change the order",
        thinking=plain(RuleThought.BRACKETS_SAY_NOTHING),
        ask=filled(WhatBracketsSay, asked),
        example=Example("3 x (2 + 5)", "21", "11"),
        attempt=in_order(without_the_brackets),
    ),
    _worked(
        id="W03",
        name="stops after the first step",
        rule="The first step is worked, and what it comes to is written as the answer.",
        shows_when="there are several steps",
        thinking=plain(RuleThought.FOUND_A_NUMBER),
        ask=filled(WhatIsLeftToDo, first_part, asked),
        example=Example("20 - 3 x 4", "8", "12"),
        attempt=in_order(first_step_only),
    ),
    _worked(
        id="W04",
        name="multiplies before dividing",
        rule="A product is worked before the quotient that stands in front of it.",
        shows_when="a number is divided and then multiplied",
        thinking=plain(RuleThought.TIMES_COMES_FIRST),
        ask=filled(WhichFirst, asked),
        example=Example("18 / 9 x 2", "4", "1"),
        attempt=in_order(times_before_divided),
    ),
    _worked(
        id="W05",
        name="adds before taking away",
        rule="What is added after something is taken away is taken away with it.",
        shows_when="a number is taken away and then one is added",
        thinking=plain(RuleThought.PLUS_COMES_FIRST),
        ask=filled(WhichFirst, asked),
        source=DETACHED,
        example=Example("10 - 3 + 2", "9", "5"),
        attempt=in_order(added_before_taken),
    ),
)
