import pytest

from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Comparison
from onewhole.working.comparing import work_comparison
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.reason import Reason
from onewhole.working.reasons.comparing import (
    AgainstHalf,
    AgainstOne,
    AsManyMissing,
    AsManyPieces,
    CountDecides,
    MoreAndLarger,
    MoreBesideWholes,
    OnlyOneIsMore,
    PiecesOfOneSize,
    PlaceDecides,
    SameNumber,
    WholesDecide,
)
from onewhole.working.working import Working


def worked(typed: str) -> Working:
    """Work a comparison."""
    asked = read_statement(typed)
    assert isinstance(asked, Comparison)
    return work_comparison(asked)


def rows(typed: str, between: tuple[str, ...], because: type[Reason]) -> None:
    """The lines between the problem and its answer, and what decides."""
    working = worked(typed)
    assert [line.says for line in working.lines[1:-1]] == [read_statement(line) for line in between]
    assert type(working.lines[-1].because) is because


@pytest.mark.parametrize(
    ("typed", "between", "because"),
    [
        ("3/8 ? 5/8", (), PiecesOfOneSize),
        ("1/3 ? 1/8", (), AsManyPieces),
        ("4/5 ? 4/7", (), AsManyPieces),
        ("9/4 ? 9/5", (), AsManyPieces),
        ("3/7 ? 1/2", (), AgainstHalf),
        ("3/7 ? 5/8", (), AgainstHalf),
        ("2/4 ? 3/6", (), AgainstHalf),
        ("7/8 ? 13/12", (), AgainstOne),
        ("3/4 ? 2 1/2", (), AgainstOne),
        ("7/8 ? 1", (), AgainstOne),
        ("5/6 ? 7/8", (), AsManyMissing),
        ("5/8 ? 7/10", (), AsManyMissing),
        ("5/6 ? 4/7", (), MoreAndLarger),
        ("4/7 ? 5/6", (), MoreAndLarger),
        ("3/4 ? 5/8", ("6/8 ? 5/8",), CountDecides),
        ("1/2 ? 2/4", ("2/4 ? 2/4",), SameNumber),
        ("3/10 ? 27/100", ("30/100 ? 27/100",), CountDecides),
        ("2/3 ? 4/7", ("4/6 ? 4/7",), AsManyPieces),
        ("3/5 ? 2/3", ("9/15 ? 10/15",), CountDecides),
        ("4/6 ? 6/9", ("12/18 ? 12/18",), SameNumber),
        ("0 ? 3/4", (), OnlyOneIsMore),
        ("0/4 ? 0/3", (), SameNumber),
        ("3/4 ? 3/4", (), SameNumber),
    ],
)
def test_fractions(typed: str, between: tuple[str, ...], because: type[Reason]) -> None:
    """No common denominator where something simpler serves. 3.NF.A.3.d and 4.NF.A.2, CCSSM (2010)."""
    rows(typed, between, because)


@pytest.mark.parametrize(
    ("typed", "between", "because"),
    [
        ("3 1/2 ? 2 7/8", (), WholesDecide),
        ("2 3/4 ? 2 5/8", ("3/4 ? 5/8", "6/8 ? 5/8"), CountDecides),
        ("2 1/3 ? 2", (), MoreBesideWholes),
        ("2 ? 2 1/3", (), MoreBesideWholes),
        ("7/3 ? 2", ("2 1/3 ? 2",), MoreBesideWholes),
        ("11/4 ? 2 1/2", ("2 3/4 ? 2 1/2", "3/4 ? 1/2"), AgainstHalf),
        ("3 9/8 ? 4 1/8", ("4 1/8 ? 4 1/8",), SameNumber),
        ("8/4 ? 6/3", ("2 ? 2",), SameNumber),
        ("4 0/3 ? 4", (), SameNumber),
        ("3 4/5 ? 3 4/6", ("4/5 ? 4/6",), AsManyPieces),
        ("3.5 ? 3 5/10", ("3 5/10 ? 3 5/10",), SameNumber),
        ("0.7 ? 3/4", ("7/10 ? 3/4", "14/20 ? 15/20"), CountDecides),
    ],
)
def test_mixed_numbers(typed: str, between: tuple[str, ...], because: type[Reason]) -> None:
    """Wholes decide where they differ, else the fractions beside them do. Common practice, no source."""
    rows(typed, between, because)


@pytest.mark.parametrize(
    ("typed", "between", "because"),
    [
        ("345 ? 354", (), PlaceDecides),
        ("1000 ? 999", (), PlaceDecides),
        ("345 ? 345", (), SameNumber),
        ("12.5 ? 13.1", (), WholesDecide),
        ("3 ? 2.9", (), WholesDecide),
        ("0.7 ? 0.65", (), PlaceDecides),
        ("5.2 ? 5.25", ("5.20 ? 5.25",), PlaceDecides),
        ("0.50 ? 0.5", ("0.50 ? 0.50",), SameNumber),
        ("3 ? 3.0", ("3.0 ? 3.0",), SameNumber),
        ("4 tens 12 ones ? 52", ("52 ones ? 52 ones",), SameNumber),
        ("5 ft 2 in ? 5 ft 11 in", (), PlaceDecides),
        ("5 ft ? 5 ft 2 in", (), PlaceDecides),
        ("5 ft 2 in ? 5 ft 2 in", (), SameNumber),
        ("5 ft ? 61 in", ("60 in ? 61 in",), CountDecides),
        ("1 ft 14 in ? 2 ft 2 in", ("26 in ? 26 in",), SameNumber),
    ],
)
def test_places_and_units(typed: str, between: tuple[str, ...], because: type[Reason]) -> None:
    """From the largest place or unit on. 4.NBT.A.2 and 4.NF.C.7, CCSSM (2010)."""
    rows(typed, between, because)


@pytest.mark.parametrize(
    ("typed", "place", "first", "second"),
    [("345 ? 354", 10, 4, 5), ("1000 ? 999", 1000, 1, 0), ("10 ? 9", 10, 1, 0)],
)
def test_the_place_that_decides(typed: str, place: int, first: int, second: int) -> None:
    """The largest place in which the digits differ; where one number is shorter, it has none of it."""
    because = worked(typed).lines[-1].because
    assert isinstance(because, PlaceDecides)
    assert (int(because.place.size), because.first, because.second) == (place, first, second)


def test_a_wrong_sign_is_put_right() -> None:
    """What was asked keeps its sign on the first line, and the last line has the true one."""
    working = worked("3/4 < 2/3")
    assert working.lines[0].says == read_statement("3/4 ? 2/3")
    assert working.lines[-1].says == read_statement("3/4 > 2/3")


def test_only_single_numbers_are_compared_line_by_line() -> None:
    """A sum on one side is worked out first."""
    with pytest.raises(NotWorkedError) as refused:
        worked("1 + 2 ? 4")
    assert (
        str(refused.value) == "only two single numbers are compared line by line. Work out each side first."
    )
