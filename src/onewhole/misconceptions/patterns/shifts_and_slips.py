"""Subtracting, like denominators: equal shift and adding back gone wrong, slips, and an unfinished form."""

from onewhole.misconceptions.asks.amounts import MoveBoth, TookTooMuch
from onewhole.misconceptions.asks.pieces import CouldMakeOne, CountAgain, SetAsideBefore
from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.bend import BentTry
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.parts import (
    have,
    large,
    next_whole,
    small,
    typed_first,
    typed_second,
    written_pieces,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.opening import AlwaysOpens
from onewhole.misconceptions.thoughts.pieces import EasierWhole, Miscounted, TakesTheseToo
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.bent import Also, When, bent, no_other, on_like_parts
from onewhole.misconceptions.wrong_steps.regrouping import Act
from onewhole.misconceptions.wrong_steps.shifting import (
    shifts_apart,
    shifts_only_the_second,
    takes,
    takes_again,
)
from onewhole.misconceptions.wrong_steps.when import always, counts, enough_pieces
from onewhole.misconceptions.wrong_steps.writing import off_by
from onewhole.number.quantity import usual
from onewhole.working.pair_state import PairState
from onewhole.working.strategies.equal_shift import EQUAL_SHIFT
from onewhole.working.strategies.from_whole import FROM_WHOLE
from onewhole.working.strategies.moves import opened
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategy import Strategy

_OPENED = "9 5/8 - 4 6/8", "4 7/8"
_PLAIN = "5 4/6 - 2 1/6", "3 3/6"
_SLIP = Source("a slip, as set apart from a bug by VanLehn (1982)")


def _bent(strategy: Strategy, when: When, also: Also = no_other, **steps: Act) -> BentTry:
    return on_like_parts(bent(strategy, steps), when, taken=True, also=also)


def _second_below_a_whole(state: PairState) -> bool:
    """The second number has pieces, and fewer than a whole of them, so that w2 + 1 is the next whole."""
    c = counts(state)
    return 0 < c.n2 < c.d


def _first_has_pieces(state: PairState) -> bool:
    return counts(state).n1 > 0


def _pieces_enough_and_a_whole_to_open(state: PairState) -> bool:
    c = counts(state)
    return enough_pieces(state) and c.w1 > c.w2


def _the_other_way(larger: int, smallest: int) -> Also:
    """Return the answer of the same slip in the other direction, where it is not below zero."""

    def also(state: PairState) -> tuple[Outcome, ...]:
        ladder = state.first.ladder
        parts = state.first.parts - state.second.parts + larger * ladder.worths[0] + smallest
        return (usual(ladder, parts * ladder.finest),) if parts >= 0 else ()

    return also


def _open_one(state: PairState) -> PairState:
    return opened(state, 0)


SHIFTS_AND_SLIPS = (
    Pattern(
        id="A29",
        name="equal shift on one number only",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="The second number is moved up to the next whole, w2 + 1; the first is left as it was.",
        shows_when="there are pieces in the second number (n2 > 0)",
        thinking=filled(EasierWhole, next_whole, typed_second),
        ask=filled(TookTooMuch, typed_second, next_whole),
        source=Source(COMMON.text, note="belongs to equal shift"),
        example=Example(*_OPENED, "4 5/8"),
        attempt=_bent(EQUAL_SHIFT, _second_below_a_whole, shift=shifts_only_the_second, take=takes),
    ),
    Pattern(
        id="A30",
        name="equal shift in opposite directions",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="The second number is moved up by the missing pieces and the first is moved down by as many.",
        shows_when="there are pieces in the second number (n2 > 0)",
        thinking=plain(RuleThought.GAVE_AND_TOOK),
        ask=filled(MoveBoth, typed_first, typed_second),
        source=Source(COMMON.text, note="belongs to equal shift; keeping the total works for a sum only"),
        example=Example(*_OPENED, "4 3/8"),
        attempt=_bent(EQUAL_SHIFT, _second_below_a_whole, shift=shifts_apart, take=takes),
    ),
    Pattern(
        id="A31",
        name="takes again what should be added back",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.OPERATION,
        rule="The second number is taken from the wholes rightly; then the n1 pieces are taken off, not put "
        "back.",
        shows_when="there are pieces in the first number (n1 > 0)",
        thinking=filled(TakesTheseToo, small, have),
        ask=filled(SetAsideBefore, small, have),
        source=Source(COMMON.text, note="belongs to taking it all from the whole, then adding back"),
        example=Example(*_OPENED, "3 5/8"),
        attempt=_bent(FROM_WHOLE, _first_has_pieces, take_from_whole=takes_again),
    ),
    Pattern(
        id="A32",
        name="off by one piece",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.FACT,
        rule="The right answer less 1/d, or 1/d more.",
        shows_when="always",
        thinking=filled(Miscounted, small),
        ask=filled(CountAgain, small),
        source=_SLIP,
        example=Example(*_PLAIN, "3 2/6"),
        attempt=_bent(REGROUP_FIRST, always, _the_other_way(0, 1), unit_by_unit=off_by(0, -1)),
    ),
    Pattern(
        id="A33",
        name="off by one whole",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.FACT,
        rule="The right answer and 1 more, or 1 less.",
        shows_when="always",
        thinking=filled(Miscounted, large),
        ask=filled(CountAgain, large),
        source=_SLIP,
        example=Example(*_PLAIN, "4 3/6"),
        attempt=_bent(REGROUP_FIRST, always, _the_other_way(-1, 0), unit_by_unit=off_by(1, 0)),
    ),
    Pattern(
        id="A34",
        name="a fraction of one or more is left beside the wholes",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.FORM,
        rule="The amount is right. A whole was opened without need and never put together again: "
        "(w1 - 1 - w2) (n1 + d - n2)/d.",
        shows_when="pieces enough, and more wholes in the first number (n1 >= n2, w1 > w2)",
        thinking=filled(AlwaysOpens, large),
        ask=filled(CouldMakeOne, large, small, written_pieces),
        source=Source(COMMON.text, note="mark as right, with a remark"),
        example=Example(*_PLAIN, "2 9/6"),
        attempt=_bent(REGROUP_FIRST, _pieces_enough_and_a_whole_to_open, regroup=_open_one),
        of_form=True,
    ),
)
