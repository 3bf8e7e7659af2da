"""Pupil in a real Chromium: the story on either screen and on paper, a child erased by keyboard."""

import json
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.kit.browsers import NEEDS_CHROMIUM, broken_on_either_screen, broken_rules, window
from tests.kit.doors import Clock, served
from tests.kit.invented import lay_invented_class
from tests.kit.keys import enter, go_to

pytestmark = NEEDS_CHROMIUM

WEDNESDAY = datetime(2026, 11, 25, 16, tzinfo=UTC)


@pytest.fixture
def story(browser: Browser, tmp_path: Path) -> Iterator[Page]:
    """A window on a pupil of the invented class whose idea fades, every night read."""
    lay_invented_class(tmp_path, WEDNESDAY, read=True)
    with (
        served(tmp_path, Clock(WEDNESDAY)) as door,
        window(browser, door.address, forgives=("422",), blank=True) as page,
    ):
        page.goto(f"{door.base}/mine/1/pupil/K15")
        yield page


def test_every_rule_is_kept_on_either_screen(story: Page) -> None:
    """The story, all that is held, the question before erasing: axe's rules, and nothing runs off."""
    here = story.url
    for more in ("", "/held", "/erase"):
        story.goto(here + more)
        assert broken_on_either_screen(story) == [], more


def test_the_picture_says_what_the_table_says(story: Page) -> None:
    """Every count drawn stands in the table too, under the same skill; the words of both agree."""
    drawn = story.locator(".skill-weeks text").all_text_contents()
    beside = story.locator(".numbers td").all_inner_texts()
    counts = sorted(text for text in drawn if " of " in text)
    assert counts == sorted(text.split("\n", 1)[0] for text in beside if " of " in text)
    assert len(counts) > 12
    told = story.get_by_role("img", name="Skills by weeks").locator("desc").text_content()
    assert told is not None
    assert all(count in told for count in counts)


def test_on_paper_there_is_the_story_and_nothing_to_press(story: Page) -> None:
    """Findings, picture and nights are printed; buttons, links to records and old findings are not."""
    story.emulate_media(media="print")
    expect(story.get_by_text("Good until").first).to_be_visible()
    expect(story.locator(".skill-weeks")).to_be_visible()
    expect(story.get_by_role("heading", name="Nights")).to_be_visible()
    expect(story.get_by_role("button", name="Print this page")).to_be_hidden()
    expect(story.get_by_role("heading", name="Everything held on this child")).to_be_hidden()


def test_all_that_is_held_is_saved_by_keyboard(story: Page) -> None:
    """A file of the child's answers."""
    go_to(story, "Save it as JSON")
    with story.expect_download() as waited:
        story.keyboard.press("Enter")
    saved = waited.value
    assert saved.suggested_filename == "held-on-k15.json"
    assert len(json.loads(Path(saved.path()).read_text(encoding="utf-8"))["answers"]) > 60


def test_what_was_given_out_is_noted_and_taken_away_by_keyboard(story: Page) -> None:
    """A field after the other, the day of today in its own; the line stands there and goes again."""
    go_to(story, "What was given out")
    for words in ("The table", "The family", "They asked"):
        story.keyboard.type(words)
        story.keyboard.press("Tab")
    go_to(story, "Note it")
    enter(story)
    line = story.get_by_text("25 November 2026: The table, to The family")
    expect(line).to_be_visible()
    assert broken_rules(story) == []
    go_to(story, "Take the line of 2026-11-25 away: The table")
    enter(story)
    expect(line).to_have_count(0)


def test_a_child_is_erased_by_keyboard_and_only_by_its_code(story: Page) -> None:
    """Another code is told and erases nothing; the right one leads back to a class without the child."""
    go_to(story, "Erase this child")
    enter(story)
    for typed, after in (("K14", "Erase K15 Moth?"), ("K15", "K15 is erased")):
        go_to(story, "Type K15 to erase this child")
        story.keyboard.type(typed)
        enter(story)
        expect(story.get_by_role("heading", name=after)).to_be_visible()
        assert broken_rules(story) == []
    go_to(story, "To the class")
    enter(story)
    expect(story.get_by_role("heading", name="23 pupils")).to_be_visible()
    expect(story.get_by_label("Name of K15")).to_have_count(0)
