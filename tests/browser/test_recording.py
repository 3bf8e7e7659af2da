"""A real Chromium with its pretended microphone: parts are recorded by the key, the film is in step."""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

import av
import numpy as np
import pytest
import webvtt
from numpy.typing import NDArray
from playwright.sync_api import Browser, Page

from onewhole.desk.classes.class_records import night_page, set_night, start_room
from onewhole.desk.walkthrough.board import board
from onewhole.desk.walkthrough.film_plan import FilmPlan
from onewhole.store.recordings import recordings_of
from onewhole.store.steps import Step, steps_of
from onewhole.walkthroughs.timeline import FRAMES
from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, broken_rules, chromium, runs_off, window
from tests.kit.doors import Served, served

pytestmark = NEEDS_CHROMIUM

TYPED = "title: Kite tails\nwhole: strip\nwholes: strips\n1. 3 1/4 - 1 3/4\n2. 5 1/6 - 2 5/6\n3. 3 x 2/5\n"
HOME = "/mine/1/night/1/walkthrough"
#: The browser beeps into its own microphone once a second.
PRETENDED = ("--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream")
#: A beep begins in the film so many seconds from where it was heard in the page, at most: four frames.
NEAR = 4 / FRAMES
#: What the microphone hears and when the key goes down, seen by the test beside the page's own script.
EAR = """
window.heard = []; window.pressed = [];
addEventListener("keydown", (event) => {
  if (event.key === " ") window.pressed.push(performance.now());
}, true);
const own = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
navigator.mediaDevices.getUserMedia = async (asked) => {
  const stream = await own(asked);
  const context = new AudioContext();
  const ear = context.createAnalyser();
  ear.fftSize = 256;
  context.createMediaStreamSource(stream.clone()).connect(ear);
  const samples = new Float32Array(256);
  let quiet = performance.now();
  setInterval(() => {
    ear.getFloatTimeDomainData(samples);
    if (!samples.some((sample) => Math.abs(sample) > 0.05)) return;
    const now = performance.now();
    if (now - quiet > 150) window.heard.push(now);
    quiet = now;
  }, 4);
  return stream;
};
"""


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    """A browser with a pretended microphone."""
    with chromium(*PRETENDED) as started:
        yield started


@pytest.fixture
def door() -> Iterator[Served]:
    """A served door with one night."""
    with TemporaryDirectory() as folder, served(Path(folder)) as opened:
        book, now = opened.door.books["mine"], opened.door.now()
        start_room(book, "Room 12", 3, now)
        set_night(book, 1, TYPED, opened.door.today(), now)
        yield opened


def until(page: Page, holds: str) -> None:
    """Wait until something holds on the page; the page's policy lets no test wait inside of it."""
    for _ in range(200):
        if page.evaluate(holds):
            return
        page.wait_for_timeout(50)
    raise AssertionError(f"this never held: {holds}")


def tab_to(page: Page, wanted: str) -> None:
    """Go on by the Tab key until something is focused."""
    for _ in range(150):
        if page.evaluate("(wanted) => Boolean(document.activeElement?.matches(wanted))", wanted):
            return
        page.keyboard.press("Tab")
    raise AssertionError(f"{wanted} is not reached by the Tab key")


@dataclass(frozen=True, slots=True)
class Take:
    """One recording as the page lived it, in milliseconds of its own clock."""

    pressed: tuple[float, ...]
    heard: tuple[float, ...]


def record(page: Page, label: str, apart: int) -> Take:
    """Record a part by the keyboard alone, so many milliseconds between the steps, and more each time."""
    tab_to(page, f"[data-part='{label}'] [data-record]")
    page.keyboard.press("Enter")
    until(page, "document.getElementById('loudness').textContent === 'Good'")
    page.evaluate("window.pressed = []; window.heard = [];")
    page.keyboard.press("Space")
    until(page, "document.getElementById('step').textContent !== 'Start'")
    more = 0
    while True:
        page.wait_for_timeout(apart + more)
        more += 60
        last = page.text_content("#step") == "End and keep"
        page.keyboard.press("Space")
        if last:
            break
    until(page, "document.getElementById('state').textContent.startsWith('Kept')")
    page.keyboard.press("Escape")
    assert page.locator("#recorder").is_hidden()
    lived = page.evaluate("[window.pressed, window.heard]")
    return Take(tuple(lived[0]), tuple(lived[1]))


def captions(path: Path) -> list[float]:
    """When the captions begin, in seconds."""
    return [
        one.start_in_seconds + one.start_time.milliseconds / 1000 for one in webvtt.read(str(path)).captions
    ]


@dataclass(frozen=True, slots=True)
class Decoded:
    """What a film says of itself: its chapters from second to second, when it becomes loud, its loudness."""

    chapters: tuple[tuple[float, float], ...]
    loud: tuple[float, ...]


def decoded(path: Path) -> Decoded:
    """Decode a film's sound."""
    samples: list[NDArray[np.float32]] = []
    start = 0.0
    with av.open(str(path)) as film:
        chapters = tuple(
            (float(one["start"] * base), float(one["end"] * base))
            for one in film.chapters()
            if (base := one["time_base"]) is not None
        )
        for frame in film.decode(audio=0):
            if not samples:
                start = frame.time or 0.0
            samples.append(frame.to_ndarray()[0])
    wave = np.abs(np.concatenate(samples))
    step = 240
    loud = [float(wave[at : at + step].max()) > 0.05 for at in range(0, len(wave), step)]
    begins = [at for at, one in enumerate(loud) if one and not any(loud[max(0, at - 30) : at])]
    return Decoded(chapters, tuple(start + at / 200 for at in begins))


def test_recorded_by_the_key_and_filmed_in_step(door: Served, browser: Browser) -> None:
    """Two parts are recorded with the keyboard alone, one of them again; the film has their sound where the
    key put it, each cue at its press, and silence in all other parts. The beeps that the microphone heard
    stand in the film within four frames of their places; on a busy machine the page itself may hear one in
    three late. The night then counts as shown.
    """
    with window(browser, door.address) as page:
        page.add_init_script(EAR)
        page.goto(door.base + HOME)
        record(page, "1", 400)
        takes = {"2": record(page, "2", 900), "1": record(page, "1", 700)}
        assert page.text_content("[data-part='1'] [data-kept]").startswith("✓ Kept")  # type: ignore[union-attr]
        assert page.text_content("[data-part='3'] [data-kept]") == "○ Not recorded"
        page.reload()
        assert "✓ Kept" in (page.text_content("[data-part='2'] [data-kept]") or "")
        tab_to(page, "form[action$='/film'] button")
        page.keyboard.press("Enter")
        page.wait_for_selector("text=Look at it", timeout=120_000)
        tab_to(page, "main a.first")
        with page.expect_navigation():
            page.keyboard.press("Enter")
        until(page, "document.getElementById('video').readyState > 0")
        assert page.evaluate("document.getElementById('video').textTracks[0].mode") == "showing"
        assert broken_rules(page) == []
        length = page.evaluate("document.getElementById('video').duration")
        tab_to(page, "[data-second]")
        for _ in range(2):
            page.keyboard.press("Tab")
        page.keyboard.press("Enter")
        until(page, "document.getElementById('video').currentTime > 5")
    kept = {one.label: one for one in recordings_of(door.door.books["mine"], 1)}
    sheet = night_page(door.door.books["mine"], 1, 1).sheet
    spoken = {part.label: [step.says for step in part.steps] for part in board(sheet, FilmPlan()).parts}
    film = decoded(door.door.folder / "mine" / "night-1" / "walkthrough.mp4")
    assert length == pytest.approx(film.chapters[-1][1], abs=0.1)
    assert set(kept) == {"1", "2"}
    for at, label in ((1, "1"), (2, "2")):
        take, cues = takes[label], kept[label].cues
        start, end = film.chapters[at]
        assert len(cues) == len(take.pressed) - 2
        began = [press - cue for press, cue in zip(take.pressed[1:], cues, strict=False)]
        assert max(began) - min(began) < 20, "the steps that were kept are the presses"
        wanted = [
            start + (heard - began[0]) / 1000 for heard in take.heard if began[0] < heard < take.pressed[-1]
        ]
        found = [one for one in film.loud if start <= one < end]
        assert len(wanted) >= 3
        near = [min(abs(other - one) for other in found) for one in wanted]
        assert sum(one <= NEAR for one in near) * 3 >= len(near) * 2, near  # the page's ear may be late
    begins = captions(door.door.folder / "mine" / "night-1" / "walkthrough.vtt")
    for at, label in ((1, "1"), (2, "2")):
        for step, said in zip((0, *kept[label].cues), spoken[label], strict=True):
            wanted_at = film.chapters[at][0] + step / 1000
            assert not said or any(abs(one - wanted_at) <= 1 / FRAMES for one in begins)
    heard = [(start, end) for at, (start, end) in enumerate(film.chapters) if at in {1, 2}]
    assert all(any(start <= one < end for start, end in heard) for one in film.loud)
    assert Step.SHOWN in steps_of(door.door.books["mine"], 1)[1]


def test_what_cannot_be_sent_is_not_lost(door: Served, browser: Browser) -> None:
    """When the program does not answer, nothing is called kept; sent again it is. Thrown away, the one
    before stays.
    """
    with window(browser, door.address, PHONE, forgives=("Failed to load resource",)) as page:
        page.goto(door.base + HOME)
        page.route("**/recording", lambda route: route.abort())
        page.locator("[data-part='3'] [data-record]").click()
        until(page, "document.getElementById('loudness').textContent === 'Good'")
        for wait in (0, 800, 900):
            page.wait_for_timeout(wait)
            page.locator("#step").click()
        until(page, "document.getElementById('state').textContent.startsWith('Not kept')")
        assert page.text_content("[data-part='3'] [data-kept]") == "○ Not recorded"
        assert broken_rules(page) == []
        assert not runs_off(page)
        page.unroute("**/recording")
        page.locator("#step").click()
        until(page, "document.getElementById('state').textContent.startsWith('Kept')")
        page.locator("#step").click()
        page.wait_for_timeout(700)
        page.locator("#throw-away").click()
        page.locator("#throw-away").click()
        (kept,) = recordings_of(door.door.books["mine"], 1)
        page.locator("[data-part='3'] [data-listen]").click()
        until(page, "document.querySelector('[data-part=\"3\"] audio').readyState > 0")
        with page.expect_navigation():
            page.locator("[data-part='3'] [data-forget] button").click()
        assert page.text_content("[data-part='3'] [data-kept]") == "○ Not recorded"
    assert kept.label == "3"
    assert len(kept.cues) == 1
    assert recordings_of(door.door.books["mine"], 1) == ()


def test_without_a_microphone_it_is_said(door: Served, browser: Browser) -> None:
    """A microphone that is not given is told in words, and nothing is recorded."""
    with window(browser, door.address) as page:
        page.add_init_script(
            "navigator.mediaDevices.getUserMedia = async () => {"
            "  throw new DOMException('', 'NotAllowedError'); };"
        )
        page.goto(door.base + HOME)
        page.locator("[data-part='1'] [data-record]").click()
        page.keyboard.press("Space")
        until(page, "document.getElementById('state').textContent.startsWith('The microphone was not given')")
        assert page.text_content("#step") == "Start"


def test_the_board_is_stepped_only_with_the_recording(door: Served, browser: Browser) -> None:
    """While a part is recorded, the board's own button steps both; its other buttons wait."""
    with window(browser, door.address) as page:
        page.goto(door.base + HOME)
        page.locator("[data-part='2'] [data-record]").click()
        page.keyboard.press("Space")
        until(page, "document.getElementById('step').textContent === 'Next step'")
        board = page.frame_locator("#board")
        page.wait_for_timeout(300)
        board.locator("#next").click()
        assert (page.text_content("#step-place") or "").startswith("Step 2 of")
        assert (board.locator("#place").text_content() or "").startswith("Step 2 of")
        board.locator("#play").click()
        board.locator("#start").click()
        assert (board.locator("#place").text_content() or "").startswith("Step 2 of")
        page.keyboard.press("Escape")


def test_choices_are_kept(door: Served, browser: Browser) -> None:
    """What is chosen for a problem is still chosen when the page comes back, and the board is told so."""
    with window(browser, door.address) as page:
        page.goto(door.base + HOME)
        assert not runs_off(page)
        assert broken_rules(page) == []
        page.select_option("#strategy-1", "count_up")
        page.select_option("#picture-2", "none")
        page.select_option("#length-2", "short")
        page.check("#tried-3")
        page.fill("#minutes", "9")
        with page.expect_navigation():
            page.locator("text=Keep the choices").click()
        assert page.input_value("#strategy-1") == "count_up"
        assert page.input_value("#picture-2") == "none"
        assert page.input_value("#length-2") == "short"
        assert page.is_checked("#tried-3")
        assert page.input_value("#minutes") == "9"
        assert "Let them try" in (page.locator("[data-part='3'] .steps-said").text_content() or "")
