"""Practice for every group, and for every pupil asked for."""

import pytest

from onewhole.desk.marking.mark import Marked, mark
from onewhole.desk.tomorrow.practice_pages import PracticePage, Tomorrow, practice_pages
from onewhole.notations.text import text
from onewhole.problems.needs import Operation, needs
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.writing import write_sheet
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement

SHEET = "title: Kite tails\n\n1. 6 7/8 - 3 2/8\n2. 9 5/8 - 4 6/8\n3. 8 3/6 - 4 4/6\n"
ANSWERS = "pupil,1,2,3\nK01,3 5/8,5 1/8,4 1/6\nK02,3 5/8,4 7/8,3 5/6\n"


@pytest.fixture
def marked() -> Marked:
    """A night with one pupil who fits an idea and one who is right."""
    return mark(SHEET, ANSWERS)


def statements(page: PracticePage) -> list[Statement]:
    """What a page asks."""
    return [problem.statement for problem in page.practice.sheet.problems]


def test_practice_is_new_and_mixed(marked: Marked) -> None:
    """None of the night's problems; some with regrouping and some without (K11 of our checks)."""
    tonight = {problem.statement for problem in marked.sheet.problems}
    for page in practice_pages(marked, Tomorrow(pupils=("K01", "K02"))):
        assert not tonight & set(statements(page))
        asked = [needs(problem.statement).regrouping for problem in page.practice.sheet.problems]
        assert set(asked) == {True, False}


def test_two_groups_practise_on_different_numbers() -> None:
    """Even when they missed the same problems; and so do pupils of a group with pages of their own."""
    rows = [f"K{at:02},3 5/8,5 1/8,4 1/6" for at in range(1, 13)]
    night = mark(SHEET, "\n".join(["pupil,1,2,3", *rows]))
    pages = tuple(practice_pages(night, Tomorrow(pupils=("K01", "K02", "K03"))))
    assert len(pages) == len(night.groups) + 3
    assert len({write_sheet(page.practice.sheet) for page in pages}) == len(pages)


def test_whoever_is_asked_for_has_a_page() -> None:
    """Few problems are like 1 - 1/8, for more pupils; none is like 1/2 + 1/2, and the night helps out."""
    codes = tuple(f"K{at:02}" for at in range(1, 7))
    wrong = "\n".join(["pupil,1", *(f"{code},2" for code in codes)])
    few = tuple(practice_pages(mark("1. 1 - 1/8", wrong), Tomorrow(codes)))
    assert [page.whose for page in few if page.whose in codes] == list(codes)
    alone = tuple(
        practice_pages(mark("1. 1/2 + 1/2\n2. 5 - 1 3/8", "pupil,1,2\nK01,2/4,3 5/8"), Tomorrow(("K01",)))
    )
    [own] = [page for page in alone if page.whose == "K01"]
    assert [" - " in text(one) for one in statements(own)] == [True] * 6


def test_the_slip_is_one_of_the_open_idea_and_never_on_the_first_night(marked: Marked) -> None:
    """Nothing wrong is shown on the first night; later, what the answers fit, where they fit any."""
    first = tuple(practice_pages(marked, Tomorrow()))
    assert [page.practice.slip for page in first] == [None, None]
    earlier = read_sheet("1. 2/8 + 3/8")
    swifts, larks = practice_pages(marked, Tomorrow(earlier=(earlier,)))
    assert swifts.practice.slip is not None
    assert swifts.practice.slip.pattern == "A01"
    assert larks.practice.slip is None
    left_out = tuple(practice_pages(marked, Tomorrow(earlier=(earlier,), find_slip=False)))
    assert [page.practice.slip for page in left_out] == [None, None]


def test_a_problem_comes_back_from_an_earlier_sheet(marked: Marked) -> None:
    """With the units of the earlier sheet and new numbers; without one, of tonight's pieces."""
    pages = tuple(practice_pages(marked, Tomorrow(earlier=(read_sheet("1. 7 3/5 - 2 4/5\n2. 2/10 + 3/10"),))))
    for page in pages:
        (back,) = [one for one in page.practice.sheet.problems if one.label == page.practice.review]
        assert needs(back.statement).denominators == (10,)
        assert not needs(back.statement).regrouping
    for page in practice_pages(marked, Tomorrow()):
        (back,) = [one for one in page.practice.sheet.problems if one.label == page.practice.review]
        assert needs(back.statement).denominators in {(6,), (8,)}


def test_a_skill_that_is_due_comes_back_before_any_earlier_sheet(marked: Marked) -> None:
    """Each page of a pupil has the pupil's own; who has none due has a problem of the earlier sheet."""
    due = {"K01": (read_statement("3/8 ? 5/8"),)}
    asked = Tomorrow(pupils=("K01", "K02"), earlier=(read_sheet("1. 2/10 + 3/10"),), due=due)
    own, other = (page.practice for page in tuple(practice_pages(marked, asked))[2:])
    (back,) = [one.statement for one in own.sheet.problems if one.label == own.review]
    assert Operation.COMPARE in needs(back).operations
    assert back != due["K01"][0]
    (back,) = [one.statement for one in other.sheet.problems if one.label == other.review]
    assert needs(back).denominators == (10,)


def test_what_is_due_for_most_of_a_group_comes_back_on_its_page() -> None:
    """Of six pupils four are due for comparing and two for whole numbers."""
    night = mark(SHEET, "\n".join(["pupil,1,2,3", *(f"K{at:02},3 5/8,5 1/8,4 1/6" for at in range(1, 7))]))
    comparing, whole = read_statement("3/8 ? 5/8"), read_statement("52 - 27")
    due: dict[str, tuple[Statement, ...]] = dict.fromkeys(("K01", "K02"), (whole, comparing))
    due |= dict.fromkeys(("K03", "K04", "K05", "K06"), (comparing,))
    for page in practice_pages(night, Tomorrow(due=due)):
        made = page.practice
        (back,) = [one.statement for one in made.sheet.problems if one.label == made.review]
        assert Operation.COMPARE in needs(back).operations


def test_a_pupil_practises_what_that_pupil_missed(marked: Marked) -> None:
    """K01 missed eighths and sixths with regrouping; K02 nothing, and has the last problems of the night."""
    first, second = tuple(practice_pages(marked, Tomorrow(pupils=("K02", "K01"))))[2:]
    assert (first.whose, second.whose) == ("K01", "K02")
    assert {needs(one.statement).denominators for one in first.practice.sheet.problems} == {(6,), (8,)}
    assert first.kite == next(practice_pages(marked, Tomorrow())).kite


def test_files_that_every_disk_can_hold() -> None:
    """Codes with blanks, slashes and other letters give names of their own."""
    codes = ["K 1", "K/1", "三", "四", "k-1"]
    night = mark(SHEET, "\n".join(["pupil,1,2,3", *(f"{code},3 5/8,5 1/8,4 1/6" for code in codes)]))
    pages = tuple(practice_pages(night, Tomorrow(pupils=tuple(codes))))[len(night.groups) :]
    assert [page.whose for page in pages] == codes
    assert [page.file for page in pages] == ["pupil-k-1", "pupil-k-1-2", "pupil", "pupil-2", "pupil-k-1-3"]
