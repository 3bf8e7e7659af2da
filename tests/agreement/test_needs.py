"""Two roads to what a problem needs and answers: from its numbers alone, and from its working."""

from collections.abc import Iterator
from itertools import islice

import pytest

from lab.spaces import additions, subtractions
from onewhole.problems.answer import answer
from onewhole.problems.needs import needs
from onewhole.problems.taught import as_taught
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement
from onewhole.working.reasons.regrouping import MakesLarger, OneIsWorth
from onewhole.working.strategies.regroup_first import REGROUP_FIRST

OTHERS = (
    "52 - 27", "304 - 128", "1000 - 1", "5.2 - 2.7", "5 ft 2 in - 2 ft 7 in", "3 3/8 - 2 5/6", "4 - 1 4/3",
    "2 1/2 + 3 3/4 - 1 7/8", "7 2/6 = 6 ?/6", "9 - ? = 3 1/2", "? + 1/2 = 2.5", "3/4 ? 5/6", "2.5 + ? = 4",
    "5 ft - ? = 2 in", "1/? = 2/4", "3 x 2/5",
)  # fmt: skip


def problems() -> Iterator[Statement]:
    """Every problem of fourths up to 3 wholes, some of tenths, and one of each other sort."""
    yield from subtractions([4], 3)
    yield from additions([4], 3)
    yield from islice(subtractions([10], 5), 0, None, 37)
    yield from map(read_statement, OTHERS)


def test_the_answer_is_what_the_working_reaches() -> None:
    """Written the same, wherever there is a working."""
    worked = 0
    for statement in problems():
        working = as_taught(statement, REGROUP_FIRST)
        if working is not None:
            worked += 1
            assert answer(statement) == working.answer
    assert worked > 380


@pytest.mark.parametrize("denominator", [3, 8])
def test_regrouping_is_needed_where_a_whole_is_opened(denominator: int) -> None:
    """As often as the working opens a whole; in a sum, where parts that filled a whole are put together."""
    for statement in (*subtractions([denominator], 2), *additions([denominator], 2)):
        working = as_taught(statement, REGROUP_FIRST)
        assert working is not None
        regrouped = [line for line in working.lines if isinstance(line.because, OneIsWorth | MakesLarger)]
        assert needs(statement).regroupings == len(regrouped)
