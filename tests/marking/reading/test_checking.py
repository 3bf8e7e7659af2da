"""Chains of equalities: every sign true, or the first false one, its place and what would make it true."""

import pytest

from onewhole.marking.reading.checking import RUN_ON, FalseSign, check
from onewhole.notations.text import text
from onewhole.statements.reading import read_statement
from onewhole.statements.tokens import ReadingError


def _first(typed: str) -> FalseSign:
    [checked] = check(typed)
    assert checked.first_false is not None
    assert not checked.true
    return checked.first_false


@pytest.mark.parametrize(
    "typed",
    [
        "7 2/6 - 3 5/6 = 6 8/6 - 3 5/6 = 3 3/6 = 3 1/2",
        "52 - 27 = 4 tens 12 ones - 27 = 25",
        "5 ft 2 in - 2 ft 7 in = 4 ft 14 in - 2 ft 7 in = 2 ft 7 in",
        "3/4 = 6/8",
        "3 - 5 = 1 - 3",
    ],
)
def test_a_true_chain_has_nothing_to_say(typed: str) -> None:
    """Every equals sign holds, whatever the strategy."""
    [checked] = check(typed)
    assert (checked.true, checked.first_false, checked.false, checked.separate) == (True, None, (), ())


@pytest.mark.parametrize(
    ("typed", "column", "instead", "patterns"),
    [
        ("9 5/8 - 4 6/8 = 9 13/8 - 4 6/8 = 5 7/8", 17, "8 13/8 - 4 6/8", ("A02",)),
        ("9 5/8 - 4 6/8 = 8 15/8 - 4 6/8 = 4 9/8", 17, "8 13/8 - 4 6/8", ("A04",)),
        ("9 5/8 - 4 6/8 = 9 5/8 - 5 = 4 5/8", 17, "9 7/8 - 5", ("A29",)),
        ("9 5/8 - 4 6/8 = 8 13/8 - 4 6/8 = 8 7/8", 34, "4 7/8", ("A09",)),
        ("9 5/8 - 4 6/8 = 5 1/8", 17, "4 7/8", ("A01",)),
        ("9 5/8 - 4 6/8 = 4 1/4", 17, "4 7/8", ("A06",)),
        ("9 5/8 - 4 6/8 = 100", 17, "4 7/8", ()),
        ("1/2 + 2/3 = 3/5", 13, "1 1/6", ("B01",)),
        ("9 5/8 - 4 6/8 = 1 + 1", 17, "4 7/8", ()),
        ("7 2/6 = 7 8/6", 9, "6 8/6", ()),
        ("52 - 27 = 35", 11, "25", ("E01", "E02", "E31")),
        ("5.2 - 2.7 = 3.5", 13, "2.5", ("F04", "F05")),
        ("5 ft 2 in - 2 ft 7 in = 4 ft 12 in - 2 ft 7 in", 25, "4 ft 14 in - 2 ft 7 in", ("G02", "G05")),
        ("3 x 2/7 = 5/7", 11, "6/7", ("D03",)),
    ],
)
def test_the_first_false_sign(typed: str, column: int, instead: str, patterns: tuple[str, ...]) -> None:
    """Its place, what could stand there instead, and the patterns whose working has this step or this end."""
    false = _first(typed)
    assert (false.line, false.column, false.runs_on, false.patterns) == (1, column, False, patterns)
    assert false.would_be is not None
    assert text(false.would_be) == instead


def test_only_the_first_false_sign_gets_patterns() -> None:
    """What comes after it goes on from something false already."""
    [checked] = check("9 5/8 - 4 6/8 = 9 13/8 - 4 6/8 = 5 7/8 = 5 1/8")
    assert [sign.patterns for sign in checked.false] == [("A02",), ()]


def test_the_place_counts_lines() -> None:
    """A chain on several lines is one chain; the false side is on line 3."""
    false = _first("7 2/6 - 3 5/6\n  = 6 8/6 - 3 5/6\n  = 4 3/6")
    assert (false.line, false.column) == (3, 5)


def test_several_chains_are_checked_apart() -> None:
    """One result a chain, in order; a problem that is given says what they all work on."""
    alone = check("9 5/8 = 9 13/8\n9 13/8 - 4 6/8 = 5 7/8")
    assert [checked.true for checked in alone] == [False, True]
    with_problem = check(
        "9 5/8 - 4 6/8 = 8 13/8 - 4 6/8\n8 13/8 - 4 6/8 = 8 7/8", read_statement("9 5/8 - 4 6/8")
    )
    assert [checked.true for checked in with_problem] == [True, False]
    assert with_problem[1].false[0].patterns == ("A09",)


def test_the_equals_sign_that_runs_on_is_told_kindly() -> None:
    """Each act makes sense: the same work is offered a line an act, and no pattern is named."""
    [checked] = check("2 + 3 = 5 + 4 = 9 - 2 = 7")
    assert [sign.runs_on for sign in checked.false] == [True, True]
    assert [sign.patterns for sign in checked.false] == [(), ()]
    assert [[text(side) for side in line] for line in checked.separate] == [
        ["2 + 3", "5"],
        ["5 + 4", "9"],
        ["9 - 2", "7"],
    ]
    assert text(checked.false[0].would_be or checked.false[0].right) == "5"
    assert RUN_ON.startswith("Each act makes sense, but the equals sign does not")


def test_running_on_with_a_mistake_is_both() -> None:
    """The sign that runs on, and then the sum that is wrong."""
    [checked] = check("2 + 3 = 5 + 4 = 10")
    assert [(sign.runs_on, sign.column) for sign in checked.false] == [(True, 9), (False, 17)]


def test_a_right_answer_gets_no_pattern() -> None:
    """One whole too many is taken and put back: the answer is right, the way of writing it is not."""
    [checked] = check("7 2/6 - 3 5/6 = 7 2/6 - 4 = 3 2/6 + 1/6 = 3 3/6")
    assert [(sign.runs_on, sign.patterns) for sign in checked.false] == [(False, ()), (True, ())]


def test_kinds_are_part_of_what_is_equal() -> None:
    """5 ft is not 5."""
    assert text(_first("5 ft = 5").would_be or _first("5 ft = 5").right) == "5 ft"


def test_below_zero_nothing_is_offered() -> None:
    """The sign is false, and no number of grade 4 makes it true."""
    assert _first("3 - 5 = 2").would_be is None


@pytest.mark.parametrize(
    ("typed", "place"),
    [
        ("", (1, 1)),
        ("7 2/6", (1, 1)),
        ("7 2/6 = ", (1, 1)),
        ("7 2/0 = 7", (1, 5)),
        ("3 = 3\n= x", (2, 3)),
        ("= 3", (1, 3)),
    ],
)
def test_what_is_no_equality_is_refused_with_its_place(typed: str, place: tuple[int, int]) -> None:
    """Line and column, for whoever typed it."""
    with pytest.raises(ReadingError) as caught:
        check(typed)
    assert (caught.value.line, caught.value.column) == place
