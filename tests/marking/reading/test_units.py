"""Units and words behind an answer: read where the problem says them, told where they are another one's."""

import pytest

from onewhole.findings.in_answer import Remark, Tier
from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.notations.text import text as typed
from onewhole.number.quantity import Quantity
from onewhole.problems.problem import Problem
from onewhole.sheets.reading import read_sheet

MILES, CUPS, INCHES, PLAIN, POUNDS, FEET = read_sheet(
    "1. 4 1/4 - 1 3/4 | Maya hiked 4 1/4 miles in the morning, 1 3/4 mi in the evening. How many more?\n"
    "2. 6 1/8 - 3 5/8 | A jug holds 6 1/8 cups of water, and 3 5/8 cups are poured out. How much is left?\n"
    "3. 9 1/2 - 2 3/4 | A ribbon of 9 1/2 inches loses 2 3/4 in. How long is it?\n"
    "4. 7 2/6 - 3 5/6\n"
    "5. 6 lb 2 oz - 1 lb 14 oz\n"
    "6. 5 ft 2 in - 2 ft 7 in\n"
).problems


@pytest.mark.parametrize(
    ("problem", "text", "read"),
    [
        (MILES, "2 1/2 mi.", "2 1/2"),
        (MILES, "2 2/4 miles", "2 2/4"),
        (MILES, "2 2/4 Mile", "2 2/4"),
        (MILES, "2½ mi", "2 1/2"),
        (MILES, "10/4 miles more", "10/4"),
        (MILES, "2.5mi", "2.5"),
        (MILES, "'-1/2", "-1/2"),
        (CUPS, "2 4/8 cups of water", "2 4/8"),
        (CUPS, "2 1/2 c", "2 1/2"),
        (CUPS, "2 1/2 cups left", "2 1/2"),
        (INCHES, "6 3/4 in", "6 3/4"),
        (INCHES, '6 3/4"', "6 3/4"),
        (POUNDS, "4 2/8 lb", "4 lb 4 oz"),
        (POUNDS, "4 1/4 pounds", "4 lb 4 oz"),
        (POUNDS, "4 lb 4 oz", "4 lb 4 oz"),
        (FEET, "2 7/12 ft", "2 ft 7 in"),
        (FEET, "31 in", "31 in"),
    ],
)
def test_what_the_problem_says_may_stand_behind_the_number(problem: Problem, text: str, read: str) -> None:
    """In full, short, with a dot, in another number, with other words of the story."""
    found = read_written(text, problem)
    assert (found.text, found.other_unit) == (text, False)
    assert not isinstance(found.read, Unreadable)
    assert typed(found.read) == read  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("problem", "text"),
    [
        (PLAIN, "3 3/6 mi"),
        (PLAIN, "3 3/6 kites"),
        (MILES, "2 1/2 wide"),
        (MILES, "about 2 1/2 miles"),
        (MILES, "2 1/2 miles 3"),
        (MILES, "miles"),
        (FEET, "2 1/7 ft"),
        (FEET, "2 1/2 lb"),
    ],
)
def test_other_words_stay_unread(problem: Problem, text: str) -> None:
    """Nothing is guessed: a teacher looks at it."""
    assert isinstance(read_written(text, problem).read, Unreadable)


@pytest.mark.parametrize(
    ("problem", "text"),
    [(MILES, "2 1/2 lb"), (MILES, "2 1/2 km"), (CUPS, "2 4/8 mi"), (MILES, "2 1/2 in")],
)
def test_another_unit_is_told_and_not_right(problem: Problem, text: str) -> None:
    """The amount is right, the unit is not; that shows no pattern. "in" of "in the morning" is no inch."""
    found = mark(expect(problem), read_written(text, problem))
    assert (found.verdict, found.patterns, found.remarks) == (Verdict.WRONG, (), (Remark.OTHER_UNIT,))


def test_a_wrong_number_with_its_unit_fits_what_it_fits_without() -> None:
    """The unit takes nothing from the evidence, and another unit is told beside it."""
    asked = expect(MILES)
    plain, right_unit, other = (
        mark(asked, read_written(text, MILES)) for text in ("3 2/4", "3 2/4 miles", "3 2/4 lb")
    )
    assert plain.patterns
    assert plain.patterns == right_unit.patterns == other.patterns
    assert Remark.OTHER_UNIT in other.remarks
    assert isinstance(right_unit.written.read, Quantity)


@pytest.mark.parametrize(
    ("asked", "text", "verdict", "remarks"),
    [
        ("5 5/8 in - 2 7/8 in", "2 3/4 inches", Verdict.RIGHT, {Remark.MAY_BE_RENAMED}),
        ("5 5/8 in - 2 7/8 in", "2.75 in", Verdict.RIGHT, set()),
        ("5 5/8 in - 2 7/8 in", "2 3/4", Verdict.RIGHT, {Remark.MAY_BE_RENAMED, Remark.UNIT_MISSING}),
        ("5 5/8 in - 2 7/8 in", "3 2/8 in", Verdict.WRONG, set()),
        ("5 5/8 in - 2 5/8 in", "3 in", Verdict.RIGHT, set()),
        ("5 5/8 in - 2 5/8 in", "3 lb", Verdict.WRONG, {Remark.OTHER_UNIT}),
        ("20 1/2 in + 3 1/2 in", "2 ft", Verdict.RIGHT, set()),
        ("$3.25 + $1.80", "$5.05", Verdict.RIGHT, set()),
        ("$3.25 + $1.80", "5 dollars and 5 cents", Verdict.RIGHT, set()),
        ("$3.25 + $1.80", "505¢", Verdict.RIGHT, set()),
        ("$3.25 + $1.80", "5.05", Verdict.RIGHT, {Remark.UNIT_MISSING}),
        ("$3.25 + $1.80", "$3.25 + $1.80 = $5.05", Verdict.RIGHT, set()),
        ("$3.25 + $1.80", "$5.5", Verdict.UNREADABLE, set()),
        ("$3.25 + $1.80", "$4.105", Verdict.WRONG, set()),
        ("75¢ + 50¢", "$1.25", Verdict.RIGHT, set()),
        ("75¢ + 50¢", "125 cents", Verdict.RIGHT, set()),
        ("75¢ + 50¢", "$1.20", Verdict.WRONG, set()),
        ("3 h 20 min - 1 h 50 min", "1.5 h", Verdict.RIGHT, set()),
        ("7 - 2", "$5", Verdict.WRONG, {Remark.OTHER_UNIT}),
    ],
)
def test_a_number_with_a_unit_is_marked(
    asked: str, text: str, verdict: Verdict, remarks: set[Remark]
) -> None:
    """Any equal amount is right, cents for dollars too; a unit that is left out is told."""
    (problem,) = read_sheet(f"1. {asked}").problems
    found = mark(expect(problem), read_written(text, problem))
    assert (found.verdict, remarks - set(found.remarks)) == (verdict, set())
    assert (Remark.UNIT_MISSING in found.remarks) == (Remark.UNIT_MISSING in remarks)


def test_a_story_may_speak_of_dollars() -> None:
    """Its numbers stand in the problem without the sign; an answer may have it."""
    (problem,) = read_sheet("1. 4.50 - 1.75 | Ana has $4.50 and spends $1.75. How much is left?").problems
    assert mark(expect(problem), read_written("$2.75", problem)).verdict is Verdict.RIGHT


@pytest.mark.parametrize(
    ("asked", "text", "verdict", "patterns"),
    [
        ("9:45 + 1 h 35 min", "11:20", Verdict.RIGHT, ()),
        ("9:45 + 1 h 35 min", "10:20", Verdict.WRONG, ("J04",)),
        ("9:45 + 1 h 35 min", "10 h 20 min", Verdict.WRONG, ("J04",)),
        ("9:45 + 1 h 35 min", "11:80", Verdict.WRONG, ("J05",)),
        ("9:45 + 1 h 35 min", "10:80", Verdict.FORM, ("J03",)),
        ("11:45 + 1 h 35 min", "1:20", Verdict.RIGHT, ()),
        ("11:45 + 1 h 35 min", "12:20", Verdict.WRONG, ("J04",)),
        ("2:15 p.m. + 1 h 50 min", "3:05", Verdict.WRONG, ("J04",)),
        ("2:15 p.m. + 1 h 50 min", "3:05 a.m.", Verdict.WRONG, ()),
        ("11:20 - 45 min", "10:75", Verdict.WRONG, ("G01",)),
        ("9:45 to 11:20", "1:35", Verdict.RIGHT, ()),
        ("9:45 to 11:20", "1:75", Verdict.WRONG, ("G01",)),
        ("9:45 to 11:20", "2:25", Verdict.WRONG, ("G03",)),
    ],
)
def test_hours_and_minutes_with_a_colon(
    asked: str, text: str, verdict: Verdict, patterns: tuple[str, ...]
) -> None:
    """A time of day and a duration are read as a child writes them, with too many minutes as well.

    By the rules J03 to J05, G01 and G03, worked by hand.
    """
    (problem,) = read_sheet(f"1. {asked}").problems
    expected = expect(problem)
    found = mark(expected, read_written(text, problem))
    assert (found.verdict, found.patterns) == (verdict, patterns)
    assert not patterns or verdict is Verdict.FORM or found.tier is Tier.EXACT
