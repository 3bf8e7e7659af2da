"""Whole numbers in columns: 4.NBT.B.4, to 1,000,000; 3.NBT.A.2, within 1,000 (CCSSM 2010)."""

from collections.abc import Iterator

from onewhole.sheets.spaces.amounts import numbers_of_length, with_zeros
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

#: So many digits the largest number has where nothing is wished; grade 4 goes on to six.
USUAL_DIGITS = 4
THREE = 3


def taken(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield differences: both as long, one shorter, one digit less, and across zeros (K16, K17)."""
    long, short = _lengths(wishes)
    yield ProblemForm("{0} - {1}", (long, long))
    yield ProblemForm("{0} - {1}", (long, short))
    if wishes.digits is None:
        yield ProblemForm("{0} - {1}", (short, short))
    if len(short) > len(numbers_of_length(1)):
        digits = wishes.digits or USUAL_DIGITS
        yield ProblemForm("{0} - {1}", (with_zeros(digits), short))
        yield ProblemForm("{0} - {1}", (with_zeros(digits), long))


def added(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield sums: both as long, one shorter on either side, one digit less."""
    long, short = _lengths(wishes)
    yield ProblemForm("{0} + {1}", (long, long))
    yield ProblemForm("{0} + {1}", (long, short))
    yield ProblemForm("{0} + {1}", (short, long))
    if wishes.digits is None:
        yield ProblemForm("{0} + {1}", (short, short))


def multiplied(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield two numbers of two digits, and a long one times one of a digit: 4.NBT.B.5 (CCSSM 2010)."""
    two, digits = numbers_of_length(2), wishes.digits or USUAL_DIGITS
    yield ProblemForm("{0} x {1}", (two, range(2, 10)))
    yield ProblemForm("{0} x {1}", (two, two))
    for length in range(3, min(digits, USUAL_DIGITS) + 1):
        yield ProblemForm("{0} x {1}", (numbers_of_length(length), range(2, 10)))


def multiplied_by_two_digits(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield numbers of three digits or more times one of two: 5.NBT.B.5 (CCSSM 2010)."""
    for length in range(THREE, (wishes.digits or THREE) + 1):
        yield ProblemForm("{0} x {1}", (numbers_of_length(length), numbers_of_length(2)))


def _lengths(wishes: Wishes) -> tuple[range, range]:
    digits = wishes.digits or USUAL_DIGITS
    return numbers_of_length(digits), numbers_of_length(digits - 1)
