"""Subtracting, like denominators: wholes and pieces are worked apart and one side goes wrong."""

from onewhole.misconceptions.asks.amounts import (
    AboutHowBig,
    MoreOrLess,
    SignTells,
    WhichPartMissing,
    WholesToo,
)
from onewhole.misconceptions.asks.pieces import BottomTells, GotSmaller
from onewhole.misconceptions.attempt import Attempt, Outcome, finished, written, wrongly
from onewhole.misconceptions.bend import BentTry
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.parts import (
    added_bottoms,
    asked,
    bottom,
    large,
    small,
    twice_bottom,
    typed_first,
    typed_second,
    units_there,
    wholes,
    wrote,
)
from onewhole.misconceptions.holes.thoughts import put_together_or_changed
from onewhole.misconceptions.pair import Pair, like_parts, unlike_parts
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source, coded
from onewhole.misconceptions.thoughts.pieces import BottomsLookLike, WholesComeDown, WholesForgotten
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.apart import (
    adds_instead,
    apart,
    first_only,
    left_out,
    less,
    smaller_from_larger,
    together,
)
from onewhole.misconceptions.wrong_steps.bent import Bent, When, bent, on_like_parts, on_parts
from onewhole.misconceptions.wrong_steps.cutting import bottoms_added, cut_anew, tops_apart
from onewhole.misconceptions.wrong_steps.regrouping import Act, nothing
from onewhole.misconceptions.wrong_steps.when import always, counts, pieces_differ, wholes_are_taken
from onewhole.misconceptions.wrong_steps.writing import as_it_comes
from onewhole.number.impossible import Impossible
from onewhole.number.quantity import whole
from onewhole.statements.expression import minus
from onewhole.statements.statement import Statement
from onewhole.working.line import Line
from onewhole.working.pair_state import PairState
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.wholes_first import WHOLES_FIRST

_EXAMPLE = "5 4/6 - 2 1/6", "3 3/6"


def _bent(when: When, unit_by_unit: Act, regroup: Act = nothing) -> BentTry:
    return on_like_parts(_strategy(unit_by_unit, regroup), when, taken=True)


def _strategy(unit_by_unit: Act, regroup: Act) -> Bent:
    return bent(REGROUP_FIRST, {"regroup": regroup, "unit_by_unit": unit_by_unit})


def _first_has_more_wholes(state: PairState) -> bool:
    c = counts(state)
    return c.w1 > c.w2


def _second_has_pieces(state: PairState) -> bool:
    return counts(state).n2 >= 1


def wholes_only(statement: Statement) -> Attempt | None:
    """Take the wholes and leave the fractions out, also where their denominators differ."""
    pair = unlike_parts(statement, taken=True)
    if pair is None:
        return _like_wholes_only(statement)
    if pair.first.only(1).value == pair.second.only(1).value:
        return None
    return _wholes_only(pair)


def _like_wholes_only(statement: Statement) -> Attempt | None:
    found = like_parts(statement, taken=True)
    if found is None or not pieces_differ(found[1]):
        return None
    pair, state = found
    return finished(pair.asked, as_it_comes(apart(less, left_out)(state)))


def _wholes_only(pair: Pair) -> Attempt:
    first, second = pair.first.only(0), pair.second.only(0)
    written(pair.first.ladder, (pair.first.amounts[0] - pair.second.amounts[0], 0))
    left = whole(pair.first.amounts[0] - pair.second.amounts[0])
    state = wrongly(PairState(pair.first, pair.second, pair.taken), minus(first, second))
    return finished(pair.asked, wrongly(state.now(result=left), left))


def denominators_gone(statement: Statement) -> Attempt | None:
    """Take the denominators from one another too: nothing over 0, or the fraction bar is dropped."""
    found = like_parts(statement, taken=True)
    if found is None:
        return None
    pair, state = found
    c = counts(state)
    written(state.first.ladder, (c.w1 - c.w2, 0))
    wholes, top = c.w1 - c.w2, abs(c.n1 - c.n2)
    if not top:
        left = whole(wholes)
        return finished(pair.asked, wrongly(state.now(result=left), left))
    bare: tuple[Outcome, ...] = tuple(
        number for number in (whole(wholes or top),) if number.value != state.first.value - state.second.value
    )
    return Attempt((Line(pair.asked),), Impossible(wholes or None, top), bare)


PARTS_APART = (
    Pattern(
        id="A12",
        name="wholes only",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.NUMERATOR,
        rule="The wholes are taken and the fractions are left out.",
        shows_when="the fractions differ (n1 <> n2), also with unlike denominators",
        thinking=plain(RuleThought.SUBTRACTED_WHOLES),
        ask=filled(WhichPartMissing, asked),
        source=Source(
            "Siegler et al. (2010), IES practice guide NCEE 2010-4039, recommendation 3 (misconceptions)",
            "rec. 3",
            note="the guide's own instance is 5 3/5 - 2 1/7 = 3",
        ),
        example=Example("5 3/6 - 2 1/6", "3 2/6", "3"),
        beside=WHOLES_FIRST.key,
        attempt=wholes_only,
    ),
    Pattern(
        id="A13",
        name="fractions only",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.WHOLES,
        rule="The smaller numerator is taken from the larger; the wholes are left out.",
        shows_when="there are more wholes in the first number (w1 > w2)",
        thinking=filled(WholesForgotten, large),
        ask=filled(AboutHowBig, asked, wrote),
        source=COMMON,
        example=Example(*_EXAMPLE, "3/6"),
        attempt=_bent(_first_has_more_wholes, apart(left_out, smaller_from_larger)),
    ),
    Pattern(
        id="A14",
        name="keeps the first number's wholes",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.WHOLES,
        rule="The second number's wholes are not taken; the smaller numerator is taken from the larger.",
        shows_when="there are wholes in the second number (w2 >= 1)",
        thinking=filled(WholesComeDown, wholes),
        ask=filled(WholesToo, typed_first, typed_second, large),
        source=COMMON,
        example=Example(*_EXAMPLE, "5 3/6"),
        attempt=_bent(wholes_are_taken, apart(first_only, smaller_from_larger)),
    ),
    Pattern(
        id="A15",
        name="adds the wholes, subtracts the fractions",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.OPERATION,
        rule="w1 + w2 wholes, and the smaller numerator is taken from the larger.",
        shows_when="there are wholes in the second number (w2 >= 1)",
        thinking=plain(RuleThought.SIGN_CHANGED),
        ask=filled(SignTells, asked, units_there),
        source=COMMON,
        example=Example(*_EXAMPLE, "7 3/6"),
        attempt=_bent(wholes_are_taken, apart(together, smaller_from_larger)),
    ),
    Pattern(
        id="A16",
        name="subtracts the wholes, adds the fractions",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.OPERATION,
        rule="w1 - w2 wholes, and the numerators are added.",
        shows_when="there are pieces in the second number (n2 >= 1)",
        thinking=put_together_or_changed,
        ask=filled(SignTells, asked, units_there),
        source=COMMON,
        example=Example("5 1/6 - 2 4/6", "2 3/6", "3 5/6"),
        attempt=_bent(_second_has_pieces, apart(less, together)),
    ),
    Pattern(
        id="A17",
        name="adds instead",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.OPERATION,
        rule="Wholes and numerators are both added; pieces of two sizes are cut to one size first.",
        shows_when="always, also with unlike denominators",
        thinking=plain(RuleThought.STILL_ADDING),
        ask=filled(MoreOrLess, asked, typed_first),
        source=Source("add-instead-of-subtract (VanLehn 1990)"),
        example=Example(*_EXAMPLE, "7 5/6"),
        attempt=on_parts(_strategy(apart(together, together), adds_instead), always, taken=True),
    ),
    Pattern(
        id="A18",
        name="takes the denominators from one another too",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.DENOMINATOR,
        rule="w1 - w2 wholes, the smaller numerator from the larger, and d - d = 0 as the denominator. Some "
        "children write /0, some leave the fraction bar out.",
        shows_when="always",
        thinking=plain(RuleThought.MINUS_EVERYWHERE),
        ask=filled(BottomTells, bottom),
        source=coded("Gutstein & Mack (1999), J. Mathematical Behavior", "453-454"),
        example=Example(*_EXAMPLE, "3 3/0"),
        beside=REGROUP_FIRST.key,
        attempt=denominators_gone,
    ),
    Pattern(
        id="A19",
        name="adds the denominators",
        topic=Topic.SUBTRACT_LIKE,
        family=Family.DENOMINATOR,
        rule="w1 - w2 wholes, the smaller numerator from the larger, over 2d.",
        shows_when="the fractions differ (n1 <> n2)",
        thinking=filled(BottomsLookLike, bottom, twice_bottom),
        ask=filled(GotSmaller, small, added_bottoms),
        source=coded(
            "Cramer, Post & delMas (2002), JRME: subtracts numerators and adds denominators (11/12 - 4/6 = "
            "7/18)",
            "134-137",
        ),
        example=Example(*_EXAMPLE, "3 3/12"),
        attempt=_bent(pieces_differ, cut_anew(tops_apart, bottoms_added)),
    ),
)
