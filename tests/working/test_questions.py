import pytest

from onewhole.notations.text import text
from onewhole.number.quantity import whole
from onewhole.statements.expression import WithRemainder
from onewhole.statements.reading import read_expression, read_statement
from onewhole.statements.statement import Comparison, MissingNumber, Question
from onewhole.working.line import Line
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.questions import (
    SECOND_ROADS,
    DoesNotSuitError,
    for_question,
    suiting,
    unsuited,
    work_question,
)
from onewhole.working.reasons.regrouping import AreWorth, OpensToMatch, PutTogether
from onewhole.working.reasons.unsuited import (
    AllOnesAlready,
    FilledNotRound,
    NoColumns,
    NoShiftNeeded,
    NothingLacking,
    NothingToSetAside,
    NoWholesToTake,
    OtherOperation,
    ShiftNoEasier,
    TooLittleToGive,
    Unsuited,
    WholeTooSmall,
)
from onewhole.working.strategies.table import strategy_named
from onewhole.working.working import Working
from tests.kit.worked import all_workings, question, tried


def says(typed: str, key: str) -> list[object]:
    """What stands on the lines after the problem."""
    found = tried(question(typed), strategy_named(key))
    assert isinstance(found, Working)
    return [line.says for line in found.lines[1:]]


def read(*lines: str) -> list[object]:
    """The same, typed."""
    return [read_expression(line) for line in lines]


@pytest.mark.parametrize(
    ("typed", "keys"),
    [
        ("7 2/6 - 3 5/6", "regroup_first wholes_first to_fractions count_up from_whole equal_shift"),
        ("2 4/5 + 1 3/5", "to_fractions units_apart make_a_whole jump_on"),
        ("4 - 1 3/8", "regroup_first wholes_first to_fractions count_up equal_shift"),
        ("5 3/8 - 5/8", "regroup_first to_fractions count_up from_whole equal_shift"),
        ("5 3/8 - 2", "regroup_first wholes_first to_fractions count_up from_whole"),
        ("2/6 - 1/6", "regroup_first to_fractions count_up equal_shift"),
        ("304 - 128", "columns regroup_first wholes_first count_up from_whole"),
        ("304 - 198", "columns regroup_first wholes_first count_up from_whole equal_shift"),
        ("54 + 27", "columns units_apart make_a_whole jump_on"),
        ("4567 + 3789", "columns units_apart"),
        ("1000000 - 345678", "columns regroup_first"),
        ("12.05 - 3.8", "columns regroup_first to_fractions equal_shift"),
        ("1.8 + 2.5", "columns to_fractions units_apart make_a_whole jump_on"),
        ("5 - 3", "regroup_first count_up"),
        ("2 + 3", "units_apart jump_on"),
        ("3 - 1 + 2", "regroup_first count_up units_apart jump_on"),
        ("5/3", "units_apart"),
    ],
)
def test_which_strategies_suit(typed: str, keys: str) -> None:
    """In the order in which they are offered."""
    assert [strategy.key for strategy in suiting(question(typed))] == keys.split()


@pytest.mark.parametrize(
    ("typed", "key", "why"),
    [
        ("2 + 3", "regroup_first", OtherOperation),
        ("7 2/6 - 3 5/6", "make_a_whole", OtherOperation),
        ("304 - 128", "to_fractions", AllOnesAlready),
        ("5 3/8 - 5/8", "wholes_first", NoWholesToTake),
        ("4 - 1 3/8", "from_whole", NothingToSetAside),
        ("7 2/6 - 7 1/6", "from_whole", WholeTooSmall),
        ("5 3/8 - 2", "equal_shift", NoShiftNeeded),
        ("3 + 1 2/5", "make_a_whole", NothingLacking),
        ("3 1/5 + 2/5", "make_a_whole", TooLittleToGive),
        ("7 2/6 - 3 5/6", "columns", NoColumns),
        ("5 ft 2 in + 7 in", "columns", NoColumns),
        ("9 + 8", "columns", NoColumns),
        ("4006 - 1278", "equal_shift", ShiftNoEasier),
        ("4567 + 3789", "make_a_whole", FilledNotRound),
    ],
)
def test_a_strategy_that_does_not_suit_says_why(typed: str, key: str, why: type[Unsuited]) -> None:
    """As a reason with its numbers, and in words for whoever chose it."""
    strategy = strategy_named(key)
    reason = unsuited(question(typed), strategy)
    assert reason is not None
    assert type(reason) is why
    with pytest.raises(DoesNotSuitError) as refused:
        work_question(question(typed), strategy)
    assert (refused.value.strategy, refused.value.why) == (key, reason)
    assert str(refused.value) == (
        f"“{strategy.name}” does not suit this problem. "
        "Choose another strategy, or all of them to see which suit."
    )


@pytest.mark.parametrize("typed", ["5 x 1/4 x 3", "(44 - 23)/6", "5 - (2 + 1)"])
def test_several_operations_are_worked_in_steps(typed: str) -> None:
    """Products of three, worked fractions and brackets."""
    assert next(way.key for way in suiting(question(typed))) == "step_by_step"


def test_a_remainder_alone_is_not_worked() -> None:
    """What a pupil writes is no problem."""
    with pytest.raises(NotWorkedError) as refused:
        suiting(Question(WithRemainder(whole(21), whole(3), whole(4))))
    assert str(refused.value) == (
        "only sums, differences, products and quotients of two numbers are worked line by line. "
        "Write one such as 7 2/6 - 3 5/6, 3 x 1 2/5 or 87 / 4."
    )


def test_no_row_runs_below_zero() -> None:
    """2 - 5 + 4 would be below zero on the way."""
    with pytest.raises(NotWorkedError, match=r"^from left to right more is taken away than there is"):
        suiting(Question(read_expression("2 - 5 + 4")))


@pytest.mark.parametrize(
    ("typed", "taught", "chosen"),
    [
        ("7 2/6 - 3 5/6", "regroup_first", "regroup_first"),
        ("2 4/5 + 1 3/5", "regroup_first", "units_apart"),
        ("2 4/5 + 1 3/5", "count_up", "jump_on"),
        ("2 4/5 + 1 3/5", "equal_shift", "make_a_whole"),
        ("7 2/6 - 3 5/6", "make_a_whole", "equal_shift"),
        ("2 + 3", "equal_shift", "units_apart"),
        ("4 - 1 3/8", "from_whole", "regroup_first"),
        ("52 - 27", "columns", "columns"),
        ("52 + 27", "columns", "columns"),
        ("7 2/6 - 3 5/6", "columns", "regroup_first"),
        ("2 4/5 + 1 3/5", "columns", "units_apart"),
        ("5 ft 2 in + 11 in", "columns", "units_apart"),
        ("4006 - 1278", "equal_shift", "columns"),
        ("4006 - 1278", "count_up", "columns"),
        ("52 - 27", "regroup_first", "regroup_first"),
    ],
)
def test_the_strategy_for_a_class(typed: str, taught: str, chosen: str) -> None:
    """The taught one, or its partner for the other operation, or the first that suits."""
    assert for_question(question(typed), strategy_named(taught)).key == chosen


def test_unlike_denominators_are_renamed_first() -> None:
    """5.NF.A.1, CCSSM (2010): pieces of one size, each piece cut again; then as taught."""
    assert says("3 3/8 - 2 5/6", "regroup_first") == read(
        "(3 + (3 x 3)/(8 x 3)) - (2 + (5 x 4)/(6 x 4))",
        "3 9/24 - 2 20/24",
        "2 + 1 + 9/24 - 2 20/24",
        "2 + 24/24 + 9/24 - 2 20/24",
        "2 33/24 - 2 20/24",
        "(2 - 2) + (33/24 - 20/24)",
        "13/24",
    )


def test_a_number_that_has_the_pieces_already_stays_as_it_is() -> None:
    """4 3/5 - 3 4/10: only the fifths are cut again."""
    assert says("4 3/5 - 3 4/10", "regroup_first")[:2] == read(
        "(4 + (3 x 2)/(5 x 2)) - 3 4/10", "4 6/10 - 3 4/10"
    )


def test_decimals_get_the_same_places() -> None:
    """5.2 - 2.75 is 5.20 - 2.75."""
    assert says("5.2 - 2.75", "regroup_first")[0] == read_expression("5.20 - 2.75")


def test_a_whole_minus_a_mixed_number() -> None:
    """4 - 1 3/8 opens one of the 4."""
    assert says("4 - 1 3/8", "regroup_first") == read(
        "3 + 1 - 1 3/8", "3 + 8/8 - 1 3/8", "3 8/8 - 1 3/8", "(3 - 1) + (8/8 - 3/8)", "2 5/8"
    )


def test_one_whole_minus_a_fraction_keeps_its_middle_line() -> None:
    """1 - 3/8: the pupil writes 8/8 - 3/8."""
    found = all_workings("1 - 3/8")["regroup_first"]
    assert [line.says for line in found.brief()] == read("1 - 3/8", "8/8 - 3/8", "5/8")


def test_fraction_parts_greater_than_one_on_entry() -> None:
    """4 - 1 4/3 opens two wholes, one after the other; 3 1/2 - 2 3/2 comes out as 0."""
    brief = [line.says for line in all_workings("4 - 1 4/3")["regroup_first"].brief()]
    assert brief == read("4 - 1 4/3", "3 3/3 - 1 4/3", "2 6/3 - 1 4/3", "1 2/3")
    assert {working.answer for working in all_workings("3 1/2 - 2 3/2").values()} == set(read("0"))


def test_too_few_wholes_written_are_put_together_first() -> None:
    """1 5/3 - 2 1/3 is 2 2/3 - 2 1/3."""
    assert says("1 5/3 - 2 1/3", "regroup_first")[0] == read_expression("2 2/3 - 2 1/3")


def test_many_units_are_opened_at_once() -> None:
    """A number with a great many pieces is worked in a few lines, not one whole after another."""
    found = all_workings("900000000 - 999999999/2")["regroup_first"]
    assert len(found.lines) < 10
    kinds = [type(line.because) for line in found.lines if line.because]
    assert kinds[:3] == [OpensToMatch, AreWorth, PutTogether]
    assert found.answer == read_expression("400000000 1/2")


def test_a_longer_row_carries_what_is_still_to_come() -> None:
    """From left to right, the rest waiting at the end; each part by the strategy or its partner."""
    brief = [line.says for line in all_workings("9 - 2 1/3 + 1 2/3")["regroup_first"].brief()]
    assert brief == read(
        "9 - 2 1/3 + 1 2/3",
        "8 3/3 - 2 1/3 + 1 2/3",
        "6 2/3 + 1 2/3",
        "7 4/3",
        "8 1/3",
    )


def test_a_single_number_is_written_the_usual_way() -> None:
    """No checks are needed: nothing was added or taken."""
    found = all_workings("39/8")["units_apart"]
    assert [line.says for line in found.lines] == read("39/8", "32/8 + 7/8", "4 7/8")
    assert found.checks == ()


def test_a_form_in_fewest_parts_is_not_asked_for() -> None:
    """A sum of 4 14/16 stays: nothing in it is overfull. Alone it asks for another name, and gets it."""
    found = all_workings("2 7/16 + 2 7/16")["units_apart"]
    assert found.answer == read_expression("4 14/16")
    alone = all_workings("4 14/16")["units_apart"]
    assert alone.answer == read_expression("4 7/8")


def test_unchecked_work_has_no_checks() -> None:
    """For the inside of another working."""
    assert work_question(question("52 - 27"), strategy_named("count_up"), checked=False).checks == ()


def test_the_second_roads_suit_between_them_every_question() -> None:
    """Two for differences and two for sums, so that one of them is another one."""
    acts = sorted(strategy.act.value for strategy in SECOND_ROADS)
    assert acts == ["add", "add", "subtract", "subtract"]


def spelled(line: Line) -> str:
    """Write a line of a sum."""
    assert not isinstance(line.says, Comparison | MissingNumber)
    return text(line.says)


@pytest.mark.parametrize(
    ("typed", "strategy", "lines"),
    [
        (
            "1 h 25 min + 45 min + 25 min",
            "to_fractions",
            ["85 min + 45 min + 25 min", "130 min + 25 min", "155 min", "2 h 35 min"],
        ),
        (
            "1 3/4 + 2 3/4 + 1 2/4",
            "to_fractions",
            ["7/4 + 11/4 + 1 2/4", "18/4 + 1 2/4", "18/4 + 6/4", "24/4", "6"],
        ),
        ("8 + 7 + 9", "units_apart", ["15 ones + 9", "15 + 9", "1 ten 14 ones", "24"]),
    ],
)
def test_units_stay_steady_from_one_number_to_the_next(typed: str, strategy: str, lines: list[str]) -> None:
    """What is counted in minutes is not written in hours and then in minutes again."""
    asked = read_statement(typed)
    assert isinstance(asked, Question)
    working = work_question(asked, strategy_named(strategy))
    assert [spelled(line) for line in working.brief()[1:]] == lines
