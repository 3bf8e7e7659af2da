from fractions import Fraction

from onewhole.pictures.rows import rows


def test_a_number_takes_the_first_row_that_is_clear() -> None:
    """Those that stand apart share a row; one that must stand lower begins there."""
    places = [Fraction(x) for x in (10, 15, 20, 40)]
    assert rows(places, [Fraction(12)] * 4) == (0, 1, 2, 0)
    assert rows(places, [Fraction(5)] * 4) == (0, 0, 0, 0)
    assert rows(places, [Fraction(5)] * 4, (1, 0, 0, 2)) == (1, 0, 0, 2)


def test_a_wide_number_needs_its_own_room_only() -> None:
    """Two short ones beside each other share a row, though a long one stands on the line too."""
    places = [Fraction(x) for x in (10, 20, 60)]
    assert rows(places, [Fraction(8), Fraction(8), Fraction(40)]) == (0, 0, 0)
    assert rows(places, [Fraction(8), Fraction(8), Fraction(74)]) == (0, 0, 1)
