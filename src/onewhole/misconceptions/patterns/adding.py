"""Adding, like denominators."""

from onewhole.misconceptions.asks.amounts import MoreOrLess, SignTells, WhichPartMissing
from onewhole.misconceptions.asks.opening import HowManyMake, OneBesideOne
from onewhole.misconceptions.asks.pieces import (
    CouldMakeOne,
    GotSmaller,
    PushedTogether,
    SideBySide,
    StillLoose,
    WhereIsTheWhole,
)
from onewhole.misconceptions.bend import BentTry
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.parts import (
    added_bottoms,
    asked,
    bottom,
    have,
    large,
    pieces,
    small,
    twice_bottom,
    typed_first,
    typed_second,
    units_there,
    written_pieces,
    wrote,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import CLASS_PAGE, COMMON, WRONG_OPERATION, Source, coded
from onewhole.misconceptions.thoughts.pieces import (
    CarriesTen,
    EnoughForOne,
    ThatIsTheAnswer,
    TopStaysBottomsAdd,
    WholeLeftOut,
)
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.apart import apart, left_out, smaller_from_larger, together
from onewhole.misconceptions.wrong_steps.bent import When, bent, on_like_parts
from onewhole.misconceptions.wrong_steps.cutting import (
    bottom_kept,
    bottoms_added,
    bottoms_multiplied,
    cut_anew,
    top_kept,
    tops_added,
    tops_multiplied,
    wholes_into_numerator,
)
from onewhole.misconceptions.wrong_steps.regrouping import Act
from onewhole.misconceptions.wrong_steps.when import always, counts, pieces_fill_a_whole, wholes_in_the_first
from onewhole.misconceptions.wrong_steps.writing import (
    as_it_comes,
    carries,
    drops_the_new_whole,
    keeps_the_pieces,
    whole_of_ten,
)
from onewhole.working.pair_state import PairState
from onewhole.working.strategies.units_apart import UNITS_APART

_FULL = "2 4/5 + 1 3/5", "4 2/5"
_PLAIN = "3/5 + 1/5", "4/5"


def _bent(when: When, **steps: Act) -> BentTry:
    return on_like_parts(bent(UNITS_APART, steps), when, taken=False)


def _unit_fractions(state: PairState) -> bool:
    c = counts(state)
    return c.n1 == c.n2 == 1


def _ten_pieces(state: PairState) -> bool:
    c = counts(state)
    return c.n1 + c.n2 >= 10


def _any_pieces(state: PairState) -> bool:
    c = counts(state)
    return c.n1 + c.n2 > 0


def _second_has_pieces(state: PairState) -> bool:
    return counts(state).n2 > 0


ADDING = (
    Pattern(
        id="P01",
        name="adds across",
        topic=Topic.ADD_LIKE,
        family=Family.DENOMINATOR,
        rule="The numerators are added and the denominators are added; wholes are added too.",
        shows_when="always",
        thinking=plain(RuleThought.PLUS_EVERYWHERE),
        ask=filled(GotSmaller, small, added_bottoms),
        source=coded("Kuechemann (1981), Educational Studies in Mathematics", "312"),
        example=Example("3/8 + 2/8", "5/8", "5/16"),
        attempt=_bent(always, unit_by_unit=cut_anew(tops_added, bottoms_added)),
    ),
    Pattern(
        id="P02",
        name="keeps the numerator, adds the denominators",
        topic=Topic.ADD_LIKE,
        family=Family.DENOMINATOR,
        rule="Of two unit fractions the numerator 1 is kept and the denominators are added.",
        shows_when="both numerators are 1",
        thinking=filled(TopStaysBottomsAdd, have, bottom, twice_bottom),
        ask=filled(SideBySide, small),
        source=coded("Olive & Steffe (2002), J. Mathematical Behavior", "420"),
        example=Example("1/7 + 1/7", "2/7", "1/14"),
        attempt=_bent(_unit_fractions, unit_by_unit=cut_anew(top_kept, bottoms_added)),
    ),
    Pattern(
        id="P03",
        name="makes a whole and loses it",
        topic=Topic.ADD_LIKE,
        family=Family.REGROUPING,
        rule="d pieces are taken out as a whole, and the whole is not added to the others.",
        shows_when="the pieces fill a whole (n1 + n2 >= d)",
        thinking=filled(WholeLeftOut, small, bottom, pieces, large),
        ask=filled(WhereIsTheWhole, large, small, pieces, wrote),
        source=Source("same rule as a carry that is not recorded"),
        example=Example(*_FULL, "3 2/5"),
        attempt=_bent(pieces_fill_a_whole, usual_form=carries(drops_the_new_whole)),
    ),
    Pattern(
        id="P04",
        name="adds the new whole and keeps its pieces",
        topic=Topic.ADD_LIKE,
        family=Family.REGROUPING,
        rule="One whole is added for the full pieces, and all n1 + n2 pieces are still written.",
        shows_when="the pieces fill a whole (n1 + n2 >= d)",
        thinking=filled(EnoughForOne, small, pieces, large),
        ask=filled(StillLoose, large, small, pieces),
        source=COMMON,
        example=Example(*_FULL, "4 7/5"),
        attempt=_bent(pieces_fill_a_whole, usual_form=carries(keeps_the_pieces)),
    ),
    Pattern(
        id="P05",
        name="makes a whole of ten pieces",
        topic=Topic.ADD_LIKE,
        family=Family.REGROUPING,
        rule="Ten pieces are put together into a whole, whatever the denominator.",
        shows_when="there are ten pieces or more, and they are not tenths (n1 + n2 >= 10, d <> 10)",
        thinking=filled(CarriesTen, small, pieces),
        ask=filled(HowManyMake, large, small),
        source=COMMON,
        example=Example("5 7/8 + 2 6/8", "8 5/8", "8 3/8"),
        attempt=_bent(_ten_pieces, usual_form=carries(whole_of_ten)),
    ),
    Pattern(
        id="P06",
        name="multiplies the numerators",
        topic=Topic.ADD_LIKE,
        family=Family.OPERATION,
        rule="n1 x n2 over d: the denominator is kept as in adding, the numerators are multiplied.",
        shows_when="always",
        thinking=plain(RuleThought.RULES_MIXED),
        ask=filled(PushedTogether, typed_first, typed_second, units_there),
        source=Source(WRONG_OPERATION),
        example=Example(*_PLAIN, "3/5"),
        attempt=_bent(always, unit_by_unit=cut_anew(tops_multiplied, bottom_kept)),
    ),
    Pattern(
        id="P07",
        name="multiplies across",
        topic=Topic.ADD_LIKE,
        family=Family.OPERATION,
        rule="n1 x n2 over d x d.",
        shows_when="always",
        thinking=plain(RuleThought.RULE_FOR_TIMES),
        ask=filled(MoreOrLess, asked, typed_first),
        source=Source(WRONG_OPERATION),
        example=Example(*_PLAIN, "3/25"),
        attempt=_bent(always, unit_by_unit=cut_anew(tops_multiplied, bottoms_multiplied)),
    ),
    Pattern(
        id="P08",
        name="wholes only",
        topic=Topic.ADD_LIKE,
        family=Family.NUMERATOR,
        rule="The wholes are added and the fractions are left out.",
        shows_when="there are pieces (n1 + n2 > 0)",
        thinking=plain(RuleThought.ADDED_WHOLES),
        ask=filled(WhichPartMissing, asked),
        source=COMMON,
        example=Example(*_FULL, "3"),
        attempt=_bent(_any_pieces, unit_by_unit=apart(together, left_out)),
    ),
    Pattern(
        id="P09",
        name="adds the wholes, subtracts the fractions",
        topic=Topic.ADD_LIKE,
        family=Family.OPERATION,
        rule="w1 + w2 wholes, and the smaller numerator is taken from the larger.",
        shows_when="there are pieces in the second number (n2 > 0)",
        thinking=plain(RuleThought.SIGN_CHANGED),
        ask=filled(SignTells, asked, units_there),
        source=COMMON,
        example=Example(*_FULL, "3 1/5"),
        attempt=_bent(_second_has_pieces, unit_by_unit=apart(together, smaller_from_larger)),
    ),
    Pattern(
        id="P10",
        name="a fraction of one or more is left beside the wholes",
        topic=Topic.ADD_LIKE,
        family=Family.FORM,
        rule="The amount is right; n1 + n2 >= d pieces are left as they are.",
        shows_when="the pieces fill a whole (n1 + n2 >= d)",
        thinking=filled(ThatIsTheAnswer, wrote),
        ask=filled(CouldMakeOne, large, small, written_pieces),
        source=Source(
            CLASS_PAGE.text,
            provenance="read",
            note="mark as right, with a remark or by the class rule; one state's grade 4 test asks for no "
            "fraction greater than one in the final answer",
        ),
        example=Example(*_FULL, "3 7/5"),
        attempt=_bent(pieces_fill_a_whole, usual_form=as_it_comes),
        of_form=True,
    ),
    Pattern(
        id="P11",
        name="pours the wholes into the numerator",
        topic=Topic.ADD_LIKE,
        family=Family.WHOLES,
        rule="Wholes and numerators are all added and written over d.",
        shows_when="there are wholes in the first number (w1 >= 1)",
        thinking=plain(RuleThought.ALL_BUT_THE_BOTTOM),
        ask=filled(OneBesideOne, large, small),
        source=COMMON,
        example=Example(*_FULL, "10/5"),
        attempt=_bent(wholes_in_the_first, unit_by_unit=wholes_into_numerator),
    ),
)
