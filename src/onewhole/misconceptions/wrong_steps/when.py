"""When a pattern applies to two numbers of wholes and pieces, or of any two units: named conditions."""

from typing import NamedTuple

from onewhole.working.pair_state import PairState


class Counts(NamedTuple):
    """The counts of two numbers in two neighboring units, and their ratio: w1 n1/d and w2 n2/d."""

    w1: int
    n1: int
    w2: int
    n2: int
    d: int


def place_of_two(state: PairState) -> int:
    """Return the rung of the smaller of two neighboring units that are looked at.

    Where there are more than two it is the smallest unit of which there are too few to take from, or enough
    to make one of the next; the smallest of all where none is.

    >>> from onewhole.number.ladder import measure
    >>> from onewhole.number.quantity import Quantity
    >>> yards = measure("yd", "ft", "in")
    >>> place_of_two(PairState(Quantity(yards, (4, 1, 9)), Quantity(yards, (1, 2, 3)), taken=True))
    1
    """
    ladder = state.first.ladder
    rungs = range(len(ladder.units) - 1, 0, -1)
    for rung in rungs:
        one, other = state.first.amounts[rung], state.second.amounts[rung]
        if one < other if state.taken else one + other >= ladder.ratios[rung - 1]:
            return rung
    return rungs[0]


def counts(state: PairState) -> Counts:
    """Read the counts off a state with two rungs, or of the two at which is looked.

    >>> from onewhole.number.ladder import mixed
    >>> from onewhole.number.quantity import Quantity
    >>> counts(PairState(Quantity(mixed(8), (9, 5)), Quantity(mixed(8), (4, 6)), taken=True))
    Counts(w1=9, n1=5, w2=4, n2=6, d=8)
    """
    at = place_of_two(state)
    (w1, n1), (w2, n2) = (number.amounts[at - 1 : at + 1] for number in (state.first, state.second))
    return Counts(w1, n1, w2, n2, state.first.ladder.ratios[at - 1])


def always(_: PairState) -> bool:
    """Wherever the topic fits."""
    return True


def too_few_pieces(state: PairState) -> bool:
    """There are too few pieces to take from, and one whole more is enough: n1 < n2 <= n1 + d."""
    c = counts(state)
    return c.n1 < c.n2 <= c.n1 + c.d


def enough_pieces(state: PairState) -> bool:
    """There are pieces enough: n1 >= n2."""
    c = counts(state)
    return c.n1 >= c.n2


def wholes_are_taken(state: PairState) -> bool:
    """The second number has wholes: w2 >= 1."""
    return counts(state).w2 >= 1


def pieces_differ(state: PairState) -> bool:
    """The numerators are not the same: n1 <> n2."""
    c = counts(state)
    return c.n1 != c.n2


def no_pieces_on_top(state: PairState) -> bool:
    """The first number is a whole number and the second is not: n1 = 0."""
    c = counts(state)
    return c.n1 == 0 < c.n2


def fraction_from_whole(state: PairState) -> bool:
    """A fraction is taken from a whole number: n1 = 0 and w2 = 0."""
    return no_pieces_on_top(state) and counts(state).w2 == 0


def wholes_in_the_first(state: PairState) -> bool:
    """The first number has wholes: w1 >= 1."""
    return counts(state).w1 >= 1


def pieces_fill_a_whole(state: PairState) -> bool:
    """The pieces together are a whole or more: n1 + n2 >= d."""
    c = counts(state)
    return c.n1 + c.n2 >= c.d
