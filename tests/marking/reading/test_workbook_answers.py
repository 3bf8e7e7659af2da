"""Answers in a sheet of cells, where nobody is asked: read as a paste is, or refused with the question."""

import pytest

from onewhole.marking.reading.answers_table import AnswersError, read_answers
from onewhole.marking.reading.tables.table_cell import CellMade, Table, TableCell, table_of
from onewhole.marking.reading.workbook_answers import answers_in_table
from onewhole.sheets.reading import read_sheet

SHEET = read_sheet("1. 7 2/6 - 3 5/6\n2. 9 5/8 - 4 6/8\n3. 52 - 27")
PROBLEMS = SHEET.problems


def cells(*rows: tuple[str | TableCell, ...]) -> Table:
    """Return a table of texts, and of cells as a sheet made them."""
    return table_of([[one if isinstance(one, TableCell) else TableCell(one) for one in row] for row in rows])


def refused(*rows: tuple[str | TableCell, ...]) -> list[tuple[str, int | None, int | None]]:
    """Return what a table is refused for, each with its place."""
    with pytest.raises(AnswersError) as told:
        answers_in_table(cells(*rows), PROBLEMS, "kites.xlsx")
    assert all(one.remedy and one.file == "kites.xlsx" for one in told.value.refusals)
    return [(one.what, one.line, one.column) for one in told.value.refusals]


def test_a_sheet_is_read_as_the_same_table_in_csv() -> None:
    """Labels in another order and form, a title, an empty line, a column of totals and a line of them."""
    found = answers_in_table(
        cells(
            ("Kite tails, Tuesday", "", "", "", ""),
            ("", "", "", "", ""),
            ("Name", "Problem 2", "Q1", "#3", "Total"),
            ("Maya Rivera", "4 7/8", "3 3/6", "25", "3"),
            ("Ben", "5 1/8", "", "35", "1"),
            ("Average", "", "", "", "2"),
        ),
        PROBLEMS,
    )
    assert found == read_answers("pupil,1,2,3\nMaya Rivera,3 3/6,4 7/8,25\nBen,,5 1/8,35", PROBLEMS)


def test_a_sheet_with_pupils_across_is_read() -> None:
    """Turned, it says the same; what is refused has its place in the sheet as it is."""
    rows = (("pupil", "K01", "K02"), ("1", "3 3/6", ""), ("2", "4 7/8", "5 1/8"), ("3", "25", "35"))
    found = answers_in_table(cells(*rows), PROBLEMS)
    assert refused(*rows[:3], ("3", "25", "8-Mar"))[0][1:] == (4, 3)
    assert found == read_answers("pupil,1,2,3\nK01,3 3/6,4 7/8,25\nK02,,5 1/8,35", PROBLEMS)


def test_what_the_sheet_changed_is_refused_by_name() -> None:
    """A date, the number of one, a fraction in its lowest terms; what can be only one thing is taken."""
    assert refused(
        ("pupil", "1", "2", "3"),
        ("K01", TableCell("3/8/2026", CellMade.DATE), "4 7/8", "25"),
        ("K02", TableCell("3 1/2", CellMade.FRACTION), TableCell("4 7/8", CellMade.FRACTION), "25"),
        ("K03", "45359", "8-Mar", "25"),
    ) == [
        ("K01, 1 (cell B2): the sheet made a date of this answer, 3/8/2026: was it 3/8 or 8/3?", 2, 2),
        (
            (
                "K02, 1 (cell B3): the sheet shows this answer in its lowest terms, 3 1/2: "
                "was it 3 1/2 or 3 3/6?"
            ),
            3,
            2,
        ),
        ("K03, 1 (cell B4): this may be the number of a date, 45359: was it 3/8 or 8/3?", 4, 2),
        ("K03, 2 (cell C4): the sheet made a date of this answer, 8-Mar: was it 3/8 or 8/3?", 4, 3),
    ]


def test_a_column_that_is_not_sure_is_refused_with_the_question() -> None:
    """A label that the page has not, one that is there twice, one that is missing."""
    assert refused(("pupil", "1", "2", "2", "9"), ("K01", "3 3/6", "4 7/8", "5", "25")) == [
        ("which column is problem 2? “2” is not the only one", 1, 3),
        ("which column is problem 2? “2” is not the only one", 1, 4),
        ("which problem is “9”?", 1, 5),
        ("there is no column for problem “3”", 1, None),
    ]


def test_pupils_who_are_missing_or_there_twice_are_refused() -> None:
    """Each with its line."""
    assert refused(
        ("pupil", "1", "2", "3"), ("K01", "1", "2", "3"), ("", "1", "2", "3"), ("K01", "1", "2", "3")
    ) == [
        ("these answers have no pupil", 3, 1),
        ("pupil “K01” is here a second time, after line 2", 4, 1),
    ]
    assert refused(("pupil", "1", "2", "3")) == [("there is no pupil here", 1, None)]


@pytest.mark.parametrize(
    ("rows", "asks"),
    [
        ((("3 3/6", "4 7/8", "25"), ("3 3/6", "5 1/8", "35")), "whose are these answers? No column says it"),
        ((("K01", "3 3/6", "4 7/8", "25"), ("K02", "1", "5 1/8", "35")), "which column is which problem?"),
    ],
)
def test_a_sheet_without_its_words_is_refused(rows: tuple[tuple[str, ...], ...], asks: str) -> None:
    """Nothing is laid in the order of the page where nobody can say that it is so."""
    assert refused(*rows)[0][0].startswith(asks)
