from fractions import Fraction

import pytest

from onewhole.errors import OnewholeError
from onewhole.number.ladder import Ladder, decimal, measure, mixed, places
from onewhole.number.quantity import (
    CannotRegroupError,
    NotOnLadderError,
    Quantity,
    counted,
    landmark,
    trimmed,
    usual,
    usual_in_parts,
    whole,
)
from onewhole.number.unit import Kind

FEET = measure("ft", "in")


def test_how_much_and_how_written_are_two_things() -> None:
    """4 8/5 and 5 3/5 are one amount and two answers; so are 39/8 and 0 39/8, 3.5 and 3 5/10."""
    pairs = (
        (Quantity(mixed(5), (4, 8)), Quantity(mixed(5), (5, 3))),
        (Quantity(mixed(8), (None, 39)), Quantity(mixed(8), (0, 39))),
        (Quantity(decimal(1, 1), (3, 5)), Quantity(mixed(10), (3, 5))),
        (whole(4), Quantity(mixed(1), (None, 4))),
    )
    for one, other in pairs:
        assert one.value == other.value
        assert one != other
        assert len({one, other}) == 2


@pytest.mark.parametrize(
    ("ladder", "counts", "parts", "value", "kind"),
    [
        (mixed(6), (7, 2), 44, Fraction(22, 3), Kind.NUMBER),
        (places(3), (3, 0, 4), 304, Fraction(304), Kind.NUMBER),
        (decimal(1, 1), (5, 2), 52, Fraction(26, 5), Kind.NUMBER),
        (FEET, (5, 2), 62, Fraction(62), Kind.LENGTH),
        (measure("lb", "oz"), (5, 2), 82, Fraction(82), Kind.WEIGHT),
        (measure("h", "min"), (5, 2), 302, Fraction(302), Kind.TIME),
        (measure("ft"), (5,), 5, Fraction(60), Kind.LENGTH),
    ],
)
def test_amounts(ladder: Ladder, counts: tuple[int, ...], parts: int, value: Fraction, kind: Kind) -> None:
    """The smallest units, the exact value in the reference unit, and the kind."""
    number = Quantity(ladder, counts)
    assert (number.parts, number.value, number.kind) == (parts, value, kind)


@pytest.mark.parametrize(
    ("ladder", "counts", "message"),
    [
        (mixed(6), (7,), "1 counts do not fit 2 rungs"),
        (mixed(6), (7, -2), r"a count cannot be below zero: \(7, -2\)"),
        (places(2), (None, 2), "only the wholes of a mixed number may be left unwritten"),
        (FEET, (5, None), "only the wholes of a mixed number may be left unwritten"),
        (mixed(6), (7, None), "a mixed number without its fraction is a whole number"),
    ],
)
def test_what_cannot_be_written_is_refused(
    ladder: Ladder, counts: tuple[int | None, ...], message: str
) -> None:
    """Counts that do not fit, counts below zero, and units left out."""
    with pytest.raises(ValueError, match=f"^{message}"):
        Quantity(ladder, counts)


def test_regrouping_and_back() -> None:
    """7 2/6 is 6 8/6 is 4 20/6; a foot is 12 inches, an hour 60 minutes, a hundred 10 tens."""
    assert Quantity(mixed(6), (7, 2)).regroup().counts == (6, 8)
    assert Quantity(mixed(6), (7, 2)).regroup(times=3).counts == (4, 20)
    assert Quantity(FEET, (5, 2)).regroup().counts == (4, 14)
    assert Quantity(measure("h", "min"), (5, 2)).regroup().counts == (4, 62)
    assert Quantity(places(3), (3, 0, 4)).regroup(0).regroup(1).counts == (2, 9, 14)
    assert Quantity(mixed(6), (4, 20)).compose(times=3).counts == (7, 2)


@pytest.mark.parametrize(("rung", "times"), [(0, 8), (1, 1)])
def test_there_is_not_enough_to_regroup(rung: int, times: int) -> None:
    """More than stands there, or a rung with none below."""
    with pytest.raises(CannotRegroupError) as refused:
        Quantity(mixed(6), (7, 2)).regroup(rung, times)
    assert str(refused.value) == (
        f"there are not {times} on that rung to regroup. Regroup from a larger unit first."
    )
    assert isinstance(refused.value, OnewholeError)


def test_there_is_not_enough_to_put_together() -> None:
    """8 sixths hold one full group."""
    with pytest.raises(CannotRegroupError) as refused:
        Quantity(mixed(6), (6, 8)).compose(times=2)
    assert str(refused.value) == (
        "there are not 2 full groups on the rung below to put together. Leave the count as it is."
    )


@pytest.mark.parametrize(
    ("number", "ladder", "counts"),
    [
        (Quantity(mixed(2), (3, 3)), mixed(4), (3, 6)),
        (Quantity(mixed(4), (3, 6)), mixed(2), (3, 3)),
        (whole(4), mixed(8), (4, 0)),
        (whole(12), mixed(8), (12, 0)),
        (Quantity(mixed(8), (None, 39)), mixed(8), (0, 39)),
        (Quantity(measure("in"), (14,)), FEET, (0, 14)),
        (Quantity(FEET, (1, 2)), measure("in"), (14,)),
        (Quantity(decimal(1, 1), (5, 2)), decimal(2, 2), (0, 5, 2, 0)),
        (Quantity(decimal(1, 1), (5, 2)), mixed(20), (5, 4)),
        (Quantity(mixed(1), (None, 5)), places(1), (5,)),
        (Quantity(mixed(1), (2, 3)), mixed(4), (2, 12)),
    ],
)
def test_on_another_ladder_pieces_stay_pieces(
    number: Quantity, ladder: Ladder, counts: tuple[int, ...]
) -> None:
    """Cut each piece again, or carry the counts over."""
    moved = number.on(ladder)
    assert moved.counts == counts
    assert moved.value == number.value


def test_an_amount_between_the_units_is_refused() -> None:
    """1/3 cannot be counted in quarters."""
    with pytest.raises(NotOnLadderError) as refused:
        Quantity(mixed(3), (None, 1)).on(mixed(4))
    assert str(refused.value) == "1/3 cannot be counted in units of 1/4. Choose a smaller unit."
    with pytest.raises(NotOnLadderError, match="cannot be counted"):
        counted(mixed(4), Fraction(-1))


@pytest.mark.parametrize(
    ("number", "rungs", "slice_"),
    [
        (Quantity(mixed(6), (7, 2)), (0,), whole(7)),
        (Quantity(mixed(6), (7, 2)), (1,), Quantity(mixed(6), (None, 2))),
        (whole(304), (0,), whole(300)),
        (whole(304), (1, 2), whole(4)),
        (Quantity(places(2), (4, 12)), (1,), Quantity(places(1), (12,))),
        (Quantity(decimal(1, 1), (5, 2)), (0,), whole(5)),
        (Quantity(decimal(1, 1), (5, 2)), (1,), Quantity(decimal(1, 1), (0, 2))),
        (Quantity(FEET, (5, 2)), (0,), Quantity(measure("ft"), (5,))),
        (Quantity(FEET, (5, 2)), (), Quantity(measure("in"), (0,))),
    ],
)
def test_what_stands_on_some_rungs(number: Quantity, rungs: tuple[int, ...], slice_: Quantity) -> None:
    """A slice is written by itself."""
    assert number.only(*rungs) == slice_


@pytest.mark.parametrize(
    ("number", "short"),
    [
        (Quantity(mixed(6), (0, 8)), Quantity(mixed(6), (None, 8))),
        (Quantity(mixed(6), (7, 0)), whole(7)),
        (Quantity(mixed(6), (0, 0)), whole(0)),
        (Quantity(places(3), (0, 4, 12)), Quantity(places(2), (4, 12))),
        (Quantity(places(2), (0, 0)), whole(0)),
        (Quantity(decimal(2, 1), (0, 0, 5)), Quantity(decimal(1, 1), (0, 5))),
        (Quantity(decimal(1, 2), (5, 2, 0)), Quantity(decimal(1, 2), (5, 2, 0))),
        (Quantity(FEET, (5, 0)), Quantity(measure("ft"), (5,))),
        (Quantity(FEET, (0, 14)), Quantity(measure("in"), (14,))),
        (Quantity(FEET, (0, 0)), Quantity(measure("in"), (0,))),
        (Quantity(measure("yd", "ft", "in"), (1, 0, 2)), Quantity(measure("yd", "in"), (1, 2))),
    ],
)
def test_what_nobody_writes_is_left_out(number: Quantity, short: Quantity) -> None:
    """Zero wholes or pieces, leading zeros, empty units; overfull counts and digits after the point stay."""
    assert trimmed(number) == short


@pytest.mark.parametrize(
    ("ladder", "parts", "written"),
    [
        (mixed(8), 39, Quantity(mixed(8), (4, 7))),
        (mixed(8), 32, whole(4)),
        (mixed(8), 5, Quantity(mixed(8), (None, 5))),
        (places(1), 304, whole(304)),
        (decimal(1, 1), 123, Quantity(decimal(2, 1), (1, 2, 3))),
        (decimal(3, 2), 5, Quantity(decimal(1, 2), (0, 0, 5))),
        (decimal(1, 1), 30, Quantity(decimal(1, 1), (3, 0))),
        (FEET, 62, Quantity(FEET, (5, 2))),
        (FEET, 60, Quantity(measure("ft"), (5,))),
    ],
)
def test_the_usual_way(ladder: Ladder, parts: int, written: Quantity) -> None:
    """Nothing overfull, empty parts left out, digits after the point kept; by parts or by value."""
    assert usual_in_parts(ladder, parts) == usual(ladder, parts * ladder.finest) == written


def test_a_stop_on_a_number_line_has_no_empty_point() -> None:
    """3 and not 3.0; but 3.5 stays."""
    assert landmark(decimal(1, 1), 30) == whole(3)
    assert landmark(decimal(1, 1), 35) == Quantity(decimal(1, 1), (3, 5))
    assert landmark(mixed(6), 18) == whole(3)


def test_no_number_is_below_zero() -> None:
    """A whole number below zero is refused."""
    with pytest.raises(ValueError, match=r"^a count cannot be below zero: -3$"):
        whole(-3)
