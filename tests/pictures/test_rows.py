from fractions import Fraction

from onewhole.pictures.rows import rows


def test_a_number_takes_the_first_row_that_is_clear() -> None:
    """Those that stand apart share a row; one that must stand lower begins there."""
    places = [Fraction(x) for x in (10, 15, 20, 40)]
    assert rows(places, 12) == (0, 1, 2, 0)
    assert rows(places, 5) == (0, 0, 0, 0)
    assert rows(places, 5, (1, 0, 0, 2)) == (1, 0, 0, 2)
