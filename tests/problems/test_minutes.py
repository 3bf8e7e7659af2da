"""Minutes, points and writing room of problems come from their steps and their digits."""

from fractions import Fraction

import pytest

from onewhole.problems.minutes import minutes_of
from onewhole.problems.needs import needs
from onewhole.statements.reading import read_statement
from tests.kit.sheets import worked_sheet

#: What a teacher of the grade would say that a problem takes, from and to: common practice, no source.
TAKES = (
    ("7 x 8", "1/2", "1"),
    ("56 ÷ 7", "1/2", "1"),
    ("300 x 7", "1/2", "1"),
    ("52 - 21", "1", "1"),
    ("52 - 27", "1", "2"),
    ("345678 + 276543", "2", "3"),
    ("237 + 486 + 158 + 90", "2", "3"),
    ("46 x 7", "1", "2"),
    ("386 x 4", "2", "3"),
    ("3864 x 7", "2", "3"),
    ("46 x 24", "3", "4"),
    ("386 x 24", "4", "5"),
    ("96 ÷ 4", "2", "3"),
    ("725 ÷ 5", "3", "4"),
    ("7254 ÷ 6", "3", "5"),
    ("4500 ÷ 9", "1", "1"),
    ("3864 ÷ 24", "5", "6"),
    ("2.4 x 3.6", "3", "4"),
    ("6.25 ÷ 5", "3", "4"),
    ("7 5/6 - 3 2/6", "1", "1"),
    ("7 2/6 - 3 5/6", "1", "2"),
    ("4 x 3/5", "1", "1"),
    ("2 1/2 x 1 3/4", "3", "4"),
    ("1/4 ÷ 3", "1", "2"),
    ("3 ft 4 in x 3", "2", "3"),
    ("18 ÷ 6 + 4 x (5 - 2)", "2", "3"),
    ("2 x (3 ft 4 in + 2 ft 9 in)", "3", "4"),
    ("order 2/3, 1/2, 3/4", "2", "3"),
    ("factors of 36", "2", "3"),
    ("is 37 prime or composite", "1", "2"),
    ("plot 1/4: 2, 1/2: 3, 5/8 in: 1; count", "1", "1"),
    ("plot 1/4: 2, 1/2: 3, 5/8 in: 1; total", "3", "4"),
    ("plot 1/4: 2, 1/2: 3, 5/8 in: 1; share", "4", "6"),
)


@pytest.mark.parametrize(("typed", "least", "most"), TAKES)
def test_a_teacher_would_say_so(typed: str, least: str, most: str) -> None:
    """Between the least and the most that a teacher would say, in half minutes."""
    asked = read_statement(typed)
    found = minutes_of(asked, needs(asked))
    assert Fraction(least) <= found <= Fraction(most)
    assert (2 * found).denominator == 1


@pytest.mark.parametrize("typed", [typed for typed, *_ in TAKES])
def test_a_story_takes_longer(typed: str) -> None:
    """It is read and understood besides: three minutes at least, which is our own start value."""
    asked = read_statement(typed)
    told, bare = (minutes_of(asked, needs(asked), story=story) for story in (True, False))
    assert told >= 3
    assert told > bare


#: From easy to hard, each with more digits than the one before.
LONGER = (
    ("7 x 8", "46 x 7", "386 x 4", "46 x 24", "386 x 24"),
    ("56 ÷ 7", "96 ÷ 4", "725 ÷ 5", "3864 ÷ 24"),
)


@pytest.mark.parametrize("row", LONGER)
def test_more_digits_take_longer_and_are_harder(row: tuple[str, ...]) -> None:
    """Minutes and points rise with the digits, and the room does not shrink."""
    worked = worked_sheet("\n".join(f"{at}. {typed}" for at, typed in enumerate(row, 1)))
    minutes = [one.minutes for one in worked.problems]
    points = [one.difficulty.score for one in worked.problems]
    lines = [worked.rooms[one.label].lines for one in worked.problems]
    assert minutes == sorted(set(minutes))
    assert points == sorted(set(points))
    assert lines == sorted(lines)


def test_the_parts_of_a_long_product_are_added_in_its_room() -> None:
    """Six parts under one another and their sum, besides the lines of the working."""
    room = worked_sheet("1. 386 x 24").rooms["1"]
    assert room.lines == 3 + 6 + 1
