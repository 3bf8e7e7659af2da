"""What a remainder means: another number is given than the one that is asked of a division in groups.

T06 and T07 are rules of a second collection of error patterns, family T, which tells them in stories. What is
asked stands in the problem itself, so they show on numbers alone too. The three others are ours.
"""

from functools import partial

from onewhole.misconceptions.asks.stories import (
    AllGroupsFull,
    CanBeOrdered,
    EveryoneIn,
    GroupsOrThings,
)
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.whole_groups import group_size, number_given, written_as_it_is
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.telling import PLAIN_STORY
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.whole_groups import (
    full_groups,
    gives,
    one_more_group,
    remainder_cut,
    remainder_written,
)
from onewhole.statements.whole_groups import GroupsAsk

_SCHOENFELD = Source(
    "Schoenfeld (1988), p. 85, as cited on a public slide: almost a third of 8th graders wrote "
    "31 remainder 12 for the number of buses",
    provenance="read",
    note="second-hand",
)
_meant = partial(Pattern, topic=Topic.REMAINDERS, family=Family.FORM, source=COMMON)

WHOLE_GROUPS = (
    _meant(
        id="T06",
        name="leaves the last ones behind",
        rule="The quotient alone.",
        shows_when="what is left over needs a place",
        thinking=plain(RuleThought.THAT_IS_HOW_OFTEN),
        ask=filled(EveryoneIn, number_given, group_size),
        source=_SCHOENFELD,
        example=Example(
            "50 / 8, groups needed",
            "7",
            "6",
            "50 children ride in vans. A van holds 8 children. How many vans do they need?",
            PLAIN_STORY,
        ),
        attempt=gives(GroupsAsk.NEEDED, full_groups),
    ),
    _meant(
        id="T07",
        name="writes the remainder into the answer",
        rule="Quotient and remainder as the answer.",
        shows_when="something is left over, and the story wants a whole number",
        thinking=plain(RuleThought.DIVISION_GIVES_IT),
        ask=filled(CanBeOrdered, written_as_it_is),
        source=_SCHOENFELD,
        example=Example(
            "50 / 8, groups needed",
            "7",
            "6 r 2",
            "50 children ride in vans. A van holds 8 children. How many vans do they need?",
            PLAIN_STORY,
        ),
        attempt=remainder_written,
    ),
    _meant(
        id="V13",
        name="counts a group that is not full",
        rule="One more than the quotient.",
        shows_when="only full groups are asked for, and something is left over",
        thinking=plain(RuleThought.NOTHING_STAYS_BEHIND),
        ask=filled(AllGroupsFull, number_given, group_size),
        example=Example("50 / 8, full groups", "6", "7"),
        attempt=gives(GroupsAsk.FULL, one_more_group),
    ),
    _meant(
        id="V14",
        name="gives the groups for what is left over",
        rule="The quotient in place of the remainder.",
        shows_when="what is left over is asked for, and it differs from the quotient",
        thinking=plain(RuleThought.THAT_IS_HOW_OFTEN),
        ask=filled(GroupsOrThings, number_given),
        example=Example("50 / 8, left over", "2", "6"),
        attempt=gives(GroupsAsk.LEFT, full_groups),
    ),
    _meant(
        id="V15",
        name="cuts up what is left over",
        rule="Quotient, and remainder over divisor; or the decimal.",
        shows_when="something is left over that is not cut",
        thinking=plain(RuleThought.LEFT_IS_CUT),
        ask=filled(CanBeOrdered, number_given),
        example=Example("50 / 8, groups needed", "7", "6 2/8"),
        attempt=remainder_cut,
    ),
)
