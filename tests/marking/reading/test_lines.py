"""Lines of a working typed into a cell."""

import pytest

from onewhole.findings.in_answer import Tier
from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.lines import line_patterns
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.misconceptions.catalogue import shows
from onewhole.notations.text import text
from onewhole.statements.reading import read_chains, read_statement
from tests.kit.answers import TWELVE, one_mark
from tests.kit.odds import known

PROBLEM = "9 5/8 - 4 6/8"
ASKED = known((PROBLEM, "7 2/6 = 6 ?/6"))[0]


@pytest.mark.parametrize(
    ("lines", "patterns"),
    [
        ("9 5/8 - 4 6/8 = 9 13/8 - 4 6/8 = 5 7/8", ("A02",)),
        ("9 5/8 - 4 6/8 = 9 13/8 - 4 6/8 = 5 6/8", ("A02",)),
        ("9 13/8 - 4 6/8 = 5 7/8", ("A02",)),
        ("9 13/8 - 4 6/8 = 5 6/8", ()),
        ("8 8/8 - 4 6/8 = 4 2/8", ("A06",)),
        ("9 5/8 - 4 6/8 = 8 13/8 - 4 6/8 = 4 7/8", ()),
        ("9 5/8 - 4 6/8 = 5 1/8", ()),
        ("9 5/8 - 4 6/8 = 8 13/8 - 4 6/8 = 5 7/8", ()),
        ("9 - 4 = 5 + 1/8 = 5 1/8", ()),
        ("9 9/7 - 1 = 8 2/7", ()),
    ],
)
def test_the_first_false_line_names_its_patterns(lines: str, patterns: tuple[str, ...]) -> None:
    """Only a false side before the answer does; one that runs on, is true or of a part names none."""
    assert line_patterns(ASKED[0], read_chains(lines)[0]) == patterns


def test_lines_of_another_sort_of_problem_name_nothing() -> None:
    """A missing number is not worked line by line."""
    assert line_patterns(ASKED[1], read_chains("7 2/6 = 6 12/6 = 6 8/6")[0]) == ()


def test_a_cell_with_lines_is_answered_by_its_last_side() -> None:
    """Kept as typed; the verdict is that of the last side."""
    cell = "9 5/8 - 4 6/8 = 8 13/8 - 4 6/8\n= 4 7/8"
    found = one_mark(PROBLEM, cell)
    assert (found.verdict, found.written.text) == (Verdict.RIGHT, cell)
    assert found.written.chain is not None
    assert one_mark(PROBLEM, "= 8 13/8 - 4 6/8 = 4 7/8").verdict is Verdict.RIGHT


def test_a_wrong_cell_with_lines_has_the_patterns_of_its_line() -> None:
    """Though the answer, after one more slip, fits something else or nothing."""
    found = one_mark(PROBLEM, "9 5/8 - 4 6/8 = 9 13/8 - 4 6/8 = 5 1/8")
    assert (found.verdict, found.patterns, found.tier) == (Verdict.WRONG, ("A02",), Tier.LINE)
    assert one_mark(PROBLEM, "5 1/8").patterns == ("A01",)
    by_answer = one_mark(PROBLEM, "9 5/8 - 4 6/8 = 5 1/8")
    assert (by_answer.patterns, by_answer.tier) == (("A01",), Tier.EXACT)


@pytest.mark.parametrize(
    "cell", ["9 5/8 - 4 6/8 = 8 13/8 - 4 6/8", "9 - 4 = 5\n13/8 - 6/8 = 7/8", "=2+3", "5 ="]
)
def test_lines_without_one_answer_cannot_be_read(cell: str) -> None:
    """A working that stops early, two workings at once, a formula: kept, with the reason."""
    found = read_written(cell)
    assert isinstance(found.read, Unreadable)
    assert found.text == cell
    assert found.chain is None


def test_the_reason_for_a_working_that_stops_is_told() -> None:
    """The teacher is told what is missing."""
    read = read_written("9 5/8 - 4 6/8 = 8 13/8 - 4 6/8").read
    assert isinstance(read, Unreadable)
    assert read.why.startswith("The working stops before its answer.")


@pytest.mark.parametrize("typed", TWELVE)
def test_every_pattern_is_named_by_its_own_working(typed: str) -> None:
    """What a pattern writes line by line fits that pattern, unless its only false side is the answer."""
    asked = known((typed,))[0][0]
    for slip in shows(read_statement(typed)):
        if slip.false_at is None or slip.false_at >= len(slip.lines) - 1 or slip.pattern in {"A32", "A33"}:
            continue
        [chain] = read_chains(" = ".join(text(line.says) for line in slip.lines))
        if chain.runs_on(chain.first_false() or 0):
            continue
        assert slip.pattern in line_patterns(asked, chain)
        written = read_written(" = ".join(text(line.says) for line in slip.lines))
        assert slip.pattern in mark(asked, written).patterns
