"""A page composed at the page desk."""

from fractions import Fraction

import pytest

from onewhole.desk.page.wished_page import WishForm, composed
from onewhole.errors import InputError
from onewhole.sheets.page import page
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.wishes import OpenQuestion
from onewhole.sheets.worked import WorkedSheet
from tests.kit.sheets import worked_sheet

HEADER = "title: Kites\nclass: Room 12\nwhole: strip\nminutes: 20\n"


def test_the_wishes_are_kept_and_so_is_the_header() -> None:
    """Four problems of quarters and eighths, half with regrouping, under the title that stood there."""
    form = WishForm("both", number="4", denominators="4, 8", regrouping="1/2")
    made = composed(f"{HEADER}\n1. 5 - 2", form)
    sheet = read_sheet(made.typed)
    seen = page(WorkedSheet(sheet))
    assert (sheet.header.title, sheet.header.class_name, sheet.header.words.whole) == (
        "Kites",
        "Room 12",
        "strip",
    )
    assert len(sheet.problems) == 4
    assert seen.regrouping == Fraction(1, 2)
    assert {bottom for one in seen.problems for bottom in one.needs.denominators} <= {4, 8}
    assert made.told[0].startswith("Chosen from ")


def test_a_page_may_be_composed_from_nothing() -> None:
    """Nothing is typed yet, or only a header."""
    form = WishForm(number="3", denominators="6")
    assert len(read_sheet(composed("", form).typed).problems) == 3
    assert read_sheet(composed("titel: ?\ntitle: Kites", form).typed).header.title == "Kites"


def test_problems_of_other_nights_do_not_come_again() -> None:
    """And another seed gives another page."""
    form = WishForm(number="3", denominators="6")
    first = composed("", form)
    asked = {one.typed for one in read_sheet(first.typed).problems}
    again = composed("", form, not_again=[first.typed])
    assert not asked & {one.typed for one in read_sheet(again.typed).problems}
    assert composed("", WishForm(number="3", denominators="6", seed="2")).typed != first.typed


def test_a_recipe_has_room_for_what_does_not_come_again() -> None:
    """However many nights there were, the page is composed; the last night counts first."""
    nights = ["\n".join(f"{at}. {whole} {at}/12 - 1 1/12" for at in range(2, 12)) for whole in range(3, 60)]
    made = composed("", WishForm(number="3", denominators="12"), not_again=nights)
    assert "59_7/12_-_1_1/12" in made.recipe
    assert "=3_7/12_-_1_1/12" not in made.recipe
    assert ",3_7/12_-_1_1/12" not in made.recipe
    assert "recipe" not in made.typed


def test_what_the_class_left_open_is_asked() -> None:
    """The recipe says so, and the page tells the two patterns apart."""
    questions = (OpenQuestion(("A01",), ("A02",), 1000),)
    made = composed("", WishForm(number="3", denominators="8"), questions=questions)
    assert "A01" in made.recipe
    assert not any({"A01", "A02"} <= set(group) for group in page(worked_sheet(made.typed)).alike)


@pytest.mark.parametrize(
    ("form", "what"),
    [
        (WishForm(kind="juggle"), "there is no skill “juggle” to compose"),
        (WishForm(number="many"), "“many” is no number of problems"),
        (WishForm(number="41"), "the number of problems is 41"),
        (WishForm(denominators="7"), "grade 4 does not meet the denominator 7"),
        (WishForm(denominators="six"), "“six” is no denominator"),
        (WishForm(regrouping="most"), "“most” is no share of a page"),
        (WishForm(minutes="0"), "the minutes is 0"),
        (WishForm(number="12", denominators="2", minutes="3"), "met"),
    ],
)
def test_wishes_that_cannot_be_met(form: WishForm, what: str) -> None:
    """They are refused in words, with what to do next."""
    with pytest.raises(InputError, match=what) as refused:
        composed("", form)
    assert refused.value.remedy


def test_what_is_due_comes_back_as_far_as_there_is_room() -> None:
    """Both stand on a page of four; a page without regrouping has no room for one, and says so."""
    back = ("52 - 27", "2/8 + 3/8")
    form = WishForm(number="4", denominators="4, 8", regrouping="1/2")
    made = composed("", form, back=back)
    assert set(back) <= {one.typed for one in read_sheet(made.typed).problems}
    none = composed("", WishForm(number="4", denominators="4, 8", regrouping="0"), back=back[:1])
    assert none.told[-1] == "52 - 27 is due to come back and finds no room beside these wishes."
    assert len(read_sheet(none.typed).problems) == 4
    one = composed("", WishForm(number="2", denominators="4, 8", regrouping="any"), back=back)
    assert "52 - 27" in {problem.typed for problem in read_sheet(one.typed).problems}
