"""The answers of a class, read from CSV text, and everything that is refused at once with its place."""

import pickle

import pytest

from onewhole.marking.reading.answer import Unreadable
from onewhole.marking.reading.answers_table import MOST_PUPILS, AnswersError, read_answers
from onewhole.marking.reading.class_answers import ClassAnswers, PupilAnswers
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_statement
from tests.kit.answers import page

PAGE = page(("7 2/6 - 3 5/6", "4 - 1 3/8", "9 5/8 - 4 6/8"))


def _cells(text: str) -> dict[str, tuple[str, ...]]:
    return {row.pupil: tuple(one.text for one in row.written) for row in read_answers(text, PAGE).pupils}


WANTED = {"K01": ("3 3/6", "2 5/8", "4 7/8"), "K02": ("", "-", "5 1/8")}


@pytest.mark.parametrize(
    "text",
    [
        "pupil,1,2,3\nK01,3 3/6,2 5/8,4 7/8\nK02,,-,5 1/8\n",
        "pupil;1;2;3\nK01;3 3/6;2 5/8;4 7/8\nK02;;-;5 1/8",
        "pupil\t1\t2\t3\nK01\t3 3/6\t2 5/8\t4 7/8\nK02\t\t-\t5 1/8",
        "\N{ZERO WIDTH NO-BREAK SPACE}pupil,1,2,3\r\nK01,3 3/6,2 5/8,4 7/8\r\nK02,,-,5 1/8\r\n",
        "pupil,1,2,3\rK01,3 3/6,2 5/8,4 7/8\rK02,,-,5 1/8\r",
        '"pupil","1","2","3"\n"K01","3 3/6","2 5/8","4 7/8"\n"K02","","-","5 1/8"\n',
        "\n\npupil,1,2,3\n,,,\nK01,3 3/6,2 5/8,4 7/8\n\nK02,,-,5 1/8\n,,,\n",
        "Pupil , 1. ,2),3.,,\nK01,3 3/6,2 5/8,4 7/8,,\nK02,,-,5 1/8,,\n",
    ],
    ids=[
        "comma",
        "semicolon",
        "tab",
        "mark and CRLF",
        "CR",
        "quoted",
        "empty rows",
        "dots and empty columns",
    ],
)
def test_every_usual_way_to_save_a_table_is_read(text: str) -> None:
    """Commas, semicolons or tabs; any line ends; quotes; a byte-order mark; empty rows and columns."""
    assert _cells(text) == WANTED


def test_columns_come_in_any_order_and_answers_in_the_order_of_the_page() -> None:
    """The labels say which column is which."""
    assert _cells("pupil,3,1,2\nK01,4 7/8,3 3/6,2 5/8\nK02,5 1/8,,-") == WANTED


def test_a_short_row_leaves_the_rest_blank() -> None:
    """A pupil who stopped early has blanks at the end."""
    assert _cells("pupil,1,2,3\nK01,3 3/6\nK02") == {"K01": ("3 3/6", "", ""), "K02": ("", "", "")}


def test_cells_are_kept_as_written_and_never_worked() -> None:
    """Formula-like text, quotation marks, line breaks and spaces inside a cell are text."""
    text = 'pupil,1,2,3\n=K01,"=HYPERLINK(""x"")","5 ft 2""", 3\N{LINE SEPARATOR}3/6 \n'
    [row] = read_answers(text, PAGE).pupils
    assert row.pupil == "=K01"
    assert [one.text for one in row.written] == ['=HYPERLINK("x")', '5 ft 2"', " 3\N{LINE SEPARATOR}3/6 "]
    assert isinstance(row.written[0].read, Unreadable)


def test_a_file_has_so_many_pupils() -> None:
    """Two hundred are read; one more is told with its line, and nothing beyond is read."""
    rows = [f"K{number},1,1,1" for number in range(MOST_PUPILS)]
    assert len(_cells("\n".join(["pupil,1,2,3", *rows, "", ""]))) == 200
    with pytest.raises(AnswersError) as refused:
        read_answers("\n".join(["pupil,1,2,3", *rows, "", "K200,1", 'K201,"', "K0"]), PAGE, "a.csv")
    assert str(refused.value).startswith(
        "These are the answers of more than 200 pupils (a.csv, line 203, column 1). Mark one class at a time"
    )


def test_a_long_list_of_mistakes_ends() -> None:
    """All are kept one by one, and the first twenty are told."""
    with pytest.raises(AnswersError) as refused:
        read_answers("pupil,1,2,3\n" + "K01,1\n" * 100, PAGE)
    assert len(refused.value.refusals) == 99
    assert refused.value.what.count("a second time") == 20
    assert "\n- and 79 more\n" in refused.value.what


def test_everything_that_is_wrong_is_told_at_once() -> None:
    """Nine faults in one table: each with line, column and what to do next, in the order of the file."""
    text = "answers,1,1,4,\nK01,a,b,c,d,e\nK01,1\n,2\n\n"
    with pytest.raises(AnswersError) as caught:
        read_answers(text, PAGE, "monday.csv")
    assert [str(one) for one in caught.value.refusals] == [
        (
            "the first column must be “pupil”; here it is “answers” (monday.csv, line 1, column 1). "
            "Call the first column pupil."
        ),
        "problem “1” has two columns, 2 and 3 (monday.csv, line 1, column 3). Keep one of them.",
        (
            "the page has no problem “4” (monday.csv, line 1, column 4). "
            "Use the labels of the page (1, 2, 3), or take the column out."
        ),
        (
            "this column has no label (monday.csv, line 1, column 5). "
            "Use the labels of the page (1, 2, 3), or take the column out."
        ),
        (
            "there is no column for problem “2” (monday.csv, line 1). "
            "Add a column 2; leave its cells empty if nobody answered."
        ),
        (
            "there is no column for problem “3” (monday.csv, line 1). "
            "Add a column 3; leave its cells empty if nobody answered."
        ),
        (
            "this row is longer than the first line: it has 6 cells, not 5 (monday.csv, line 2, column 6). "
            "Look for a sign that divides cells inside an answer, and put that answer in quotation marks."
        ),
        (
            "pupil “K01” is here a second time, after line 2 (monday.csv, line 3, column 1). "
            "Give each pupil one line, or a code of their own."
        ),
        (
            "these answers have no pupil (monday.csv, line 4, column 1). "
            "Write the pupil's code in the first column."
        ),
    ]
    said = str(caught.value)
    assert said.startswith("9 things in the answers need a change:\n- the first column")
    assert (caught.value.file, caught.value.line, caught.value.column) == ("monday.csv", 1, 1)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "There are no answers here (line 1)"),
        (" \n,,\n", "There are no answers here (line 1)"),
        ("pupil,1,2,3\n", "There is no pupil here (line 1)"),
        ('pupil,1,2,3\nK01,a,b,c\nK02,"a,b,c\nK03,a,b,c', "From here on this is no table: "),
        ('pupil,1,2,3\nK01,"a"b,c,d', "From here on this is no table: "),
    ],
    ids=["empty", "empty cells", "no pupil", "open quote", "text after a quote"],
)
def test_what_is_no_table_is_refused(text: str, said: str) -> None:
    """Nothing is read halfway: a table is read whole or refused with its place."""
    with pytest.raises(AnswersError) as caught:
        read_answers(text, PAGE)
    assert str(caught.value).startswith(said)


def test_an_open_quote_is_placed_where_its_row_begins() -> None:
    """The line is that of the row with the quotation mark, not the end of the file."""
    with pytest.raises(AnswersError) as caught:
        read_answers('pupil,1,2,3\nK01,a,b,c\nK02,"a,b,c\nK03,a,b,c', PAGE)
    assert caught.value.line == 3


def test_lines_are_counted_after_cells_with_line_breaks() -> None:
    """A cell may hold a line break; what comes after it is still placed on its own line."""
    with pytest.raises(AnswersError) as caught:
        read_answers('pupil,1,2,3\nK01,"a\nb",c,d\nK01,a,b,c', PAGE)
    assert caught.value.line == 4


def test_the_error_travels() -> None:
    """A copy keeps all the reasons."""
    with pytest.raises(AnswersError) as caught:
        read_answers("name,1\nK01,2", PAGE)
    again = pickle.loads(pickle.dumps(caught.value))  # noqa: S301 - our own error, made a line above
    assert [str(one) for one in again.refusals] == [str(one) for one in caught.value.refusals]


def test_class_answers_check_themselves() -> None:
    """Too few answers, or one pupil twice, cannot be built."""
    asked = Problem("1", read_statement("4 - 1 3/8"), "4 - 1 3/8")
    with pytest.raises(ValueError, match="one answer for each problem"):
        ClassAnswers((asked,), (PupilAnswers("K01", ()),))
    with pytest.raises(ValueError, match="there twice"):
        ClassAnswers((), (PupilAnswers("K01", ()), PupilAnswers("K01", ())))


@pytest.mark.parametrize(
    "text",
    [
        "pupil,1,2,3\nK01,a,b,c\n",
        "Name,1,2,3\nK01,a,b,c\n",
        "Code;Q1;2.;Problem 3\nK01;a;b;c\n",
        "Homework 12\n\nStudent\t3\t2\t1\nK01\tc\tb\ta\n",
    ],
)
def test_a_table_of_another_make_is_read_as_it_is_when_it_is_pasted(text: str) -> None:
    """Other headings over the pupils, labels in any usual form, a title above."""
    (row,) = read_answers(text, PAGE).pupils
    assert (row.pupil, [one.text for one in row.written]) == ("K01", ["a", "b", "c"])


@pytest.mark.parametrize("text", ["1,2,3\na,b,c\n", "K01,a,b,c\nK02,a,b,c\n", "Name,K01\n1,a\n2,b\n3,c\n"])
def test_a_table_that_is_not_sure_is_refused(text: str) -> None:
    """Nothing is guessed where nobody can be asked."""
    with pytest.raises(AnswersError):
        read_answers(text, PAGE)
