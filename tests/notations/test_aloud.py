"""Sentences with numbers in digits are said in words, each written thing as one."""

import pytest

from onewhole.notations.aloud import aloud, spoken_words

SAID = {
    "7 2/6 - 3 5/6 = 3 3/6": "Seven and two sixths minus three and five sixths equals three and three sixths",
    "Set 2/6 aside.": "Set two sixths aside.",
    "That is 4 tens 12 ones - 27.": "That is four tens twelve ones minus twenty-seven.",
    "Now it is 5 ft 2 in.": "Now it is five feet two inches.",
    "That makes 25 in all.": "That makes twenty-five in all.",
    "It is 5.2.": "It is five point two.",
    "First (6 - 3) x 2.": "First open bracket six minus three close bracket times two.",
    "There are not enough tens to take 8 tens.": "There are not enough tens to take eight tens.",
    "6 tenths and 11 tenths make 17 tenths.": "Six tenths and eleven tenths make seventeen tenths.",
    "20 twenty-fourths are left.": "Twenty twenty-fourths are left.",
    "Number 2a: 52 - 27.": "Number two a: fifty-two minus twenty-seven.",
    "Find it: 7 2/6 = 6 ?/6.": "Find it: seven and two sixths equals six and blank sixths.",
    "Which is more, 5/6 or 7/8?": "Which is more, five sixths or seven eighths?",
    "Someone may write 3 3/0.": "Someone may write three and three over zero.",
    "Hello, Room 12.": "Hello, Room twelve.",
    "Stop here (and try it).": "Stop here (and try it).",
}


@pytest.mark.parametrize("written", SAID)
def test_what_is_written_is_said(written: str) -> None:
    """Numbers, expressions and statements become words; everything else stays as it is."""
    assert aloud(written) == SAID[written]


def test_spoken_words_are_counted_as_they_are_said() -> None:
    """A number of two words is two; a name with a hyphen is one."""
    assert spoken_words("That is 146 twelfths.") == 7 - 1
    assert spoken_words("There are 24.") == 3
