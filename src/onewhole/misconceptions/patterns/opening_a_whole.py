"""Subtracting, like denominators: what goes wrong where one whole is regrouped."""

from onewhole.misconceptions.asks.amounts import HowMuchTaken
from onewhole.misconceptions.asks.opening import (
    CrossedOff,
    EnoughAlready,
    EnoughToTake,
    HadBefore,
    HowManyMake,
    HowManyMore,
    HowManyOpened,
    NotOpened,
    OneBesideOne,
    WhichIsShown,
)
from onewhole.misconceptions.asks.pieces import GotSmaller
from onewhole.misconceptions.bend import BentTry
from onewhole.misconceptions.filling import filled
from onewhole.misconceptions.holes.parts import (
    bottom,
    first,
    have,
    large,
    need,
    small,
    total_in_first,
    total_unit,
    typed_first,
    typed_second,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import CLASS_PAGE, COMMON, Source, coded
from onewhole.misconceptions.thoughts.opening import (
    AllGone,
    AlwaysCrosses,
    AlwaysTenMore,
    CrossedThenTurned,
    CrossedTwice,
    InPlaceOf,
    LooksUnused,
    OneMovesOver,
    OneMustGo,
    PiecesDone,
    TurnedAround,
)
from onewhole.misconceptions.thoughts.pieces import NamedByCount
from onewhole.misconceptions.wrong_steps.apart import (
    apart,
    first_only,
    less,
    none_if_short,
    smaller_from_larger,
)
from onewhole.misconceptions.wrong_steps.bent import When, bent, on_parts
from onewhole.misconceptions.wrong_steps.cutting import total_as_denominator
from onewhole.misconceptions.wrong_steps.opened_names import opens_a_name
from onewhole.misconceptions.wrong_steps.regrouping import (
    Act,
    as_one_piece,
    as_ten,
    drops_what_was_there,
    keeps_the_unit,
    loses_the_pieces,
    nothing,
    regroups,
    regroups_if_that_helps,
    regroups_unsaid,
    takes_from_the_second,
    two_for_one,
)
from onewhole.misconceptions.wrong_steps.when import (
    counts,
    enough_pieces,
    too_few_pieces,
    wholes_are_taken,
)
from onewhole.working.pair_state import PairState
from onewhole.working.strategies.regroup_first import REGROUP_FIRST

#: What a pattern of this group does with unlike denominators is ours: the renaming is done rightly.
_RENAMED = "where the denominators differ after renaming"
_SHORT = f"there are too few pieces to take from (n1 < n2), {_RENAMED}"
_NAMED = "or a number is written with one whole opened, such as 7 2/6 = 6 ?/6"
_EXAMPLE = "9 5/8 - 4 6/8", "4 7/8"


def _bent(when: When, **steps: Act) -> BentTry:
    return on_parts(bent(REGROUP_FIRST, steps), when, taken=True)


def _too_few(state: PairState) -> bool:
    """n1 < n2, however many are missing."""
    c = counts(state)
    return c.n1 < c.n2


def _pays_from_the_second(state: PairState) -> bool:
    return too_few_pieces(state) and wholes_are_taken(state)


def _wholes_taken_at_most_one_opened(state: PairState) -> bool:
    return wholes_are_taken(state) and (enough_pieces(state) or too_few_pieces(state))


OPENING_A_WHOLE = (
    Pattern(
        id="A01",
        name="takes the smaller number of pieces from the larger",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.NUMERATOR,
        rule="The wholes are taken rightly. In the fractions the smaller numerator is taken from the larger, "
        "whichever of the two numbers it stands in.",
        shows_when=_SHORT,
        thinking=filled(TurnedAround, have, need),
        ask=filled(EnoughToTake, first, small, need),
        source=Source(
            "same rule as smaller-from-larger of Brown & Burton (1978), carried to the fraction; fraction "
            "error studies of Tatsuoka (1984)"
        ),
        example=Example(*_EXAMPLE, "5 1/8"),
        attempt=_bent(_too_few, regroup=nothing, unit_by_unit=apart(less, smaller_from_larger)),
    ),
    Pattern(
        id="A02",
        name="opens a whole and still counts it",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="One whole is cut into d pieces and joined to the pieces, and the wholes are not made one less.",
        shows_when=_SHORT,
        thinking=filled(LooksUnused, large, small),
        ask=filled(NotOpened, first, large, small),
        source=Source("same rule as borrow-no-decrement of Brown & Burton (1978)"),
        example=Example(*_EXAMPLE, "5 7/8"),
        attempt=_bent(too_few_pieces, regroup=regroups(keeps_the_unit)),
    ),
    Pattern(
        id="A03",
        name="takes a whole away and makes no pieces of it",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="One whole is crossed off, its d pieces are joined to nothing, and the smaller numerator is "
        "taken from the larger.",
        shows_when=_SHORT,
        thinking=filled(CrossedThenTurned, large, have, need),
        ask=filled(CrossedOff, large, small),
        source=Source("same rule as smaller-from-larger-with-borrow (VanLehn 1990)"),
        example=Example(*_EXAMPLE, "4 1/8"),
        attempt=_bent(
            _too_few,
            regroup=regroups_unsaid(loses_the_pieces),
            unit_by_unit=apart(less, smaller_from_larger),
        ),
    ),
    Pattern(
        id="A04",
        name="a whole always gives ten pieces",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="One whole is regrouped as ten pieces, whatever the denominator. For a numerator of one digit "
        "this is also what comes of writing a 1 in front of it.",
        shows_when=f"{_SHORT}, and the pieces are not tenths (d <> 10); {_NAMED}",
        thinking=filled(AlwaysTenMore, large),
        ask=filled(HowManyMake, large, small),
        source=Source(
            CLASS_PAGE.text,
            provenance="read",
            note="also named in handbooks of computation error patterns (memory)",
        ),
        example=Example(*_EXAMPLE, "4 9/8"),
        attempt=_bent(_too_few, regroup=regroups(as_ten)).also(opens_a_name(as_ten)),
    ),
    Pattern(
        id="A05",
        name="a whole gives one piece",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="The wholes are made one less and the numerator one more. If that is still too small, the "
        "smaller is taken from the larger.",
        shows_when=f"{_SHORT}; {_NAMED}",
        thinking=filled(OneMovesOver, large, small),
        ask=filled(OneBesideOne, large, small),
        source=coded(
            "Gutstein & Mack (1999), J. Mathematical Behavior (a child reads 1 as one fifth)",
            "445-446",
            "the mixed-number form is ours",
        ),
        example=Example(*_EXAMPLE, "4"),
        attempt=_bent(
            _too_few,
            regroup=regroups_if_that_helps(as_one_piece),
            unit_by_unit=apart(less, smaller_from_larger),
        ).also(opens_a_name(as_one_piece)),
    ),
    Pattern(
        id="A06",
        name="opens a whole and drops the pieces already there",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="The fraction becomes d/d; the n1 pieces that were there are not joined to it.",
        shows_when=f"{_SHORT}; {_NAMED}",
        thinking=filled(InPlaceOf, large, small, bottom, have),
        ask=filled(HadBefore, large, small, have),
        source=CLASS_PAGE,
        example=Example(*_EXAMPLE, "4 2/8"),
        attempt=_bent(_too_few, regroup=regroups(drops_what_was_there)).also(
            opens_a_name(drops_what_was_there)
        ),
    ),
    Pattern(
        id="A07",
        name="takes two wholes and opens one",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="The wholes are made two less, and d pieces are joined to n1.",
        shows_when=_SHORT,
        thinking=filled(CrossedTwice, large, small),
        ask=filled(HowManyOpened, first, large),
        source=COMMON,
        example=Example(*_EXAMPLE, "3 7/8"),
        attempt=_bent(too_few_pieces, regroup=regroups(two_for_one)),
    ),
    Pattern(
        id="A08",
        name="takes the whole from the second number",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="d pieces are joined to n1, and the whole for them is crossed off in the second number.",
        shows_when=f"{_SHORT}, and there are wholes in the second number (w2 >= 1)",
        thinking=filled(OneMustGo, large, typed_first, typed_second),
        ask=filled(WhichIsShown, typed_first, typed_second),
        source=Source("same idea as the borrow-from-the-bottom family (VanLehn 1990)"),
        example=Example(*_EXAMPLE, "6 7/8"),
        attempt=_bent(_pays_from_the_second, regroup=takes_from_the_second),
    ),
    Pattern(
        id="A09",
        name="regroups rightly and does not take the wholes",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.WHOLES,
        rule="The fraction part is right; the wholes of the second number are never taken.",
        shows_when="there are wholes in the second number (w2 >= 1)",
        thinking=filled(PiecesDone, small),
        ask=filled(HowMuchTaken, typed_second),
        source=COMMON,
        example=Example(*_EXAMPLE, "8 7/8"),
        attempt=_bent(_wholes_taken_at_most_one_opened, unit_by_unit=apart(first_only, less)),
    ),
    Pattern(
        id="A10",
        name="takes a whole when none is needed",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.REGROUPING,
        rule="The wholes are made one less although there are pieces enough, and nothing is joined to the "
        "pieces.",
        shows_when=f"there are pieces enough (n1 >= n2), {_RENAMED}",
        thinking=filled(AlwaysCrosses, large),
        ask=filled(EnoughAlready, small, have, need),
        source=Source("same idea as borrowing whether or not it is needed (Brown & Burton 1978)"),
        example=Example("5 4/6 - 2 1/6", "3 3/6", "2 3/6"),
        attempt=_bent(enough_pieces, regroup=regroups(loses_the_pieces, needed=False)),
    ),
    Pattern(
        id="A11",
        name="can't take it, so nothing is left",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.NUMERATOR,
        rule="The wholes are taken; where there are too few pieces the fraction part is written as nothing.",
        shows_when=_SHORT,
        thinking=filled(AllGone, have, need),
        ask=filled(HowManyMore, small, have),
        source=Source("same rule as zero-instead-of-borrow (VanLehn 1990)"),
        example=Example(*_EXAMPLE, "5"),
        attempt=_bent(_too_few, regroup=nothing, unit_by_unit=apart(less, none_if_short)),
    ),
    Pattern(
        id="A36",
        name="the regrouped total becomes the denominator",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.DENOMINATOR,
        rule="One whole is regrouped rightly; then the n1 + d pieces are written as the denominator too.",
        shows_when=_SHORT,
        thinking=filled(NamedByCount, total_in_first, total_unit),
        ask=filled(GotSmaller, small, total_unit),
        source=COMMON,
        example=Example(*_EXAMPLE, "4 7/13"),
        attempt=_bent(too_few_pieces, unit_by_unit=total_as_denominator),
    ),
)
