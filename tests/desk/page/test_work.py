"""A typed problem worked line by line."""

from collections.abc import Callable

import pytest

from onewhole.desk.page.work import ToldUnsuitedError, as_object, told, work, work_every_way
from onewhole.notations.text import text
from onewhole.statements.tokens import ReadingError
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.questions import DoesNotSuitError
from onewhole.working.reasons.unsuited import WholeTooSmall
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.strategies.table import STRATEGIES
from onewhole.working.strategy import Strategy, fits
from onewhole.working.way import UnknownStrategyError


@pytest.mark.parametrize(
    ("problem", "answer", "strategy"),
    [
        ("52 - 27", "25", "columns"),
        ("48 + 27", "75", "columns"),
        ("7 2/6 - 3 5/6", "3 3/6", "regroup_first"),
        ("5 ft 2 in - 2 ft 7 in", "2 ft 7 in", "regroup_first"),
        ("5.2 - 2.7", "2.5", "columns"),
        ("2 4/5 + 1 3/5", "4 2/5", "units_apart"),
        ("5/6 ? 7/8", "<", "compare"),
        ("7 2/6 = 6 ?/6", "8", "find_the_missing_number"),
    ],
)
def test_without_a_strategy_it_is_the_way_that_is_taught_first(
    problem: str, answer: str, strategy: str
) -> None:
    """Columns where there are places of tens; elsewhere regrouping first for a difference, its partner for a
    sum; comparing and finding have their own way.
    """
    working = work(problem)
    found = as_object(working)
    assert (found["answer"], working.strategy) == (answer, strategy)


@pytest.mark.parametrize("strategy", STRATEGIES, ids=lambda strategy: strategy.key)
def test_every_strategy_is_found_by_key_and_by_name(strategy: Strategy) -> None:
    """Each of them works a sum or a difference, however its name is capitalised."""
    problem = "7 2/6 - 3 5/6" if fits(strategy, taken=True) else "2 4/5 + 1 3/5"
    if strategy is COLUMNS:
        problem = "304 - 128"
    asked = [work(problem, strategy=name) for name in (strategy.key, strategy.name, strategy.name.upper())]
    assert {working.strategy for working in asked} == {strategy.key}


def test_every_way_comes_to_one_answer() -> None:
    """All that suit, in the order in which they are offered, and their answers are one."""
    workings = work_every_way("7 2/6 - 3 5/6")
    order = [strategy.key for strategy in STRATEGIES]
    assert [working.strategy for working in workings] == sorted(
        (working.strategy for working in workings), key=order.index
    )
    assert {text(working.answer) for working in workings if not isinstance(working.answer, str)} == {"3 3/6"}


def test_a_strategy_that_does_not_suit_says_why_and_which_do() -> None:
    """The reason is a sentence, and the error is still the one of the room that works."""
    with pytest.raises(ToldUnsuitedError) as refused:
        work("5/6 - 2/6", strategy="from_whole")
    assert isinstance(refused.value, DoesNotSuitError)
    assert refused.value.strategy == "from_whole"
    assert isinstance(refused.value.why, WholeTooSmall)
    assert refused.value.what.endswith("does not suit this problem: 0 is not enough to take 2/6 from.")
    assert refused.value.remedy == "Strategies that suit: regroup_first, to_fractions, count_up, equal_shift."


@pytest.mark.parametrize(
    ("problem", "strategy", "error"),
    [
        ("7 2/0", None, ReadingError),
        ("7 - 2", "fly", UnknownStrategyError),
        ("1/5 + 1/5 ? 1/2", None, NotWorkedError),
    ],
)
def test_what_is_refused(problem: str, strategy: str | None, error: type[Exception]) -> None:
    """What cannot be read, a strategy that there is not, what is not worked line by line."""
    with pytest.raises(error):
        work(problem, strategy=strategy)


def test_told_in_three_lengths() -> None:
    """All that a teacher says, what a pupil writes, and the last lines left open."""
    working = work("7 2/6 - 3 5/6")
    assert len(told(working)) > len(told(working, brief=True))
    assert told(working, brief=True) == ("7 2/6 - 3 5/6", "= 6 8/6 - 3 5/6", "= 3 3/6")
    assert told(working, blank=2) == ("7 2/6 - 3 5/6", "= ____________", "= ____________")
    assert told(working, blank=9) == told(working, blank=2)


def test_the_class_has_its_own_word() -> None:
    """The word for a whole stands in the sentences, in the singular and the plural."""
    said = " ".join(told(work("7 2/6 - 3 5/6"), "strip"))
    assert "regroup one strip" in said
    assert "3 strips and 3 sixths" in said
    assert "whole" not in said.replace("Regroup one whole first", "")


def test_a_missing_number_is_told() -> None:
    """The number that was looked for stands under the working."""
    assert told(work("7 2/6 = 6 ?/6"))[-1] == "  The missing number is 8."


@pytest.mark.parametrize("typed", ["0.5 x $3.25", "2 - 5 + 4"])
@pytest.mark.parametrize("way", [work, work_every_way])
def test_what_is_read_and_not_worked_is_refused_with_its_place(
    typed: str, way: Callable[[str], object]
) -> None:
    """A part of a price, and what runs below zero: what is wrong, where it stands, what to do."""
    with pytest.raises(NotWorkedError) as refused:
        way(typed)
    assert (refused.value.line, refused.value.column) == (1, 1)
    assert refused.value.remedy
