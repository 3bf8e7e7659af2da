"""No small number of a table is shown, and none can be worked out from those that are."""

from collections.abc import Sequence

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import linprog

from onewhole.marking.district.small_counts import LEAST, Place, hidden, with_sums, without_small_rows
from tests.kit.how_much import sample

COUNTS = st.one_of(st.integers(0, 12), st.integers(0, 200))


def reach(
    table: Sequence[Sequence[int]], out: frozenset[Place], place: Place, *, rows_known: bool = False
) -> tuple[int, int]:
    """What whoever sees the table can say of a number that is left out: at least, at most.

    By linear programs over all that is left out, none below zero: an independent road. That 0 is shown is
    known too: what is left out is at least 1. ``rows_known``: the sums of the rows are told elsewhere.
    """
    out = frozenset(one for one in out if not (rows_known and one[1] == len(table[0]) - 1))
    places = sorted(out)
    rows, columns = len(table), len(table[0])
    lines = [[(row, at) for at in range(columns)] for row in range(rows)]
    lines += [[(row, at) for row in range(rows)] for at in range(columns)]
    equal, sums = [], []
    for line in lines:
        signs = [1] * (len(line) - 1) + [-1]
        equal.append([sum(sign for one, sign in zip(line, signs, strict=True) if one == p) for p in places])
        sums.append(-sum(s * table[r][c] for (r, c), s in zip(line, signs, strict=True) if (r, c) not in out))
    found = []
    for sign in (1, -1):
        goal = np.array([sign * (one == place) for one in places])
        made = linprog(goal, A_eq=np.array(equal), b_eq=np.array(sums), bounds=(1, None))
        found.append(round(sign * made.fun) if made.status == 0 else 10**9)
    return found[0], found[1]


TABLES = st.integers(1, 5).flatmap(
    lambda wide: st.lists(st.lists(COUNTS, min_size=wide, max_size=wide), min_size=1, max_size=5)
)


@given(TABLES)
def test_no_small_number_can_be_worked_out(counts: list[list[int]]) -> None:
    """Each is left out, and as far as anybody can tell it may be another number too."""
    table = with_sums(counts)
    out = hidden(table)
    small = [(r, c) for r, line in enumerate(table) for c, count in enumerate(line) if 0 < count < LEAST]
    assert set(small) <= out
    for place in small[: sample(3, 20, 100)]:
        least, most = reach(table, out, place)
        assert least < most


@given(TABLES)
def test_sums_that_another_table_tells_give_nothing_away(counts: list[list[int]]) -> None:
    """Rows with small sums are put together; then the sums of rows may be known to everybody."""
    named = {(f"{row}", f"{at}"): one for row, line in enumerate(counts) for at, one in enumerate(line)}
    kept = without_small_rows(named, "other")
    rows = sorted({row for row, _ in kept})
    table = with_sums([[kept[row, f"{at}"] for at in range(len(counts[0]))] for row in rows])
    if 0 < table[-1][-1] < LEAST:
        return  # all papers together are few: there is no other row to put them to
    out = hidden(table, rows_known=True)
    for place in [(r, c) for r, line in enumerate(table) for c, one in enumerate(line) if 0 < one < LEAST]:
        least, most = reach(table, out, place, rows_known=True)
        assert least < most


@pytest.mark.parametrize(
    ("counts", "shown"),
    [([[50, 40], [30, 60]], 9), ([[50, 4], [30, 60]], 5), ([[50, 4, 40], [30, 60, 20], [11, 12, 13]], 12)],
)
def test_what_is_safe_is_shown(counts: list[list[int]], shown: int) -> None:
    """Worked by hand: one small number costs three others, the smallest that make a way round."""
    table = with_sums(counts)
    assert sum(map(len, table)) - len(hidden(table)) == shown


def test_two_that_are_hidden_in_a_row_are_not_enough() -> None:
    """Two small numbers far apart: each may be ten more for all that anybody can tell."""
    table = with_sums([[5, 60, 70, 80], [60, 70, 80, 90], [70, 80, 90, 3]])
    out = hidden(table)
    for place in [(0, 0), (2, 3)]:
        least, most = reach(table, out, place)
        assert most - least >= LEAST
