"""Numerators by themselves and denominators by themselves, with more than that done to them."""

from onewhole.misconceptions.attempt import Attempt, Outcome, finished
from onewhole.misconceptions.pair import Pair, pair_of
from onewhole.misconceptions.wrong_steps.cutting import (
    Make,
    Parts,
    bottoms_added,
    bottoms_apart,
    cut_anew,
    of_two,
    tops_added,
    tops_apart,
)
from onewhole.misconceptions.wrong_steps.writing import as_it_comes
from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity, whole
from onewhole.number.with_minus import WithMinus
from onewhole.statements.expression import value
from onewhole.statements.statement import Statement
from onewhole.working.pair_state import PairState


def plain_fractions(statement: Statement) -> Pair | None:
    """Return the pair of a sum or difference of two fractions, both without wholes.

    >>> from onewhole.statements.reading import read_statement
    >>> plain_fractions(read_statement("3 3/5 - 1/2")) is None
    True
    """
    pair = pair_of(statement)
    if pair is None or pair.styles != {Style.MIXED} or pair.first.amounts[0] or pair.second.amounts[0]:
        return None
    return pair


def across(*, taken: bool) -> tuple[Make, Make]:
    """Return what is done with the numerators, and what with the denominators."""
    return (tops_apart, bottoms_apart) if taken else (tops_added, bottoms_added)


def first_turned_over(statement: Statement) -> Attempt | None:
    """Turn the first fraction over, then work across: 3/5 + 1/2 is said to be (5 + 1)/(3 + 2)."""
    pair = plain_fractions(statement)
    if pair is None:
        return None
    parts = of_two(pair.first, pair.second)
    turned = Parts(parts.bottom1, parts.top1, parts.top2, parts.bottom2)
    top, bottom = across(taken=pair.taken)
    if not parts.top1 or parts.top1 == parts.bottom1 or not value(bottom(turned)):
        return None
    state = PairState(pair.first, pair.second, pair.taken)
    return finished(pair.asked, as_it_comes(cut_anew(lambda _: top(turned), lambda _: bottom(turned))(state)))


def denominator_one_off(statement: Statement) -> Attempt | None:
    """Work across, with the new denominator one too few, or one too many: 4/6 or 4/8 for 3/5 + 1/2.

    Where like denominators are taken from one another nothing is left, and no fact to be one off.
    """
    pair = plain_fractions(statement)
    if pair is None or (pair.taken and pair.first.ladder == pair.second.ladder):
        return None
    parts = of_two(pair.first, pair.second)
    top, bottom = across(taken=pair.taken)
    made = value(bottom(parts)).numerator
    second = -pair.second.value if pair.taken else pair.second.value
    if not value(top(parts)):
        return None
    few, *many = (near for near in (made - 1, made + 1) if near)
    state = as_it_comes(cut_anew(top, lambda _: whole(few))(PairState(pair.first, pair.second, pair.taken)))
    over = value(top(parts)).numerator
    others = tuple(Quantity(mixed(near), (None, over)) for near in many)
    right = pair.first.value + second
    return finished(pair.asked, state, tuple(one for one in others if one.value != right))


def signed_across(parts: Parts) -> tuple[Outcome, ...]:
    """Return the second numbers taken from the first as they stand, where that is below zero: -1/-2.

    >>> from onewhole.notations.text import text
    >>> [text(one) for one in signed_across(Parts(1, 2, 2, 5))]
    ['-1/-3']
    """
    top, bottom = parts.top1 - parts.top2, parts.bottom1 - parts.bottom2
    if not top or not bottom or (top > 0 and bottom > 0):
        return ()
    return (WithMinus(Quantity(mixed(abs(bottom)), (None, abs(top))), front=top < 0, below=bottom < 0),)
