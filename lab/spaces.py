"""Spaces of problems that can be listed whole, one after another, without holding them."""

from collections.abc import Iterable, Iterator
from itertools import product

from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import minus, plus
from onewhole.statements.statement import Question


def mixed_numbers(denominator: int, largest_whole: int) -> Iterator[Quantity]:
    """Yield every number above 0 in the usual form, from the smallest up: 1/6 ... 5/6, 1, 1 1/6 ...

    >>> [number.counts for number in mixed_numbers(2, 1)]
    [(None, 1), (1,), (1, 1)]
    """
    for wholes, pieces in product(range(largest_whole + 1), range(denominator)):
        if pieces:
            yield Quantity(mixed(denominator), (wholes or None, pieces))
        elif wholes:
            yield whole(wholes)


def subtractions(denominators: Iterable[int], largest_whole: int) -> Iterator[Question]:
    """Yield every difference of two mixed numbers with like denominators, not below 0.

    At least one of the two has a fraction part; each denominator is written as it is (2/4 is not 1/2).

    >>> sum(1 for _ in subtractions([4], 2))
    63
    """
    for first, second in _pairs(denominators, largest_whole):
        if first.value >= second.value:
            yield Question(minus(first, second))


def additions(denominators: Iterable[int], largest_whole: int) -> Iterator[Question]:
    """Yield every sum of two mixed numbers with like denominators, at least one with a fraction part.

    >>> sum(1 for _ in additions([4], 2))
    117
    """
    for first, second in _pairs(denominators, largest_whole):
        yield Question(plus(first, second))


def _pairs(denominators: Iterable[int], largest_whole: int) -> Iterator[tuple[Quantity, Quantity]]:
    for denominator in denominators:
        for first in mixed_numbers(denominator, largest_whole):
            for second in mixed_numbers(denominator, largest_whole):
                if Style.MIXED in {first.ladder.style, second.ladder.style}:
                    yield first, second
