from fractions import Fraction

import pytest

from onewhole.statements.gap import HOLE, Gap, NoSuchNumberError


@pytest.mark.parametrize(
    ("gap", "amount", "found"),
    [
        (Gap(6, HOLE, 6), Fraction(22, 3), 8),
        (Gap(None, HOLE, 12), Fraction(3, 4), 9),
        (Gap(HOLE, 3, 6), Fraction(7, 2), 3),
        (Gap(None, 3, HOLE), Fraction(3, 4), 4),
        (Gap(2, 9, HOLE), Fraction(11, 4), 12),
        (Gap(HOLE), Fraction(7, 2), Fraction(7, 2)),
        (Gap(HOLE), Fraction(0), 0),
    ],
)
def test_what_fits(gap: Gap, amount: Fraction, found: Fraction | int) -> None:
    """The one number that makes it worth the amount."""
    assert gap.filling(amount) == found


@pytest.mark.parametrize(
    ("gap", "amount"),
    [
        (Gap(6, HOLE, 7), Fraction(22, 3)),
        (Gap(8, HOLE, 6), Fraction(22, 3)),
        (Gap(HOLE, 5, 6), Fraction(7, 2)),
        (Gap(None, 3, HOLE), Fraction(0)),
        (Gap(4, 3, HOLE), Fraction(4)),
        (Gap(None, 0, HOLE), Fraction(1, 2)),
        (Gap(HOLE), Fraction(-1)),
    ],
)
def test_nothing_fits(gap: Gap, amount: Fraction) -> None:
    """No whole number, one below zero, or no parts in a whole."""
    with pytest.raises(NoSuchNumberError) as refused:
        gap.filling(amount)
    assert str(refused.value) == (
        "no whole number in the place of ? makes this true. Change one of the other numbers."
    )


def test_exactly_one_part_is_missing() -> None:
    """None, or two, is refused."""
    for parts in ((6, 2, 6), (HOLE, HOLE, 6), (6, None, None)):
        with pytest.raises(ValueError, match=r"^exactly one part is missing$"):
            Gap(*parts)


def test_half_a_fraction_is_refused() -> None:
    """A numerator without a denominator."""
    with pytest.raises(ValueError, match=r"^a fraction has a numerator and a denominator$"):
        Gap(6, HOLE)


def test_a_gap_alone_takes_any_amount() -> None:
    """? by itself is not a part of a fraction."""
    assert Gap(HOLE).alone
    assert not Gap(HOLE, 1, 2).alone
