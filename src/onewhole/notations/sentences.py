"""Reasons and facts as short sentences that a nine-year-old follows, in the class's own words."""

from collections.abc import Callable, Mapping
from types import MappingProxyType

from onewhole.notations.reasons import comparing, jumping, pictures, regrouping, renaming, taking, unsuited
from onewhole.notations.reasons.told import Told
from onewhole.notations.text import text
from onewhole.notations.words import ClassWords
from onewhole.statements.statement import Comparison, Relation
from onewhole.working.fact import Fact, Way
from onewhole.working.reason import Reason

#: Every key of a reason and the function that says it.
SENTENCES: Mapping[str, Callable[[Told], str]] = MappingProxyType(
    {
        "open_one": regrouping.open_one,
        "open_to_match": regrouping.open_to_match,
        "one_is_worth": regrouping.one_is_worth,
        "are_worth": regrouping.are_worth,
        "put_together": regrouping.put_together,
        "full_groups": regrouping.full_groups,
        "make_one": regrouping.make_one,
        "write_together": regrouping.write_together,
        "unit_from_unit": taking.unit_from_unit,
        "unit_to_unit": taking.unit_to_unit,
        "pieces_from_pieces": taking.pieces_from_pieces,
        "pieces_to_pieces": taking.pieces_to_pieces,
        "larger_units_first": taking.larger_units_first,
        "units_taken": taking.units_taken,
        "left": taking.left,
        "in_all": taking.in_all,
        "set_aside": taking.set_aside,
        "open_to_take": taking.open_to_take,
        "taken_from_whole": taking.taken_from_whole,
        "jump_to_stops": jumping.jump_to_stops,
        "jump_lengths": jumping.jump_lengths,
        "jump_wholes": jumping.jump_wholes,
        "jump_to_whole": jumping.jump_to_whole,
        "jumped_to": jumping.jumped_to,
        "give_to_make_one": jumping.give_to_make_one,
        "whole_and_rest": jumping.whole_and_rest,
        "same_to_both": jumping.same_to_both,
        "easier_to_take": jumping.easier_to_take,
        "wholes_in_pieces": renaming.wholes_in_pieces,
        "all_in_pieces": renaming.all_in_pieces,
        "cut_each_again": renaming.cut_each_again,
        "same_size_pieces": renaming.same_size_pieces,
        "same_places": renaming.same_places,
        "same_amount_renamed": renaming.same_amount_renamed,
        "wholes_decide": comparing.wholes_decide,
        "same_size_pieces_to_compare": comparing.same_size_pieces_to_compare,
        "all_in_pieces_to_compare": comparing.all_in_pieces_to_compare,
        "count_the_pieces": comparing.count_the_pieces,
        "count_decides": comparing.count_decides,
        "undo_to_find": comparing.undo_to_find,
        "read_the_gap": comparing.read_the_gap,
        "other_operation": unsuited.other_operation,
        "all_ones_already": unsuited.all_ones_already,
        "no_wholes_to_take": unsuited.no_wholes_to_take,
        "nothing_to_set_aside": unsuited.nothing_to_set_aside,
        "whole_too_small": unsuited.whole_too_small,
        "no_shift_needed": unsuited.no_shift_needed,
        "nothing_lacking": unsuited.nothing_lacking,
        "too_little_to_give": unsuited.too_little_to_give,
        "too_many_parts": pictures.too_many_parts,
        "too_many_wholes": pictures.too_many_wholes,
        "not_hundredths": pictures.not_hundredths,
        "no_place_on_line": pictures.no_place_on_line,
        "too_many_jumps": pictures.too_many_jumps,
        "nothing_to_split": pictures.nothing_to_split,
        "no_tens_and_ones": pictures.no_tens_and_ones,
        "not_place_by_place": pictures.not_place_by_place,
        "too_much_for_blocks": pictures.too_much_for_blocks,
        "no_room": pictures.no_room,
    }
)

_WAYS = {Way.MAKE_TEN: "go by way of the ten", Way.THINK_ADDITION: "think of adding"}


def sentence(reason: Reason, words: ClassWords) -> str:
    """Say why a line follows, or why a strategy does not suit, with capital and full stop.

    Numbers stand in digits, as on the line. Raises KeyError for a reason that has no sentence.

    >>> from onewhole.number.ladder import mixed
    >>> from onewhole.working.reason import because
    >>> wholes, sixths = mixed(6).units
    >>> sentence(because("one_is_worth", unit=wholes, small=sixths, ratio=6), ClassWords("strip", "strips"))
    'One strip is 6 sixths.'
    """
    return SENTENCES[reason.key](Told(reason, words))


def fact_sentence(fact: Fact) -> str:
    """Say how a hard fact is found.

    >>> from onewhole.working.fact import hard_difference
    >>> fact_sentence(hard_difference(16, 9))
    'For 16 - 9, go by way of the ten: 16 - 6 = 10, then 10 - 3 = 7.'
    """
    steps = [text(Comparison(left, right, Relation.EQUAL)) for left, right in fact.steps]
    return f"For {text(fact.asked)}, {_WAYS[fact.way]}: {', then '.join(steps)}."
