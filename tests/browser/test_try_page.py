"""The page "Try and check", served as files in a real Chromium without a way out: typed, worked, marked."""

import threading
from collections.abc import Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, WIDE, broken_rules, runs_off, window
from tests.kit.keys import go_to
from tools.locked import ROOT
from tools.try_page.build import build

pytestmark = [
    *NEEDS_CHROMIUM,
    pytest.mark.more("house/test_trying.py"),
    pytest.mark.skipif(
        not (ROOT / "node_modules" / "pyodide").exists(), reason="`npm ci` has not fetched Pyodide"
    ),
]


class _Quiet(SimpleHTTPRequestHandler):
    def log_message(self, format: str, *args: object) -> None:  # noqa: A002 - the name of the one it replaces
        """Write nothing."""


@pytest.fixture(scope="module")
def address(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """Where the built page is served: any server of files does."""
    folder = build(tmp_path_factory.mktemp("try") / "page")
    with ThreadingHTTPServer(("127.0.0.1", 0), partial(_Quiet, directory=str(folder))) as server:
        thread = threading.Thread(target=server.serve_forever)
        thread.start()
        yield f"http://127.0.0.1:{server.server_port}/"
        server.shutdown()
        thread.join()


def _ready(page: Page) -> None:
    expect(page.get_by_role("status")).to_have_text("Ready.")


def test_typed_by_keys_it_is_worked_and_marked(address: str, browser: Browser) -> None:
    """And nothing is fetched from elsewhere: the window fails the test where something is."""
    with window(browser, address) as page:
        _ready(page)
        assert broken_rules(page) == []
        go_to(page, "Problem")
        page.keyboard.press("Control+a")
        page.keyboard.type("7 2/6 - 3 5/6")
        go_to(page, "Answers, one on a line")
        page.keyboard.press("Control+a")
        page.keyboard.type("3 3/6\n4 3/6\nsmudge")
        go_to(page, "Check")
        page.keyboard.press("Enter")
        expect(page.get_by_role("status")).to_have_text("Checked: 1 of 3 right.")
        rows = page.locator("#verdicts tr")
        expect(rows.nth(0)).to_contain_text("✓ right")
        expect(rows.nth(1)).to_contain_text("takes the smaller number of pieces from the larger")
        expect(rows.nth(2)).to_contain_text("cannot be read")
        expect(page.locator("#lines")).to_contain_text("One whole is 6 sixths.")
        assert page.locator("#lines math").count() >= 4
        assert broken_rules(page) == []
        assert not runs_off(page)
        page.set_viewport_size({"width": PHONE[0], "height": PHONE[1]})
        assert broken_rules(page) == []
        assert not runs_off(page)
        page.set_viewport_size({"width": WIDE[0], "height": WIDE[1]})
        go_to(page, "Problem")
        page.keyboard.press("Control+a")
        page.keyboard.type("9 5/0 - 1<b>")
        page.keyboard.press("Enter")
        expect(page.get_by_role("alert")).to_contain_text("0 equal parts")
        expect(page.locator("#found")).to_be_hidden()
        page.get_by_role("button", name="304 - 128").click()
        expect(page.get_by_role("status")).to_have_text("Checked: 1 of 3 right.")
        expect(page.locator("#refused")).to_be_hidden()
