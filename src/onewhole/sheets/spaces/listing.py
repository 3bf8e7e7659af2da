"""Factors of a number and multiples up to an end (4.OA.B.4, CCSSM 2010)."""

from collections.abc import Iterator

from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

#: Numbers that have more factors than 1 and themselves, and a few that have not.
SEVERAL = tuple(number for number in range(8, 101) if any(not number % by for by in range(2, number)))
PRIMES = (7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47)


#: Odd numbers that look prime (X06, X08), and what is taken for something else (X06, X07).
LOOK_PRIME = tuple(
    number for number in range(3, 101, 2) if any(not number % by for by in range(3, number, 2))
)


def primes(_: Wishes) -> Iterator[ProblemForm]:
    """Yield numbers that are prime, that look prime, and any to 100."""
    yield ProblemForm("is {0} prime or composite", (LOOK_PRIME,))
    yield ProblemForm("is {0} prime or composite", ((1, 2, *PRIMES),))
    yield ProblemForm("is {0} prime or composite", (range(4, 101, 2),))


def multiples_or_not(_: Wishes) -> Iterator[ProblemForm]:
    """Yield numbers that may be multiples of one digit, and digits that may be factors of numbers."""
    yield ProblemForm("is {0} a multiple of {1}", (range(12, 101), range(3, 10)))
    yield ProblemForm("is {0} a factor of {1}", (range(3, 10), range(12, 101)))


def factors_and_multiples(_: Wishes) -> Iterator[ProblemForm]:
    """Yield factors of numbers to 100, those of primes apart, and multiples of one digit."""
    yield ProblemForm("factors of {0}", (SEVERAL,))
    yield ProblemForm("factors of {0}", (PRIMES,))
    yield ProblemForm("multiples of {0} to {1}", (range(3, 10), range(30, 61)))
