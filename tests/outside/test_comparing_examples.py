"""Published examples of comparing: the answer, and the way where the source says one.

The numbers are facts and are given in our own words, with the source beside each.
"""

import pytest

from onewhole.misconceptions.catalogue import shows
from onewhole.notations.text import text
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Comparison, Ordering
from onewhole.working.comparing import work_comparison
from onewhole.working.ordering import work_ordering
from onewhole.working.reason import Reason
from onewhole.working.reasons.comparing import (
    AgainstHalf,
    AgainstOne,
    AsManyMissing,
    MoreAndLarger,
    PlaceDecides,
)

#: OpenStax, Prealgebra 2e, section Use the Language of Algebra, worked example 3, and section Decimals,
#: worked example 7 (the book's source was read; CC BY-NC-SA 4.0; numbers only).
_BOOK = (("28 ? 26", ">"), ("28 ? 48", "<"), ("0.64 ? 0.6", ">"), ("0.83 ? 0.803", ">"))


@pytest.mark.parametrize(("typed", "sign"), _BOOK)
def test_a_book_of_algebra(typed: str, sign: str) -> None:
    """Whole numbers and decimals are decided in the place in which they differ first."""
    working = work_comparison(_asked(typed))
    assert working.answer == sign
    assert isinstance(working.lines[-1].because, PlaceDecides)


@pytest.mark.parametrize(
    ("typed", "sign", "because"),
    [
        # 5.NF.A.2, Common Core State Standards for Mathematics (2010): 3/7 is less than 1/2.
        ("3/7 ? 1/2", "<", AgainstHalf),
        # Progressions, Number and Operations - Fractions 3-5 (from memory): 7/8 is below one and 13/12 above.
        ("7/8 ? 13/12", "<", AgainstOne),
        # Cramer, Post & delMas (2002), JRME 33 (from memory): 4/5 and 11/12 each need one piece.
        ("4/5 ? 11/12", "<", AsManyMissing),
        # The same, "transitive" with one half as the mark: 3/7 and 5/9.
        ("3/7 ? 5/9", "<", AgainstHalf),
    ],
)
def test_marks_before_common_denominators(typed: str, sign: str, because: type[Reason]) -> None:
    """One half, one whole and what is missing decide with no common denominator."""
    working = work_comparison(_asked(typed))
    assert working.answer == sign
    assert len(working.lines) == 2
    assert isinstance(working.lines[-1].because, because)


def test_a_common_denominator_where_nothing_else_serves() -> None:
    """Progressions, Fractions 3-5 (from memory): 5/8 and 7/12 both lie above one half."""
    working = work_comparison(_asked("5/8 ? 7/12"))
    assert working.answer == ">"
    assert not isinstance(working.lines[-1].because, AgainstHalf | MoreAndLarger)
    assert working.lines[1].says == read_statement("15/24 ? 14/24")


def test_three_fractions_of_a_national_test() -> None:
    """2/7, 1/12, 5/9 from least to greatest: about half of grade 8 was right in 2004 (from memory).

    NAEP 2004, as cited in the introduction of the practice guide on fractions, IES (2010), NCES (2007).
    """
    statement = read_statement("order 2/7, 1/12, 5/9")
    assert isinstance(statement, Ordering)
    assert text(work_ordering(statement).answer) == "1/12 < 2/7 < 5/9"
    wrong = {slip.pattern: text(slip.wrote) for slip in shows(statement)}
    assert wrong["C08"] == "2/7 < 5/9 < 1/12"
    assert wrong["C10"] == "1/12 < 5/9 < 2/7"


def _asked(typed: str) -> Comparison:
    statement = read_statement(typed)
    assert isinstance(statement, Comparison)
    return statement
