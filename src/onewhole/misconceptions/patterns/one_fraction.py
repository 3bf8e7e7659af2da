"""Subtracting, like denominators: by way of one fraction, at the start or at the end."""

from onewhole.misconceptions.asks.pieces import HowManyWholes, PiecesIn, WhichCountsWholes
from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.bend import BentTry
from onewhole.misconceptions.filling import filled
from onewhole.misconceptions.holes.parts import (
    its_digits,
    its_sum,
    its_top,
    its_wholes,
    large,
    number_with_wholes,
    result_in_pieces,
    result_over,
    result_wholes,
    small,
    written_pieces,
    wrote,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.pieces import (
    AddedToOne,
    MultipliedTwo,
    SideBySideDigits,
    ThatIsTheAnswer,
    TurnedAndDone,
    WhichGoesWhere,
)
from onewhole.misconceptions.wrong_steps.another_way import (
    added_together,
    as_one_fraction,
    digits_together,
    multiplied_together,
    swapped_about,
    wholes_alone,
)
from onewhole.misconceptions.wrong_steps.bent import Also, When, bent, no_other, on_like_parts
from onewhole.misconceptions.wrong_steps.converting import (
    Convert,
    converts,
    fractions_as_they_are,
    side_by_side,
    top_forgotten,
    whole_and_top_added,
    whole_times_top,
)
from onewhole.misconceptions.wrong_steps.regrouping import Act
from onewhole.misconceptions.wrong_steps.when import always, counts, pieces_differ, wholes_in_the_first
from onewhole.misconceptions.wrong_steps.writing import as_it_comes, swapped
from onewhole.number.quantity import Quantity, trimmed, usual
from onewhole.working.pair_state import PairState
from onewhole.working.strategies.moves import usual_form
from onewhole.working.strategies.to_fractions import TO_FRACTIONS

_ONE = "or one mixed number is turned into a fraction (w n/d = ?/d)"
_EXAMPLE = "9 5/8 - 4 6/8", "4 7/8"


def _bent(when: When, also: Also = no_other, **steps: Act) -> BentTry:
    return on_like_parts(bent(TO_FRACTIONS, steps), when, taken=True, also=also)


def _second_left_as_it_is(convert: Convert, *, mixed_number: bool) -> Also:
    """Return the other answer of a wrong rule: a second number without wholes is a fraction already."""

    def also(state: PairState) -> tuple[Outcome, ...]:
        c, ladder = counts(state), state.first.ladder
        if c.w2 or not c.n2:
            return ()
        plain = converts(convert)(state), converts(fractions_as_they_are(convert))(state)
        usually, left = (done.first.parts - done.second.parts for done in plain)
        right = state.first.parts - state.second.parts
        if left in {usually, right}:
            return ()
        amount = left * ladder.finest
        fraction = trimmed(Quantity(ladder, (0, left)))
        return (usual(ladder, amount) if mixed_number else fraction,)

    return also


def _can_stand_side_by_side(state: PairState) -> bool:
    """A whole number has no numerator to write beside it, and tenths below a whole come out right."""
    c = counts(state)
    return c.n1 > 0 and c.n2 > 0 and (c.d != 10 or max(c.n1, c.n2) < 10)


def _answer_above_one(state: PairState) -> bool:
    return state.first.value - state.second.value > 1


ONE_FRACTION = (
    Pattern(
        id="A24",
        name="adds wholes and numerator to make one fraction",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.CONVERSION,
        rule="w n/d is turned into (w + n)/d; in a difference the smaller numerator is "
        "taken from the larger.",
        shows_when=f"there are wholes in the first number (w1 >= 1), {_ONE}",
        thinking=filled(AddedToOne, its_wholes, its_top, its_sum, small),
        ask=filled(PiecesIn, number_with_wholes, large, small),
        source=COMMON,
        example=Example(*_EXAMPLE, "4/8"),
        attempt=_bent(wholes_in_the_first, change=converts(whole_and_top_added)).also(
            as_one_fraction(added_together)
        ),
    ),
    Pattern(
        id="A25",
        name="multiplies wholes and numerator to make one fraction",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.CONVERSION,
        rule="w n/d is turned into (w x n)/d; in a difference the smaller numerator is "
        "taken from the larger.",
        shows_when=f"there are wholes in the first number (w1 >= 1), {_ONE}",
        thinking=filled(MultipliedTwo, its_wholes, its_top),
        ask=filled(PiecesIn, number_with_wholes, large, small),
        source=Source(COMMON.text, note="the difference is the same if d is added in the place of n"),
        example=Example(*_EXAMPLE, "21/8"),
        attempt=_bent(
            wholes_in_the_first,
            _second_left_as_it_is(whole_times_top, mixed_number=False),
            change=converts(whole_times_top),
        ).also(as_one_fraction(multiplied_together)),
    ),
    Pattern(
        id="A26",
        name="makes one fraction and forgets the numerator",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.CONVERSION,
        rule="w n/d is turned into (w x d)/d; the n pieces are not added.",
        shows_when=f"the fractions differ (n1 <> n2), {_ONE}",
        thinking=filled(TurnedAndDone, large, small),
        ask=filled(PiecesIn, number_with_wholes, large, small),
        source=COMMON,
        example=Example(*_EXAMPLE, "5"),
        attempt=_bent(
            pieces_differ,
            _second_left_as_it_is(top_forgotten, mixed_number=True),
            change=converts(top_forgotten),
            usual_form=usual_form,
        ).also(as_one_fraction(wholes_alone)),
    ),
    Pattern(
        id="A27",
        name="writes wholes and numerator side by side",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.CONVERSION,
        rule="w n/d is turned into the digits wn over d.",
        shows_when=f"both numbers have pieces, {_ONE}, and the pieces are not tenths (d <> 10)",
        thinking=filled(SideBySideDigits, its_wholes, its_top, its_digits),
        ask=filled(PiecesIn, number_with_wholes, large, small),
        source=COMMON,
        example=Example(*_EXAMPLE, "6 1/8"),
        attempt=_bent(_can_stand_side_by_side, change=converts(side_by_side), usual_form=usual_form).also(
            as_one_fraction(digits_together)
        ),
    ),
    Pattern(
        id="A28",
        name="swaps wholes and pieces at the end",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.FORM,
        rule="The difference N/d is right, or N/d is given. N is q groups of d and r more, and it "
        "is written r q/d.",
        shows_when="q and r differ, also where one fraction is turned into a mixed number (11/4 = ?)",
        thinking=filled(WhichGoesWhere, large, small, result_wholes, result_over),
        ask=filled(WhichCountsWholes, large, small, result_in_pieces),
        source=COMMON,
        example=Example(*_EXAMPLE, "7 4/8"),
        attempt=_bent(always, usual_form=swapped).also(swapped_about),
    ),
    Pattern(
        id="A35",
        name="left as one fraction",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.FORM,
        rule="The amount is right and stays one fraction N/d with N >= d.",
        shows_when="the answer is more than 1",
        thinking=filled(ThatIsTheAnswer, wrote),
        ask=filled(HowManyWholes, large, small, written_pieces),
        source=Source("4.NF.B.3.c asks for no particular form", provenance="read", note="mark as right"),
        example=Example(*_EXAMPLE, "39/8"),
        attempt=_bent(_answer_above_one, usual_form=as_it_comes),
        of_form=True,
    ),
)
