import pytest

from onewhole.number.ladder import mixed, places
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.reading import read_expression, read_quantity
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.regrouping import OneIsWorth, OpensOne, PutTogether
from onewhole.working.strategies.count_up import stops
from onewhole.working.strategies.equal_shift import shift_of
from onewhole.working.strategies.make_a_whole import lacking
from onewhole.working.strategies.moves import enough_at, enough_of_each, one_on, opened, something, usual_form
from onewhole.working.strategies.to_fractions import in_smallest


def sixths(wholes: int, pieces: int) -> Quantity:
    """A number in sixths with both rungs written."""
    return Quantity(mixed(6), (wholes, pieces))


def test_one_of_a_unit() -> None:
    """Written by itself."""
    assert one_on(sixths(7, 2), 0) == whole(1)
    assert one_on(sixths(7, 2), 1, 6) == read_quantity("6/6")


def test_parts_worth_nothing_are_left_out() -> None:
    """Unless nothing else is left."""
    assert something(whole(0), whole(3), whole(0)) == (whole(3),)
    assert something(whole(0), whole(0)) == (whole(0),)


def test_opening_writes_three_lines() -> None:
    """One whole set apart, its worth, and both counts put together."""
    state = opened(PairState(sixths(7, 2), sixths(3, 5), taken=True), 0)
    assert state.first == sixths(6, 8)
    assert [type(line.because) for line in state.lines] == [OpensOne, OneIsWorth, PutTogether]


def test_opening_many_at_once() -> None:
    """Three wholes are 18 sixths."""
    state = opened(PairState(sixths(7, 2), sixths(3, 5), taken=True), 0, 3)
    assert state.first == sixths(4, 20)
    wanted = ("4 + 3 + 2/6 - 3 5/6", "4 + 18/6 + 2/6 - 3 5/6", "4 20/6 - 3 5/6")
    assert [line.says for line in state.lines] == [read_expression(line) for line in wanted]


@pytest.mark.parametrize(
    ("first", "second", "counts"),
    [
        (whole(304), whole(128), (2, 9, 14)),
        (whole(352), whole(128), (3, 4, 12)),
        (Quantity(places(3), (3, 0, 4)), Quantity(places(3), (0, 25, 8)), (0, 29, 14)),
        (sixths(7, 2), sixths(3, 25), (3, 26)),
        (sixths(70, 2), sixths(3, 250), (28, 254)),
        (sixths(7, 5), sixths(3, 2), (7, 5)),
    ],
)
def test_enough_of_each_unit(first: Quantity, second: Quantity, counts: tuple[int, ...]) -> None:
    """Opened from the smallest unit up, no more than is needed; nothing where there is enough."""
    state = enough_of_each(PairState(first, second, taken=True))
    assert state.first.counts == counts
    assert state.first.value == first.value
    assert enough_at(state, len(counts) - 1) == state


def test_nothing_is_opened_where_there_is_enough() -> None:
    """No line is written."""
    assert enough_of_each(PairState(sixths(7, 5), sixths(3, 2), taken=True)).lines == ()


@pytest.mark.parametrize(
    ("result", "lines", "answer"),
    [
        (sixths(3, 3), ("3 3/6",), "3 3/6"),
        (sixths(3, 7), ("3 7/6", "3 + 6/6 + 1/6", "4 1/6"), "4 1/6"),
        (sixths(0, 21), ("21/6", "18/6 + 3/6", "3 3/6"), "3 3/6"),
        (sixths(3, 0), ("3",), "3"),
        (sixths(0, 0), ("0",), "0"),
    ],
)
def test_the_usual_form(result: Quantity, lines: tuple[str, ...], answer: str) -> None:
    """What is left, and full groups put together into the next larger unit."""
    state = usual_form(PairState(result, result, taken=True, result=result))
    assert [line.says for line in state.lines] == [read_expression(line) for line in lines]
    assert state.found() == read_quantity(answer)


def test_stops_on_the_way_up() -> None:
    """The next whole, the last whole; on more rungs the next of every larger unit, and down again."""
    assert stops(sixths(7, 2), sixths(3, 5)) == (23, 24, 42, 44)
    assert stops(sixths(3, 5), sixths(3, 1)) == (19, 23)
    assert stops(sixths(4, 0), sixths(3, 0)) == (18, 24)
    assert stops(sixths(3, 1), sixths(3, 1)) == (19,)
    assert stops(whole(304), whole(128)) == (128, 130, 200, 300, 304)


def test_what_is_lacking() -> None:
    """To a whole of the largest written unit, and to the next of the unit above the smallest."""
    assert [shift_of(number) for number in (sixths(3, 5), sixths(3, 0), sixths(0, 7), whole(128))] == [
        1,
        0,
        5,
        72,
    ]
    assert [lacking(number) for number in (sixths(3, 5), sixths(3, 0), whole(128), whole(8))] == [1, 0, 2, 0]


def test_everything_in_the_smallest_unit() -> None:
    """7 2/6 as 44 sixths."""
    assert in_smallest(sixths(7, 2)).counts == (0, 44)
