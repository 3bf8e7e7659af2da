"""The numbers of a word problem stand in its words."""

import pytest

from onewhole.notations.text import text
from onewhole.problems.problem import Problem
from onewhole.sheets.told_numbers import untold
from onewhole.statements.reading import read_statement


@pytest.mark.parametrize(
    ("asked", "story", "missing"),
    [
        ("5 1/3 - 2 2/3", "", []),
        ("5 1/3 - 2 2/3", "Room 12 has 5 1/3 strips. A kite takes 2 2/3 strips.", []),
        ("5 1/3 - 2 2/3", "It has 5⅓ strips and uses 2 and 2/3.", []),
        ("5 1/3 - 2 2/3", "It has 16/3 strips and uses two and two thirds strips.", []),
        ("5 1/3 - 2 2/3", "It has 5 strips and uses 2 1/3.", ["5 1/3", "2 2/3"]),
        ("5 1/3 - 2 2/3", "It has 15 1/3 strips and uses 2 2/3.", ["5 1/3"]),
        ("5.2 - 2.7", "It has 5.2 strips. It uses 2.7.", []),
        ("5.2 - 2.7", "It has 5.2 strips. It uses 27.", ["2.7"]),
        ("1,200 - 7", "Of 1,200 kites, 7 are torn.", []),
        ("5 ft 2 in - 2 ft 7 in", "A string of 5 feet 2 inches loses 2 ft 7 in.", []),
        ("5 ft 2 in - 2 ft 7 in", "A string of 5 feet, 2 inches loses 2 feet and 7 inches.", []),
        ("5 ft 2 in - 2 ft 7 in", "A string of 62 inches loses 2 ft.", ["2 ft 7 in"]),
        ("9 - ? = 3 1/2", "It has 9 strips. Now it has 3 1/2.", []),
        ("5 - 3", "Put 5 in the box and take 3.", []),
        ("24 - 6", "A class has 24 seats. Today 6 in the back row are empty.", []),
        ("24 in - 6 in", "A class has 24 seats. Today 6 in the back row are empty.", ["24 in", "6 in"]),
        ("2 ft 3 in - 7 in", "A string of 2 feet, 3 inches loses 7 in of it.", []),
        ("5 lb - 3 oz", "A box of 3 pounds and a kite of 5 ounces.", ["5 lb", "3 oz"]),
        ("7 2/6 = 6 ?/6", "It has 7 2/6 strips.", []),
        ("1/2 - 1/4", "Kite 1.2.3 has 1/2, then 1/4, of a strip.", []),
    ],
)
def test_what_is_not_told(asked: str, story: str, missing: list[str]) -> None:
    """Digits, signs for fractions, equal forms and number words count; another number does not."""
    problem = Problem("1", read_statement(asked), asked, story=story)
    assert [text(number) for number in untold(problem)] == missing
