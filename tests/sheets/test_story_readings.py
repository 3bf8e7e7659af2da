"""What a typed story may ask: its numbers found, the likeliest first, and never surer than its words."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.notations.text import text
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.sheet_editor import SheetEditor
from onewhole.sheets.story_readings import MOST_READINGS, story_readings, without_units
from onewhole.sheets.told_numbers import untold

RIBBON = "Maya has 4 1/4 yards of ribbon. She uses 1 3/4 yards. How much is left?"

#: Stories as teachers type them, what they ask by our own reading, and whether their words tell it.
STORIES = [
    (RIBBON, "4 1/4 - 1 3/4", True),
    ("Rosa has 52 beads and gives 27 to her sister. How many beads does Rosa have left?", "52 - 27", True),
    ("Sam ran 2 1/2 miles and then 1 3/4 miles. How far did he run altogether?", "2 1/2 + 1 3/4", True),
    (
        "A recipe needs 3 cups of flour. Zoe has 1 2/3 cups. How much more flour does she need?",
        "3 - 1 2/3",
        True,
    ),
    (
        "One ribbon is 7 \N{VULGAR FRACTION TWO THIRDS} ft long. How much longer is it than one of 5 1/2 ft?",
        "7 2/3 - 5 1/2",
        True,
    ),
    (
        "Mr. Lee\N{RIGHT SINGLE QUOTATION MARK}s class had 3-1/2 gallons and used 1-3/4. How much remains?",
        "3 1/2 - 1 3/4",
        True,
    ),
    (
        "Jo drank two and a half cups of milk, and Al drank one and three fourths cups. Who drank more?",
        "2 1/2 ? 1 3/4",
        True,
    ),
    ("She ran 1 1/2 miles, then 2 3/4 miles and 1 1/4 miles. How far in all?", "1 1/2 + 2 3/4 + 1 1/4", True),
    (
        "Room 12 has 5 1/3 strips of paper. A kite takes 2 2/3 strips. How many strips are left?",
        "5 1/3 - 2 2/3",
        True,
    ),
    (
        "A jug holds 1 1/4 quarts. A pot holds 3 quarts. How much more does the pot hold than the jug?",
        "3 - 1 1/4",
        True,
    ),
    (
        "A board is 5 feet 2 inches long. Leo cuts off 2 feet 7 inches. How long is the rest?",
        "5 ft 2 in - 2 ft 7 in",
        False,
    ),
    (
        "At 3:15 Tim had a 6-foot rope. He used 2 3/4 feet of it. How much rope does he have now?",
        "6 - 2 3/4",
        False,
    ),
    (
        "Nina gave 2 1/2 cups of beads away and has 1 1/4 cups left. How many had she at first?",
        "2 1/2 + 1 1/4",
        False,
    ),
    ("There are 4 bags with 2 1/4 pounds of apples each. How many pounds are there?", "4 x 2 1/4", False),
    (
        "Three friends share 2 1/4 pizzas. They eat 1 3/4 pizzas. How much pizza is left?",
        "2 1/4 - 1 3/4",
        False,
    ),
    ("Subtract 2 3/8 from 5 1/8.", "5 1/8 - 2 3/8", True),
    ("What is the sum of 2 1/5 and 3 4/5?", "2 1/5 + 3 4/5", True),
]


@pytest.mark.parametrize(("story", "asks", "sure"), STORIES)
def test_what_a_story_asks(story: str, asks: str, sure: bool) -> None:
    """The likeliest reading stands first; where words mislead or are missing nothing is told as sure."""
    found = story_readings(story)
    assert (text(found.asked[0]), found.sure) == (asks, sure)


def test_a_story_that_compares_is_never_sure() -> None:
    """Key words mislead here: Ben ran less than Ana. Both readings are offered."""
    found = story_readings("Ana ran 4 1/2 miles. That is 1 3/4 miles more than Ben. How far did Ben run?")
    assert not found.sure
    assert {"4 1/2 - 1 3/4", "4 1/2 + 1 3/4"} <= set(map(text, found.asked))


@pytest.mark.parametrize(
    "story",
    [
        "Show each step.",
        "Write 3/4 as eighths.",
        "Turn to page 3 of Unit 2.",
        "Maya has a ribbon. How long is it?",
    ],
)
def test_words_without_two_amounts_ask_nothing(story: str) -> None:
    """Nothing is offered."""
    assert not story_readings(story)


@pytest.mark.parametrize(("story", "asks", "_sure"), STORIES)
def test_what_is_taken_can_be_read_and_is_told(story: str, asks: str, _sure: bool) -> None:
    """Each reading, written before its story, is a word problem whose words tell its numbers."""
    for asked in story_readings(story).asked:
        (problem,) = read_sheet(SheetEditor.of(story).told_as(1, text(asked)).typed).problems
        assert problem.statement == asked
        if text(asked) == asks:
            assert untold(problem) == ()


@given(st.text("1234567890/ .?-,aehlmnorstx\N{VULGAR FRACTION ONE HALF}\n\t|", max_size=80))
def test_nothing_is_raised_whatever_is_typed(story: str) -> None:
    """There are so many readings at most, none twice."""
    asked = [text(one) for one in story_readings(story).asked]
    assert len(asked) == len(set(asked)) <= MOST_READINGS


@pytest.mark.parametrize("line", ["5 - 2", "2/3 of a yard", "3 cups", "six kites", "$5"])
def test_a_line_without_unknown_units_is_no_sum_of_them(line: str) -> None:
    """Only a sum or difference is one."""
    assert without_units(line) is None
