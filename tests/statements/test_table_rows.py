"""A typed table, cut into rows."""

from collections.abc import Iterator
from itertools import islice

import pytest

from onewhole.statements.table_rows import NoTable, cut_rows


def test_a_long_table_is_cut_as_it_comes() -> None:
    """No line is asked for before its row is wanted, and rows keep the lines on which they begin."""
    asked = []

    def lines() -> Iterator[str]:
        for at in range(1, 1_000_000):
            asked.append(at)
            yield f'K{at},"a\n' if at % 2 else 'b"\n'

    assert list(islice(cut_rows(lines()), 2)) == [(1, ["K1", "a\nb"]), (3, ["K3", "a\nb"])]
    assert len(asked) == 4


def test_the_first_line_that_is_not_blank_tells_how_cells_are_divided() -> None:
    """Commas, semicolons or tabs; a decimal comma in a later line divides nothing."""
    assert list(cut_rows(["\n", "pupil\t1\n", "K01\t1,5;\n"])) == [(2, ["pupil", "1"]), (3, ["K01", "1,5;"])]
    assert list(cut_rows([" ; \n", "\n"])) == []


def test_where_a_quotation_mark_stays_open_is_told() -> None:
    """The rows before it were cut; the refusal has the line on which the broken row begins."""
    rows = cut_rows(["a,b\n", "1,2\n", '3,"4\n', "5,6\n"], "right.csv")
    assert [next(rows), next(rows)] == [(1, ["a", "b"]), (2, ["1", "2"])]
    with pytest.raises(NoTable, match="no table") as refused:
        next(rows)
    assert (refused.value.line, refused.value.file) == (3, "right.csv")
