"""Fractions and mixed numbers beside those that are listed all at once."""

from collections.abc import Iterator
from itertools import combinations

from onewhole.sheets.spaces.amounts import fractions, mixed_numbers, unlike_pairs
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

#: A whole of a product has so many pieces at most, so that they are not too fine (1/6 x 1/10), and there are
#: products enough for a year; our own.
MOST_PIECES = 60


def below_one(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield sums and differences of fractions with one denominator: 4.NF.B.3.a (CCSSM 2010)."""
    for denominator in wishes.denominators:
        parts = fractions(denominator)
        yield ProblemForm("{0} - {1}", (parts, parts))
        yield ProblemForm("{0} + {1}", (parts, parts))


def tenths_and_hundredths(_: Wishes) -> Iterator[ProblemForm]:
    """Yield sums of tenths and hundredths below one: 4.NF.C.5 (CCSSM 2010)."""
    yield ProblemForm("{0} + {1}", (fractions(10), fractions(100)))
    yield ProblemForm("{1} + {0}", (fractions(10), fractions(100)))


def unlike_taken(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield differences with two denominators: 5.NF.A.1 (CCSSM 2010)."""
    yield from _unlike("-", wishes)


def unlike_added(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield sums with two denominators: 5.NF.A.1 (CCSSM 2010)."""
    yield from _unlike("+", wishes)


def times(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield a whole number times a fraction or a mixed number: 4.NF.B.4.b, 4.NF.B.4.c (CCSSM 2010)."""
    for denominator in wishes.denominators:
        yield ProblemForm("{0} x {1}", (range(2, 10), fractions(denominator)))
        yield ProblemForm("{0} x {1}", (range(2, 7), mixed_numbers(denominator, min(5, wishes.largest))))


def times_fractions(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield a fraction times a fraction: 5.NF.B.4.a (CCSSM 2010)."""
    parts = [(one, part) for one in wishes.denominators for part in fractions(one, simplest=True)]
    even = [
        (first, second)
        for (one, first), (other, second) in combinations(parts, 2)
        if one * other <= max(MOST_PIECES, min(wishes.denominators) ** 2)
    ]
    pairs = [(one, other) if at % 2 else (other, one) for at, (one, other) in enumerate(even)]
    yield ProblemForm("{0}", (tuple(f"{one} x {other}" for one, other in pairs),))


def _unlike(sign: str, wishes: Wishes) -> Iterator[ProblemForm]:
    for first, second in unlike_pairs(wishes.denominators):
        sides = (mixed_numbers(one, wishes.largest, least=0, simplest=True) for one in (first, second))
        yield ProblemForm(f"{{0}} {sign} {{1}}", tuple(sides))
