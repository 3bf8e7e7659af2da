"""How many problems of a composed page are told as stories."""

import pytest

from onewhole.desk.page.compose import compose, compose_again
from onewhole.desk.page.wished_page import WishForm, composed
from onewhole.findings.wished_skill import WishedSkill
from onewhole.languages.spanish.class_settings import CLASS_SETTINGS
from onewhole.problems.twins import twin_key
from onewhole.sheets.header import Header
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.reading_level import AIM, reading_level
from onewhole.sheets.recipe import Recipe, read_recipe, write_recipe
from onewhole.sheets.stories import told_as
from onewhole.sheets.told_page import stories_on, told_page
from onewhole.sheets.wishes import WishError, Wishes
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.writing import write_sheet

PAGE = "\n".join(f"{at}. {a} - {b}" for at, (a, b) in enumerate(((52, 27), (81, 36), (64, 18), (93, 47)), 1))


@pytest.mark.parametrize(
    "words", [Header().words, CLASS_SETTINGS["huerto"], CLASS_SETTINGS["club de cometas"]]
)
def test_stories_are_built_otherwise_and_easy_to_read(words: object) -> None:
    """In the class's words: no two are built alike while there are others, and each reads at the grade."""
    plain = read_sheet(PAGE)
    sheet = told_page(type(plain)(plain.items, Header(words=words)), 3)  # type: ignore[arg-type]
    told = [one for one in sheet.problems if one.story]
    assert len(told) == stories_on(sheet) == 3
    built = [told_as(one, sheet.header.words) for one in told]
    assert None not in built
    if words is not CLASS_SETTINGS["huerto"]:
        assert len(set(built)) == 3
    for one in told:
        level = reading_level(one.story, sheet.header.words.language)
        assert level is not None
        assert level.grade <= AIM
        assert sheet.header.words.wholes in one.story
    assert read_sheet(write_sheet(sheet)).problems == sheet.problems
    assert [twin_key(one.statement) for one in sheet.problems] == [
        twin_key(one.statement) for one in plain.problems
    ]


def test_the_page_keeps_to_its_minutes() -> None:
    """A story takes longer: only so many are told as find time, and what comes back stays as it is typed."""
    plain = read_sheet(PAGE)
    numbers = sum(one.minutes for one in WorkedSheet(plain).problems)
    budget = int(numbers) + 2
    told = told_page(plain, 4, minutes=budget)
    assert 1 <= stories_on(told) < 4
    assert sum(one.minutes for one in WorkedSheet(told).problems) <= budget
    assert not [one for one in told_page(plain, 4, but=("52 - 27",)).problems[:1] if one.story]


def test_a_composed_page_holds_stories_and_is_made_again() -> None:
    """As many as are wished for, within the minutes; the recipe holds the wish, and gives the same page."""
    wishes = Wishes(number=6, denominators=(4, 8), told=2, minutes=15)
    made = compose(wishes)
    assert stories_on(made.sheet) == 2
    assert sum(one.minutes for one in WorkedSheet(made.sheet).problems) <= 15
    assert read_recipe(write_recipe(Recipe("1", wishes))).wishes == wishes
    again = compose_again(read_sheet(write_sheet(made.sheet)))
    assert (again.sheet.problems, again.notes) == (made.sheet.problems, made.notes)


def test_the_form_of_the_browser_has_the_wish() -> None:
    """Under the class's own settings; more stories than problems are refused."""
    made = composed("stories: garden\n\n1. 5 - 2", WishForm(number="3", denominators="4", told="2"))
    assert made.typed.count(" | ") == 2
    assert "bag" in made.typed
    with pytest.raises(WishError, match="the number of problems told as stories is 4"):
        composed("", WishForm(number="3", told="4"))


def test_where_fewer_can_be_told_it_is_said() -> None:
    """No story is told of what is prime."""
    made = compose(Wishes(skill=WishedSkill.PRIMES, number=4, told=2))
    told = stories_on(made.sheet)
    assert told < 2
    assert f"{told} of 2 stories are told: no easy words, or no minutes, for the others." in made.notes
