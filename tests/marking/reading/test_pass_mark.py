"""Who reached the bar: exact shares, and papers that have to be looked at."""

from fractions import Fraction

import pytest

from onewhole.errors import InputError
from onewhole.findings.reach import Reach
from onewhole.marking.reading.answers_table import read_answers
from onewhole.marking.reading.mark import mark_class
from onewhole.marking.reading.pass_mark import USUAL, PassMark, PassStanding, mastery
from onewhole.sheets.reading import read_sheet
from onewhole.working.form import FormWanted

PAGE = read_sheet("1. 52 - 27\n2. 9 5/8 - 4 6/8\n3. 2/8 + 3/8\n4. 5 - 1 3/8\n5. 7 2/6 - 3 5/6").problems
RIGHT = ("25", "4 7/8", "5/8", "3 5/8", "3 3/6")


def standing(*cells: str, bar: PassMark = USUAL, wanted: FormWanted | None = None) -> PassStanding:
    """How one pupil stands who wrote these."""
    answers = read_answers("pupil,1,2,3,4,5\nK01," + ",".join(cells), PAGE)
    (found,) = mastery(mark_class(answers, wanted or FormWanted()), bar)
    return found


@pytest.mark.parametrize(
    ("cells", "right", "reach"),
    [
        (RIGHT, 5, Reach.REACHED),
        ((*RIGHT[:4], "9"), 4, Reach.REACHED),  # 4 of 5 is exactly 80 %
        ((*RIGHT[:3], "9", "9"), 3, Reach.NOT_YET),
        ((*RIGHT[:3], "9", ""), 3, Reach.NOT_YET),
        ((*RIGHT[:3], "9", "smudge"), 3, Reach.LOOK),
        ((*RIGHT[:2], "9", "9", "smudge"), 2, Reach.NOT_YET),
        (("", "", "", "", ""), 0, Reach.ABSENT),
        (("smudge", "", "", "", ""), 0, Reach.NOT_YET),
        (("25", "39/8", "10/16", "3.625", "21/6"), 5, Reach.REACHED),
    ],
)
def test_reach(cells: tuple[str, ...], right: int, reach: Reach) -> None:
    """Equal forms are right, blanks are not, and what cannot be read is looked at where it matters."""
    found = standing(*cells)
    assert (found.right, found.asked, found.reach) == (right, 5, reach)
    assert found.share == Fraction(right, 5)


@pytest.mark.parametrize(
    ("percent", "reach"), [(1, Reach.REACHED), (60, Reach.REACHED), (61, Reach.NOT_YET), (100, Reach.NOT_YET)]
)
def test_the_bar_is_exact(percent: int, reach: Reach) -> None:
    """Three of five are 60 % and not 61 %."""
    assert standing(*RIGHT[:3], "9", "9", bar=PassMark.percent(percent)).reach is reach


def test_a_form_that_a_teacher_asks_for_is_another_matter() -> None:
    """A right amount sent back for its form is still a right amount."""
    found = standing("25", "39/8", "5/8", "3 5/8", "21/6", wanted=FormWanted(mixed=True))
    assert (found.right, found.reach) == (5, Reach.REACHED)


def test_the_usual_bar() -> None:
    """80 %, as a setting: four of five, and ten of twelve are wanted."""
    assert PassMark(Fraction(4, 5)) == USUAL
    assert USUAL.shown == "80 %"
    assert PassMark(Fraction(1, 3)).shown == "100/3 %"


@pytest.mark.parametrize("percent", [0, -5, 101])
def test_no_bar(percent: int) -> None:
    """What everybody or nobody reaches is refused."""
    with pytest.raises(InputError, match="is no bar") as refused:
        PassMark.percent(percent)
    assert refused.value.remedy == "Set it from 1 to 100; 80 is usual."
