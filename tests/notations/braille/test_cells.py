"""Cells of braille and their ASCII letters."""

import pytest

from onewhole.notations.braille.cells import ascii_braille
from tests.kit.braille_reading import from_ascii


@pytest.mark.parametrize(
    ("cells", "letters"),
    [
        # Source: APH, Nemeth tutorial, lesson 3.8 (cells), and NFB, Nemeth in UEB, lesson 4 (ASCII).
        ("⠸⠩", "_%"),
        ("⠸⠱", "_:"),
        ("⠠⠄", ",'"),
        # Source: Duxbury, Reading Nemeth Code (ASCII), and APH, Nemeth tutorial (cells).
        ("⠹⠂⠌⠆⠼", "?1/2#"),
        ("⠨⠅", ".K"),
        ("⠬⠤⠿", "+-="),
        # Source: UEB, appendix 1: 1,000 is #a1jjj and 3.14 is #c4ad.
        ("⠼⠁⠂⠚⠚⠚⠀⠼⠉⠲⠁⠙", "#A1JJJ #C4AD"),
    ],
)
def test_ascii_braille_is_as_published(cells: str, letters: str) -> None:
    """The same sign in both ways."""
    assert ascii_braille(cells) == letters
    assert from_ascii(letters.lower()) == cells


def test_every_cell_has_a_letter_of_its_own() -> None:
    """All sixty-four go there and back."""
    cells = "".join(chr(0x2800 + pattern) for pattern in range(64))
    assert len(set(ascii_braille(cells))) == 64
    assert from_ascii(ascii_braille(cells)) == cells
