"""A sheet is written the way it is typed."""

from onewhole.sheets.reading import read_sheet
from onewhole.sheets.writing import write_sheet

TYPED = """\
title: Kites
strategy: count up
whole: strip of kite paper
wholes: kite strips
say: trade
picture: number line

# Look first.
1. 7 2/6 - 3 5/6
2a. 5 1/3 - 2 2/3 | A kite takes 2 2/3 strips.
"""


def test_written_as_typed() -> None:
    """A sheet in the plainest form comes back letter for letter."""
    assert write_sheet(read_sheet(TYPED)) == TYPED


def test_no_header_no_blank_line() -> None:
    """Settings that are as usual are left out."""
    assert write_sheet(read_sheet("grade: 4\npaper: letter\n\n1) 5 - 2")) == "1. 5 - 2\n"
