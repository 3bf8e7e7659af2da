import pytest

from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Comparison
from onewhole.working.comparing import work_comparison
from onewhole.working.questions import NotWorkedError
from onewhole.working.reason import Reason
from onewhole.working.reasons.comparing import CountDecides, PlaceDecides, WholesDecide
from onewhole.working.working import Working


def worked(typed: str) -> Working:
    """Work a comparison."""
    asked = read_statement(typed)
    assert isinstance(asked, Comparison)
    return work_comparison(asked)


@pytest.mark.parametrize(
    ("typed", "lines", "because"),
    [
        ("5/6 ? 7/8", ("20/24 ? 21/24", "20 ? 21", "5/6 < 7/8"), CountDecides),
        ("3 1/2 ? 2 7/8", ("3 1/2 > 2 7/8",), WholesDecide),
        ("3 9/8 ? 4 1/8", ("33/8 ? 33/8", "33 ? 33", "3 9/8 = 4 1/8"), CountDecides),
        ("52 ? 27", ("52 > 27",), PlaceDecides),
        (
            "5.2 ? 5.25",
            ("5.20 ? 5.25", "520 hundredths ? 525 hundredths", "520 ? 525", "5.2 < 5.25"),
            CountDecides,
        ),
        ("5 ft ? 61 in", ("60 in ? 61 in", "60 ? 61", "5 ft < 61 in"), CountDecides),
        (
            "3 4/5 ? 3 4/6",
            ("3 24/30 ? 3 20/30", "114/30 ? 110/30", "114 ? 110", "3 4/5 > 3 4/6"),
            CountDecides,
        ),
    ],
)
def test_line_by_line(typed: str, lines: tuple[str, ...], because: type[Reason]) -> None:
    """Wholes decide where they can; else pieces of one size are counted. 4.NF.A.2, CCSSM (2010)."""
    working = worked(typed)
    assert [line.says for line in working.lines[1:]] == [read_statement(line) for line in lines]
    last = working.lines[-1]
    assert type(last.because) is because


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
