"""A short page to check again: every structure of the night, new numbers."""

from pathlib import Path

import pytest

from onewhole.errors import InputError
from onewhole.problems.needs import Operation, needs
from onewhole.problems.twins import twin_key
from onewhole.sheets.audit import audit
from onewhole.sheets.header import LONGEST
from onewhole.sheets.mastery import PROBLEMS, NoParallelError, again
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.writing import write_sheet

ROOM_12 = read_sheet((Path(__file__).parents[2] / "examples" / "room12" / "sheet.txt").read_text())


def test_every_structure_of_the_night() -> None:
    """Room 12's night: with and without regrouping, from a whole number, and adding; five problems in all."""
    page = again(ROOM_12)
    asked = [needs(problem.statement) for problem in page.problems]
    assert len(asked) == PROBLEMS == 5
    assert sum(not one.regrouping for one in asked) == 1
    assert sum(one.whole_first for one in asked) == 1
    assert sum(Operation.ADD in one.operations for one in asked) == 1
    assert sum(one.regrouping and not one.whole_first for one in asked) == 3


def test_new_numbers_no_twins_and_nothing_to_change() -> None:
    """None of the night's problems; the page climbs, mixes, and reads back."""
    night = {problem.statement for problem in ROOM_12.problems}
    for turn in range(3):
        page = again(ROOM_12, turn=turn)
        assert not night & {problem.statement for problem in page.problems}
        assert len({twin_key(problem.statement) for problem in page.problems}) == len(page.problems)
        assert audit(WorkedSheet(page)).findings == ()
        assert read_sheet(write_sheet(page)) == page


def test_each_turn_is_another_page() -> None:
    """No problem stands on two of the first three; the same turn is the same page."""
    pages = [{problem.statement for problem in again(ROOM_12, turn=turn).problems} for turn in range(3)]
    assert len(set.union(*pages)) == sum(map(len, pages))
    assert again(ROOM_12, turn=2) == again(ROOM_12, turn=2)


@pytest.mark.parametrize(("count", "kinds"), [(1, 1), (2, 2), (4, 4), (9, 4)])
def test_few_problems_and_many(count: int, kinds: int) -> None:
    """With less room than structures the largest come; with more they share it."""
    page = again(ROOM_12, count=count)
    assert len(page.problems) == count
    seen = {
        (one.regrouping, one.whole_first, one.operations)
        for one in (needs(problem.statement) for problem in page.problems)
    }
    assert len(seen) == kinds


def test_a_word_problem_is_checked_in_words() -> None:
    """Its parallels are stories that name the whole."""
    sheet = read_sheet("1. 5 1/3 - 2 2/3 | A kite takes 2 2/3 of 5 1/3 strips.")
    page = again(sheet, count=2)
    assert all(problem.story for problem in page.problems)
    assert page.header.words.whole == "strip of kite paper"


@pytest.mark.parametrize("title", ["", "Kites", "K" * LONGEST])
def test_the_title_fits(title: str) -> None:
    """It says again, and a long one is cut."""
    page = again(read_sheet(f"title: {title}\n\n1. 52 - 27" if title else "1. 52 - 27"))
    assert page.header.title.lower().endswith("again")
    assert len(page.header.title) <= LONGEST


def test_refusals() -> None:
    """No problem is asked for, and 1/2 + 1/2 has no others like it."""
    with pytest.raises(InputError, match="at least one problem"):
        again(ROOM_12, count=0)
    with pytest.raises(NoParallelError) as refused:
        again(read_sheet("1. 1/2 + 1/2"))
    assert refused.value.remedy
