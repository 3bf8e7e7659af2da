from fractions import Fraction

import pytest

from onewhole.number.ladder import (
    Ladder,
    Style,
    decimal,
    joined,
    measure,
    mixed,
    places,
    rungs_on,
)
from onewhole.number.unit import ONE, Kind, KindError, Unit

INCH = Unit(Fraction(1), Kind.LENGTH, "in")


@pytest.mark.parametrize(
    ("ladder", "ratios", "worths", "after"),
    [
        (mixed(6), (6,), (6, 1), 1),
        (places(3), (10, 10), (100, 10, 1), 0),
        (decimal(1, 2), (10, 10), (100, 10, 1), 2),
        (measure("yd", "ft", "in"), (3, 12), (36, 12, 1), 0),
        (measure("yd", "in"), (36,), (36, 1), 0),
        (measure("lb", "oz"), (16,), (16, 1), 0),
        (measure("h", "min"), (60,), (60, 1), 0),
        (places(1), (), (1,), 0),
    ],
)
def test_every_rung_is_worth_a_whole_number_of_the_next(
    ladder: Ladder, ratios: tuple[int, ...], worths: tuple[int, ...], after: int
) -> None:
    """Ratios from rung to rung, worths in the smallest unit, and places after the point."""
    assert (ladder.ratios, ladder.worths, ladder.after) == (ratios, worths, after)
    assert ladder.finest == ladder.units[-1].size
    assert ladder.kind is ladder.units[0].kind


def test_units_do_not_decide_the_writing() -> None:
    """3.5 and 3 5/10 count the same units, on two ladders."""
    assert decimal(1, 1).units == mixed(10).units
    assert decimal(1, 1) != mixed(10)


def test_a_ladder_is_made_once() -> None:
    """Ladders are shared, equal ones are one, and two sets of them hold each once."""
    assert mixed(6) is mixed(6)
    assert mixed(6) == Ladder(Style.MIXED, (ONE, Unit(Fraction(1, 6))))
    assert len({mixed(6), Ladder(Style.MIXED, (ONE, Unit(Fraction(1, 6)))), mixed(5)}) == 2


def test_it_is_shown_short() -> None:
    """A ladder in an error or a failing test can be read."""
    assert repr(mixed(6)) == "Ladder(mixed: 1, 1/6)"
    assert repr(measure("ft", "in")) == "Ladder(measure: ft, in)"


@pytest.mark.parametrize(
    ("units", "error", "message"),
    [
        ((), ValueError, "a ladder needs at least one rung"),
        ((ONE, INCH), KindError, "number and length cannot stand on one ladder"),
        (
            (Unit(Fraction(1, 2)), Unit(Fraction(1, 3))),
            ValueError,
            "a rung worth 1/2 is not a whole number of rungs worth 1/3",
        ),
        ((Unit(Fraction(1, 6)), ONE), ValueError, "a rung worth 1/6 is not a whole number of rungs worth 1"),
    ],
)
def test_rungs_that_do_not_fit_are_refused(
    units: tuple[Unit, ...], error: type[Exception], message: str
) -> None:
    """No rungs, two kinds, or a ratio that is no whole number."""
    with pytest.raises(error, match=f"^{message}"):
        Ladder(Style.MIXED, units)


@pytest.mark.parametrize("parts", [0, -6])
def test_a_whole_is_cut_into_one_part_or_more(parts: int) -> None:
    """No ladder for a denominator of 0."""
    with pytest.raises(ValueError, match=f"^a whole is cut into 1 or more equal parts, not {parts}$"):
        mixed(parts)


def test_only_mixed_numbers_have_a_denominator() -> None:
    """Feet and inches have a ratio and no denominator."""
    assert mixed(8).denominator == 8
    with pytest.raises(ValueError, match=r"^a ladder of measure has no denominator$"):
        _ = measure("ft", "in").denominator


@pytest.mark.parametrize(
    ("first", "second", "together"),
    [
        (mixed(6), mixed(6), mixed(6)),
        (mixed(4), mixed(6), mixed(12)),
        (places(1), mixed(8), mixed(8)),
        (places(2), places(4), places(4)),
        (decimal(1, 1), decimal(2, 2), decimal(2, 2)),
        (places(3), decimal(1, 2), decimal(3, 2)),
        (decimal(1, 1), mixed(4), mixed(20)),
        (decimal(1, 2), mixed(10), mixed(100)),
        (measure("ft"), measure("in"), measure("ft", "in")),
        (measure("yd", "in"), measure("ft"), measure("yd", "ft", "in")),
    ],
)
def test_two_ladders_are_joined(first: Ladder, second: Ladder, together: Ladder) -> None:
    """The coarsest ladder on which both can be counted, whichever comes first."""
    assert joined(first, second) == joined(second, first) == together


def test_two_kinds_do_not_join() -> None:
    """5 ft + 2 is refused with what to do."""
    with pytest.raises(KindError) as refused:
        joined(measure("ft"), places(1))
    assert str(refused.value) == (
        "a length and a number cannot be put together. "
        "Give both numbers the same unit, or leave the unit off both."
    )


@pytest.mark.parametrize(
    ("old", "new", "rungs"),
    [
        (measure("in"), measure("ft", "in"), (None, 0)),
        (places(1), mixed(6), (0, None)),
        (places(1), places(3), (None, None, 0)),
        (decimal(1, 1), decimal(2, 2), (None, 0, 1, None)),
        (decimal(1, 1), mixed(10), (0, 1)),
        (mixed(4), mixed(6), None),
        (places(2), mixed(6), None),
        (mixed(1), places(1), None),
        (measure("h", "min"), measure("ft", "in"), None),
    ],
)
def test_rungs_of_one_ladder_on_another(
    old: Ladder, new: Ladder, rungs: tuple[int | None, ...] | None
) -> None:
    """Where every rung finds its own unit the counts can be carried over as they are."""
    assert rungs_on(old, new) == rungs
