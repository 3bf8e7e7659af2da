"""Regrouping and rewriting never change an amount."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.number.ladder import Style, joined
from onewhole.number.quantity import (
    CannotRegroupError,
    NotOnLadderError,
    Quantity,
    counted,
    counted_in_parts,
    landmark,
    trimmed,
    usual,
    usual_in_parts,
)
from onewhole.number.unit import Kind
from tests.kit.exact import amount
from tests.kit.numbers import amounts_of, quantities

KINDS = st.sampled_from(Kind)


@given(quantities(), st.data())
def test_regrouping_and_putting_together_again_gives_the_number_back(
    number: Quantity, data: st.DataObject
) -> None:
    """One or more of a rung opened, and put together again, are the very same counts."""
    rungs = [rung for rung in range(len(number.counts) - 1) if number.amounts[rung]]
    if not rungs:
        with pytest.raises(CannotRegroupError):
            number.regroup(0)
        return
    rung = data.draw(st.sampled_from(rungs))
    times = data.draw(st.integers(1, number.amounts[rung]))
    opened = number.regroup(rung, times)
    assert amount(opened) == amount(number)
    assert opened.amounts[rung] == number.amounts[rung] - times
    assert opened.compose(rung, times).counts == number.amounts


@given(quantities())
def test_a_value_is_its_counts_times_its_units(number: Quantity) -> None:
    """The quick way to the value and the plain sum agree, and so do the smallest units."""
    assert number.value == amount(number)
    assert number.parts == amount(number) / number.ladder.units[-1].size


@given(quantities())
def test_leaving_out_what_nobody_writes_keeps_the_amount_and_is_done_once(number: Quantity) -> None:
    """Trimming keeps the amount, and trimming again changes nothing."""
    short = trimmed(number)
    assert amount(short) == amount(number)
    assert trimmed(short) == short


@given(quantities())
def test_the_usual_way_keeps_the_amount_and_is_done_once(number: Quantity) -> None:
    """The usual form keeps the amount, nothing in it is overfull, and it is its own usual form."""
    found = usual(number.ladder, number.value)
    assert amount(found) == amount(number)
    assert usual_in_parts(number.ladder, number.parts) == found
    assert usual(found.ladder, found.value) == found
    assert all(count < ratio for count, ratio in zip(found.amounts[1:], found.ladder.ratios, strict=True))


@given(quantities())
def test_counting_and_landmarks_keep_the_amount(number: Quantity) -> None:
    """Counting anew and writing a stop on a number line keep the amount."""
    assert amount(counted(number.ladder, number.value)) == amount(number)
    assert counted_in_parts(number.ladder, number.parts) == counted(number.ladder, number.value)
    assert amount(landmark(number.ladder, number.parts)) == amount(number)


@given(quantities())
def test_the_slices_of_a_number_add_up_to_it(number: Quantity) -> None:
    """Wholes by themselves and pieces by themselves are the whole number again, wherever it is cut."""
    rungs = range(len(number.counts))
    assert sum((amount(number.only(rung)) for rung in rungs), Fraction(0)) == amount(number)
    for cut in rungs:
        upper, lower = number.only(*range(cut)), number.only(*range(cut, len(rungs)))
        assert amount(upper) + amount(lower) == amount(number)


@given(KINDS.flatmap(lambda kind: st.tuples(amounts_of(kind), amounts_of(kind))))
def test_two_numbers_of_one_kind_have_a_common_ladder(pair: tuple[Quantity, Quantity]) -> None:
    """Both are counted on the joined ladder with every rung written and nothing gained or lost."""
    first, second = pair
    ladder = joined(first.ladder, second.ladder)
    for number in pair:
        moved = number.on(ladder)
        assert moved.ladder == ladder
        assert moved.counts == moved.amounts
        assert amount(moved) == amount(number)
    assert set(joined(second.ladder, first.ladder).units) == set(ladder.units)


@given(quantities(), st.integers(2, 1000))
def test_no_amount_is_bent_to_fit_a_ladder(number: Quantity, more: int) -> None:
    """An amount that is no whole number of the smallest unit is refused, never rounded."""
    between = number.value + number.ladder.finest / more
    with pytest.raises(NotOnLadderError, match="cannot be counted in units of"):
        counted(number.ladder, between)


@given(quantities())
def test_only_the_wholes_of_a_fraction_are_left_unwritten(number: Quantity) -> None:
    """Whatever is done with a number, no unit but the wholes of a fraction is left out of its counts."""
    slices = [number.only(rung) for rung in range(len(number.counts))]
    for written in (trimmed(number), usual(number.ladder, number.value), *slices):
        unwritten = [at for at, count in enumerate(written.counts) if count is None]
        assert unwritten in ([], [0])
        assert not unwritten or written.ladder.style is Style.MIXED
