"""Where the bars of a story stand, and how a story is known by its words."""

import re
from typing import Any

import pytest

from onewhole.desk.walkthrough.lesson import lesson
from onewhole.languages.spanish.stories import KITE_PAPER
from onewhole.pictures.scene import Words
from onewhole.problems.problem import Problem
from onewhole.problems.story_structure import Structure
from onewhole.sheets.stories import story, told_as
from onewhole.sheets.story_pictures import story_picture
from onewhole.statements.gap import HOLE
from onewhole.statements.reading import read_statement
from onewhole.walkthroughs.cue import Draw
from onewhole.walkthroughs.script import script
from onewhole.writers.printed import Printed
from onewhole.writers.pupil_page import pupil_page
from onewhole.writers.tactile_page import tactile_pages
from onewhole.writers.workings_page import workings_page
from tests.kit.how_much import sample
from tests.kit.sheets import worked_sheet
from tests.kit.stories import TOLD, TRAIL


def listed(page: Printed, name: str) -> list[Any]:
    """What a page has of a sort, in order."""
    found = page.data[name]
    assert isinstance(found, list)
    return found


RED = story(read_statement("52 - 27"), structure=Structure.COMPARE).words
SHEET = f"{{}}\n1. 52 - 27 | {RED}\n2. 7 2/6 - 3 5/6\n"


@pytest.mark.parametrize("typed", TOLD[:: sample(97, 41, 3)])
def test_a_story_is_known_by_its_words(typed: str) -> None:
    """Every structure that is told of a problem is found again, in a class of its own words too."""
    for words in (None, TRAIL, KITE_PAPER):
        for seed in range(4):
            told = story(read_statement(typed), seed=seed, words=words)
            assert told_as(told.problem("1"), words) is told.structure


def test_other_words_are_not_taken_for_ours() -> None:
    """One word more, and it is a story of the class's own."""
    own = Problem("1", read_statement("52 - 27"), "52 - 27", story=f"{RED} Say it.")
    assert told_as(own) is None
    assert told_as(Problem("1", read_statement("2 x 3 x 4"), "2 x 3 x 4", story="Anything.")) is None


def test_a_problem_without_words_has_no_bars() -> None:
    """The bars belong to the story."""
    worked = worked_sheet(SHEET.format("title: Kites\n"))
    first, second = [story_picture(one, worked.header) for one in worked.problems]
    assert first is not None
    assert second is None
    captions = [one.shape.caption for one in first.blank.pieces if isinstance(one.shape, Words)]
    assert captions.count(HOLE) == 1


@pytest.mark.parametrize(("setting", "shown"), [("title: Kites", True), ("story bars: no", False)])
def test_the_setting_holds_for_workings_film_and_raised_lines(setting: str, shown: bool) -> None:
    """Shown before the lines of the story alone, or nowhere."""
    worked = worked_sheet(SHEET.format(f"{setting}\n"))
    first, second = listed(workings_page(worked), "problems")
    assert ("bars" in first, "bars" in second) == (shown, False)
    if shown:
        assert first["bars"]["alt"].endswith("The difference: not known yet.")
    told = lesson(worked)
    assert [item.bars is not None for item in told.items] == [shown, False]
    (chapter,) = [one for one in script(told).chapters if one.label == "1"]
    scenes = [act.scene for cue in chapter.cues for act in cue.acts if isinstance(act, Draw)]
    assert len({(scene.width, scene.height) for scene in scenes}) == 1
    assert any(piece.name.startswith("story/") for piece in scenes[0].pieces) == shown
    assert not any(piece.name.startswith("story/") for scene in scenes[1:] for piece in scene.pieces)
    assert [one.label for one in tactile_pages(worked)] == (["1", "2"] if shown else ["2"])


def test_a_pupil_has_the_bars_where_the_teacher_wants_them() -> None:
    """Beside stories alone, with a blank and without the answer."""
    worked = worked_sheet(SHEET.format("picture: bar for stories\n"))
    first, second = listed(pupil_page(worked), "items")
    assert first["picture"]["words"] == "The ? is what you find."
    assert "25" not in first["picture"]["alt"]
    assert ">25<" not in first["picture"]["svg"]
    assert ">?<" in first["picture"]["svg"]
    assert "picture" not in second


def test_a_rectangle_is_felt_in_its_own_shape() -> None:
    """Four rows of six squares, raised: one scale for both sides, as on paper for the eye."""
    told = story(read_statement("4 x 6"), structure=Structure.AREA).words
    (page,) = tactile_pages(worked_sheet(f"title: Kites\n\n1. 4 x 6 | {told}\n"))
    (box,) = re.findall(r'<rect [^>]*width="([\d.]+)" height="([\d.]+)"', page.svg)
    assert abs(float(box[1]) / float(box[0]) - 4 / 6) < 0.001
