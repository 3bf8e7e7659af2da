"""Blocks from a spreadsheet: cut as they were copied."""

import csv
from io import StringIO

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.desk.pupil.csv_cells import csv_text, guarded
from onewhole.errors import InputError
from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.tables.cutting import LONGEST_BLOCK, MOST_ROWS, cut_table
from onewhole.marking.reading.tables.table_cell import TableCell

CELL = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=8)


def _cut(text: str) -> tuple[tuple[str, ...], ...]:
    return tuple(tuple(cell.text for cell in row) for row in cut_table(text))


@pytest.mark.parametrize(
    ("text", "block"),
    [
        ("", ()),
        ("\r\n\r\n", ()),
        ("3 3/6", (("3 3/6",),)),
        ("3 3/6\t4\n\t5\n", (("3 3/6", "4"), ("", "5"))),
        ("3 3/6\t4\r\n5\t6\r\n", (("3 3/6", "4"), ("5", "6"))),
        ("3 3/6,4\n5,6", (("3 3/6", "4"), ("5", "6"))),
        ("3 3/6;4,5\n5;6", (("3 3/6", "4,5"), ("5", "6"))),
        ('"a\nb"\t2', (("a\nb", "2"),)),
        ('7"\t8', (('7"', "8"),)),
        ('"smudge\t4\n5\t6', (('"smudge', "4"), ("5", "6"))),
        ("3\n4 1/2\n5", (("3",), ("4 1/2",), ("5",))),
        (" 3 3/6 \t", ((" 3 3/6 ",),)),
    ],
    ids=ascii,
)
def test_a_block_is_cut_as_it_was_copied(text: str, block: tuple[tuple[str, ...], ...]) -> None:
    """Tabs, commas or semicolons, quotation marks, line ends of any computer; cells exactly as they are."""
    assert _cut(text) == block


@given(st.lists(st.lists(CELL, min_size=2, max_size=3), min_size=1, max_size=3))
def test_what_a_spreadsheet_writes_comes_back(rows: list[list[str]]) -> None:
    """Every cell of a table written with tabs, up to the last row and column with anything in it."""
    made = StringIO()
    csv.writer(made, dialect="excel-tab").writerows(rows)
    found = _cut(made.getvalue())
    width = len(found[0]) if found else 0
    filled = [(*row, "", "")[: max(3, width)] for row in rows[: len(found)]]
    assert found == tuple(row[:width] for row in filled)
    assert not any(TableCell(cell).plain for row in rows[len(found) :] for cell in row)


@pytest.mark.parametrize("typed", ["-1/2", "-3", "-1 1/2", "-1/-2", "7 2/6"])
def test_a_cell_that_was_given_out_comes_back_as_the_same_answer(typed: str) -> None:
    """A minus sign is guarded by an apostrophe in what is given out, and is read as it was written."""
    [[cell]] = _cut(csv_text([[typed]]))
    assert cell == guarded(typed)
    assert read_written(cell).read == read_written(typed).read
    assert not isinstance(read_written(cell).read, Unreadable)


def test_a_block_too_long_is_refused() -> None:
    """With what to do instead."""
    with pytest.raises(InputError, match="Paste the answers of one night"):
        cut_table("3\t" * LONGEST_BLOCK)


def test_a_table_too_long_is_refused() -> None:
    """More rows than a grade has pupils."""
    with pytest.raises(InputError, match="400 and 400"):
        cut_table("K01\t3\n" * (MOST_ROWS + 1))
