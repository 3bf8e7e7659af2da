"""The text that slots tell."""

import pytest

from onewhole.presses.paper.ink_text import NOTHING, Slots

N = NOTHING


def _slots(whole: str = "", over: str = "", under: str = "", after: str = "") -> tuple[int, ...]:
    runs = ((whole, 4), (over, 3), (under, 3), (after, 3))
    return tuple(int(sign) if sign != " " else N for run, long in runs for sign in run.ljust(long))


@pytest.mark.parametrize(
    ("minus", "digits", "unit", "text"),
    [
        (False, _slots("52"), "", "52"),
        (False, _slots("7", "2", "6"), "", "7 2/6"),
        (False, _slots("", "13", "4"), "", "13/4"),
        (True, _slots("3", "1", "2"), "", "-3 1/2"),
        (False, _slots("5", after="2"), "", "5.2"),
        (False, _slots(after="05"), "", ".05"),
        (True, _slots(), "", "-"),
        (False, _slots("2", "7"), "ft in", "2 ft 7 in"),
        (False, _slots("2", "1", "2"), "mi", "2 1/2 mi"),
        (False, _slots("3"), "other", "3"),
        (False, _slots("5", after="20"), "$", "$5.20"),
        (True, _slots("5"), "$", "-$5"),
    ],
)
def test_slots_are_told_as_a_child_would_type(
    minus: bool, digits: tuple[int, ...], unit: str, text: str
) -> None:
    """Every form of an answer has its text."""
    assert Slots(minus, digits, unit).text == text


@pytest.mark.parametrize(
    ("minus", "digits", "unit"),
    [
        (False, _slots(), ""),
        (False, _slots("7", "2"), ""),
        (False, _slots("7", under="2"), ""),
        (False, _slots(" 7"), ""),
        (False, _slots("7", "2", "6", "5"), ""),
        (False, _slots("2"), "ft in"),
        (False, _slots("2", "7", "3"), "ft in"),
        (True, _slots(), "ft"),
    ],
)
def test_what_no_answer_looks_like_has_no_text(minus: bool, digits: tuple[int, ...], unit: str) -> None:
    """Half a fraction, a gap before a digit, a decimal fraction: none of it is told as an answer."""
    assert Slots(minus, digits, unit).text == ""
