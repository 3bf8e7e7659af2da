"""What a line shows: amounts as written, what is struck and what must wait."""

from fractions import Fraction

import pytest

from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.quantity_state import Heap, QuantityState, quantity_states, whole_unit
from onewhole.statements.expression import Times, value
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.line import Line, WholeLine
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import strategy_named
from onewhole.working.work import work
from onewhole.working.working import Working
from tests.kit.drawn import workings


def test_shown_less_struck_less_waiting_is_the_line() -> None:
    """Every line of the walk, by every strategy: the state is worth what the line is worth."""
    seen = 0
    for working in workings():
        size = whole_unit(working).size
        for line, state in zip(working.lines, quantity_states(working), strict=True):
            if not isinstance(line.says, WholeLine):
                rest = state.amount - state.struck.amount - state.waiting.amount
                assert rest * size == value(line.says)
                seen += 1
    assert seen > 500


def test_nothing_is_struck_that_is_not_there() -> None:
    """What is struck can be taken from the one heap as it lies; the answer has nothing struck or waiting."""
    struck = 0
    for working in workings():
        shown = quantity_states(working)
        for state in shown:
            if state.struck.amount:
                (heap,) = state.heaps
                assert heap.holds(state.struck)
                struck += 1
        assert not shown[-1].struck.amount + shown[-1].waiting.amount
    assert struck > 100


@pytest.mark.parametrize(
    ("problem", "strategy", "wanted"),
    [
        ("7 2/6 - 3 5/6", "wholes_first", [(7, 2, 0, 0), (7, 2, 3, 0), (4, 2, 0, 0), (4, 2, 0, 0)]),
        ("4 - 1 3/8", "to_fractions", [(4, 0, 0, 0), (0, 32, 0, 0), (0, 32, 0, 11)]),
        ("7 2/6 - 3 5/6", "equal_shift", [(7, 2, 0, 0), (7, 3, 0, 0), (7, 3, 4, 0), (3, 3, 0, 0)]),
        ("7 2/6 - 3 5/6", "from_whole", [(7, 2, 0, 0), (7, 2, 0, 0), (6, 8, 3, 5), (3, 3, 0, 0)]),
        (
            "5 ft 2 in - 2 ft 7 in",
            "regroup_first",
            [(5, 2, 0, 0), (5, 2, 0, 0), (4, 14, 0, 0), (4, 14, 2, 7)],
        ),
        ("3 1/2 - 1 3/4", "regroup_first", [(3, 1, 0, 0), (3, 2, 0, 0)]),
    ],
)
def test_a_single_number_is_shown_as_written(
    problem: str, strategy: str, wanted: list[tuple[int, int, int, int]]
) -> None:
    """Wholes and pieces on show, wholes and pieces struck, on the first lines."""
    shown = quantity_states(work(read_statement(problem), strategy_named(strategy)))
    found = [(s.heaps[0].wholes, s.heaps[0].pieces, s.struck.wholes, s.struck.pieces) for s in shown]
    assert found[: len(wanted)] == wanted


def test_two_numbers_stay_two_until_they_are_put_together() -> None:
    """2 4/5 + 1 3/5: the numbers, then wholes and fifths apart, then one heap, then 4 2/5."""
    shown = quantity_states(work(read_statement("2 4/5 + 1 3/5"), strategy_named("units_apart")))
    assert [state.heaps for state in shown] == [
        (Heap(2, 4, 5), Heap(1, 3, 5)),
        (Heap(3), Heap(0, 7, 5)),
        (Heap(3, 7, 5),),
        (Heap(3, 7, 5),),
        (Heap(4, 2, 5),),
    ]


def test_a_comparison_shows_both_and_tells_at_the_end() -> None:
    """2/3 ? 3/5: both in fifteenths, which stay when they are counted; only the last line decides."""
    shown = quantity_states(work(read_statement("2/3 ? 3/5"), REGROUP_FIRST))
    assert [state.heaps for state in shown[1:]] == [(Heap(0, 10, 15), Heap(0, 9, 15))] * 2
    assert [bool(state.compared) for state in shown] == [False, False, True]


def test_wholes_that_a_line_leaves_out_stay_in_the_picture() -> None:
    """2 3/4 ? 2 5/8: the line says 3/4 ? 5/8, and both still have their 2 wholes."""
    shown = quantity_states(work(read_statement("2 3/4 ? 2 5/8"), REGROUP_FIRST))
    before, after = (Heap(2, 3, 4), Heap(2, 5, 8)), (Heap(2, 6, 8), Heap(2, 5, 8))
    assert [state.heaps for state in shown] == [before, before, after, after]


def test_heaps_of_other_sizes_are_added_in_the_smaller_size() -> None:
    """3 and 3 tenths, and 5 hundredths: 3 and 35 hundredths."""
    assert Heap(3, 3, 10) + Heap(0, 5, 100) == Heap(3, 35, 100)
    assert Heap(1, 2, 4).amount == Fraction(3, 2)
    assert QuantityState((Heap(1, 2, 4), Heap(2))).amount == Fraction(7, 2)


def test_hundredths_stay_cut() -> None:
    """2.25 - 0.07 and what follows stays in hundredths, also where a line writes 2.1."""
    shown = quantity_states(work(read_statement("3.45 - 1.27"), strategy_named("wholes_first")))
    assert {state.heaps[0].per for state in shown} == {100}


def test_a_problem_that_is_no_amount_is_refused() -> None:
    """12 x 2/5 begins with nothing that can be laid out."""
    asked = read_statement("12 x 2/5")
    assert isinstance(asked, Question)
    assert isinstance(asked.asked, Times)
    answer = work(read_statement("1 1/5 + 0"), strategy_named("units_apart")).answer
    working = Working("by_hand", asked, (Line(asked.asked),), answer)
    with pytest.raises(NotDrawnError, match=r"laid out"):
        quantity_states(working)
