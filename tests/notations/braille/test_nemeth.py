"""One line in Nemeth braille."""

import pytest

from onewhole.languages.table import LANGUAGES
from onewhole.notations.braille.cells import ascii_braille
from onewhole.notations.braille.chunks import filled, one_line
from onewhole.notations.braille.nemeth import nemeth, nemeth_chunks, nemeth_parts
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity, whole
from onewhole.number.with_minus import WithMinus
from onewhole.statements.reading import read_statement
from onewhole.statements.row import row


@pytest.mark.parametrize(
    ("typed", "letters"),
    [
        # Source: The Nemeth Braille Code, 1972 revision, by section (from memory where no other is named).
        ("52 - 27", "#52-27"),  # 9: no indicator behind a sign of operation
        ("1,250.5 + 0.75", "#1,250.5+0.75"),  # 7, 8
        ("3/4 + 5/6", "?3/4#+?5/6#"),  # 62
        ("7 2/6 - 3", "#7_?2/6_#-3"),  # 63
        ("(2 + 3)/6", "?2+3/6#"),  # 62
        ("5/6 < 7/8", '?5/6# "K ?7/8#'),  # 144
        ("3 > 2", "#3 .1 #2"),  # 144
        ("3 x 2/5", "#3@*?2/5#"),  # 177
        ("8 - (3 - 1)", "#8-(3-1)"),  # 118
        ("6 ?/6 = 7", "#6_?=/6_# .K #7"),  # 57: the general omission symbol
        ("5/6 ? 7/8", "?5/6# = ?7/8#"),  # 57: spaced as the sign that it stands for
        ("$3.50 + $2", "@S3.50+@S2"),  # 43
        ("75¢ + 20¢", "#75@C+20@C"),  # 43
        # 53: a blank between number and abbreviation, and between abbreviation and sign (CTEBVI, 2011).
        ("5 ft 2 in - 2 ft 7 in", "#5 FT #2 IN -#2 FT #7 IN"),
        ("3 m + 1 m", "#3 ;M +1 ;M"),  # 51: the letter indicator before one letter
        ("5 L - 2 L", "#5 ;,L -#2 ;,L"),  # 50, 51
        # Source: APH, Nemeth tutorial, lesson 1.2: 2:30 is #2_3#30.
        ("from 2:30 to 3:15", "#2_3#30 ,'TO #3_3#15"),
        ("4 tens 12 ones - 27", "#4 TENS #12 ONES -#27"),
    ],
)
def test_a_line_is_written_as_the_code_says(typed: str, letters: str) -> None:
    """Numbers, fractions, signs, what is missing, money, measures, time."""
    assert ascii_braille(nemeth(read_statement(typed))) == letters


def test_what_a_child_may_write_is_written_too() -> None:
    """A minus sign before a number, and a fraction over nothing."""
    half = Quantity(mixed(2), (None, 1))
    written = (
        Impossible(3, 3),
        WithMinus(whole(3)),
        WithMinus(half),
        WithMinus(half, front=False, below=True),
    )
    assert [ascii_braille(nemeth(one)) for one in written] == ["#3_?3/0_#", "-#3", "-?1/2#", "?1/-2#"]


def test_words_of_a_line_are_no_mathematics() -> None:
    """They stand outside, in the language of the page."""
    asked = read_statement("round 4,567 to the nearest hundred")
    words = [
        one if isinstance(one, str) else ascii_braille(one_line(one))
        for one in nemeth_parts(asked, LANGUAGES["es-US"])
    ]
    assert words == ["Redondea", "#4,567", "a la centena más cercana"]
    with pytest.raises(ValueError, match="words on a line"):
        nemeth(asked)


def test_a_long_line_is_broken_before_a_sign() -> None:
    """A number behind a minus sign at the beginning of a line has its indicator (section 9)."""
    chunks = nemeth_chunks(row(read_statement("9 11/12 - 3 5/12 - 2 7/12")))
    assert [ascii_braille(line) for line in filled(chunks, 24)] == ["#9_?11/12_#-3_?5/12_#", "  -#2_?7/12_#"]
    assert ascii_braille(one_line(chunks)) == "#9_?11/12_#-3_?5/12_#-2_?7/12_#"
