"""A real Chromium with its pretended microphone: parts are recorded by the key, the film is in step."""

from collections.abc import Iterator
from dataclasses import dataclass
from io import BytesIO
from pathlib import Path
from tempfile import TemporaryDirectory

import av
import numpy as np
import pytest
import webvtt
from numpy.typing import NDArray
from playwright.sync_api import Browser, Page, expect

from onewhole.desk.classes.class_records import night_page, set_night, start_room
from onewhole.desk.walkthrough.board import board
from onewhole.desk.walkthrough.film_plan import FilmPlan
from onewhole.store.recordings import recordings_of
from onewhole.store.steps import NightStep, steps_of
from onewhole.walkthroughs.timeline import FRAMES
from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, broken_rules, chromium, runs_off, until, window
from tests.kit.doors import Served, served

pytestmark = NEEDS_CHROMIUM

#: The third is only answered, so that its part is told in two steps.
TYPED = (
    "title: Kite tails\nwhole: strip\nwholes: strips\n"
    "1. 3 1/4 - 1 3/4\n2. 5 1/6 - 2 5/6\n3. 3 x (1/5 + 1/5)\n"
)
HOME = "/mine/1/night/1/walkthrough"
#: The page with its parts to be recorded open.
VOICE = f"{HOME}#voice"
#: The browser beeps into its own microphone once a second.
PRETENDED = ("--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream")
#: The microphone is open, and its loudness is told.
OPEN = "/Good|Silent/.test(document.getElementById('loudness').textContent)"
#: A tone begins in the film so many seconds from where it was recorded, at most: four frames.
NEAR = 4 / FRAMES
#: A microphone of the test's own: each press of the key that steps the board while a part is recorded gives a
#: short tone. What is heard of it and when the key went down is noted beside the page's own script; the clock
#: of the page stands still while a press is dealt with, so that both read the same. The ear hears all of the
#: last half second, however late a busy machine lets it listen.
EAR = """
window.heard = 0; window.pressed = []; window.last = 0;
const real = performance.now.bind(performance);
let stands = null, tone = null, sounds = null;
performance.now = () => stands ?? real();
addEventListener("keydown", (event) => {
  if (event.key !== " ") return;
  stands = real();
  setTimeout(() => { stands = null; }, 0);
  window.pressed.push(stands);
  window.last = stands;
  if (document.getElementById("step").textContent !== "Next step") return;
  tone.gain.setValueAtTime(0.4, sounds.currentTime);
  tone.gain.setValueAtTime(0, sounds.currentTime + 0.1);
}, true);
navigator.mediaDevices.getUserMedia = async () => {
  sounds = new AudioContext();
  const given = sounds.createMediaStreamDestination(), ear = sounds.createAnalyser();
  tone = sounds.createGain();
  tone.gain.value = 0;
  const oscillator = sounds.createOscillator();
  oscillator.connect(tone);
  tone.connect(given);
  sounds.createMediaStreamSource(given.stream.clone()).connect(ear);
  oscillator.start();
  ear.fftSize = 32768;
  const samples = new Float32Array(ear.fftSize);
  let since = sounds.currentTime, loud = false, rest = 0;
  setInterval(() => {
    const fresh = Math.min(samples.length, Math.round((sounds.currentTime - since) * sounds.sampleRate));
    since = sounds.currentTime;
    ear.getFloatTimeDomainData(samples);
    for (const sample of samples.subarray(samples.length - fresh)) {
      if (Math.abs(sample) > 0.05) {
        loud = true;
        rest = 0;
      } else if (loud && (rest += 1) > sounds.sampleRate / 50) {
        loud = false;
        window.heard += 1;
      }
    }
    if (loud) window.last = real();
  }, 8);
  return given.stream;
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


def apart(page: Page) -> None:
    """Wait until press and tone are over by so much that the next ones stand apart from them."""
    until(page, "performance.now() - window.last > 300")


def breathe(page: Page) -> None:
    """Wait until the recording has gone on by a second: of presses in quick succession only one counts."""
    time = "document.getElementById('state').dataset.time"
    until(page, f"{time} && {time} !== '{page.evaluate(time)}'")


def tab_to(page: Page, wanted: str) -> None:
    """Go on by the Tab key until something is focused."""
    for _ in range(150):
        if page.evaluate("(wanted) => Boolean(document.activeElement?.matches(wanted))", wanted):
            return
        page.keyboard.press("Tab")
    raise AssertionError(f"{wanted} is not reached by the Tab key")


def record(page: Page, label: str) -> list[float]:
    """Record a part by the keyboard alone; return the milliseconds of the page at which the key went down.

    The board is stepped on when the tone of the step before was heard to its end.
    """
    tab_to(page, f"[data-part='{label}'] [data-record]")
    page.keyboard.press("Enter")
    until(page, OPEN)
    page.evaluate("window.pressed = []; window.heard = 0; null")
    page.keyboard.press("Space")
    until(page, "document.getElementById('step').textContent !== 'Start'")
    heard = 0
    while page.text_content("#step") != "End and keep":
        apart(page)
        page.keyboard.press("Space")
        heard += 1
        until(page, f"window.heard === {heard}")
    apart(page)
    page.keyboard.press("Space")
    until(page, "document.getElementById('state').textContent.startsWith('Kept')")
    page.keyboard.press("Escape")
    assert page.locator("#recorder").is_hidden()
    return list(page.evaluate("window.pressed"))


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


def decoded(source: str | BytesIO) -> Decoded:
    """Decode the sound of a film, or a sound alone."""
    samples: list[NDArray[np.float32]] = []
    start = 0.0
    with av.open(source, "r") as film:
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


@pytest.mark.more("desk/walkthrough/test_recorded_film.py")
@pytest.mark.slow
def test_recorded_by_the_key_and_filmed_in_step(door: Served, browser: Browser) -> None:
    """Two parts are recorded with the keyboard alone, one of them again; the film has their sound where the
    key put it, each cue at its press, and silence in all other parts. Each tone stands in the film within
    four frames of its place in what was recorded. The night then counts as shown.
    """
    with window(browser, door.address, blank=True) as page:
        page.add_init_script(EAR)
        page.goto(door.base + VOICE)
        record(page, "2")
        takes = {"1": record(page, "1"), "2": record(page, "2")}
        assert page.text_content("[data-part='1'] .kept").startswith("✓ Kept")  # type: ignore[union-attr]
        assert page.text_content("[data-part='3'] .kept") == "○ Not recorded"
        page.reload()
        assert "✓ Kept" in (page.text_content("[data-part='2'] .kept") or "")
        tab_to(page, "form[action$='/film'] button")
        page.keyboard.press("Enter")
        expect(page.get_by_text("Look at it")).to_be_visible()
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
    film = decoded(str(door.door.folder / "mine" / "night-1" / "walkthrough.mp4"))
    assert length == pytest.approx(film.chapters[-1][1], abs=0.1)
    assert set(kept) == {"1", "2"}
    for at, label in ((1, "1"), (2, "2")):
        pressed, cues = takes[label], kept[label].cues
        start, end = film.chapters[at]
        assert len(cues) == len(pressed) - 2
        began = [press - cue for press, cue in zip(pressed[1:], cues, strict=False)]
        assert max(began) - min(began) <= 1, "the steps that were kept are the presses, to a millisecond"
        tones = decoded(BytesIO(kept[label].sound)).loud
        steps = [cue / 1000 for cue in cues]
        assert len(tones) == len(cues) >= 3
        for tone, step, following in zip(tones, steps, [*steps[1:], end - start], strict=True):
            assert step - NEAR <= tone < following, "what the key started is heard in the step it began"
        found = [one - start for one in film.loud if start <= one < end]
        assert found == pytest.approx(tones, abs=NEAR)
    begins = captions(door.door.folder / "mine" / "night-1" / "walkthrough.vtt")
    for at, label in ((1, "1"), (2, "2")):
        for step, said in zip((0, *kept[label].cues), spoken[label], strict=True):
            wanted_at = film.chapters[at][0] + step / 1000
            assert not said or any(abs(one - wanted_at) <= 1 / FRAMES for one in begins)
    heard = [(start, end) for at, (start, end) in enumerate(film.chapters) if at in {1, 2}]
    assert all(any(start <= one < end for start, end in heard) for one in film.loud)
    assert NightStep.SHOWN in steps_of(door.door.books["mine"], 1)[1]


@pytest.mark.more("web/test_what_forms_saw.py")
def test_what_cannot_be_sent_is_not_lost(door: Served, browser: Browser) -> None:
    """When the program does not answer, nothing is called kept; sent again it is. Thrown away, the one
    before stays.
    """
    with window(browser, door.address, PHONE, forgives=("Failed to load resource",), blank=True) as page:
        page.goto(door.base + VOICE)
        page.route("**/recording", lambda route: route.abort())
        page.locator("[data-part='3'] [data-record]").click()
        until(page, OPEN)
        page.locator("#step").click()
        until(page, "document.getElementById('step').textContent !== 'Start'")
        steps = 1
        while page.text_content("#step") != "End and keep":
            breathe(page)
            page.locator("#step").click()
            steps += 1
        breathe(page)
        page.locator("#step").click()
        until(page, "document.getElementById('state').textContent.startsWith('Not kept')")
        assert page.text_content("[data-part='3'] .kept") == "○ Not recorded"
        assert broken_rules(page) == []
        assert not runs_off(page)
        page.unroute("**/recording")
        page.locator("#step").click()
        until(page, "document.getElementById('state').textContent.startsWith('Kept')")
        page.locator("#again").click()
        breathe(page)
        page.locator("#throw-away").click()
        page.locator("#throw-away").click()
        (kept,) = recordings_of(door.door.books["mine"], 1)
        page.locator("[data-part='3'] [data-listen]").click()
        until(page, "document.querySelector('[data-part=\"3\"] audio').readyState > 0")
        with page.expect_navigation():
            page.locator("[data-part='3'] [data-forget] button").click()
        assert page.text_content("[data-part='3'] .kept") == "○ Not recorded"
    assert kept.label == "3"
    assert len(kept.cues) == steps - 1 >= 1
    assert recordings_of(door.door.books["mine"], 1) == ()


@pytest.mark.more("presses/test_recording.py")
def test_from_part_to_part_by_one_key(door: Served, browser: Browser) -> None:
    """Nothing is scrolled to: what is kept leads to the next part that is not recorded, until all are."""
    with window(browser, door.address, PHONE, blank=True) as page:
        page.goto(door.base + HOME)
        assert page.evaluate("document.documentElement.scrollHeight") < 3 * PHONE[1]
        page.locator("#record-first").press("Enter")
        for label, following in (("opening", "1"), ("1", "2")):
            expect(page.locator(f"[data-part='{label}']")).to_have_attribute("aria-current", "true")
            until(page, OPEN)
            page.keyboard.press("Space")
            until(page, "document.getElementById('step').textContent !== 'Start'")
            while page.text_content("#step") != "End and keep":
                breathe(page)
                page.keyboard.press("Space")
            breathe(page)
            page.keyboard.press("Space")
            name = page.locator(f"[data-part='{following}'] h3").text_content()
            expect(page.locator("#step")).to_have_text(f"Next: {name}")
            page.keyboard.press("Space")
        expect(page.locator("#recorder-name")).to_contain_text("5 1/6 - 2 5/6")
        page.keyboard.press("Escape")
        expect(page.locator("[data-part='2'] [data-record]")).to_be_focused()
        assert not runs_off(page)
    assert {one.label for one in recordings_of(door.door.books["mine"], 1)} == {"opening", "1"}


def test_without_a_microphone_it_is_said(door: Served, browser: Browser) -> None:
    """A microphone that is not given is told in words, and nothing is recorded."""
    with window(browser, door.address, blank=True) as page:
        page.add_init_script(
            "navigator.mediaDevices.getUserMedia = async () => {"
            "  throw new DOMException('', 'NotAllowedError'); };"
        )
        page.goto(door.base + VOICE)
        page.locator("[data-part='1'] [data-record]").click()
        page.keyboard.press("Space")
        until(page, "document.getElementById('state').textContent.startsWith('The microphone was not given')")
        assert page.text_content("#step") == "Start"


def test_the_board_is_stepped_only_with_the_recording(door: Served, browser: Browser) -> None:
    """While a part is recorded, the board's own button steps both; its other buttons wait."""
    with window(browser, door.address, blank=True) as page:
        page.goto(door.base + VOICE)
        page.locator("[data-part='2'] [data-record]").click()
        page.keyboard.press("Space")
        until(page, "document.getElementById('step').textContent === 'Next step'")
        board = page.frame_locator("#board")
        breathe(page)
        board.locator("#next").click()
        assert (page.text_content("#step-place") or "").startswith("Step 2 of")
        assert (board.locator("#place").text_content() or "").startswith("Step 2 of")
        board.locator("#play").click()
        board.locator("#start").click()
        assert (board.locator("#place").text_content() or "").startswith("Step 2 of")
        page.keyboard.press("Escape")


def test_choices_are_kept(door: Served, browser: Browser) -> None:
    """What is chosen for a problem is still chosen when the page comes back, and the board is told so."""
    with window(browser, door.address, blank=True) as page:
        page.goto(f"{door.base}{HOME}#choices")
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


def test_a_microphone_that_goes_away_is_told(door: Served, browser: Browser) -> None:
    """A part whose microphone goes away in the midst is stopped and told, and can be recorded again."""
    with window(browser, door.address, blank=True) as page:
        page.add_init_script(
            "const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);"
            "navigator.mediaDevices.getUserMedia = async (wanted) => window.given = await ask(wanted);"
        )
        page.goto(door.base + VOICE)
        page.locator("[data-part='2'] [data-record]").click()
        page.keyboard.press("Space")
        until(page, "document.getElementById('step').textContent === 'Next step'")
        breathe(page)
        page.evaluate("window.given.getTracks().forEach((track) => track.stop())")
        until(page, "document.getElementById('state').textContent.startsWith('The microphone went away')")
        assert page.text_content("#step") == "Start"
        assert page.text_content("[data-part='2'] .kept") == "○ Not recorded"
        page.keyboard.press("Space")
        until(page, "document.getElementById('step').textContent === 'Next step'")
        page.keyboard.press("Escape")
