import pytest

from onewhole.statements.reading import read_expression
from onewhole.working.checks import Agreed, CheckError, Estimate, Undone
from onewhole.working.strategies.table import STRATEGIES
from tests.kit.worked import all_workings


def test_undoing_must_lead_back() -> None:
    """A chain that is not true cannot be made."""
    good = Undone((read_expression("3 3/6 + 3 5/6"), read_expression("6 8/6"), read_expression("7 2/6")))
    assert len(good.links) == 3
    with pytest.raises(CheckError, match=r"^undoing the working does not lead back"):
        Undone((read_expression("3 3/6 + 3 5/6"), read_expression("7 3/6")))


@pytest.mark.parametrize("typed", ["7 2/6 - 3 5/6", "2 4/5 + 1 3/5", "9 - 2 1/3 + 1 2/3 - 4", "3 h - 50 min"])
def test_every_working_has_three(typed: str) -> None:
    """An estimate, undoing, and a second strategy, never itself."""
    for key, working in all_workings(typed).items():
        assert [type(check) for check in working.checks] == [Estimate, Undone, Agreed]
        agreed = working.checks[2]
        assert isinstance(agreed, Agreed)
        assert agreed.strategy != key
        assert agreed.strategy in {strategy.key for strategy in STRATEGIES}


def test_a_longer_row_is_undone_from_the_end() -> None:
    """9 - 2 1/3 + 1 2/3 - 4 is 4 1/3; then + 4 - 1 2/3 + 2 1/3 leads back to 9."""
    for working in all_workings("9 - 2 1/3 + 1 2/3 - 4").values():
        wanted = (read_expression("4 1/3 + 4 - 1 2/3 + 2 1/3"), read_expression("9"))
        assert working.checks[1] == Undone(wanted)
