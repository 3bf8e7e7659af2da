"""A whole page as an audit sees it."""

from fractions import Fraction
from itertools import combinations
from pathlib import Path

from onewhole.misconceptions.catalogue import patterns
from onewhole.sheets.page import Page, page
from tests.kit.sheets import worked_sheet

ROOM_12 = Path(__file__).parents[2] / "examples" / "room12" / "sheet.txt"


def test_minutes() -> None:
    """1 for a plain problem, 1 1/2 with regrouping, 3 for a story; an evening is ten minutes a grade."""
    found = page(worked_sheet("grade: 5\n\n1. 5 4/6 - 2 1/6\n2. 7 2/6 - 3 5/6\n3. 52 - 27 | Kites."))
    assert [seen.minutes for seen in found.problems] == [1, Fraction(3, 2), 3]
    assert found.minutes == Fraction(11, 2)
    assert found.evening == 50
    assert found.regrouping == Fraction(2, 3)


def test_climbing() -> None:
    """A page falls back where a problem is a whole regrouping easier than the one before."""
    rising = page(worked_sheet("1. 5/6 - 2/6\n2. 5 4/6 - 2 1/6\n3. 7 2/6 - 3 5/6\n4. 9 7/12 - 4 9/12"))
    assert rising.climbs
    falling = page(worked_sheet("1. 7 2/6 - 3 5/6\n2. 5/6 - 2/6\n3. 7 2/6 - 3 5/6\n4. 9 7/12 - 4 9/12"))
    assert falling.falls == (("1", "2"),)


def test_twins() -> None:
    """In groups, by label."""
    found = page(worked_sheet("1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6\n3. 52 - 27\n4. 9 2/6 - 5 5/6"))
    assert found.twins == (("1", "2", "4"),)


def _pairs(found: Page) -> set[tuple[str, str]]:
    return {pair for group in found.alike for pair in combinations(group, 2)}


def test_patterns_that_the_page_cannot_tell_apart() -> None:
    """One more problem tells A01 from A02."""
    alone = _pairs(page(worked_sheet("1. 5 1/8 - 2 5/8")))
    assert ("A01", "A02") in alone
    both = _pairs(page(worked_sheet("1. 5 1/8 - 2 5/8\n2. 9 5/8 - 4 6/8")))
    assert ("A01", "A02") not in both
    assert both < alone


def test_a_pattern_that_shows_on_one_more_problem_is_told_apart() -> None:
    """A20 writes what A01 writes where the first number is whole; A01 shows elsewhere too."""
    whole_on_top = page(worked_sheet("1. 4 - 1 3/8"))
    assert ("A01", "A20") in _pairs(whole_on_top)
    assert ("A01", "A20") not in _pairs(page(worked_sheet("1. 4 - 1 3/8\n2. 9 5/8 - 4 6/8")))


def test_hidden_and_never() -> None:
    """Right by luck each time is hidden; what no problem shows is never shown."""
    found = page(worked_sheet("1. 7 2/6 - 3 5/6"))
    assert "A03" in found.hidden
    assert {"A03", "P01", "B01"} <= set(found.never)
    shown = {slip.pattern for seen in found.problems for slip in seen.slips}
    assert shown | set(found.never) == {pattern.id for pattern in patterns()}
    assert not shown & set(found.never)


def test_the_page_of_room_12() -> None:
    """Climbs, has no twins, and tells every two patterns apart but for two that always write one answer."""
    found = page(worked_sheet(ROOM_12.read_text(encoding="utf-8")))
    assert found.climbs
    assert not found.twins
    assert found.alike == (("A12", "A26"),)
    assert found.minutes <= (found.sheet.header.minutes or 0)
