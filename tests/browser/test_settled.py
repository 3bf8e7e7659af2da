"""What the other tests here stand on: a page is measured when it is laid out, and its faults are found."""

from pathlib import Path

from playwright.sync_api import Browser, Route, expect

from tests.kit.browsers import NEEDS_CHROMIUM, WIDE, broken_rules, runs_off, window
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


def test_what_breaks_a_rule_is_named_with_its_place(browser: Browser, tmp_path: Path) -> None:
    """A field without a name and a part without a meaning, put on a page of ours: both are told."""
    with served(tmp_path) as door, window(browser, door.address, WIDE) as page:
        assert broken_rules(page) == []
        spoilt = '<input id="code"><div role="kite">A kite</div>'
        page.evaluate("(one) => document.querySelector('main').insertAdjacentHTML('beforeend', one)", spoilt)
        found = broken_rules(page)
    assert {'label: <input id="code">', 'aria-roles: <div role="kite">A kite</div>'} <= set(found)
