"""Several steps in which bars of fractions divide: each bar is told before the first step."""

import pytest

from onewhole.number.quantity import whole
from onewhole.statements.reading import read_statement
from onewhole.working.reasons.stepping import BarDivides, StepBegins, StepDone, WhyFirst
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work


@pytest.mark.parametrize(
    ("typed", "bars", "comes_to"),
    [
        ("3 + (20 - 8)/4", 1, 6),
        ("(20 - 8)/4 + (3 + 9)/4", 2, 6),
        ("(2 + 4)/6 x 3", 1, 3),
        ("(1 + (2 + 4)/3) x 5", 1, 15),
        ("2 + (18)/(9) + (12)/(4)", 2, 7),
    ],
)
def test_every_bar_is_written_as_a_quotient_before_the_first_step(
    typed: str, bars: int, comes_to: int
) -> None:
    """No bar is left for a step that is then said to be the last one."""
    working = work(read_statement(typed), REGROUP_FIRST)
    reasons = [line.because for line in working.lines]
    assert [isinstance(reason, BarDivides) for reason in reasons[1 : bars + 2]] == [True] * bars + [False]
    assert sum(isinstance(reason, BarDivides) for reason in reasons) == bars
    last = [r for r in reasons if isinstance(r, StepDone | StepBegins) and r.why is WhyFirst.ONLY_PART]
    assert len(last) == 1
    assert working.answer == whole(comes_to)
