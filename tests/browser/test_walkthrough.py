"""The walkthrough page in a real browser: played by keyboard, narrow and wide, by the rules of axe."""

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext
from playwright.sync_api import Page as Shown

from onewhole.notations.sentences.speech import spoken
from onewhole.notations.sentences.text import text_of
from onewhole.walkthroughs.cue import Role
from onewhole.writers.walkthrough_html import walkthrough_html
from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, WIDE, broken_rules, runs_off
from tests.kit.films import SECONDS_A_CUE, STRIPS, film
from tests.kit.how_much import sample

WIDTHS = {"wide": WIDE, "phone": PHONE}
#: The page opens in the evening; its clock is stopped at the later moment, and only a test moves it on.
EVENING, LATER = datetime(2026, 9, 1, 18, 30, tzinfo=UTC), datetime(2026, 9, 1, 20, 30, tzinfo=UTC)
NARROWEST = 320  # a page four times enlarged on a screen of 1280; common practice for pages that reflow
FILM = film()
CUES = [timed.cue for chapter in FILM.chapters for timed in chapter.cues]
CAPTIONS = [text_of(cue.says) for cue in CUES]
TRY_AT = [cue.role for cue in CUES].index(Role.TRY)
#: A voice that notes what it is asked to say and has said it at once.
VOICE = """
window.spoken = [];
Object.defineProperty(window, "speechSynthesis", { value: {
  cancel() {},
  speak(utterance) { window.spoken.push(utterance.text); utterance.onstart(); utterance.onend(); },
} });
"""

pytestmark = NEEDS_CHROMIUM


@pytest.fixture(scope="module")
def address(tmp_path_factory: pytest.TempPathFactory) -> str:
    """The page as a file."""
    path: Path = tmp_path_factory.mktemp("film") / "walkthrough.html"
    path.write_text(walkthrough_html(FILM, STRIPS, voice_note="The voice is your browser's."))
    return path.as_uri()


@pytest.fixture(params=sample(["phone"], list(WIDTHS)))
def context(request: pytest.FixtureRequest, browser: Browser) -> Iterator[BrowserContext]:
    """A window of each width, for a reader who asks for little motion."""
    width, height = WIDTHS[request.param]
    made = browser.new_context(viewport={"width": width, "height": height}, reduced_motion="reduce")
    yield made
    made.close()


@pytest.fixture
def page(context: BrowserContext, address: str) -> Iterator[Shown]:
    """The page, its clock stopped, moved by the test; whatever goes wrong in its script fails the test."""
    shown = context.new_page()
    wrong: list[str] = []
    shown.on("pageerror", lambda error: wrong.append(str(error)))
    shown.on("console", lambda message: wrong.append(message.text))
    shown.on("request", lambda request: wrong.append(request.url) if request.url != address else None)
    shown.clock.install(time=EVENING)
    shown.goto(address)
    shown.clock.pause_at(LATER)
    yield shown
    assert wrong == []


def caption(page: Shown) -> str:
    """What is said now."""
    return page.inner_text("#caption").strip()


def test_space_plays_it_to_the_end(page: Shown) -> None:
    """Every step is shown in order and in its time; the one to try waits until the family goes on."""
    page.keyboard.press("Space")
    heard = [caption(page)]
    for at in range(1, len(CUES)):
        page.clock.run_for(SECONDS_A_CUE * 1000 - 100)
        assert caption(page) == heard[-1]
        page.clock.run_for(100)
        if at == TRY_AT + 1:
            page.clock.run_for(60_000)
            assert caption(page) == CAPTIONS[TRY_AT]
            assert page.inner_text("#play") == "Tried it: go on"
            page.keyboard.press("Space")
        heard.append(caption(page))
    assert heard == CAPTIONS
    assert page.inner_text("#play") == "Play again"
    page.keyboard.press("Space")
    assert caption(page) == CAPTIONS[0]


def test_space_pauses(page: Shown) -> None:
    """A paused film stays where it is."""
    page.keyboard.press("Space")
    page.keyboard.press("Space")
    page.clock.run_for(60_000)
    assert caption(page) == CAPTIONS[0]
    assert page.inner_text("#play") == "Play"


def test_arrows_step_on_and_back(page: Shown) -> None:
    """A step back takes off the board what the step put on; Home begins again; nothing lies before it."""
    boards = []
    for _ in range(4):
        boards.append(
            (caption(page), page.inner_html("#lines").replace(" new", ""), page.inner_html("#picture"))
        )
        page.keyboard.press("ArrowRight")
    assert len(set(boards)) == 4
    for before in (4, 3, 2, 1):
        page.keyboard.press("ArrowLeft")
        lines = page.inner_html("#lines").replace(" new", "")
        assert (caption(page), lines, page.inner_html("#picture").replace(" new", "")) == (
            *boards[before - 1][:2],
            boards[before - 1][2].replace(" new", ""),
        )
    page.keyboard.press("ArrowLeft")
    assert caption(page) == CAPTIONS[0]
    page.keyboard.press("ArrowRight")
    page.keyboard.press("Home")
    assert caption(page) == CAPTIONS[0]


def test_a_problem_is_jumped_to_with_the_keyboard(page: Shown) -> None:
    """Its link shows its first step on a fresh board, is marked as the current one, and hands on to Play."""
    page.locator("#problems a", has_text="2. 5 1/8 - 2 5/8").focus()
    page.keyboard.press("Enter")
    assert caption(page) == "Problem 2 is 5 1/8 - 2 5/8."
    assert page.inner_text("#place") == "Step 1 of 8"
    assert page.locator("#lines li").count() == 1
    assert page.locator("#problems [aria-current=step]").inner_text() == "2. 5 1/8 - 2 5/8"
    assert page.evaluate("document.activeElement.id") == "play"
    page.keyboard.press("Space")
    page.clock.run_for(SECONDS_A_CUE * 1000)
    assert caption(page) == CAPTIONS[TRY_AT]


def test_the_board_grows_as_the_working_does(page: Shown) -> None:
    """At the answer all lines stand on the board, the wrong one struck out, beside or over the picture."""
    page.locator("#problems a", has_text="1. 7 2/6").click()
    for _ in range(6):
        page.keyboard.press("ArrowRight")
    assert page.locator("#lines math").count() == 6
    assert page.locator("#lines .struck").inner_text().split("(")[1] == "struck out)"
    lines, picture = page.locator("#lines").bounding_box(), page.locator("#picture").bounding_box()
    assert lines
    assert picture
    assert page.viewport_size
    if page.viewport_size["width"] == WIDTHS["phone"][0]:
        assert lines["y"] + lines["height"] <= picture["y"]
    else:
        assert lines["x"] + lines["width"] <= picture["x"]


def test_everything_is_reached_by_tab_and_seen(page: Shown) -> None:
    """Tab visits each control once, in reading order, each with a visible ring."""
    visited = []
    for _ in range(10):
        page.keyboard.press("Tab")
        name, ring = page.evaluate(
            "[document.activeElement.id || document.activeElement.textContent,"
            " getComputedStyle(document.activeElement).outlineStyle]"
        )
        visited.append(name)
        assert ring == "solid", name
    chapters = ["Opening", "1. 7 2/6 - 3 5/6", "2. 5 1/8 - 2 5/8", "Closing"]
    assert visited == ["play", "back", "next", "start", "aloud", *chapters, "all"]


def test_no_rule_of_axe_is_broken_and_nothing_runs_off(page: Shown) -> None:
    """At the opening, at each step of both problems, and with all steps shown."""
    page.clock.resume()  # axe waits for a timer of its own; nothing plays by itself here
    for at in range(len(CUES)):
        assert not runs_off(page), CAPTIONS[at]
        if at in {0, 1, TRY_AT, TRY_AT - 2}:
            assert broken_rules(page) == []
        page.keyboard.press("ArrowRight")
    page.click("#all")
    assert page.get_attribute("#all", "aria-expanded") == "true"
    assert not runs_off(page)
    assert broken_rules(page) == []


def test_a_long_line_is_folded(browser: Browser, tmp_path: Path) -> None:
    """On the narrowest window every line stays on the board; the longest goes on in a second row."""
    path = tmp_path / "long.html"
    path.write_text(walkthrough_html(film("812 - 345"), STRIPS))
    small = browser.new_page(viewport={"width": NARROWEST, "height": 640})
    small.goto(path.as_uri())
    off = "[...document.querySelectorAll('#lines li')].some((line) => line.scrollWidth > line.clientWidth)"
    folded = 0
    for _ in range(small.locator(".step").count()):
        assert not small.evaluate(off)
        assert not runs_off(small)
        folded += small.locator("#lines .folded").count()
        small.keyboard.press("ArrowRight")
    assert folded
    small.set_viewport_size({"width": 1280, "height": 800})
    small.keyboard.press("ArrowLeft")
    assert small.locator("#lines .folded").count() == 0
    small.close()


def test_nothing_moves_for_a_reader_who_asks_for_that(browser: Browser, page: Shown, address: str) -> None:
    """With reduced motion no animation is there; without the wish a new line is written on."""
    moving = "document.getAnimations().length"
    page.keyboard.press("ArrowRight")
    assert page.evaluate(moving) == 0
    other = browser.new_page(reduced_motion="no-preference")
    other.goto(address)
    other.keyboard.press("ArrowRight")
    assert other.evaluate(moving) > 0
    other.close()


def test_it_reads_aloud_when_asked(context: BrowserContext, page: Shown, address: str) -> None:
    """The voice is given the words to be spoken, and the play goes on when it has said them."""
    page.add_init_script(VOICE)
    page.goto(address)
    page.check("#aloud")
    page.locator("#play").press("Space")
    page.clock.run_for(300)
    opening = [spoken(said) for said in CUES[0].says]
    heard = page.evaluate("window.spoken")
    assert heard[-len(opening) :] == opening
    page.clock.run_for(600)
    assert caption(page) == CAPTIONS[1]
    page.clock.run_for(1)
    after = page.evaluate("window.spoken")
    assert after == [*heard, "Problem one is seven and two sixths minus three and five sixths."]


def test_a_silent_browser_does_not_hold_up_the_play(page: Shown, address: str) -> None:
    """When the voice never begins, the steps go on in their own time."""
    page.add_init_script(VOICE.replace("utterance.onstart(); utterance.onend();", ""))
    page.goto(address)
    page.check("#aloud")
    page.locator("#play").press("Space")
    page.clock.run_for(3_100 + SECONDS_A_CUE * 1000)
    assert caption(page) == CAPTIONS[1]


def test_without_its_script_all_steps_are_there(browser: Browser, address: str) -> None:
    """Every sentence can be read, the board is not shown, and the links lead to the parts."""
    plain = browser.new_page(java_script_enabled=False)
    plain.goto(address)
    whole = plain.inner_text("body")
    for said in CAPTIONS:
        assert said in whole
    assert not plain.locator("#player").is_visible()
    plain.locator("#problems a").last.click()
    assert plain.url.endswith("#part-3")
    plain.close()
