"""The mark at one half, against which two numbers are seen to be less or more."""

from fractions import Fraction

from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import value
from onewhole.statements.statement import Comparison
from onewhole.working.reasons.comparing import AgainstHalf
from onewhole.working.working import Working

#: What is written at the mark.
HALF = Quantity(mixed(2), (None, 1))


def half_marked(working: Working) -> Fraction | None:
    """Return what is marked in the picture of a working that compares with one half, and None in any other.

    Where both numbers have wholes that are left out, the mark stands as many wholes further.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.comparing import work_comparison
    >>> half_marked(work_comparison(read_statement("2 3/7 ? 2 1/2")))
    Fraction(5, 2)
    """
    reason, asked = working.lines[-1].because, working.statement
    if not isinstance(reason, AgainstHalf) or not isinstance(asked, Comparison):
        return None
    return value(asked.left) - reason.first.value + HALF.value
