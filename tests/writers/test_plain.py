"""A working as plain lines."""

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import strategy_named
from onewhole.working.work import work
from onewhole.writers.plain import check_lines, working_lines

WORDS = ClassWords()


def test_a_whole_working() -> None:
    """The strategy's name, each line with its reason, asides in brackets, facts under their line, checks."""
    working = work(read_statement("52 - 27"), REGROUP_FIRST)
    title, problem, *lines = working_lines(working, WORDS)
    assert title == "Regroup a ten"
    assert problem.strip() == "52 - 27"
    shown = [line for line in lines if line.strip().startswith(("=", "(="))]
    assert len(shown) == len(working.lines) - 1
    assert [line.strip().startswith("(=") for line in shown] == [line.aside for line in working.lines[1:]]
    assert any(
        line.strip() == "For 12 - 7, go by way of the ten: 12 - 2 = 10, then 10 - 5 = 5." for line in lines
    )
    assert lines[-3:] == [f"  {line}" for line in check_lines(working, ClassWords())]


def test_the_three_checks() -> None:
    """The estimate, adding back, and another way that agrees, each a line."""
    working = work(read_statement("7 2/6 - 3 5/6"), REGROUP_FIRST)
    assert list(check_lines(working, ClassWords())) == [
        "Estimate: 7 1/2 - 4 = 3 1/2, so at least 3 1/4 and at most 3 3/4.",
        "Check: 3 3/6 + 3 5/6 = 7 2/6",
        "Another way (Count up from the smaller number): 3 3/6",
    ]


@pytest.mark.parametrize(
    ("problem", "strategy", "last"),
    [
        ("5/6 ? 7/8", "regroup_first", "5/6 < 7/8"),
        ("7 2/6 - 3 5/6", "to_fractions", "= 3 3/6"),
        ("9 - ? = 3 1/2", "regroup_first", "5 1/2 = ?"),
    ],
)
def test_what_a_pupil_writes(problem: str, strategy: str, last: str) -> None:
    """A comparison and an equation stand as they are; other lines after the first begin with =."""
    working = work(read_statement(problem), strategy_named(strategy))
    lines = working_lines(working, WORDS, brief=True)
    assert lines[0] == problem
    assert lines[-1] == last


def test_no_line_ends_with_a_blank() -> None:
    """So that sessions and text files compare."""
    for problem in ("7 2/6 - 3 5/6", "5 ft 2 in - 2 ft 7 in", "7 2/6 = 6 ?/6"):
        lines = working_lines(work(read_statement(problem), REGROUP_FIRST), WORDS)
        assert [line for line in lines if line != line.rstrip()] == []


@pytest.mark.parametrize(
    ("typed", "blank", "answer"),
    [("304 - 128", 1, "   _  7  6"), ("304 - 128", 2, "   _  _  6"), ("304 - 128", 9, "   _  _  _")],
)
def test_columns_to_finish_leave_their_last_digits_open(typed: str, blank: int, answer: str) -> None:
    """What is written last stands on the left; the rest of the columns stays."""
    working = work(read_statement(typed), COLUMNS)
    whole = working_lines(working, ClassWords(), brief=True)
    faded = working_lines(working, ClassWords(), blank=blank)
    assert faded[:-1] == whole[:-1]
    assert faded[-1] == answer
