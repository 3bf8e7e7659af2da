"""A picture on a page."""

import re

from onewhole.languages.class_words import ClassWords
from onewhole.pictures.choosing import picture
from onewhole.pictures.picture import PictureKind
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from onewhole.writers.drawing import drawing

WORDS = ClassWords("strip", "strips")
WORKING = work(read_statement("7 2/6 - 3 5/6"), REGROUP_FIRST)


def test_what_is_counted_needs_no_writing() -> None:
    """Strips stand without writing in them; their words say every number."""
    found = picture(WORKING, PictureKind.STRIPS)
    assert found is not None
    page = drawing(found, WORDS, large=True)
    assert "<text" not in str(page["svg"])
    assert page["alt"] == (
        "Shown: 6 strips and 8 sixths. Crossed out: 3 strips and 5 sixths. Left: 3 strips and 3 sixths."
    )


def test_numbers_too_small_for_large_print_are_left_out() -> None:
    """A number line has numbers in it: wide in ordinary print, and only words in large print."""
    found = picture(WORKING, PictureKind.LINE)
    assert found is not None
    assert drawing(found, WORDS, large=False)["wide"]
    assert set(drawing(found, WORDS, large=True)) == {"alt"}


def test_the_numbers_of_a_bar_can_be_read_in_any_print() -> None:
    """A bar is in large print too: at its own width its smallest digits are 18 points."""
    found = picture(work(read_statement("9 - ? = 3 1/2"), REGROUP_FIRST))
    assert found is not None
    small, large = (drawing(found, WORDS, large=size) for size in (False, True))
    assert small == large
    assert ">?</text>" in str(large["svg"])
    sizes = [float(one) for one in re.findall(r'font-size="([\d.]+)"', str(large["svg"]))]
    assert large["across"] == found.telling.width
    assert min(sizes) * 72 / 25.4 >= 18
