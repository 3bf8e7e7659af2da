"""The problems that a page may be composed of, listed one at a time: a second road beside the arrays."""

from collections.abc import Iterator
from itertools import product

from onewhole.sheets.candidates import LikePair


def belongs(one: LikePair) -> bool:
    """Whether a problem belongs on a page on mixed numbers.

    A difference takes pieces from a mixed or a whole number and leaves something; a sum has pieces in both
    numbers and at least one whole.
    """
    if one.taken:
        left = (one.w1 - one.w2) * one.d + one.n1 - one.n2
        return one.w1 > 0 and one.n2 > 0 and left > 0
    return one.n1 > 0 and one.n2 > 0 and one.w1 + one.w2 > 0


def listed(denominators: tuple[int, ...], largest: int, *, taken: bool) -> Iterator[LikePair]:
    """Every problem of a space that belongs on a page, one after another."""
    wholes = range(largest + 1)
    for d in denominators:
        for counts in product(wholes, range(d), wholes, range(d)):
            one = LikePair(*counts, d, taken)
            if belongs(one):
                yield one
