"""The page on the disk that leads a browser in, in a real Chromium: one window, and the next one."""

from pathlib import Path

from playwright.sync_api import Browser, expect

from onewhole.cli.open_door import DoorPlace, held_door
from tests.kit.browsers import NEEDS_CHROMIUM, broken_rules
from tests.kit.doors import served

pytestmark = NEEDS_CHROMIUM


def test_a_page_of_the_disk_leads_in_and_an_old_one_says_what_to_do(browser: Browser, tmp_path: Path) -> None:
    """The session is there on the first page; used a second time elsewhere, the address tells the way."""
    place = DoorPlace.of(tmp_path / "room12.class", {"XDG_RUNTIME_DIR": str(tmp_path)}, tmp_path)
    with served(tmp_path) as door, held_door(place) as note:
        assert note is not None
        note(door.address)
        context = browser.new_context()
        page = context.new_page()
        page.goto(place.page.as_uri())
        expect(page.get_by_role("heading", name="Welcome")).to_be_visible()
        context.close()
        other = browser.new_context()
        page = other.new_page()
        page.goto(place.page.as_uri())
        expect(page.get_by_role("heading", name="This address was opened already")).to_be_visible()
        expect(page.get_by_text("Start onewhole once more")).to_be_visible()
        assert broken_rules(page) == []
        other.close()
