"""A sheet is read as teachers type it, and every mistake is told."""

import pytest

from onewhole.sheets.document import Instruction, SheetError
from onewhole.sheets.header import Header
from onewhole.sheets.reading import MOST_LINES, MOST_PROBLEMS, read_part, read_sheet


def mistakes(text: str) -> list[tuple[int | None, int | None, str]]:
    """Return line, column and words of every mistake."""
    with pytest.raises(SheetError) as refused:
        read_sheet(text)
    return [(one.line, one.column, one.what) for one in refused.value.mistakes]


@pytest.mark.parametrize(
    ("line", "label", "typed"),
    [
        ("1. 52 - 27", "1", "52 - 27"),
        ("2a) 52-27", "2a", "52-27"),
        ("3: 5.2 - 2.7", "3", "5.2 - 2.7"),
        ("4.) 7 ⅔ - 4", "4", "7 ⅔ - 4"),
        ("(5) 1/2 + 1/3", "5", "1/2 + 1/3"),
        ("a: 5 - 2", "a", "5 - 2"),
        ("Q12. 5 - 2", "Q12", "5 - 2"),
        ("\t6 )\t5\t-  2 \t", "6", "5 - 2"),
        ("7)7 2/6 - 3 5/6 =", "7", "7 2/6 - 3 5/6 ="),
        ("8.\N{NO-BREAK SPACE}5 - 2", "8", "5 - 2"),
    ],
)
def test_labels(line: str, label: str, typed: str) -> None:
    """With a dot, a bracket or a colon, and blanks of any sort."""
    (problem,) = read_sheet(line).problems
    assert (problem.label, problem.typed, problem.story) == (label, typed, "")


@pytest.mark.parametrize(
    ("text", "labels"),
    [
        ("7 2/6 - 3 5/6\n52 - 27", ["1", "2"]),
        ("1.5 + 2", ["1"]),
        ("7 2/6 - 3 5/6\n2. 52 - 27\n5 - 2", ["1", "2", "3"]),
        ("5 - 2\n1. 6 - 2", ["2", "1"]),
        ("4. 5 - 2\n6 - 2\n5) 7 - 2\n8 - 2", ["4", "6", "5", "7"]),
        ("a. 5 - 2\n6 - 2", ["a", "1"]),
        ("#1 5 - 2\n#2. 6 - 2\n# 3 strips are cut.\n#3) 7 - 2", ["1", "2", "3"]),
        ("\N{BULLET}\t5 - 2\n- 6 - 2\n* 7 - 2", ["1", "2", "3"]),
    ],
)
def test_a_line_without_a_label_is_counted(text: str, labels: list[str]) -> None:
    """It gets the next number that no line has; the sign of a list is none of the problem."""
    assert [problem.label for problem in read_sheet(text).problems] == labels


@pytest.mark.parametrize("end", ["= ______", "= \N{HORIZONTAL ELLIPSIS}", "= ........", "="])
def test_the_place_for_an_answer_is_passed_over(end: str) -> None:
    """Lines and points that lead to it, as word processors set them."""
    (problem,) = read_sheet(
        f"1.\t7\N{NO-BREAK SPACE}2/6 \N{EN DASH} 3\N{VULGAR FRACTION FIVE SIXTHS} {end}"
    ).problems
    assert problem.statement == read_sheet("7 2/6 - 3 5/6").problems[0].statement


def test_what_can_be_read_is_read() -> None:
    """A mistake leaves the other problems; a label that is used twice names the first of the two."""
    part = read_part("titel: Kites\n\n1. 5 -\n2. 6 - 2\n2. 7 - 2\nMaya has 2 kites and 3 tails.\n8 - 3")
    assert part.sheet is not None
    assert [(one.label, one.typed) for one in part.sheet.problems] == [("2", "6 - 2"), ("4", "8 - 3")]
    assert [one.line for one in part.mistakes] == [1, 3, 5, 6]
    assert read_part("1. 5 -").sheet is None


def test_a_page_has_so_many_problems_and_lines() -> None:
    """Two hundred problems are read; the next is told with its line, and nothing after it is read."""
    rows = [f"{number}. {number + 5} - 2" for number in range(1, MOST_PROBLEMS + 1)]
    assert len(read_sheet("\n".join(["title: Kites", "", *rows, "", "# The end."])).problems) == 200
    beyond = [*rows, "", "201. 5 - 2", "202. 5 -", "1."]
    assert mistakes("\n".join(beyond)) == [(202, 1, "here is one more problem, and a page has at most 200")]
    assert len(read_sheet("\n" * (MOST_LINES - 1) + "1. 5 - 2").problems) == 1
    assert mistakes("1. 5 - 2\n" + "\n" * MOST_LINES + "title: 2") == [
        (2001, 1, "here is one more line, and a page has at most 2,000")
    ]
    assert {line for line, _, _ in mistakes("a: b\n" * 5000)} == set(range(1, MOST_LINES + 2))


def test_everything_in_its_place() -> None:
    """Header, instructions where they stand, stories, and the line of each problem."""
    sheet = read_sheet(
        "\n\nTitle :  Kites \nMinutes:15\n\n# First.\n1. 5 - 2\n\n##  Then. \n2. 1/2 + 1/4 |  A  kite\n"
    )
    assert sheet.header == Header(title="Kites", minutes=15)
    assert [item.words for item in sheet.items if isinstance(item, Instruction)] == ["First.", "Then."]
    assert [(p.label, p.line, p.story) for p in sheet.problems] == [("1", 7, ""), ("2", 10, "A kite")]


@pytest.mark.parametrize(
    "text", ["1. 5 - 2", "# Hello\n1. 5 - 2", "\N{ZERO WIDTH NO-BREAK SPACE}1. 5 - 2\r\n"]
)
def test_a_sheet_without_header(text: str) -> None:
    """Everything is as usual."""
    assert read_sheet(text).header == Header()


@pytest.mark.parametrize(
    ("text", "mistake"),
    [
        ("", (1, 1, "there is no problem on this sheet")),
        ("title: Kites\n\n# Hello\n", (4, 1, "there is no problem on this sheet")),
        ("5 -", (1, 4, "a number is missing: here the line ends")),
        ("1.7 2/6 - 3 5/6", (1, 5, "a sign is missing: here there is “2”")),
        ("Show each step.\n1. 5 - 2", (1, 1, "these are words, and no problem is found in them")),
        ("1. 5 - 2\t\t2. 6 - 3", (1, 4, "2 problems stand on this line")),
        (
            "Maya has 4 1/4 yards and uses 1 3/4. How much is left?",
            (1, 1, "this is a story, and what it asks is not written yet"),
        ),
        ("3 spoons - 1 spoon", (1, 1, "this has words or signs that no problem has")),
        ("1. 5 - 2\n  2.", (2, 5, "nothing stands after the label 2")),
        ("1. 5 - 2 |  ", (1, 10, "no words stand after the bar of problem 1")),
        ("1. 5 - 2\n1) 6 - 2", (2, 1, "the label 1 is used twice, the first time on line 1")),
        ("2a. 5 - 2\n2A. 6 - 2", (2, 1, "the label 2A is used twice, the first time on line 1")),
        ("1. 5 - 2\ntitle: Kites", (2, 1, "a setting stands under the header")),
        ("titel: Kites\n\n1. 5 - 2", (1, 1, "there is no setting “titel”")),
        ("title: a\n Title: b\n\n1. 5 - 2", (2, 2, "title is set twice, the first time on line 1")),
        ("grade:  four\n\n1. 5 - 2", (1, 9, "“four” is not a number")),
        ("grade: 12\n\n1. 5 - 2", (1, 8, "grade is set to 12")),
        ("columns: 3\n\n1. 5 - 2", (1, 10, "columns is set to 3")),
        ("paper: legal\n\n1. 5 - 2", (1, 8, "“legal” is none of the choices here")),
        ("strategy: magic\n\n1. 5 - 2", (1, 11, "there is no strategy called “magic”")),
        ("\t1.\t7 2/0 - 3", (1, 9, "a whole cannot be cut into 0 equal parts: here there is “0”")),
        ("1. 1/5 x 2 in", (1, 4, "the answer, a length, is no whole number of the smallest unit")),
        (
            "# a\N{ZERO WIDTH JOINER}b\n1. 5 - 2",
            (1, 1, "“a\N{ZERO WIDTH JOINER}b” cannot stand on one line of a sheet"),
        ),
    ],
)
def test_one_mistake(text: str, mistake: tuple[int, int, str]) -> None:
    """Where it stands and what it is."""
    assert mistakes(text) == [mistake]


def test_a_single_mistake_keeps_its_own_place() -> None:
    """The refusal itself has file, line and column."""
    with pytest.raises(SheetError) as refused:
        read_sheet("1. 5 - 2\n5 -", "monday.txt")
    assert (refused.value.file, refused.value.line, refused.value.column) == ("monday.txt", 2, 4)
    assert str(refused.value).startswith(
        "a number is missing: here the line ends (monday.txt, line 2, column 4). Write the problem"
    )


def test_all_mistakes_at_once_in_order() -> None:
    """Also those of settings, each on its line."""
    found = mistakes("grade: x\ntitel: y\nstrategy: z\n\n1. 5 -\n5 -\n1. 6 6\n")
    assert [(line, column) for line, column, _ in found] == [
        (1, 8),
        (2, 1),
        (3, 11),
        (5, 7),
        (6, 4),
        (7, 6),
    ]


def test_many_mistakes_are_counted() -> None:
    """Twenty are told, the others are in the list."""
    with pytest.raises(SheetError) as refused:
        read_sheet("\n".join(["5 -"] * 50))
    assert len(refused.value.mistakes) == 50
    assert str(refused.value).startswith("50 things on this sheet need a change:\n")
    assert str(refused.value).endswith("and 30 more.")


@pytest.mark.parametrize(("typed", "near"), [("titel", "title"), ("colums", "columns"), ("Wholez", "whole")])
def test_the_nearest_setting_is_offered(typed: str, near: str) -> None:
    """A slip of the fingers is mended."""
    with pytest.raises(SheetError) as refused:
        read_sheet(f"{typed}: 1\n\n1. 5 - 2")
    assert refused.value.remedy == f"Did you mean {near}?"


def test_a_setting_far_from_all_lists_them() -> None:
    """Where nothing is near, all are told."""
    with pytest.raises(SheetError, match="title, date, class, grade"):
        read_sheet("xyzzy: 1\n\n1. 5 - 2")
