"""How much paper a line takes."""

from fractions import Fraction

import pytest

from onewhole.sheets.handwriting import BAR_MM, BLANK_MM, DIGIT_MM, SIGN_MM, Handwriting, written
from onewhole.statements.reading import read_expression, read_statement

SIGN = SIGN_MM + 2 * BLANK_MM


@pytest.mark.parametrize(
    ("typed", "width", "lines"),
    [
        ("7", DIGIT_MM, 1),
        ("52 - 27", 4 * DIGIT_MM + SIGN, 1),
        ("2/6", DIGIT_MM + BAR_MM, 2),
        ("13/100", 3 * DIGIT_MM + BAR_MM, 2),
        ("7 2/6", 2 * DIGIT_MM + BLANK_MM + BAR_MM, 2),
        ("2/6 + 7", 2 * DIGIT_MM + BAR_MM + SIGN, 2),
        ("(44 - 23)/6", 4 * DIGIT_MM + SIGN + BAR_MM, 2),
        ("(1/2 + 1)/6", 2 * DIGIT_MM + BAR_MM + SIGN + BAR_MM, 3),
    ],
)
def test_width_and_height(typed: str, width: int, lines: int) -> None:
    """Digits, signs with a blank at each side, and fractions as wide as their longer number."""
    assert written(read_expression(typed), leads=False) == Handwriting(width, lines)
    assert written(read_expression(typed), leads=True) == Handwriting(width + SIGN, lines)


def test_measures_decimals_and_gaps() -> None:
    """Letters are narrower than digits, a point is narrow, a gap is a box."""
    assert written(read_expression("5 ft 2 in"), leads=False).width == 2 * 6 + 4 * 5 + 3 * 3
    assert written(read_expression("5.2"), leads=False).width == 15
    assert written(read_statement("7 2/6 = 6 ?/6"), leads=False) == Handwriting(17 + 12 + 19, 2)


def test_a_long_line_is_broken_before_a_sign() -> None:
    """As few times as needed; each part counts its own lines."""
    long = read_expression("1/2 + 3 + 1/4 + 5")
    whole = written(long, leads=True)
    assert whole == Handwriting(4 * 12 + 2 * 8 + 2 * 6, 2)
    assert written(long, leads=True, width=Fraction(60)) == Handwriting(58, 2 + 1)
    assert written(long, leads=True, width=Fraction(40)) == Handwriting(38, 2 + 2)
    assert written(long, leads=True, width=Fraction(20)) == Handwriting(20, 2 + 1 + 2 + 1)
    assert written(long, leads=True, width=Fraction(whole.width)) == whole


def test_a_number_in_words_is_broken_between_its_units() -> None:
    """2 hundreds, 9 tens, 14 ones: each unit stays with its count."""
    words = read_expression("2 hundreds 9 tens 14 ones - 128")
    whole = written(words, leads=True)
    assert whole == Handwriting(12 + (6 + 3 + 40) + (3 + 6 + 3 + 20) + (3 + 12 + 3 + 20) + 12 + 18, 1)
    assert written(words, leads=True, width=Fraction(100)) == Handwriting(12 + 49 + 32, 2)
    assert written(read_expression("5 ft 2 in"), leads=False, width=Fraction(30)) == Handwriting(22, 2)


def test_what_has_no_sign_is_never_broken() -> None:
    """A number stays in one piece, and the equals sign stays with the first."""
    assert written(read_expression("123456"), leads=True, width=Fraction(10)) == Handwriting(48, 1)
