"""Numbers heard otherwise, in a real browser on a phone: said again or kept, by the rules of axe."""

import json
from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory

import av
import numpy as np
import pytest
from playwright.sync_api import Browser, Page, expect

from onewhole.desk.classes.class_records import set_night, start_room
from onewhole.desk.walkthrough.kept_slips import kept_slips
from tests.kit.browsers import (
    NEEDS_CHROMIUM,
    PHONE,
    WIDE,
    broken_rules,
    chromium,
    runs_off,
    settled,
    until,
    window,
)
from tests.kit.doors import Served, served

pytestmark = NEEDS_CHROMIUM

HOME = "/mine/1/night/1/walkthrough"


@pytest.fixture
def door() -> Iterator[Served]:
    """A served door with one night, of which a film lies there in which a number was heard otherwise."""
    with TemporaryDirectory() as folder, served(Path(folder)) as opened:
        book, now = opened.door.books["mine"], opened.door.now()
        start_room(book, "Room 12", 3, now)
        set_night(book, 1, "title: Kites\n1. 3 x 2/5\n", opened.door.today(), now)
        made = opened.door.folder / "mine" / "night-1"
        made.mkdir(parents=True)
        slip = {"label": "1", "at": 138_000, "said": "seven fifths", "board": "6/5", "key": "abc"}
        about = {"seconds": 180, "notes": [], "reads": "at grade 2", "stamp": "", "made": ""}
        (made / "about-film.json").write_text(json.dumps({**about, "slips": [slip]}))
        film(made / "walkthrough-upright.mp4", 180)
        yield opened


def film(place: Path, seconds: int) -> None:
    """Write a film of one grey picture a second, without a sound."""
    with av.open(str(place), "w") as made:
        pictures = made.add_stream("libx264", rate=1, options={"g": "20", "preset": "ultrafast"})
        pictures.width, pictures.height, pictures.pix_fmt = 36, 64, "yuv420p"
        grey = av.VideoFrame.from_ndarray(np.full((64, 36, 3), 128, np.uint8))
        for _ in range(seconds):
            made.mux(pictures.encode(grey))
        made.mux(pictures.encode(None))


def test_a_number_is_kept_by_keyboard_on_a_phone(browser: Browser, door: Served) -> None:
    """It stands below the film; keeping it is remembered and can be taken back; nothing runs off the page."""
    with window(browser, door.address, PHONE, forgives=("Failed to load resource",), blank=True) as page:
        page.goto(f"{door.base}{HOME}")
        row = page.locator(".slips li")
        expect(row).to_contain_text("2:18, problem 1: you said “seven fifths”; the board says 6/5.")
        expect(row.get_by_role("button", name="Hear it")).to_be_visible()
        assert not runs_off(page)
        assert broken_rules(page) == []
        row.get_by_role("button", name="Keep it").press("Enter")
        expect(page.locator(".slips .kept")).to_have_text("✓ Kept as you said it")
        assert kept_slips(door.door.books["mine"], 1) == {"abc"}
        # The page goes to #film when it is loaded, and takes the focus from what had it before.
        settled(page)
        page.locator(".slips").get_by_role("button", name="Do not keep it").press("Enter")
        expect(page.locator(".slips .kept")).to_have_count(0)
        page.locator("#choices").evaluate("one => { one.open = true; }")
        page.get_by_label("Cut off silence at the ends").press(" ")
        expect(page.get_by_label("Cut off silence at the ends")).to_be_checked()
        expect(page.get_by_label("Stop before the answer, problem 1")).to_be_visible()
        assert not runs_off(page)


@pytest.fixture(scope="module")
def recorder() -> Iterator[Browser]:
    """A browser with a pretended microphone."""
    with chromium("--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream") as started:
        yield started


def in_view(page: Page, what: str) -> bool:
    """Say whether the middle of something is seen without scrolling."""
    middle = f"(one => (one.top + one.bottom) / 2)(document.querySelector('{what}').getBoundingClientRect())"
    return bool(page.evaluate(f"0 < {middle} && {middle} < innerHeight"))


@pytest.mark.parametrize("size", [WIDE, PHONE], ids=["wide", "phone"])
def test_a_number_is_heard_and_said_again(recorder: Browser, door: Served, size: tuple[int, int]) -> None:
    """Hear it: the film plays in view from a moment before the number. Say it again: the film is still, and
    the recorder is open at the part and records.
    """
    with window(recorder, door.address, size, forgives=("Failed to load resource",), blank=True) as page:
        page.goto(f"{door.base}{HOME}")
        until(page, "document.getElementById('video').readyState > 0")
        row = page.locator(".slips li")
        row.get_by_role("button", name="Hear it").click()
        until(page, "document.getElementById('video').currentTime > 136.5")
        assert page.evaluate("document.getElementById('video').currentTime") < 146
        assert not page.evaluate("document.getElementById('video').paused")
        assert in_view(page, "#video")
        row.get_by_role("link", name="Say it again").click()
        expect(page.locator("#recorder-name")).to_contain_text("3 x 2/5")
        assert page.evaluate("document.getElementById('video').paused"), "the microphone would hear it"
        assert in_view(page, "#step")
        assert page.evaluate("document.activeElement.id") == "step"
        assert not runs_off(page)
        page.keyboard.press("Space")
        until(page, "document.getElementById('state').dataset.time >= '0:01'")
        assert page.text_content("#step-place").startswith("Step 1 of")  # type: ignore[union-attr]
        for _ in range(2):  # thrown away, then closed
            page.keyboard.press("Escape")
        expect(page.locator("#recorder")).to_be_hidden()
        expect(row).to_contain_text("you said “seven fifths”")
