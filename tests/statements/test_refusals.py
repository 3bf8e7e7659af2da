"""Every mistake is refused with its line, its column and what to do next; never a crash."""

import sys

import pytest

from onewhole.number.quantity import whole
from onewhole.statements.expression import value
from onewhole.statements.reading import DEEPEST, read_expression, read_statement
from onewhole.statements.statement import Question
from onewhole.statements.tokens import LONGEST_TEXT, ReadingError

AS_IN = "Write the problem as in 7 2/6 - 3 5/6."
BETWEEN = "Put a sign between the numbers: 7 2/6 - 3 5/6."
COMMA = "In a number a comma stands before every three digits: 4,006."
TYPE = "Type numbers such as 7 2/6, 5.2 or 5 ft 2 in, and the signs + - x = < > ?"
SLASH = "Write 7/4 for the fraction, and 7 / 4 or 7 \N{DIVISION SIGN} 4 to divide."
SECOND = "a second slash stands here, and it is not clear what it divides"
DIVIDE_FIRST = "Write what is divided first: 87 ÷ 4 = 21 r 3."
ALIKE = "Divide by a plain number, or by a measure of the same kind."
DELETE = "Delete it, or type the line again by hand."

LONG = "1" * 10_000

REFUSED = (
    # the fraction breaks off, or has no parts
    (
        "7 2/0",
        5,
        "a whole cannot be cut into 0 equal parts: here there is “0”",
        "Use a denominator of 1 or more.",
    ),
    ("7 2/", 5, "a denominator is missing: here the line ends", AS_IN),
    (
        "7 2/6/3",
        6,
        f"{SECOND}: here there is “/”",
        SLASH,
    ),
    ("7 /4", 3, "this may be a fraction, or one number divided by another", SLASH),
    ("7/ 4", 2, "this may be a fraction, or one number divided by another", SLASH),
    (
        "1/2 /4",
        5,
        f"{SECOND}: here there is “/”",
        SLASH,
    ),
    ("10 / 0", 6, "nothing is divided by 0", "Divide by 1 or more."),
    ("? / 4 = 3", 1, "a missing number in a quotient is not worked here", "Write a sum or a difference."),
    (
        "21 r 3",
        1,
        "a remainder belongs to a number that is divided",
        "Write what is divided first: 87 ÷ 4 = 21 r 3.",
    ),
    (
        "8 ÷ 2 ft",
        1,
        "a number divided by a length is not worked here",
        "Divide by a plain number, or by a measure of the same kind.",
    ),
    ("7 2/ - 3", 6, "a denominator is missing: here there is “-”", AS_IN),
    (
        "7 2/1001",
        5,
        "so many equal parts are not worked here: here there is “1001”",
        "Use a denominator of 1000 or less; grade 4 uses 2 to 12 and 100.",
    ),
    ("3 and 5", 7, "a fraction is missing after “and”: here there is “5”", "Write 3 and 5/6."),
    ("3 and", 6, "a fraction is missing after “and”: here the line ends", "Write 3 and 5/6."),
    ("(3 + 2)/(1 - 1)", 1, "a whole cannot be cut into 0 equal parts", "Change the denominator."),
    # the problem breaks off
    ("", 1, "a number is missing: here the line ends", AS_IN),
    ("   ", 4, "a number is missing: here the line ends", AS_IN),
    ("3 5/6 -", 8, "a number is missing: here the line ends", AS_IN),
    ("- 3", 1, "a number is missing: here there is “-”", AS_IN),
    ("3 -- 2", 4, "a number is missing: here there is “-”", AS_IN),
    ("= 4", 1, "a number is missing: here there is “=”", AS_IN),
    ("four", 1, "a number is missing: here there is “four”", AS_IN),
    ("5 <= 6", 4, "a number is missing: here there is “=”", AS_IN),
    # two things are asked at once
    (
        "3/4 = ?/8 = ?/12",
        5,
        "a problem asks for one number, and here two are asked for",
        "Type each as a problem of its own: 3/4 = ?/8, and below it 3/4 = ?/12.",
    ),
    (
        "1/3 and 1/4 with one denominator",
        18,
        "a problem asks for one number, and here two are asked for",
        "Type each as a problem of its own: 1/3 = ?/12, and below it 1/4 = ?/12.",
    ),
    (
        "write 2/3 and 5/6 with a common denominator",
        26,
        "a problem asks for one number, and here two are asked for",
        "Type the one that is to be changed: 2/3 = ?/6.",
    ),
    (
        "the common denominator of fractions",
        5,
        "a problem asks for one number, and here two are asked for",
        "Type each as a problem of its own: 1/3 = ?/12, and below it 1/4 = ?/12.",
    ),
    ("3/4 = ?/8 = 6/8", 11, "this does not belong to the problem: here there is “=”", BETWEEN),
    # a sign is missing, or something is left over
    (
        "7 2 6",
        3,
        "two numbers stand side by side: here there is “2”",
        "Put a sign between them, or write a fraction: 7 2/6.",
    ),
    ("7 2/6 3 5/6", 7, "a sign is missing: here there is “3”", BETWEEN),
    ("3)", 2, "a sign is missing: here there is “)”", BETWEEN),
    ("3 (2)", 3, "a sign is missing: here there is “(”", BETWEEN),
    ("1e5", 2, "a sign is missing: here there is “e”", BETWEEN),
    ("2 = 2 = 2", 7, "this does not belong to the problem: here there is “=”", BETWEEN),
    ("(3", 3, "a bracket is not closed: here the line ends", "Add the missing )."),
    # signs that have no place, and what a screen does not show
    ("\N{SLIGHTLY SMILING FACE}", 1, "this sign has no place in a problem: slightly smiling face", TYPE),
    ("7 \N{PARTY POPPER} 2", 3, "this sign has no place in a problem: party popper", TYPE),
    ("7 2/6;", 6, "this sign has no place in a problem: semicolon", TYPE),
    ("5.", 2, "this sign has no place in a problem: full stop", TYPE),
    ("1,2", 2, "this sign has no place in a problem: comma", COMMA),
    ("7\N{SUPERSCRIPT TWO}", 2, "this sign has no place in a problem: superscript two", TYPE),
    ("7 \N{ZERO WIDTH SPACE}- 3", 3, "a hidden sign stands here: zero width space", DELETE),
    ("7 \N{LEFT-TO-RIGHT MARK}- 3", 3, "a hidden sign stands here: left-to-right mark", DELETE),
    ("\N{RIGHT-TO-LEFT MARK}7", 1, "a hidden sign stands here: right-to-left mark", DELETE),
    ("7 \N{RIGHT-TO-LEFT OVERRIDE}- 3", 3, "a hidden sign stands here: right-to-left override", DELETE),
    ("7 \N{POP DIRECTIONAL ISOLATE}", 3, "a hidden sign stands here: pop directional isolate", DELETE),
    ("\N{ZERO WIDTH NO-BREAK SPACE}7", 1, "a hidden sign stands here: zero width no-break space", DELETE),
    ("7\x00", 2, "a hidden sign stands here: character number 0", DELETE),
    ("7\ud800", 2, "a hidden sign stands here: character number 55296", DELETE),
    (
        "7 - \N{ARABIC-INDIC DIGIT THREE}",
        5,
        "text that runs from right to left cannot be read here (arabic-indic digit three)",
        "Type the problem from left to right with the digits 0 to 9.",
    ),
    (
        "\N{HEBREW LETTER ALEF}",
        1,
        "text that runs from right to left cannot be read here (hebrew letter alef)",
        "Type the problem from left to right with the digits 0 to 9.",
    ),
    # too much of anything
    (
        LONG,
        1,
        f"this line has 10000 characters; a problem has at most {LONGEST_TEXT}",
        "Cut the line into shorter problems.",
    ),
    (
        "3 - " + "1" * 1900,
        5,
        "this number has 1900 digits; at most 9 are read",
        "Use a smaller number: grade 4 stays at or below 1,000,000.",
    ),
    (
        "(" * 13 + "1" + ")" * 13,
        14,
        "so many brackets cannot be read: here there is “1”",
        "Use at most 12 brackets inside one another.",
    ),
    # what does not go together, or lies below zero
    (
        "5 ft + 2",
        1,
        "a length and a number cannot be put together",
        "Give every number the same unit, or leave all units off.",
    ),
    (
        "5 lb - 2 in",
        1,
        "a weight and a length cannot be put together",
        "Give every number the same unit, or leave all units off.",
    ),
    (
        "5 ft ? 2",
        1,
        "a length and a number cannot be compared",
        "Give both numbers the same unit, or leave the unit off both.",
    ),
    (
        "5 ft = 2 + ?",
        1,
        "the numbers of this equation measure different things",
        "Give every number the same unit, or leave all units off.",
    ),
    ("5 ft x 2 ft", 1, "a length times a length is not worked here", "Multiply by a plain number."),
    ("(5 ft)/2", 1, "numerator and denominator are plain numbers", "Leave the units off."),
    (
        "2 - 3",
        1,
        "the result is below zero: more is taken away than there is",
        "Put the larger number first. Numbers below zero come in grade 6.",
    ),
    # measures and places out of order
    (
        "5 in 2 ft",
        8,
        "the smaller unit comes second, and measures the same thing: here there is “ft”",
        "Write 5 ft 2 in.",
    ),
    (
        "5 ft 2 oz",
        8,
        "the smaller unit comes second, and measures the same thing: here there is “oz”",
        "Write 5 ft 2 in.",
    ),
    ("5 ft 2", 6, "a sign is missing: here there is “2”", BETWEEN),
    (
        "5 ft and 2",
        11,
        "a unit is missing after the number: here the line ends",
        "Write a measure as in 5 ft 2 in.",
    ),
    (
        "12 ones 4 tens",
        11,
        "places go from the largest to the smallest: here there is “tens”",
        "Write 4 tens 12 ones.",
    ),
    ("five ft", 1, "how many of the unit is missing: here there is “five”", AS_IN),
    # missing numbers
    (
        "?",
        1,
        "a missing number has no place in this problem",
        "Write ? only once, in an equation: 7 2/6 = 6 ?/6.",
    ),
    (
        "4 - ? + 1",
        5,
        "a missing number has no place in this problem",
        "Write ? only once, in an equation: 7 2/6 = 6 ?/6.",
    ),
    (
        "(1 + ?) = 3",
        6,
        "a missing number has no place in this problem",
        "Write ? only once, in an equation: 7 2/6 = 6 ?/6.",
    ),
    ("? + ? = 4", 5, "only one number can be missing", "Leave one ? and fill in the others."),
    ("6 ?/? = 7", 5, "only one part of a number can be missing", "Leave one ? and fill in the others."),
    ("3 x ? = 6", 5, "a missing number in a product is not worked here", "Write a sum or a difference."),
    ("(2)/? = 6", 5, "a missing number is not read under a worked numerator", "Write ?/6 or 6 ?/6."),
    (
        "7 2/6 = 6 ?/7",
        1,
        "no whole number in the place of ? makes this true",
        "Change one of the other numbers.",
    ),
    (
        "3 - ? = 5",
        1,
        "no whole number in the place of ? makes this true",
        "Change one of the other numbers.",
    ),
)


@pytest.mark.parametrize(("typed", "column", "what", "remedy"), REFUSED, ids=range(len(REFUSED)))
def test_what_is_refused(typed: str, column: int, what: str, remedy: str) -> None:
    """What is wrong, where, and what to do next; never a crash."""
    with pytest.raises(ReadingError) as refused:
        read_statement(typed)
    error = refused.value
    assert (error.what, error.line, error.column, error.remedy) == (what, 1, column, remedy)
    assert f"(line 1, column {column})" in str(error)


def test_a_place_is_counted_from_where_the_text_begins() -> None:
    """A problem that stands in a file is refused with the file's line and column."""
    with pytest.raises(ReadingError) as refused:
        read_statement("7 2/0", line=8, column=5)
    assert (refused.value.line, refused.value.column) == (8, 9)


def test_brackets_as_deep_as_allowed_are_read() -> None:
    """Twelve brackets inside one another, and the limit is far from Python's own."""
    assert read_statement("(" * DEEPEST + "1" + ")" * DEEPEST) == Question(whole(1))
    assert sys.getrecursionlimit() > 20 * DEEPEST
    with pytest.raises(ReadingError, match=r"^so many brackets cannot be read"):
        read_statement("(" * (LONGEST_TEXT - 1))


def test_the_longest_line_is_read() -> None:
    """Two thousand characters and not one more."""
    row = "1+" * 999 + "10"
    assert len(row) == LONGEST_TEXT
    assert value(read_expression(row)) == 1009
    with pytest.raises(ReadingError, match=r"^this line has 2001 characters"):
        read_expression(row + "0")
