"""Blocks from a spreadsheet: cut as they were copied, nothing lost without a word."""

import csv
from io import StringIO

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.desk.marking.pasted import LONGEST_BLOCK, pasted, placed
from onewhole.desk.pupil.csv_cells import csv_text, guarded
from onewhole.errors import InputError
from onewhole.marking.reading.answer import Unreadable, read_written

CODES, LABELS = ["K01", "K02"], ["1", "2", "3"]
CELL = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=8)


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
        (" 3 3/6 \t", ((" 3 3/6 ", ""),)),
    ],
    ids=ascii,
)
def test_a_block_is_cut_as_it_was_copied(text: str, block: tuple[tuple[str, ...], ...]) -> None:
    """Tabs, commas or semicolons, quotation marks, line ends of any computer; cells exactly as they are."""
    assert pasted(text) == block


@given(st.lists(st.lists(CELL, min_size=2, max_size=3), min_size=1, max_size=3))
def test_what_a_spreadsheet_writes_comes_back(rows: list[list[str]]) -> None:
    """Every cell of a table written with tabs, up to the last row with anything in it."""
    made = StringIO()
    csv.writer(made, dialect="excel-tab").writerows(rows)
    while rows and not any(rows[-1]):
        rows = rows[:-1]
    assert pasted(made.getvalue()) == tuple(map(tuple, rows))


@pytest.mark.parametrize("typed", ["-1/2", "-3", "-1 1/2", "-1/-2", "7 2/6"])
def test_a_cell_that_was_given_out_comes_back_as_the_same_answer(typed: str) -> None:
    """A minus sign is guarded by an apostrophe in what is given out, and is read as it was written."""
    [[cell]] = pasted(csv_text([[typed]]))
    assert cell == guarded(typed)
    assert read_written(cell).read == read_written(typed).read
    assert not isinstance(read_written(cell).read, Unreadable)


def test_a_block_too_long_is_refused() -> None:
    """With what to do instead."""
    with pytest.raises(InputError, match="Paste the answers of one night"):
        pasted("3\t" * LONGEST_BLOCK)


def test_what_falls_outside_is_told_and_not_taken() -> None:
    """Every answer of the block is either laid on a cell or told; empty ones change nothing."""
    found = placed((("a", "", "c"), ("d", "e")), CODES, LABELS, "K02", "2")
    assert found.cells == (("K02", "2", "a"),)
    assert found.told == ("3 answers fall outside the grid and were not taken: “c”, “d”, “e”.",)
    assert placed((("a",),), CODES, LABELS, "K02", "3").told == ()


def test_a_whole_table_lies_where_its_codes_and_labels_say() -> None:
    """In any order; a code or a label that is not in the grid is told."""
    block = pasted("Pupil\t3.\t1\nK02\tc\ta\nK09\tx\ty\n")
    found = placed(block, CODES, LABELS, "K01", "2")
    assert found.cells == (("K02", "3", "c"), ("K02", "1", "a"))
    assert found.told == ("2 answers fall outside the grid and were not taken: “x”, “y”.",)


@pytest.mark.parametrize(("code", "label"), [("K03", "1"), ("K01", "4")])
def test_a_cell_outside_the_grid_is_refused(code: str, label: str) -> None:
    """There is nowhere to begin."""
    with pytest.raises(InputError, match="not in the grid"):
        placed((("a",),), CODES, LABELS, code, label)
