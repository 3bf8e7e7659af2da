"""How wide a line is at most: agreement with the page library is in tests/agreement/test_board_widths.py."""

from fractions import Fraction

from onewhole.statements.reading import read_expression
from onewhole.walkthroughs.cue import Write
from onewhole.walkthroughs.measure import formula_width, width


def test_a_fraction_is_as_wide_as_its_wider_part() -> None:
    """Top and bottom stand over each other: the shorter one takes no room of its own."""
    assert formula_width(read_expression("12/3")) == formula_width(read_expression("12/345")) - 640


def test_label_and_equals_sign_take_room() -> None:
    """What stands before the line is part of it."""
    plain = width(Write("a", "kite"), Fraction(60))
    assert plain < width(Write("a", "kite", label="1"), Fraction(60))
    assert plain < width(Write("a", "kite", leads=True), Fraction(60))


def test_width_grows_with_the_type() -> None:
    """Twice the size is twice the width, to a unit."""
    write = Write("a", read_expression("7 2/6 - 3 5/6"))
    assert abs(2 * width(write, Fraction(30)) - width(write, Fraction(60))) <= 1
