"""What the other tests here stand on: a page is measured when it is laid out, not before."""

from pathlib import Path

from playwright.sync_api import Browser, Route, expect

from tests.kit.browsers import NEEDS_CHROMIUM, WIDE, runs_off, window
from tests.kit.doors import served

pytestmark = NEEDS_CHROMIUM

WITHOUT_LOOKS = "<!doctype html><link rel=stylesheet href=/late.css><title>Kites</title><p>" + "W" * 400
LOOKS = "p { overflow-wrap: anywhere; }"


def test_a_late_style_sheet_is_waited_for(browser: Browser, tmp_path: Path) -> None:
    """A page that runs off until its style sheet comes is measured with it."""
    asked: list[str] = []
    with served(tmp_path) as door, window(browser, door.address, WIDE) as page:

        def late(route: Route) -> None:
            while not asked:
                page.evaluate("null")
            route.fulfill(content_type="text/css", body=LOOKS)

        page.route("**/late.css", late)
        page.route("**/late", lambda route: route.fulfill(content_type="text/html", body=WITHOUT_LOOKS))
        page.goto(f"{door.base}/late", wait_until="commit")
        expect(page.locator("p")).to_have_count(1)
        asked.append("does it run off?")
        assert not runs_off(page)
