"""Words in uncontracted Unified English Braille."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.notations.braille.cells import ascii_braille
from onewhole.notations.braille.literary import NoBrailleError, literary
from tests.kit.braille_reading import words_read


@pytest.mark.parametrize(
    ("text", "letters"),
    [
        # Source: The Rules of Unified English Braille (2013), 6.2 to 6.5 and 8.3, 8.4 (from memory).
        ("1,000", "#A1JJJ"),
        ("3.14", "#C4AD"),
        ("4b", "#D;B"),
        ("4k", "#DK"),
        ("Room 12", ",ROOM #AB"),
        ("ABC", ",,ABC"),
        ("9:45", "#I3#DE"),
        # 7.6 and 7.2: quotation marks of one cell; a question mark by itself.
        ("“So?”", "8,SO80"),
        ("?", ";8"),
        ('"So"', "8,SO0"),
        # 3.10: the dollar sign before its number.
        ("$3.25", "@S#C4BE"),
        # 4.2: an accent before its letter, a capital before the accent.
        ("día", "D^/IA"),
        ("Ñandú", ",^]NAND^/U"),
        ("¿cuántas?", "^;8CU^/ANTAS8"),
        ("½", "#A/B"),
    ],
)
def test_words_are_spelt_as_the_rules_say(text: str, letters: str) -> None:
    """Numbers, capitals, marks and accents."""
    assert ascii_braille(literary(text)) == letters


_WORDS = st.text("abjkzABZáñüÉ019,.:;!-()$%", min_size=1, max_size=9).filter(lambda word: word.strip())


@given(st.lists(_WORDS, min_size=1, max_size=4).map(" ".join))
def test_words_read_back(text: str) -> None:
    """Letters, capitals, digits and marks are those that were written."""
    assert words_read(literary(text)) == text


def test_a_sign_without_braille_is_refused() -> None:
    """With the sign, and what to do."""
    with pytest.raises(NoBrailleError) as refused:
        literary("Kites 🪁")
    assert refused.value.what == "there is no braille here for “🪁”"
    assert refused.value.remedy == "Write it in another way, or print without braille."
