import pytest

from onewhole.statements.reading import read_quantity, read_statement
from onewhole.statements.statement import Comparison, NumberRow, Ordering
from onewhole.working.line import keeps
from onewhole.working.ordering import work_ordering
from onewhole.working.reason import Reason
from onewhole.working.reasons.comparing import AsManyMissing
from onewhole.working.reasons.ordering import (
    AllInOneUnit,
    AllOfOneSize,
    LargerPiecesMore,
    NeighborsCompared,
    OnlyCounts,
    WholesAllDiffer,
    WholesThenPieces,
)
from onewhole.working.reasons.renaming import SamePlaces
from onewhole.working.working import Working


def worked(typed: str) -> Working:
    """Put numbers in order."""
    asked = read_statement(typed)
    assert isinstance(asked, Ordering)
    return work_ordering(asked)


def row(typed: str) -> tuple[object, ...]:
    """Read numbers in a row."""
    return tuple(map(read_quantity, typed.split("; ")))


@pytest.mark.parametrize(
    ("typed", "rows", "tells"),
    [
        ("order 3/8, 1/8, 7/8", ["1/8; 3/8; 7/8"], OnlyCounts),
        ("order 3/8, 3/4, 3/5", ["3/8; 3/5; 3/4"], LargerPiecesMore),
        ("order 2 1/2, 1 3/4, 3", ["1 3/4; 2 1/2; 3"], WholesAllDiffer),
        ("order 2 5/8, 1 3/8, 2 1/8", ["1 3/8; 2 1/8; 2 5/8"], WholesThenPieces),
        ("order 2 5/8, 1, 2 1/8", ["1; 2 1/8; 2 5/8"], WholesThenPieces),
        ("order 3/4, 1/4, 1", ["1/4; 3/4; 1"], WholesThenPieces),
        ("order 5/6, 7/8", ["5/6; 7/8"], AsManyMissing),
        ("order 2/3, 1/2, 3/4", ["1/2; 2/3", "2/3; 3/4", "1/2; 2/3; 3/4"], NeighborsCompared),
        ("order 2/3, 1/2, 3/4 from greatest", ["3/4; 2/3", "2/3; 1/2", "3/4; 2/3; 1/2"], NeighborsCompared),
        ("order 3/5, 2/3, 7/10", ["18/30; 20/30; 21/30", "3/5; 2/3; 7/10"], OnlyCounts),
        ("order 1/2, 2/4, 3/4", ["2/4; 2/4; 3/4", "1/2; 2/4; 3/4"], OnlyCounts),
        ("order 2 3/4, 2 5/8, 1", ["2 6/8; 2 5/8; 1", "1; 2 5/8; 2 3/4"], WholesThenPieces),
        ("order 9/4, 2 1/2, 2", ["2 1/4; 2 2/4; 2", "2; 9/4; 2 1/2"], WholesThenPieces),
        ("order 0.5, 3/4", ["10/20; 15/20", "0.5; 3/4"], OnlyCounts),
        ("order 345, 354, 1205", ["345; 354", "354; 1205", "345; 354; 1205"], NeighborsCompared),
        ("order 0.5, 0.45", ["0.45; 0.5"], None),
        ("order 0.5, 0.50, 0.45", ["0.50; 0.50; 0.45", "0.45; 0.50", "0.50; 0.50", "0.45; 0.5; 0.50"], None),
        ("order 5 ft, 61 in", ["60 in; 61 in", "5 ft; 61 in"], OnlyCounts),
        ("order 0/4, 1/4, 0/3", ["0/4; 0/3; 1/4"], None),
    ],
)
def test_line_by_line(typed: str, rows: list[str], tells: type[Reason] | None) -> None:
    """One thing that tells all of it, else neighbors; a common denominator only where two need one."""
    working = worked(typed)
    found = [
        line.says.parts if isinstance(line.says, NumberRow) else (line.says.left, line.says.right)
        for line in working.lines[1:]
        if isinstance(line.says, NumberRow | Comparison)
    ]
    assert len(found) == len(working.lines) - 1
    assert found[-1] == row(rows[-1])
    if tells is not None:
        assert found == [row(one) for one in rows]
        assert type(working.lines[-1].because) is tells


@pytest.mark.parametrize(
    ("typed", "because"),
    [
        ("order 3/5, 2/3, 7/10", AllOfOneSize),
        ("order 0.5, 0.50, 0.45", SamePlaces),
        ("order 5 ft, 61 in", AllInOneUnit),
    ],
)
def test_why_they_are_written_another_way(typed: str, because: type[Reason]) -> None:
    """Pieces of one size, as far as one place, one unit."""
    assert type(worked(typed).lines[1].because) is because


@pytest.mark.parametrize(
    ("line", "kept"),
    [
        (NumberRow(tuple(map(read_quantity, ("2/4", "3/4", "1/4")))), True),
        (NumberRow(tuple(map(read_quantity, ("2/4", "3/4")))), False),
        (read_statement("1/4 < 1/2"), True),
        (read_statement("1/4 > 1/2"), False),
        (read_statement("1/4 < 1"), False),
        (read_statement("order 1/2, 1/4, 3/4"), True),
        (read_statement("order 1/2, 1/4, 3/4 from greatest"), False),
        (read_quantity("1/2"), False),
    ],
)
def test_what_a_line_on_the_way_keeps(line: object, kept: bool) -> None:
    """All the numbers, or two of them that are compared rightly; else a working is refused."""
    wanted = read_statement("order 1/2, 1/4, 3/4")
    assert isinstance(wanted, Ordering)
    assert isinstance(line, NumberRow | Comparison | Ordering) or not kept
    assert keeps(line, wanted.ordered.values) is kept  # type: ignore[arg-type]


def test_a_row_with_a_false_sign_keeps_nothing() -> None:
    """The amounts stand in order, and a sign between them is not true."""
    asked = read_statement("order 1/2, 2/4, 3/4")
    assert isinstance(asked, Ordering)
    false = NumberRow(asked.ordered.parts, tuple(reversed(asked.ordered.signs)))
    assert keeps(asked.ordered, asked.ordered.values)
    assert not keeps(false, asked.ordered.values)
